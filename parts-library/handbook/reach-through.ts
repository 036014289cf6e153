// How far a danger has to lie behind an opening that a finger, hand or arm goes through.

import type { Source } from './source.js';

export const reachSource: Source = {
  title: 'ISO 13857 Table 4, reaching through openings, persons of 14 years and above',
  where: 'slot, square or round opening against safety distance; not opened',
  certainty: 'from memory',
};

export type OpeningShape = 'slot' | 'square' | 'round';

/** Opening up to (included) mm, and safety distance for slot, square and round, mm. */
const table: readonly (readonly [upTo: number, slot: number, square: number, round: number])[] = [
  [4, 2, 2, 2],
  [6, 10, 5, 5],
  [8, 20, 15, 5],
  [10, 80, 25, 20],
  [12, 100, 80, 80],
  [20, 120, 120, 120],
  [30, 850, 120, 120],
  [40, 850, 200, 120],
  [120, 850, 850, 850],
];

/**
 * Safety distance behind an opening, mm.
 *
 * @param opening width of a slot, side of a square or diameter of a round opening, mm
 * @returns undefined over 120 mm, where a whole arm and shoulder go through
 * @example reachDistance('slot', 8) // 20
 */
export function reachDistance(shape: OpeningShape, opening: number): number | undefined {
  const row = table.find(([upTo]) => opening <= upTo + 1e-9);
  if (row === undefined) return undefined;
  const [, slot, square, round] = row;
  return { slot, square, round }[shape];
}

/** Widest opening of a shape for a distance to the danger, mm; 0 when even 4 mm is too wide. */
export function widestOpening(shape: OpeningShape, distance: number): number {
  const fits = table.filter(([upTo]) => (reachDistance(shape, upTo) ?? Infinity) <= distance + 1e-9);
  return fits.at(-1)?.[0] ?? 0;
}
