// What is said of the bearing spacer in a list of families.
import type { About } from '../about.js';

export const bearingSpacerAbout: About = {
  id: 'bearing-spacer',
  title: 'Bearing spacer',
  summary:
    'A ring between the inner races of two bearings, judged by micrometer readings against the seats of the outer ones.',
};
