// ISO 286 limits used in the shop: H7, H8, H11 holes and h6, f7, h11 shafts.

import { found, notFound } from './lookup.js';
import type { Lookup } from './lookup.js';
import type { Source } from './source.js';

export type HoleClass = 'H7' | 'H8' | 'H11';
export type ShaftClass = 'h6' | 'f7' | 'h11';
export type ToleranceClass = HoleClass | ShaftClass;

/** Deviations from nominal, mm. */
export interface FitLimits {
  readonly toleranceClass: ToleranceClass;
  readonly upper: number;
  readonly lower: number;
  readonly source: Source;
}

const seen: Source = {
  title: 'ISO 286 deviations',
  where: 'three public bore and shaft tolerance tables, misprints set aside',
  certainty: 'published',
};
const inferred: Source = {
  title: 'ISO 286 deviations',
  where: 'H11 over 30 mm taken equal to h11, which was seen',
  certainty: 'published',
};
const recalled: Source = {
  title: 'ISO 286 deviations',
  where: 'this diameter band not opened',
  certainty: 'from memory',
};

type Pair = readonly [upper: number, lower: number];
type Band = readonly [
  over: number,
  upTo: number,
  H7: number,
  H8: number,
  H11: number,
  h6: number,
  f7: Pair,
  h11: number,
];

/** Micrometres; over excluded, upTo included. Bands seen in print are 6 to 80 mm. */
const bands: readonly Band[] = [
  [3, 6, 12, 18, 75, -8, [-10, -22], -75],
  [6, 10, 15, 22, 90, -9, [-13, -28], -90],
  [10, 18, 18, 27, 110, -11, [-16, -34], -110],
  [18, 30, 21, 33, 130, -13, [-20, -41], -130],
  [30, 50, 25, 39, 160, -16, [-25, -50], -160],
  [50, 80, 30, 46, 190, -19, [-30, -60], -190],
  [80, 120, 35, 54, 220, -22, [-36, -71], -220],
  [120, 180, 40, 63, 250, -25, [-43, -83], -250],
  [180, 250, 46, 72, 290, -29, [-50, -96], -290],
];

function deviations(band: Band, toleranceClass: ToleranceClass): Pair {
  const [, , H7, H8, H11, h6, f7, h11] = band;
  const table: Readonly<Record<ToleranceClass, Pair>> = {
    H7: [H7, 0],
    H8: [H8, 0],
    H11: [H11, 0],
    h6: [0, h6],
    f7,
    h11: [0, h11],
  };
  return table[toleranceClass];
}

/**
 * Limits of a hole or shaft.
 *
 * @param toleranceClass H7, H8, H11, h6, f7 or h11
 * @param diameter nominal, over 3 to 250 mm
 * @example fitLimits('H7', 25) // +0.021, 0
 */
export function fitLimits(toleranceClass: ToleranceClass, diameter: number): Lookup<FitLimits> {
  const band = bands.find(([over, upTo]) => diameter > over && diameter <= upTo);
  if (band === undefined) return notFound(`${diameter} mm`, `${toleranceClass} for`, ['over 3 to 250 mm']);
  const [upper, lower] = deviations(band, toleranceClass);
  const [over, upTo] = band;
  const printed = over >= 6 && upTo <= 80;
  const source = !printed ? recalled : toleranceClass === 'H11' && over >= 30 ? inferred : seen;
  return found({ toleranceClass, upper: upper / 1000, lower: lower / 1000, source });
}

/** Clearance of a fit, mm; negative is interference. */
export interface FitClearance {
  readonly least: number;
  readonly most: number;
  readonly source: Source;
}

/**
 * Clearance between hole and shaft of one nominal size.
 *
 * @example fitClearance('H8', 'f7', 25) // 0.020 to 0.074
 */
export function fitClearance(hole: HoleClass, shaft: ShaftClass, diameter: number): Lookup<FitClearance> {
  const bore = fitLimits(hole, diameter);
  if (!bore.found) return bore;
  const pin = fitLimits(shaft, diameter);
  if (!pin.found) return pin;
  return found({
    least: bore.row.lower - pin.row.upper,
    most: bore.row.upper - pin.row.lower,
    source: bore.row.source,
  });
}
