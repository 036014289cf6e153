// What is said of the speed ladder in a list of families.
import type { About } from '../about.js';

export const couponSpeedAbout: About = {
  id: 'coupon-speed',
  title: 'Speed ladder',
  summary:
    'Long slots cut slower and faster than the chart, each etched with its speed: the middle of the clean ones is yours.',
};
