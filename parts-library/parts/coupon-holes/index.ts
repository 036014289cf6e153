// The hole ladder: holes of several sizes at several speeds.
import { defineFamily } from '../family.js';
import { couponHolesAbout } from './about.js';
import { checkCouponHoles } from './check.js';
import { drawCouponHoles } from './draw.js';
import { couponHolesParameters } from './parameters.js';
import { couponHolesDerived, couponHolesDimensions, couponHolesSteps } from './print.js';

export const couponHoles = defineFamily({
  ...couponHolesAbout,
  parameters: couponHolesParameters,
  draw: drawCouponHoles,
  check: checkCouponHoles,
  dimensions: couponHolesDimensions,
  ghosts: () => [],
  derived: couponHolesDerived,
  steps: couponHolesSteps,
});
