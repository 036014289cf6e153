// The mounting plate: holds a motor, a control box or a seat on a frame.
import { defineFamily } from '../family.js';
import { mountingPlateAbout } from './about.js';
import { checkMountingPlate } from './check.js';
import { mountingPlateDimensions } from './dimensions.js';
import { drawMountingPlate } from './draw.js';
import { mountingPlateParameters } from './parameters.js';
import {
  mountingPlateDerived,
  mountingPlateGhosts,
  mountingPlateHardware,
  mountingPlateSteps,
} from './print.js';

export const mountingPlate = defineFamily({
  ...mountingPlateAbout,
  parameters: mountingPlateParameters,
  draw: drawMountingPlate,
  check: checkMountingPlate,
  dimensions: mountingPlateDimensions,
  ghosts: mountingPlateGhosts,
  derived: mountingPlateDerived,
  steps: mountingPlateSteps,
  hardware: mountingPlateHardware,
});
