// Bézier curves and B-splines by their points: places and directions, and a spline through points that only names those.
import type { Curve, Point } from '../../geometry/index.js';

const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

/** One round of de Casteljau: the points between neighbours. */
const halfway = (points: readonly Point[], t: number): readonly Point[] =>
  points.slice(1).map((p, i) => between(points[i] ?? p, p, t));

/** A Bézier curve of any degree from 1, by de Casteljau's construction. */
export function bezierCurve(points: readonly Point[]): Curve {
  const reduced = (t: number, left: number): readonly Point[] => {
    let current = points;
    while (current.length > left) current = halfway(current, t);
    return current;
  };
  return {
    from: 0,
    to: 1,
    at: (t) => reduced(t, 1)[0] ?? { x: 0, y: 0 },
    along: (t) => {
      const [a = { x: 0, y: 0 }, b = a] = reduced(t, 2);
      return { x: (b.x - a.x) * (points.length - 1), y: (b.y - a.y) * (points.length - 1) };
    },
  };
}

/** A control point lifted by its weight, so that a rational spline is a plain one in one dimension more. */
interface Lifted {
  readonly x: number;
  readonly y: number;
  readonly w: number;
}

export interface Spline {
  readonly degree: number;
  /** Not falling; as many as control points, and degree and one more. */
  readonly knots: readonly number[];
  readonly controls: readonly Point[];
  /** One for each control point, positive. */
  readonly weights?: readonly number[];
}

/** A B-spline over its whole domain, by de Boor's construction; it may bend or turn sharply at its knots. */
export function splineCurve({ degree, knots, controls, weights }: Spline): Curve {
  const lifted = controls.map(({ x, y }, i): Lifted => {
    const w = weights?.[i] ?? 1;
    return { x: x * w, y: y * w, w };
  });
  const from = knots[degree] ?? 0;
  const to = knots[controls.length] ?? 1;
  const spans = [...new Set(knots.slice(degree, controls.length + 1))];
  /** Index of the last knot at or before t that begins a span. */
  const spanAt = (t: number): number => {
    let low = degree;
    let high = controls.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((knots[middle] ?? 0) <= t) low = middle;
      else high = middle - 1;
    }
    while (low > degree && (knots[low] ?? 0) >= (knots[low + 1] ?? 0)) low -= 1;
    return low;
  };
  /** Rounds of de Boor until `left` points remain, from those that reach the span of t. */
  const reduced = (
    t: number,
    left: number,
  ): { readonly points: readonly Lifted[]; readonly width: number } => {
    const span = spanAt(t);
    let points: readonly Lifted[] = lifted.slice(span - degree, span + 1);
    for (let round = 1; points.length > left; round++) {
      points = points.slice(1).map((b, i): Lifted => {
        const a = points[i] ?? b;
        const low = knots[span - degree + round + i] ?? 0;
        const high = knots[span + 1 + i] ?? 1;
        const share = high > low ? (t - low) / (high - low) : 0;
        return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share, w: a.w + (b.w - a.w) * share };
      });
    }
    return { points, width: (knots[span + 1] ?? 1) - (knots[span] ?? 0) };
  };
  return {
    from,
    to,
    breaks: spans.slice(1, -1),
    at: (t) => {
      const [p = { x: 0, y: 0, w: 1 }] = reduced(t, 1).points;
      return { x: p.x / p.w, y: p.y / p.w };
    },
    along: (t) => {
      const { points, width } = reduced(t, 2);
      const [a = { x: 0, y: 0, w: 1 }, b = a] = points;
      const span = width > 0 ? width : 1;
      const share = (t - (knots[spanAt(t)] ?? 0)) / span;
      const here = {
        x: a.x + (b.x - a.x) * share,
        y: a.y + (b.y - a.y) * share,
        w: a.w + (b.w - a.w) * share,
      };
      // (X / W)' = (X' W - X W') / W^2, each slope of the lifted curve being degree times its last two points' step.
      const slope = (x: number, dx: number): number => (dx * here.w - x * (b.w - a.w)) / (here.w * here.w);
      return {
        x: (degree / span) * slope(here.x, b.x - a.x),
        y: (degree / span) * slope(here.y, b.y - a.y),
      };
    },
  };
}

/**
 * The cubic Bézier pieces of the smooth spline through the points, parts as long as their chords; its ends bend freely
 * unless a direction is given, and a closed one has none.
 * @param points at least two, no two neighbours alike
 */
export function throughPoints(
  points: readonly Point[],
  ends: { readonly start?: Point | undefined; readonly end?: Point | undefined } = {},
): readonly (readonly Point[])[] {
  const steps = points.slice(1).map((p, i) => {
    const before = points[i] ?? p;
    return Math.hypot(p.x - before.x, p.y - before.y);
  });
  const slopesX = slopesThrough(
    points.map(({ x }) => x),
    steps,
    unit(ends.start)?.x,
    unit(ends.end)?.x,
  );
  const slopesY = slopesThrough(
    points.map(({ y }) => y),
    steps,
    unit(ends.start)?.y,
    unit(ends.end)?.y,
  );
  return steps.map((step, i) => {
    const a = points[i] ?? { x: 0, y: 0 };
    const b = points[i + 1] ?? a;
    const third = step / 3;
    return [
      a,
      { x: a.x + (slopesX[i] ?? 0) * third, y: a.y + (slopesY[i] ?? 0) * third },
      { x: b.x - (slopesX[i + 1] ?? 0) * third, y: b.y - (slopesY[i + 1] ?? 0) * third },
      b,
    ];
  });
}

/** A given end direction, its length left out: at the speed of the chord. */
function unit(direction: Point | undefined): Point | undefined {
  if (direction === undefined) return undefined;
  const length = Math.hypot(direction.x, direction.y);
  return length === 0 ? undefined : { x: direction.x / length, y: direction.y / length };
}

/** Slopes of the cubic spline through values at distances: the tridiagonal equations of its continuous second slope. */
function slopesThrough(
  values: readonly number[],
  steps: readonly number[],
  start: number | undefined,
  end: number | undefined,
): readonly number[] {
  const count = values.length;
  const value = (i: number): number => values[i] ?? 0;
  const step = (i: number): number => steps[i] ?? 1;
  const rows = Array.from({ length: count }, (_, i) => {
    if (i === 0 || i === count - 1) {
      const given = i === 0 ? start : end;
      const k = i === 0 ? 0 : count - 2;
      return given === undefined
        ? {
            before: i === 0 ? 0 : 1,
            here: 2,
            next: i === 0 ? 1 : 0,
            right: (3 * (value(k + 1) - value(k))) / step(k),
          }
        : { before: 0, here: 1, next: 0, right: given };
    }
    const [a, b] = [step(i - 1), step(i)];
    return {
      before: b,
      here: 2 * (a + b),
      next: a,
      right: 3 * ((b * (value(i) - value(i - 1))) / a + (a * (value(i + 1) - value(i))) / b),
    };
  });
  // Forwards each row loses its slope before, backwards its slope after.
  const swept: { next: number; right: number }[] = [];
  rows.forEach(({ before, here, next, right }, i) => {
    const last = swept[i - 1] ?? { next: 0, right: 0 };
    const pivot = here - before * last.next;
    swept.push({ next: next / pivot, right: (right - before * last.right) / pivot });
  });
  const slopes = swept.map(({ right }) => right);
  for (let i = count - 2; i >= 0; i--) {
    slopes[i] = (swept[i]?.right ?? 0) - (swept[i]?.next ?? 0) * (slopes[i + 1] ?? 0);
  }
  return slopes;
}
