// What is said of the hole ladder in a list of families.
import type { About } from '../about.js';

export const couponHolesAbout: About = {
  id: 'coupon-holes',
  title: 'Hole ladder',
  summary: 'Holes of several sizes at several speeds: the smallest worth cutting, its speed and its kerf.',
};
