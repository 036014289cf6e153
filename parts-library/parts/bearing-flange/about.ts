// What is said of the bearing flange in a list of families.
import type { About } from '../about.js';

export const bearingFlangeAbout: About = {
  id: 'bearing-flange',
  title: 'Bearing flange plate',
  summary:
    'Carries a shaft’s bearing: a bought flange housing on two, three or four bolts, or a bored seat for a bare bearing.',
};
