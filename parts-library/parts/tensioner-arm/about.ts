// What is said of the tensioner arm in a list of families.
import type { About } from '../about.js';

export const tensionerArmAbout: About = {
  id: 'tensioner-arm',
  title: 'Chain tensioner arm',
  summary:
    'An arm that swings an idler into the slack strand, locked in a curved slot or pulled by a spring: travel, take-up, wrap.',
};
