// What is said of the wheel-hub adapter in a list of families.
import type { About } from '../about.js';

export const wheelHubAdapterAbout: About = {
  id: 'wheel-hub-adapter',
  title: 'Wheel-hub adapter',
  summary:
    'A blank that puts a wheel of one bolt circle on a hub of another: studs, pilots on both sides, seats; withheld until it is released to be machined.',
};
