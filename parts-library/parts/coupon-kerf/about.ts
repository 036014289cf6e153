// What is said of the kerf coupon in a list of families.
import type { About } from '../about.js';

export const couponKerfAbout: About = {
  id: 'coupon-kerf',
  title: 'Kerf coupon',
  summary: 'A square with a square window: two readings give the kerf, four tell kerf from scale.',
};
