// The tube cap and base plate: closes a tube, or stands it on bolts.
import { defineFamily } from '../family.js';
import { tubeCapAbout } from './about.js';
import { checkTubeCap } from './check.js';
import { drawTubeCap } from './draw.js';
import { tubeCapParameters } from './parameters.js';
import { tubeCapDerived, tubeCapDimensions, tubeCapGhosts } from './print.js';
import { tubeCapHardware, tubeCapSteps } from './shop.js';

export const tubeCap = defineFamily({
  ...tubeCapAbout,
  parameters: tubeCapParameters,
  draw: drawTubeCap,
  check: checkTubeCap,
  dimensions: tubeCapDimensions,
  ghosts: tubeCapGhosts,
  derived: tubeCapDerived,
  steps: tubeCapSteps,
  hardware: tubeCapHardware,
});
