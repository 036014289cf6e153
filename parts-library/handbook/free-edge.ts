// How long the free edge of a gusset may be for its thickness before it folds sideways under a push.

import type { CitedNumber } from './source.js';

/**
 * Greatest length over thickness of an unstiffened free edge: 2.06 √(E/Fy).
 *
 * @param yieldMegapascals Fy, MPa
 * @param modulusMegapascals E, MPa
 * @example freeEdgeLimit(250, 200_000).value // 58.3
 */
export function freeEdgeLimit(yieldMegapascals: number, modulusMegapascals: number): CitedNumber {
  return {
    value: 2.06 * Math.sqrt(modulusMegapascals / yieldMegapascals),
    source: {
      title: 'AASHTO LRFD 6.14.2.8, free edges of gusset plates',
      where: 'length over thickness at most 2.06 √(E/Fy); not opened',
      certainty: 'from memory',
    },
  };
}
