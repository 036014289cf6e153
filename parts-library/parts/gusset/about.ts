// What is said of the gusset in a list of families.
import type { About } from '../about.js';

export const gussetAbout: About = {
  id: 'gusset',
  title: 'Gusset',
  summary:
    'A corner plate between two members, triangle or trapezoid: relief over the joint’s own weld, edges straight or coped to a tube, optional lightening hole.',
};
