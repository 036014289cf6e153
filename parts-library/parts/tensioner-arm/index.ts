// The chain tensioner arm: swings an idler into the slack strand.
import { defineFamily } from '../family.js';
import { tensionerArmAbout } from './about.js';
import { checkTensionerArm } from './check.js';
import { tensionerArmDimensions } from './dimensions.js';
import { drawTensionerArm } from './draw.js';
import { tensionerArmParameters } from './parameters.js';
import { tensionerArmDerived, tensionerArmGhosts, tensionerArmHardware, tensionerArmSteps } from './print.js';

export const tensionerArm = defineFamily({
  ...tensionerArmAbout,
  parameters: tensionerArmParameters,
  draw: drawTensionerArm,
  check: checkTensionerArm,
  dimensions: tensionerArmDimensions,
  ghosts: tensionerArmGhosts,
  derived: tensionerArmDerived,
  steps: tensionerArmSteps,
  hardware: tensionerArmHardware,
});
