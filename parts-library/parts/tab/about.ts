// What is said of the tab in a list of families.
import type { About } from '../about.js';

export const tabAbout: About = {
  id: 'tab',
  title: 'Tab',
  summary:
    'A round-nosed ear welded by its edge, straight or coped to a tube: alone or as a pair round an eye, with pin, metal beside the hole and weld checked.',
};
