// The pedal base: the plate that carries a pedal’s pivot and its cylinder.
import { defineFamily } from '../family.js';
import { pedalBaseAbout } from './about.js';
import { checkPedalBase } from './check.js';
import { pedalBaseDimensions } from './dimensions.js';
import { drawPedalBase } from './draw.js';
import { pedalBaseGhosts } from './ghosts.js';
import { pedalBaseParameters } from './parameters.js';
import { pedalBaseDerived, pedalBaseHardware, pedalBaseSteps } from './shop.js';

export const pedalBase = defineFamily({
  ...pedalBaseAbout,
  parameters: pedalBaseParameters,
  draw: drawPedalBase,
  check: checkPedalBase,
  dimensions: pedalBaseDimensions,
  ghosts: pedalBaseGhosts,
  derived: pedalBaseDerived,
  steps: pedalBaseSteps,
  hardware: pedalBaseHardware,
});
