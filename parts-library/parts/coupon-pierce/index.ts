// The pierce-delay ladder: slots pierced with rising delays.
import { defineFamily } from '../family.js';
import { couponPierceAbout } from './about.js';
import { checkCouponPierce } from './check.js';
import { drawCouponPierce } from './draw.js';
import { couponPierceParameters } from './parameters.js';
import { couponPierceDerived, couponPierceDimensions, couponPierceSteps } from './print.js';

export const couponPierce = defineFamily({
  ...couponPierceAbout,
  parameters: couponPierceParameters,
  draw: drawCouponPierce,
  check: checkCouponPierce,
  dimensions: couponPierceDimensions,
  ghosts: () => [],
  derived: couponPierceDerived,
  steps: couponPierceSteps,
});
