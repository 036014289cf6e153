// What is said of the mounting plate in a list of families.
import type { About } from '../about.js';

export const mountingPlateAbout: About = {
  id: 'mounting-plate',
  title: 'Mounting plate',
  summary:
    'A plate with a grid or a circle of holes or slots, a motor face that slides or turns, a window and an edge notch.',
};
