// How thick a sprocket's plate may be: it has to run between the chain's inner plates.

import type { Chain } from './chain.js';
import { inches } from './inches.js';
import type { Source } from './source.js';

export interface ToothThickness {
  readonly nominal: number;
  /** Thinner lets the chain wander; absent where no tolerance is published. */
  readonly low?: number;
  /** Thicker has to be chamfered or faced at the teeth. */
  readonly high?: number;
  readonly source: Source;
}

/** Inches over and under the nominal, ASME B29.1 sizes; 25 has none in the source. */
const tolerances: Readonly<Record<string, readonly [plus: number, minus: number]>> = {
  '35': [0.006, 0.027],
  '41': [0.006, 0.035],
  '40': [0.006, 0.035],
  '50': [0.007, 0.036],
  '60': [0.009, 0.036],
  '80': [0.015, 0.04],
};

const ansi: Source = {
  title: 'ASME B29.1 sprocket flange thickness',
  where:
    't = 0.93 W − 0.006 in reproduces the published lecture table to 0.001 in; tolerances from a maker’s page',
  certainty: 'published',
};
const iso: Source = {
  title: 'ISO 606 / DIN 8187 tooth width',
  where: '0.93 b1 to 12.7 mm pitch, 0.95 b1 above; agrees with a published B-series table to 0.07 mm',
  certainty: 'from memory',
};
const vehicle: Source = {
  title: 'Small-vehicle sprocket thickness',
  where: '0.93 of the inner width, by analogy',
  certainty: 'common practice',
};

/**
 * Thickness of a single-strand sprocket's plate at the teeth, mm.
 *
 * @example toothThickness(chain40).nominal // 7.22 (0.284 in), 6.32 to 7.37
 */
export function toothThickness(chain: Chain): ToothThickness {
  if (chain.standard === 'ANSI B29.1') {
    const nominal = 0.93 * chain.innerWidth - inches(0.006);
    const [plus, minus] = tolerances[chain.name] ?? [];
    if (plus === undefined || minus === undefined) return { nominal, source: ansi };
    return { nominal, low: nominal - inches(minus), high: nominal + inches(plus), source: ansi };
  }
  if (chain.standard === 'small vehicle') return { nominal: 0.93 * chain.innerWidth, source: vehicle };
  return { nominal: (chain.pitch <= 12.7 ? 0.93 : 0.95) * chain.innerWidth, source: iso };
}
