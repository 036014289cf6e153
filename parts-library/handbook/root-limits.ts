// What a caliper may read over the gaps of a sprocket: the bottom diameter and how far it may be under.

import type { Chain } from './chain.js';
import { weakestSource } from './source.js';
import type { Source } from './source.js';
import { isoSprocketFormulas, sprocketDiameters, sprocketFormulas } from './sprocket.js';

/** ISO 606: from this root diameter (included, mm) on, this much under is allowed, mm; h11 above 250 mm. */
const isoUnder: readonly (readonly [from: number, under: number])[] = [
  [0, 0.25],
  [127, 0.3],
  [250, 0.32],
  [315, 0.36],
  [400, 0.4],
  [500, 0.44],
  [630, 0.5],
  [800, 0.56],
];

const isoTolerance: Source = {
  title: 'ISO 606 root diameter',
  where: '0 / −0.25 mm to 127, 0 / −0.30 mm to 250, h11 above; not opened',
  certainty: 'from memory',
};

export interface RootLimits {
  /** Caliper diameter, mm: no more than this, no less than that. */
  readonly most: number;
  readonly least: number;
  readonly source: Source;
}

/**
 * Limits of the caliper diameter, mm: across the bottoms of opposite gaps on even teeth, of nearly opposite ones on
 * odd. By the commercial tolerance of ASME B29.1, or by ISO 606.
 *
 * @returns undefined when the teeth are not a whole number of 5 or more
 * @example rootLimits(chain40, 16, 'ansi') // 57.17 at most, 56.92 at least: 0.006 + 0.002 × 0.5 × 4 = 0.010 in under
 */
export function rootLimits(chain: Chain, teeth: number, form: 'ansi' | 'iso'): RootLimits | undefined {
  const diameters = sprocketDiameters(chain, teeth);
  if (diameters === undefined) return undefined;
  const most = diameters.caliper;
  if (form === 'ansi') {
    return { most, least: most - diameters.caliperUnder.commercial, source: sprocketFormulas };
  }
  const under = isoUnder.findLast(([from]) => diameters.root >= from)?.[1] ?? 0;
  return { most, least: most - under, source: weakestSource(isoSprocketFormulas, isoTolerance) };
}
