// The sprocket blank: a disc or ring under a bought bolt-on sprocket.
import { defineFamily } from '../family.js';
import { sprocketBlankAbout } from './about.js';
import { checkSprocketBlank } from './check.js';
import { drawSprocketBlank } from './draw.js';
import { sprocketBlankParameters } from './parameters.js';
import { sprocketBlankDerived, sprocketBlankDimensions, sprocketBlankGhosts } from './print.js';
import { sprocketBlankHardware, sprocketBlankSteps } from './steps.js';

export const sprocketBlank = defineFamily({
  ...sprocketBlankAbout,
  parameters: sprocketBlankParameters,
  draw: drawSprocketBlank,
  check: checkSprocketBlank,
  dimensions: sprocketBlankDimensions,
  ghosts: sprocketBlankGhosts,
  derived: sprocketBlankDerived,
  steps: sprocketBlankSteps,
  hardware: sprocketBlankHardware,
});
