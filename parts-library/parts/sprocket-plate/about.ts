// What is said of the sprocket plate in a list of families.
import type { About } from '../about.js';

export const sprocketPlateAbout: About = {
  id: 'sprocket-plate',
  title: 'Sprocket plate',
  summary:
    'A sprocket for single-strand roller chain cut from plate: teeth by ANSI B29.1 or ISO 606, bolt pattern, bore or weld-on hub, lightening windows.',
};
