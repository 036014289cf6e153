// The kerf coupon: a square with a window, and what its readings say.
import { defineFamily } from '../family.js';
import { couponKerfAbout } from './about.js';
import { checkCouponKerf } from './check.js';
import { drawCouponKerf } from './draw.js';
import { couponKerfParameters } from './parameters.js';
import { couponKerfDerived, couponKerfDimensions, couponKerfSteps } from './print.js';

export const couponKerf = defineFamily({
  ...couponKerfAbout,
  parameters: couponKerfParameters,
  draw: drawCouponKerf,
  check: checkCouponKerf,
  dimensions: couponKerfDimensions,
  ghosts: () => [],
  derived: couponKerfDerived,
  steps: couponKerfSteps,
});
