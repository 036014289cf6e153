// The wheel-hub adapter: a blank that joins a wheel's bolt circle to a hub's, machined before it is used.
import { defineFamily } from '../family.js';
import { wheelHubAdapterAbout } from './about.js';
import { checkWheelHubAdapter } from './check.js';
import { wheelHubAdapterDimensions } from './dimensions.js';
import { drawWheelHubAdapter } from './draw.js';
import { wheelHubAdapterHardware } from './hardware.js';
import { wheelHubAdapterParameters } from './parameters.js';
import { wheelHubAdapterDerived, wheelHubAdapterGhosts, wheelHubAdapterSteps } from './print.js';

export const wheelHubAdapter = defineFamily({
  ...wheelHubAdapterAbout,
  parameters: wheelHubAdapterParameters,
  draw: drawWheelHubAdapter,
  check: checkWheelHubAdapter,
  dimensions: wheelHubAdapterDimensions,
  ghosts: wheelHubAdapterGhosts,
  derived: wheelHubAdapterDerived,
  steps: wheelHubAdapterSteps,
  hardware: wheelHubAdapterHardware,
});
