// What is said of the fit ladder in a list of families.
import type { About } from '../about.js';

export const couponFitAbout: About = {
  id: 'coupon-fit',
  title: 'Fit ladder',
  summary:
    'Slots and bores in small steps round a tab and a pin: try them, and the etch says what clearance fits here.',
};
