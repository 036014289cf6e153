// Seats for rolling bearings in a plate: how large the bore is made for an outer ring that stands still, or is pressed in.

import { fitLimits } from './fits.js';
import { found, notFound } from './lookup.js';
import type { Lookup } from './lookup.js';
import type { Source } from './source.js';

/** H7: slides in by hand pressure, outer ring held sideways. N7: pressed in, for thin plates and knocking loads. */
export type SeatFit = 'H7' | 'N7';

const n7: Source = {
  title: 'ISO 286 deviations, hole class N7',
  where: 'band not opened',
  certainty: 'from memory',
};
const practice =
  'bearing makers’ tables: H7 for a load that stands still in the outer ring, N7 for one that turns';

/** Over excluded, up to included, mm; upper and lower deviation, micrometres. */
const n7Bands: readonly (readonly [over: number, upTo: number, upper: number, lower: number])[] = [
  [10, 18, -5, -23],
  [18, 30, -7, -28],
  [30, 50, -8, -33],
  [50, 80, -9, -39],
  [80, 120, -10, -45],
  [120, 180, -12, -52],
];

/** A bore to be made for an outer ring, mm. */
export interface BearingSeat {
  readonly fit: SeatFit;
  readonly nominal: number;
  readonly most: number;
  readonly least: number;
  readonly source: Source;
}

/**
 * Limits of the bore for an outer ring.
 *
 * @param outside nominal outside diameter of the bearing, mm
 * @example bearingSeat(47, 'H7') // found: 47.000 to 47.025
 */
export function bearingSeat(outside: number, fit: SeatFit): Lookup<BearingSeat> {
  if (fit === 'H7') {
    const limits = fitLimits('H7', outside);
    if (!limits.found) return limits;
    const { upper, lower, source } = limits.row;
    return found({
      fit,
      nominal: outside,
      most: outside + upper,
      least: outside + lower,
      source: { ...source, where: `${source.where}; ${practice}` },
    });
  }
  const band = n7Bands.find(([over, upTo]) => outside > over && outside <= upTo);
  if (band === undefined) return notFound(`${outside} mm`, 'N7 seat for', ['over 10 to 180 mm']);
  const [, , upper, lower] = band;
  return found({
    fit,
    nominal: outside,
    most: outside + upper / 1000,
    least: outside + lower / 1000,
    source: { ...n7, where: `${n7.where}; ${practice}` },
  });
}
