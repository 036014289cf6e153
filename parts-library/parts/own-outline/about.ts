// What is said of the own outline in a list of families.
import type { About } from '../about.js';

export const ownOutlineAbout: About = {
  id: 'own-outline',
  title: 'Own outline',
  summary:
    'A part from your own DXF or SVG drawing: true arcs, units asked, gaps and doubled lines told, checked like any other.',
};
