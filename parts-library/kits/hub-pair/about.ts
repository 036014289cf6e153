// What is said of the hub pair in a list of kits.
import type { About } from '../../parts/index.js';

export const hubPairAbout: About = {
  id: 'hub-pair',
  title: 'Hub pair',
  summary:
    'Wheel-hub adapters for both ends of an axle from one set of numbers: hub, wheel, pilots, plate, and what the track becomes.',
};
