// What is said of the cable stop in a list of families.
import type { About } from '../about.js';

export const cableStopAbout: About = {
  id: 'cable-stop',
  title: 'Cable stop tab',
  summary:
    'Holds the end of a cable’s housing: a hole with a slot to drop the cable in, a closed hole or a tapped one for an adjuster; welded, bolted flat or on a bent foot; stiffness and weld checked.',
};
