// The chain guard plate: covers two sprockets and their chain.
import { defineFamily } from '../family.js';
import { chainGuardAbout } from './about.js';
import { checkChainGuard } from './check.js';
import { chainGuardDimensions } from './dimensions.js';
import { drawChainGuard } from './draw.js';
import { chainGuardParameters } from './parameters.js';
import { chainGuardDerived, chainGuardGhosts, chainGuardHardware, chainGuardSteps } from './print.js';

export const chainGuard = defineFamily({
  ...chainGuardAbout,
  parameters: chainGuardParameters,
  draw: drawChainGuard,
  check: checkChainGuard,
  dimensions: chainGuardDimensions,
  ghosts: chainGuardGhosts,
  derived: chainGuardDerived,
  steps: chainGuardSteps,
  hardware: chainGuardHardware,
});
