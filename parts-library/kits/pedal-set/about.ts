// What is said of the pedal set in a list of kits.
import type { About } from '../../parts/index.js';

export const pedalSetAbout: About = {
  id: 'pedal-set',
  title: 'Pedal set',
  summary:
    'Brake and throttle beside each other between two rails: arms, standoffs, cylinder base, stop tabs and cable stop, with the stack that fills the opening.',
};
