// The gusset: a corner plate between two members.
import { defineFamily } from '../family.js';
import { gussetAbout } from './about.js';
import { checkGusset } from './check.js';
import { drawGusset } from './draw.js';
import { gussetParameters } from './parameters.js';
import { gussetDerived, gussetDimensions, gussetGhosts, gussetSteps } from './print.js';

export const gusset = defineFamily({
  ...gussetAbout,
  parameters: gussetParameters,
  draw: drawGusset,
  check: checkGusset,
  dimensions: gussetDimensions,
  ghosts: gussetGhosts,
  derived: gussetDerived,
  steps: gussetSteps,
});
