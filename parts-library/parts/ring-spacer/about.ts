// What is said of the ring spacer in a list of families.
import type { About } from '../about.js';

export const ringSpacerAbout: About = {
  id: 'ring-spacer',
  title: 'Ring spacer',
  summary:
    'Rings, shims and washers for a measured gap: which rings from the plates on hand, and what play remains.',
};
