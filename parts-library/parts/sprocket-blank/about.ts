// What is said of the sprocket blank in a list of families.
import type { About } from '../about.js';

export const sprocketBlankAbout: About = {
  id: 'sprocket-blank',
  title: 'Sprocket blank',
  summary:
    'A disc or ring under a bought bolt-on sprocket, on its measured bolt circle, with a pilot bore and clear of the chain; a weld-on hub or a second pattern is the adapter plate’s job.',
};
