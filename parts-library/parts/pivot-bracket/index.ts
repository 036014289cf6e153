// The pivot bracket: one or a pair of standoffs that carry a pivot.
import { defineFamily } from '../family.js';
import { pivotBracketAbout } from './about.js';
import { checkPivotBracket } from './check.js';
import { pivotBracketDimensions } from './dimensions.js';
import { drawPivotBracket } from './draw.js';
import { pivotBracketGhosts } from './ghosts.js';
import { pivotBracketParameters } from './parameters.js';
import { pivotBracketDerived, pivotBracketHardware, pivotBracketSteps } from './shop.js';

export const pivotBracket = defineFamily({
  ...pivotBracketAbout,
  parameters: pivotBracketParameters,
  draw: drawPivotBracket,
  check: checkPivotBracket,
  dimensions: pivotBracketDimensions,
  ghosts: pivotBracketGhosts,
  derived: pivotBracketDerived,
  steps: pivotBracketSteps,
  hardware: pivotBracketHardware,
});
