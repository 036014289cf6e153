// The pedal arm: a throttle, brake or clutch arm on a pivot tube, with its movement and its strength.
import { defineFamily } from '../family.js';
import { pedalArmAbout } from './about.js';
import { checkPedalArm } from './check.js';
import { pedalArmDerived } from './derived.js';
import { pedalArmDimensions } from './dimensions.js';
import { drawPedalArm } from './draw.js';
import { pedalArmGhosts } from './ghosts.js';
import { pedalArmHardware } from './hardware.js';
import { pedalArmParameters } from './parameters.js';
import { pedalArmSteps } from './steps.js';

export const pedalArm = defineFamily({
  ...pedalArmAbout,
  parameters: pedalArmParameters,
  draw: drawPedalArm,
  check: checkPedalArm,
  dimensions: pedalArmDimensions,
  ghosts: pedalArmGhosts,
  derived: pedalArmDerived,
  steps: pedalArmSteps,
  hardware: pedalArmHardware,
});
