// The bent bracket: a strip bent to an L, U, Z or hat, with holes in its legs.
import { defineFamily } from '../family.js';
import { bentBracketAbout } from './about.js';
import { checkBentBracket } from './check.js';
import { drawBentBracket } from './draw.js';
import { bentBracketParameters } from './parameters.js';
import { bentBracketDerived, bentBracketDimensions, bentBracketGhosts, bentBracketSteps } from './print.js';

export const bentBracket = defineFamily({
  ...bentBracketAbout,
  parameters: bentBracketParameters,
  draw: drawBentBracket,
  check: checkBentBracket,
  dimensions: bentBracketDimensions,
  ghosts: bentBracketGhosts,
  derived: bentBracketDerived,
  steps: bentBracketSteps,
});
