// The own outline: a part from a drawing that was brought in.
import { defineFamily } from '../family.js';
import { ownOutlineAbout } from './about.js';
import { checkOwnOutline } from './check.js';
import { ownOutlineDimensions } from './dimensions.js';
import { drawOwnOutline } from './draw.js';
import { ownOutlineParameters } from './parameters.js';
import { ownOutlineDerived, ownOutlineGhosts, ownOutlineSteps } from './print.js';

export const ownOutline = defineFamily({
  ...ownOutlineAbout,
  parameters: ownOutlineParameters,
  draw: drawOwnOutline,
  check: checkOwnOutline,
  dimensions: ownOutlineDimensions,
  ghosts: ownOutlineGhosts,
  derived: ownOutlineDerived,
  steps: ownOutlineSteps,
});
