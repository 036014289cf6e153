// The middle line of the arm: circles from the pivot by way of the knee to the pad, and places along it.
import type { Disc, Point } from '../../geometry/index.js';

/** One straight stretch of the middle line, between two circles of the chain. */
export interface Leg {
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
  /** Unit vectors along it, away from the pivot, and square to it, toward the foot. */
  readonly along: Point;
  readonly up: Point;
  /** Half the arm's height at a distance along the leg, mm. */
  readonly half: (at: number) => number;
}

/** A place in the middle of the arm. */
export interface Place {
  readonly at: Point;
  readonly leg: Leg;
  /** Distance along its leg, mm. */
  readonly along: number;
  /** Half the arm's height there, square to the leg, mm. */
  readonly half: number;
}

/** The leg between two circles. Its sides are tangent to both, so that its height tapers evenly. */
export function legBetween(a: Disc, b: Disc): Leg {
  const dx = b.centre.x - a.centre.x;
  const dy = b.centre.y - a.centre.y;
  const length = Math.hypot(dx, dy);
  const along = { x: dx / length, y: dy / length };
  const sine = (a.radius - b.radius) / length;
  const cosine = Math.sqrt(Math.max(0, 1 - sine * sine));
  return {
    from: a.centre,
    to: b.centre,
    length,
    along,
    up: { x: -along.y, y: along.x },
    half: (at) => (a.radius - at * sine) / cosine,
  };
}

/** A place at a distance along a leg. */
export function placeOn(leg: Leg, along: number): Place {
  return {
    at: { x: leg.from.x + leg.along.x * along, y: leg.from.y + leg.along.y * along },
    leg,
    along,
    half: leg.half(along),
  };
}

/**
 * The place in the middle of the arm that stands `radius` from the pivot in a straight line.
 * @returns undefined beyond the arm's end
 */
export function placeAtRadius(legs: readonly Leg[], radius: number): Place | undefined {
  for (const leg of legs) {
    // |from + along·s| = radius, the farther root: outward from the pivot.
    const b = leg.from.x * leg.along.x + leg.from.y * leg.along.y;
    const c = leg.from.x ** 2 + leg.from.y ** 2 - radius ** 2;
    const inside = b * b - c;
    if (inside < 0) continue;
    const s = -b + Math.sqrt(inside);
    if (s >= 0 && s <= leg.length) return placeOn(leg, s);
  }
  return undefined;
}

/** The leg that a point stands beside, nearest first: how far along it, and how far off its middle. */
export function besideLeg(
  legs: readonly Leg[],
  point: Point,
): (Place & { readonly off: number }) | undefined {
  const besides = legs.flatMap((leg) => {
    const x = point.x - leg.from.x;
    const y = point.y - leg.from.y;
    const along = x * leg.along.x + y * leg.along.y;
    const off = x * leg.up.x + y * leg.up.y;
    return along < 0 || along > leg.length ? [] : [{ ...placeOn(leg, along), off }];
  });
  return besides.reduce<(typeof besides)[number] | undefined>(
    (best, one) => (best === undefined || Math.abs(one.off) < Math.abs(best.off) ? one : best),
    undefined,
  );
}
