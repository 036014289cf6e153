// What is said of the brake-disc carrier in a list of families.
import type { About } from '../about.js';

export const discCarrierAbout: About = {
  id: 'disc-carrier',
  title: 'Brake-disc carrier',
  summary:
    'A blank that carries a brake disc on a hub: two bolt patterns, turned pilots, lobes and windows; withheld until it is released to be machined.',
};
