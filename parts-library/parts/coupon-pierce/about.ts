// What is said of the pierce-delay ladder in a list of families.
import type { About } from '../about.js';

export const couponPierceAbout: About = {
  id: 'coupon-pierce',
  title: 'Pierce-delay ladder',
  summary:
    'Slots pierced with rising delays, each etched with its own: the shortest that severs at once is yours.',
};
