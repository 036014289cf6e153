// The bent bracket: two legs, one bend, a hole in each.
import { defineFamily } from '../family.js';
import { checkBentBracket } from './check.js';
import { drawBentBracket } from './draw.js';
import { bentBracketParameters } from './parameters.js';
import { bentBracketDerived, bentBracketDimensions, bentBracketGhosts, bentBracketSteps } from './print.js';

export const bentBracket = defineFamily({
  id: 'bent-bracket',
  title: 'Bent bracket',
  summary: 'A strip bent once, with a hole in each leg: flat pattern, bend line, bend and hole checks.',
  parameters: bentBracketParameters,
  draw: drawBentBracket,
  check: checkBentBracket,
  dimensions: bentBracketDimensions,
  ghosts: bentBracketGhosts,
  derived: bentBracketDerived,
  steps: bentBracketSteps,
});
