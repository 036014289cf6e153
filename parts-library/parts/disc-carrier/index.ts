// The brake-disc carrier: a blank that joins a disc's bolt circle to a hub's, machined before it is used.
import { defineFamily } from '../family.js';
import { discCarrierAbout } from './about.js';
import { checkDiscCarrier } from './check.js';
import { discCarrierDimensions } from './dimensions.js';
import { drawDiscCarrier } from './draw.js';
import { discCarrierParameters } from './parameters.js';
import { discCarrierDerived, discCarrierGhosts, discCarrierHardware, discCarrierSteps } from './print.js';

export const discCarrier = defineFamily({
  ...discCarrierAbout,
  parameters: discCarrierParameters,
  draw: drawDiscCarrier,
  check: checkDiscCarrier,
  dimensions: discCarrierDimensions,
  ghosts: discCarrierGhosts,
  derived: discCarrierDerived,
  steps: discCarrierSteps,
  hardware: discCarrierHardware,
});
