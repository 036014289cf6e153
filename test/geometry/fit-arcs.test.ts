// Curves as tangent arcs: how far they stray, how many it takes, and what happens at a cusp.
import { describe, expect, test } from 'vitest';
import { biarc, fitArcs, segmentsOf, type Curve } from '../../parts-library/geometry/index.js';
import { directionAlong, distanceToSegment } from '../../parts-library/geometry/index.js';

/** x = a cos t, y = b sin t. */
const ellipse = (a: number, b: number, from: number, to: number): Curve => ({
  from,
  to,
  at: (t) => ({ x: a * Math.cos(t), y: b * Math.sin(t) }),
  along: (t) => ({ x: -a * Math.sin(t), y: b * Math.cos(t) }),
});

/** A cubic Bézier by its four points. */
const cubic = (...points: readonly [number, number][]): Curve => {
  const weight = (t: number): readonly number[] => [
    (1 - t) ** 3,
    3 * t * (1 - t) ** 2,
    3 * t * t * (1 - t),
    t ** 3,
  ];
  const at = (t: number) => ({
    x: weight(t).reduce((sum, w, i) => sum + w * (points[i]?.[0] ?? 0), 0),
    y: weight(t).reduce((sum, w, i) => sum + w * (points[i]?.[1] ?? 0), 0),
  });
  const along = (t: number) => {
    const w = [(1 - t) ** 2, 2 * t * (1 - t), t * t];
    const slope = (axis: 0 | 1): number =>
      w.reduce((sum, one, i) => sum + 3 * one * ((points[i + 1]?.[axis] ?? 0) - (points[i]?.[axis] ?? 0)), 0);
    return { x: slope(0), y: slope(1) };
  };
  return { from: 0, to: 1, at, along };
};

/** Largest distance of 20,000 points of the curve from the chain: finer than the fit itself looks. */
function strays(curve: Curve, tolerance: number): { readonly distance: number; readonly segments: number } {
  const { vertices } = fitArcs(curve, tolerance);
  const segments = segmentsOf({ vertices });
  let distance = 0;
  for (let i = 0; i <= 20_000; i++) {
    const p = curve.at(curve.from + ((curve.to - curve.from) * i) / 20_000);
    distance = Math.max(distance, Math.min(...segments.map((segment) => distanceToSegment(segment, p))));
  }
  return { distance, segments: segments.length };
}

describe('arcs along a curve', () => {
  test.each([0.1, 0.02, 0.005])('an ellipse 60 x 30 stays within %d mm', (tolerance) => {
    const { distance } = strays(ellipse(30, 15, 0, 2 * Math.PI), tolerance);
    expect(distance).toBeLessThanOrEqual(tolerance * 1.01);
  });

  test('an ellipse 60 x 30 within 0.02 mm takes a fifth of the chords it would take', () => {
    // Chords of a radius r are sqrt(8 r t) long for a height t; for this ellipse that makes 173.
    expect(strays(ellipse(30, 15, 0, 2 * Math.PI), 0.02).segments).toBeLessThan(36);
  });

  test('the deviation told is the deviation there is, to a tenth', () => {
    const curve = cubic([0, 0], [40, 90], [60, -90], [100, 0]);
    const { deviation } = fitArcs(curve, 0.01);
    expect(deviation).toBeLessThanOrEqual(0.01);
    expect(strays(curve, 0.01).distance).toBeLessThan(0.011);
  });

  test('a quarter circle is one circle: every arc has its radius', () => {
    const { vertices } = fitArcs(ellipse(25, 25, 0, Math.PI / 2), 0.01);
    for (const segment of segmentsOf({ vertices })) {
      expect(segment.kind === 'arc' ? segment.radius : 0).toBeCloseTo(25, 9);
    }
  });

  test('a straight Bézier is one line', () => {
    expect(fitArcs(cubic([0, 0], [10, 5], [20, 10], [60, 30]), 0.01).vertices).toHaveLength(2);
  });

  test('neighbours are tangent: the chain has no corner where the curve has none', () => {
    const { vertices } = fitArcs(cubic([0, 0], [0, 50], [80, 60], [90, 10]), 0.01);
    const segments = segmentsOf({ vertices });
    segments.slice(1).forEach((after, index) => {
      const before = segments[index];
      if (before === undefined) return;
      const [u, v] = [directionAlong(before, 1), directionAlong(after, 0)];
      expect(Math.abs(u.x * v.y - u.y * v.x)).toBeLessThan(1e-6);
    });
  });

  test('control points on the ends, where the derivative vanishes, do no harm', () => {
    const curve = cubic([0, 0], [0, 0], [50, 30], [50, 30]);
    expect(strays(curve, 0.01).distance).toBeLessThan(0.01);
  });

  test('a Bézier with a cusp comes to its point and back', () => {
    // Control points crossed so that both derivatives vanish at t = 1/2: cusp at (50, 45).
    const curve = cubic([0, 0], [100, 60], [0, 60], [100, 0]);
    expect(strays(curve, 0.01).distance).toBeLessThan(0.012);
  });

  test('two arcs between a tangent up and a tangent down are the half circle', () => {
    const arcs = biarc({ x: 0, y: 0 }, { x: 0, y: 1 }, { x: 20, y: 0 }, { x: 0, y: -1 });
    // Two quarter circles turning right: bulge −tan(22.5°).
    expect(arcs?.map(({ bulge }) => bulge)).toEqual([
      expect.closeTo(-0.41421356, 8),
      expect.closeTo(-0.41421356, 8),
    ]);
  });
});
