// What is said of the sprocket carrier in a list of kits.
import type { About } from '../../parts/index.js';

export const sprocketCarrierAbout: About = {
  id: 'sprocket-carrier',
  title: 'Sprocket carrier',
  summary:
    'An adapter plate for a bolt-on sprocket on a weld-on hub, with the rings that bring the chain into line.',
};
