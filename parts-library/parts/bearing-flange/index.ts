// The bearing flange plate: carries one bearing of a shaft.
import { defineFamily } from '../family.js';
import { bearingFlangeAbout } from './about.js';
import { checkBearingFlange } from './check.js';
import { bearingFlangeDimensions } from './dimensions.js';
import { drawBearingFlange } from './draw.js';
import { bearingFlangeParameters } from './parameters.js';
import {
  bearingFlangeDerived,
  bearingFlangeGhosts,
  bearingFlangeHardware,
  bearingFlangeSteps,
} from './print.js';

export const bearingFlange = defineFamily({
  ...bearingFlangeAbout,
  parameters: bearingFlangeParameters,
  draw: drawBearingFlange,
  check: checkBearingFlange,
  dimensions: bearingFlangeDimensions,
  ghosts: bearingFlangeGhosts,
  derived: bearingFlangeDerived,
  steps: bearingFlangeSteps,
  hardware: bearingFlangeHardware,
});
