// What is said of the tube cap in a list of families.
import type { About } from '../about.js';

export const tubeCapAbout: About = {
  id: 'tube-cap',
  title: 'Tube cap and base plate',
  summary:
    'Closes a round, square or rectangular tube, set in, proud or inside it, or stands it on a base plate with bolts: shelf for the weld, vent before welding, plate and bolts checked.',
};
