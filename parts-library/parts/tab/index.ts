// The tab: a round-nosed ear welded by its edge, alone or as a pair.
import { defineFamily } from '../family.js';
import { tabAbout } from './about.js';
import { checkTab } from './check.js';
import { tabDimensions } from './dimensions.js';
import { drawTab } from './draw.js';
import { tabGhosts } from './ghosts.js';
import { tabParameters } from './parameters.js';
import { tabDerived, tabHardware, tabSteps } from './shop.js';

export const tab = defineFamily({
  ...tabAbout,
  parameters: tabParameters,
  draw: drawTab,
  check: checkTab,
  dimensions: tabDimensions,
  ghosts: tabGhosts,
  derived: tabDerived,
  steps: tabSteps,
  hardware: tabHardware,
});
