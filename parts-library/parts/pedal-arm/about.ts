// What is said of the pedal arm in a list of families.
import type { About } from '../about.js';

export const pedalArmAbout: About = {
  id: 'pedal-arm',
  title: 'Pedal arm',
  summary:
    'A throttle, brake or clutch arm on a pivot tube: profile, pin holes and stops, with travel, ratio, pressure and proof load worked out.',
};
