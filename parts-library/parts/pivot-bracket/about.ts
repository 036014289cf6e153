// What is said of the pivot bracket in a list of families.
import type { About } from '../about.js';

export const pivotBracketAbout: About = {
  id: 'pivot-bracket',
  title: 'Pivot bracket',
  summary:
    'One or a pair of standoffs that carry a pivot tube, bush or bolt: welded by the edge, bolted flat, or on a bent foot, with the gap, the tube’s length and the loads on the foot.',
};
