// How square a welded frame has to be: angular tolerances of welded constructions.

import type { Source } from './source.js';

export const weldAngleSource: Source = {
  title: 'ISO 13920 angular tolerances of welded constructions',
  where:
    'shorter leg to 400, to 1000 and beyond; class A ±20′, ±15′, ±10′, class B ±45′, ±30′, ±20′; not opened',
  certainty: 'from memory',
};

export type WeldClass = 'A' | 'B' | 'C';

/** Minutes of arc by the shorter leg: to 400 mm, to 1000 mm, beyond. */
const minutes: Readonly<Record<WeldClass, readonly [number, number, number]>> = {
  A: [20, 15, 10],
  B: [45, 30, 20],
  C: [60, 45, 30],
};

/**
 * Angular tolerance of a welded corner, ± degrees.
 *
 * @param shorter the shorter leg, mm
 * @example weldAngle('B', 300) // 0.75
 */
export function weldAngle(weldClass: WeldClass, shorter: number): number {
  const [small, middle, large] = minutes[weldClass];
  return (shorter <= 400 ? small : shorter <= 1000 ? middle : large) / 60;
}
