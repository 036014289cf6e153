// The tack jig: holds two tubes at their angle while they are tacked.
import { defineFamily } from '../family.js';
import { tackJigAbout } from './about.js';
import { checkTackJig } from './check.js';
import { tackJigDimensions } from './dimensions.js';
import { drawTackJig } from './draw.js';
import { tackJigParameters } from './parameters.js';
import { tackJigDerived, tackJigGhosts, tackJigHardware, tackJigSteps } from './print.js';

export const tackJig = defineFamily({
  ...tackJigAbout,
  parameters: tackJigParameters,
  draw: drawTackJig,
  check: checkTackJig,
  dimensions: tackJigDimensions,
  ghosts: tackJigGhosts,
  derived: tackJigDerived,
  steps: tackJigSteps,
  hardware: tackJigHardware,
});
