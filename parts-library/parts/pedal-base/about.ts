// What is said of the pedal base in a list of families.
import type { About } from '../about.js';

export const pedalBaseAbout: About = {
  id: 'pedal-base',
  title: 'Pedal base',
  summary:
    'The upright plate of a pedal: cylinder flange with its two bolts, push-rod window, places of the pivot ears, mounting holes or weld edge; ratio, line pressure, bolts and bending at the proof load.',
};
