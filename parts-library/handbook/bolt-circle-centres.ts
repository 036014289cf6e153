// A pattern measured as hole centres: the circle through them, and whether they sit evenly on it.

import type { Point } from '../geometry/index.js';
import type { CentresReading } from '../units/index.js';
import type { Estimate } from './bolt-circle-combine.js';
import { refuse, to } from './bolt-circle-problem.js';
import type { Outcome } from './bolt-circle-problem.js';
import { diameterPerCoordinate, fitCircle, seatEvenly } from './circle-fit.js';
import type { SeatedHole } from './circle-fit.js';

export interface Seated {
  readonly centre: Point;
  readonly holes: readonly SeatedHole[];
  readonly clockingDegrees: number;
  readonly evenlySpaced: boolean;
}

/** A hole out of its even place by more than any caliper is wrong: the pattern is odd. Common practice. */
export const oddClocking = 1;

export interface CentresFit {
  readonly estimate: Estimate;
  readonly seated: Seated;
  readonly notes: readonly string[];
}

/** The circle of a reading by centres; refused when the centres do not fix it. */
export function fromCentres(reading: CentresReading, index: number, count: number): Outcome<CentresFit> {
  const { centres, plusMinus } = reading;
  const field = `readings.${index}.centres`;
  if (centres.length < 3) return refuse(field, `A circle needs three centres; ${centres.length} given.`);
  if (centres.length > count) {
    return refuse(
      field,
      `${centres.length} centres given for ${count} holes; raise the count or leave some out.`,
    );
  }
  if (centres.some(({ x, y }) => !Number.isFinite(x) || !Number.isFinite(y))) {
    return refuse(field, 'Every centre needs an x and a y in numbers.');
  }
  const circle = fitCircle(centres);
  if (circle === undefined)
    return refuse(field, 'These centres lie on one line; a circle needs them round it.');
  const seating = seatEvenly(centres, circle, count);
  const shared = new Set(seating.holes.map(({ place }) => place)).size < centres.length;
  const worst = Math.max(...seating.holes.map(({ error }) => error));
  const evenlySpaced = !shared && worst <= Math.max(oddClocking, 3 * (plusMinus ?? 0));
  if (!evenlySpaced && centres.length < count) {
    return refuse(
      field,
      `These centres are not evenly spaced (worst ${to(worst)} mm out of place): give all ${count} of them.`,
    );
  }
  const what = 'hole centres';
  const perCoordinate = diameterPerCoordinate(centres, circle);
  const parts =
    plusMinus === undefined || perCoordinate === undefined
      ? {}
      : { parts: [{ what, plusMinus: plusMinus * perCoordinate }] };
  return {
    ok: true,
    value: {
      estimate: { what, diameter: 2 * circle.radius, ...parts },
      seated: { centre: circle.centre, ...seating, evenlySpaced },
      notes: evenlySpaced
        ? []
        : [
            `The holes are not evenly spaced (worst ${to(worst)} mm out of place); they stay where they were measured.`,
          ],
    },
  };
}
