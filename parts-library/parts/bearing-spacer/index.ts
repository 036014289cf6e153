// The bearing spacer: a ring between two inner races, to micrometer readings.
import { defineFamily } from '../family.js';
import { bearingSpacerAbout } from './about.js';
import { checkBearingSpacer } from './check.js';
import { drawBearingSpacer } from './draw.js';
import { bearingSpacerParameters } from './parameters.js';
import { bearingSpacerDerived, bearingSpacerDimensions, bearingSpacerSteps } from './print.js';
import { bearingSpacerGhosts } from './section.js';

export const bearingSpacer = defineFamily({
  ...bearingSpacerAbout,
  parameters: bearingSpacerParameters,
  draw: drawBearingSpacer,
  check: checkBearingSpacer,
  dimensions: bearingSpacerDimensions,
  ghosts: bearingSpacerGhosts,
  derived: bearingSpacerDerived,
  steps: bearingSpacerSteps,
});
