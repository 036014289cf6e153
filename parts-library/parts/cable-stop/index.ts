// The cable stop: an ear that holds the end of a cable’s housing.
import { defineFamily } from '../family.js';
import { cableStopAbout } from './about.js';
import { checkCableStop } from './check.js';
import { drawCableStop } from './draw.js';
import { cableStopParameters } from './parameters.js';
import { cableStopDimensions, cableStopGhosts } from './print.js';
import { cableStopDerived, cableStopHardware, cableStopSteps } from './shop.js';

export const cableStop = defineFamily({
  ...cableStopAbout,
  parameters: cableStopParameters,
  draw: drawCableStop,
  check: checkCableStop,
  dimensions: cableStopDimensions,
  ghosts: cableStopGhosts,
  derived: cableStopDerived,
  steps: cableStopSteps,
  hardware: cableStopHardware,
});
