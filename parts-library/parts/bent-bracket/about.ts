// What is said of the bent bracket in a list of families.
import type { About } from '../about.js';

export const bentBracketAbout: About = {
  id: 'bent-bracket',
  title: 'Bent bracket',
  summary:
    'A strip bent to an L, U, Z or hat: flat pattern, bend lines, reliefs, and what the bends leave room for.',
};
