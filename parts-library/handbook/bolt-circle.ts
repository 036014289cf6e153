// The mathematics of measuring a bolt circle: from what a caliper can reach to the diameter and its ±.

import type { Point } from '../geometry/index.js';
import type { Measure } from '../units/index.js';
import { combineEstimates } from './bolt-circle-combine.js';
import type { Contribution } from './bolt-circle-combine.js';
import { estimatesOf } from './bolt-circle-readings.js';
import type { BoltCircleProblem } from './bolt-circle-problem.js';
import type { SeatedHole } from './circle-fit.js';
import type { Source } from './source.js';

export interface BoltCircle {
  readonly diameter: number;
  /** Half width of the range the diameter lies in; absent when a reading came without its ±. */
  readonly plusMinus?: number;
  /** What each reading and each hole size puts into the ±, mm of diameter. */
  readonly contributions: readonly Contribution[];
  /** How far readings contradict each other, mm of diameter: beyond their ±, or in all where a ± is missing. */
  readonly disagreement: number;
  /** Hole size worked out from inside and outside readings of one pair. */
  readonly holeDiameter?: number;
  /** From measured centres only: where the circle's centre is, in the frame of the centres. */
  readonly centre?: Point;
  /** From measured centres only: each hole, its direction and its distance from the even place. */
  readonly holes?: readonly SeatedHole[];
  /** Direction of the first even place, degrees. */
  readonly clockingDegrees?: number;
  /** False when the measured holes keep an odd clocking: draw them where they were measured. */
  readonly evenlySpaced: boolean;
  readonly notes: readonly string[];
  readonly source: Source;
}

export type BoltCircleAnswer =
  | { readonly ok: true; readonly value: BoltCircle }
  | { readonly ok: false; readonly problem: BoltCircleProblem };

/** D = s / sin(180 k / n), s the distance between hole centres k steps apart. */
export const chordRule: Source = {
  title: 'Bolt circle from a chord',
  where:
    'D = s / sin(180 k/n), published wheel bolt pattern formula and worked example; least squares beyond it',
  certainty: 'published',
};

/**
 * Factor from the distance between two hole centres to the circle: 1 / sin(180 k/n).
 *
 * @param count holes on the circle
 * @param step how many holes apart, 1 for neighbours
 * @example chordFactor(5, 1) // 1.7013
 */
export function chordFactor(count: number, step: number): number {
  return 1 / Math.sin((Math.PI * step) / count);
}

const withoutLimit = 'A reading came without its ±, so the circle has none either.';

/**
 * The bolt circle from what was measured. Readings of the same pair are averaged first, inside against outside so
 * that the hole size cancels; the circles of different pairs are then averaged by their ±. A ± is a limit: limits
 * add, they are not rooted and squared.
 *
 * @param measure readings as read by the units room, mm
 * @param count holes on the circle, 2 or more
 * @returns the circle; or a problem with the field (`count`, `readings.0.step` …) and what would do
 * @example boltCircleFrom(measured('near-edges 54.484 hole 12.7'), 5) // diameter 114.300
 */
export function boltCircleFrom(measure: Measure, count: number): BoltCircleAnswer {
  const read = estimatesOf(measure, count);
  if (!read.ok) return read;
  const { estimates, seated, holeDiameter, notes } = read.value;
  const combined = combineEstimates(estimates);
  const without = combined.plusMinus === undefined && measure.readings.some(({ way }) => way !== 'circle');
  return {
    ok: true,
    value: {
      diameter: combined.diameter,
      ...(combined.plusMinus === undefined ? {} : { plusMinus: combined.plusMinus }),
      contributions: combined.contributions,
      disagreement: combined.disagreement,
      ...(holeDiameter === undefined ? {} : { holeDiameter }),
      ...(seated === undefined
        ? {}
        : { centre: seated.centre, holes: seated.holes, clockingDegrees: seated.clockingDegrees }),
      evenlySpaced: seated?.evenlySpaced ?? true,
      notes: [...notes, ...(without ? [withoutLimit] : []), ...combined.notes],
      source: chordRule,
    },
  };
}

/** Which pair of holes to measure. */
export interface BestReading {
  /** Steps apart. */
  readonly step: number;
  /** How to type it: `across`, `adjacent`, `every-2nd` … */
  readonly way: string;
  /** The circle's ± from that pair, mm. */
  readonly plusMinus: number;
  /** The circle's ± from neighbouring holes, mm. */
  readonly adjacentPlusMinus: number;
}

const ordinal = (step: number): string => `${step}${step === 2 ? 'nd' : step === 3 ? 'rd' : 'th'}`;

/**
 * The pair that gives the smallest ± and what it would be: the widest one. dD = ds / sin(180 k/n).
 *
 * @param count holes on the circle
 * @param plusMinus ± of one centre-to-centre reading, mm
 * @example bestReading(5, 0.1) // every-2nd: ±0.105, against ±0.170 from neighbours
 */
export function bestReading(count: number, plusMinus: number): BestReading {
  const step = Math.max(1, Math.floor(count / 2));
  const across = count % 2 === 0;
  return {
    step,
    way: across ? 'across' : step === 1 ? 'adjacent' : `every-${ordinal(step)}`,
    plusMinus: plusMinus * chordFactor(count, step),
    adjacentPlusMinus: plusMinus * chordFactor(count, 1),
  };
}

/**
 * Hole centres of an even pattern.
 *
 * @param diameter bolt circle, mm
 * @param count holes
 * @param firstDegrees direction of the first hole, counter-clockwise from +x
 * @example boltHoles(114.3, 5, 90)[1] // (−54.353, 17.660)
 */
export function boltHoles(diameter: number, count: number, firstDegrees: number): readonly Point[] {
  return Array.from({ length: count }, (_, index) => {
    const angle = (firstDegrees / 180 + (2 * index) / count) * Math.PI;
    return { x: (diameter / 2) * Math.cos(angle), y: (diameter / 2) * Math.sin(angle) };
  });
}
