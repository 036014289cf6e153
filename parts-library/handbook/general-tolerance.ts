// ISO 2768-1: tolerances of dimensions without one of their own.

import { found, notFound } from './lookup.js';
import type { Lookup } from './lookup.js';
import type { CitedNumber } from './source.js';

/** Fine, medium, coarse, very coarse. */
export type GeneralClass = 'f' | 'm' | 'c' | 'v';

/** Nominal up to (included), mm; the first begins at 0.5. */
const columns: readonly number[] = [3, 6, 30, 120, 400, 1000, 2000, 4000];

const table: Readonly<Record<GeneralClass, readonly (number | null)[]>> = {
  f: [0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, null],
  m: [0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2],
  c: [0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4],
  v: [null, 0.5, 1, 1.5, 2.5, 4, 6, 8],
};

/**
 * General tolerance of a machined dimension, ± mm.
 *
 * @param nominal 0.5 to 4000 mm
 * @example generalTolerance(110, 'm') // found: ±0.3
 */
export function generalTolerance(nominal: number, generalClass: GeneralClass): Lookup<CitedNumber> {
  const column = nominal >= 0.5 ? columns.findIndex((upTo) => nominal <= upTo) : -1;
  const value = table[generalClass][column] ?? undefined;
  if (value === undefined) {
    return notFound(`${nominal} mm`, `ISO 2768-${generalClass} tolerance for`, ['0.5 to 4000 mm']);
  }
  return found({
    value,
    source: {
      title: 'ISO 2768-1 linear tolerances',
      where: 'several public table pages; one copy prints class c lower below 6 mm',
      certainty: 'published',
    },
  });
}
