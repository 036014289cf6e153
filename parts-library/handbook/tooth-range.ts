// Between which thicknesses a sprocket's plate runs with its chain, for chains with and without a published tolerance.

import type { Chain } from './chain.js';
import { weakestSource } from './source.js';
import type { Source } from './source.js';
import { toothThickness } from './tooth-thickness.js';

export interface ToothRange {
  readonly nominal: number;
  /** Thinner lets the chain wander; absent for 25, which has no tolerance in print. */
  readonly low?: number;
  /** Thicker has to be chamfered or faced at the teeth. */
  readonly high: number;
  readonly source: Source;
}

/** ISO 286 IT14, mm: tooth widths to (included) mm. */
const it14: readonly (readonly [upTo: number, tolerance: number])[] = [
  [3, 0.25],
  [6, 0.3],
  [10, 0.36],
  [18, 0.43],
  [30, 0.52],
];

const h14: Source = {
  title: 'ISO 606 tooth width',
  where: '0.93 b1 to 12.7 mm pitch, 0.95 b1 above, tolerance h14; not opened',
  certainty: 'from memory',
};

/** What sprockets of the small-vehicle sizes are sold with, mm. */
const sold: Readonly<Record<string, readonly [low: number, high: number]>> = {
  '415': [4, 4.5],
  '420': [5.8, 6],
  '428': [6.8, 7.2],
  '520': [5.8, 6],
  '525': [7, 7.4],
  '530': [8.5, 9],
};

const soldSprockets: Source = {
  title: 'Small-vehicle sprockets as sold',
  where: 'usual thicknesses by trade size; 0.93 of the inner width lies within them',
  certainty: 'from memory',
};

/**
 * Range of a single-strand sprocket's plate at the teeth, mm.
 *
 * @example toothRange(chain41) // 4.88 to 5.92: ASME B29.1 nominal 5.753 +0.152 −0.889
 * @example toothRange(chain428) // 6.8 to 7.21
 */
export function toothRange(chain: Chain): ToothRange {
  const { nominal, low, high, source } = toothThickness(chain);
  if (low !== undefined && high !== undefined) return { nominal, low, high, source };
  if (chain.standard === 'ANSI B29.1') return { nominal, high: nominal, source };
  const usual = sold[chain.name];
  if (usual !== undefined) {
    return { nominal, low: usual[0], high: Math.max(nominal, usual[1]), source: soldSprockets };
  }
  const under = it14.find(([upTo]) => nominal <= upTo)?.[1] ?? 0;
  return { nominal, low: nominal - under, high: nominal, source: weakestSource(source, h14) };
}
