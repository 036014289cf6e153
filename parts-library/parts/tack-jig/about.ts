// What is said of the tack jig in a list of families.
import type { About } from '../about.js';

export const tackJigAbout: About = {
  id: 'tack-jig',
  title: 'Tack jig',
  summary:
    'Holds two tubes at their angle while they are tacked: a bed with stops and wedges in slots, or a square that is clamped into the corner.',
};
