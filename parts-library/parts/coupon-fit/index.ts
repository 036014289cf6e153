// The fit ladder: slots and bores in small steps round a tab and a pin.
import { defineFamily } from '../family.js';
import { couponFitAbout } from './about.js';
import { checkCouponFit } from './check.js';
import { drawCouponFit } from './draw.js';
import { couponFitParameters } from './parameters.js';
import { couponFitDerived, couponFitDimensions, couponFitSteps } from './print.js';

export const couponFit = defineFamily({
  ...couponFitAbout,
  parameters: couponFitParameters,
  draw: drawCouponFit,
  check: checkCouponFit,
  dimensions: couponFitDimensions,
  ghosts: () => [],
  derived: couponFitDerived,
  steps: couponFitSteps,
});
