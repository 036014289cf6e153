// What is said of the adapter plate in a list of families.
import type { About } from '../about.js';

export const adapterPlateAbout: About = {
  id: 'adapter-plate',
  title: 'Adapter plate',
  summary: 'A flat plate that joins a bolted part to a weld-on hub, or one bolt pattern to another.',
};
