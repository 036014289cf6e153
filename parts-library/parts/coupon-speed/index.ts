// The speed ladder: slots cut slower and faster than the chart.
import { defineFamily } from '../family.js';
import { couponSpeedAbout } from './about.js';
import { checkCouponSpeed } from './check.js';
import { drawCouponSpeed } from './draw.js';
import { couponSpeedParameters } from './parameters.js';
import { couponSpeedDerived, couponSpeedDimensions, couponSpeedSteps } from './print.js';

export const couponSpeed = defineFamily({
  ...couponSpeedAbout,
  parameters: couponSpeedParameters,
  draw: drawCouponSpeed,
  check: checkCouponSpeed,
  dimensions: couponSpeedDimensions,
  ghosts: () => [],
  derived: couponSpeedDerived,
  steps: couponSpeedSteps,
});
