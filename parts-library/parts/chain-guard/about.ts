// What is said of the chain guard in a list of families.
import type { About } from '../about.js';

export const chainGuardAbout: About = {
  id: 'chain-guard',
  title: 'Chain guard plate',
  summary:
    'Covers two sprockets and their chain: room for the swinging strand, flat or bent tabs, windows that no finger goes through.',
};
