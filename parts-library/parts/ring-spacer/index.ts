// The ring spacer: rings, shims and washers that fill a measured gap.
import { defineFamily } from '../family.js';
import { ringSpacerAbout } from './about.js';
import { checkRingSpacer } from './check.js';
import { ringSpacerDimensions } from './dimensions.js';
import { drawRingSpacer } from './draw.js';
import { ringSpacerGhosts } from './ghosts.js';
import { ringSpacerParameters } from './parameters.js';
import { ringSpacerDerived, ringSpacerSteps } from './steps.js';

export const ringSpacer = defineFamily({
  ...ringSpacerAbout,
  parameters: ringSpacerParameters,
  draw: drawRingSpacer,
  check: checkRingSpacer,
  dimensions: ringSpacerDimensions,
  ghosts: ringSpacerGhosts,
  derived: ringSpacerDerived,
  steps: ringSpacerSteps,
});
