// The adapter plate: joins a bolted part (sprocket, disc, wheel) to a weld-on hub or a second pattern.
import { defineFamily } from '../family.js';
import { adapterPlateAbout } from './about.js';
import { checkAdapterPlate } from './check.js';
import { adapterPlateDerived } from './derived.js';
import { adapterPlateDimensions } from './dimensions.js';
import { drawAdapterPlate } from './draw.js';
import { adapterPlateGhosts } from './ghosts.js';
import { adapterPlateHardware } from './hardware.js';
import { adapterPlateParameters } from './parameters.js';
import { adapterPlateSteps } from './steps.js';

export const adapterPlate = defineFamily({
  ...adapterPlateAbout,
  parameters: adapterPlateParameters,
  draw: drawAdapterPlate,
  check: checkAdapterPlate,
  dimensions: adapterPlateDimensions,
  ghosts: adapterPlateGhosts,
  derived: adapterPlateDerived,
  steps: adapterPlateSteps,
  hardware: adapterPlateHardware,
});
