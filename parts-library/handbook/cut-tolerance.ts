// ISO 9013: how far a thermally cut dimension may be off, and how far the cut may lean.

import { found, notFound } from './lookup.js';
import type { Lookup } from './lookup.js';
import type { CitedNumber, Source } from './source.js';

/** 1: laser to 32 mm. 2: plasma and oxyfuel. */
export type CutClass = 1 | 2;

const class1: Source = {
  title: 'ISO 9013:2017 limit deviations, class 1',
  where: 'public excerpt; blank cells assigned to the left',
  certainty: 'published',
};
const class2: Source = {
  title: 'ISO 9013:2017 limit deviations, class 2',
  where: 'public excerpt; blank cells assigned to the left',
  certainty: 'published',
};
const class2Recalled: Source = {
  title: 'ISO 9013 limit deviations, class 2',
  where: 'plate over 20 mm: the excerpt ends there',
  certainty: 'from memory',
};

/** Lower bounds of the nominal columns, mm, the last ends at 4000: from (included) to (excluded). */
const columns: readonly number[] = [0, 3, 10, 35, 125, 315, 1000, 2000];
const widest = 4000;

type Row = readonly [upTo: number, deviations: readonly (number | null)[]];

/** Plate up to (included) mm; ± mm by column. */
const tables: Readonly<Record<CutClass, readonly Row[]>> = {
  1: [
    [1, [0.075, 0.1, 0.1, 0.2, 0.2, 0.3, 0.4, 0.65]],
    [3.15, [0.1, 0.15, 0.2, 0.25, 0.25, 0.35, 0.4, 0.65]],
    [6.3, [0.2, 0.2, 0.25, 0.25, 0.3, 0.4, 0.45, 0.7]],
    [10, [null, 0.25, 0.3, 0.3, 0.35, 0.45, 0.55, 0.75]],
    [15, [null, 0.3, 0.35, 0.4, 0.45, 0.55, 0.65, 0.85]],
    [20, [null, 0.4, 0.4, 0.45, 0.55, 0.75, 0.85, 1.2]],
    [25, [null, 0.45, 0.5, 0.6, 0.7, 0.9, 1.1, 1.6]],
    [32, [null, null, 0.7, 0.7, 0.8, 1, 1.6, 2.25]],
    [50, [null, null, 0.7, 0.7, 0.8, 1, 1.6, 2.5]],
  ],
  2: [
    [1, [0.5, 0.6, 0.6, 0.7, 0.7, 0.8, 0.9, 0.9]],
    [3.15, [0.6, 0.6, 0.7, 0.7, 0.8, 0.9, 1, 1.1]],
    [6.3, [0.7, 0.8, 0.9, 0.9, 1.1, 1.2, 1.3, 1.3]],
    [10, [null, 1, 1.1, 1.3, 1.4, 1.5, 1.6, 1.7]],
    [15, [null, 1.8, 1.8, 1.8, 1.9, 2.3, 3, 4.2]],
    [20, [null, 1.8, 1.8, 1.8, 1.9, 2.3, 3, 4.2]],
    [25, [null, 1.8, 1.8, 1.8, 1.9, 2.3, 3, 4.2]],
    [50, [null, 1.8, 1.8, 1.8, 1.9, 2.3, 3, 4.2]],
    [100, [null, null, 2.5, 2.5, 2.6, 3, 3.7, 4.9]],
  ],
};

/**
 * Limit deviation of a thermally cut dimension, ± mm.
 *
 * @param thickness plate, mm
 * @param nominal the dimension, mm, below 4000
 * @param cutClass 1 or 2; plasma is 2
 * @returns the ±, or not found where the standard leaves the cell blank
 * @example cutTolerance(6, 32, 2) // found: ±0.9
 */
export function cutTolerance(thickness: number, nominal: number, cutClass: CutClass): Lookup<CitedNumber> {
  const row = thickness > 0 ? tables[cutClass].find(([upTo]) => thickness <= upTo) : undefined;
  const column = nominal > 0 && nominal < widest ? columns.findLastIndex((from) => nominal >= from) : -1;
  const value = row?.[1][column] ?? undefined;
  if (value === undefined) {
    return notFound(`${nominal} mm in ${thickness} mm plate`, `ISO 9013 class ${cutClass} deviation for`, [
      `plate to ${tables[cutClass].at(-1)?.[0] ?? 0} mm`,
      'dimensions below 4000 mm',
      'over 6.3 mm plate from 3 mm up, over the thickest bands from 10 mm up',
    ]);
  }
  const source = cutClass === 1 ? class1 : thickness > 20 ? class2Recalled : class2;
  return found({ value, source });
}

/** Range of ISO 9013 for the lean of the cut: 1 is the squarest. Air plasma usually lands in 3 or 4. */
export type LeanRange = 1 | 2 | 3 | 4 | 5;

const leans: Readonly<Record<LeanRange, readonly [constant: number, perThickness: number]>> = {
  1: [0.05, 0.003],
  2: [0.15, 0.007],
  3: [0.4, 0.01],
  4: [0.8, 0.02],
  5: [1.2, 0.035],
};

/**
 * Perpendicularity u of a thermal cut, mm: how far the face leaves the square, over its height less a strip.
 *
 * @example perpendicularity(6, 3).value // 0.46
 */
export function perpendicularity(thickness: number, range: LeanRange): CitedNumber {
  const [constant, perThickness] = leans[range];
  return {
    value: constant + perThickness * thickness,
    source: {
      title: 'ISO 9013 perpendicularity ranges',
      where: 'u = a + b t in two public sources; range 5 in one',
      certainty: 'published',
    },
  };
}
