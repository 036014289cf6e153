// Where lines and arcs meet: every pairing by hand, and properties that hold for all of them.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  arcFromBulge,
  intersectSegments,
  pointAlong,
  reverseSegment,
  type Intersection,
  type Segment,
} from '../../parts-library/geometry/index.js';
import { distanceToPiece, piecesOf } from './support/field.js';

function line(x0: number, y0: number, x1: number, y1: number): Segment {
  return { kind: 'line', from: { x: x0, y: y0 }, to: { x: x1, y: y1 } };
}

function arc(x0: number, y0: number, x1: number, y1: number, bulge: number): Segment {
  return arcFromBulge({ x: x0, y: y0 }, { x: x1, y: y1 }, bulge);
}

function places(found: readonly Intersection[]): string[] {
  return found.map((f) =>
    f.kind === 'point'
      ? `${f.tangent ? 'touch' : 'cross'} ${f.point.x.toFixed(6)} ${f.point.y.toFixed(6)}`.replaceAll(
          '-0.000000',
          '0.000000',
        )
      : `along ${f.from.x.toFixed(6)} ${f.from.y.toFixed(6)} to ${f.to.x.toFixed(6)} ${f.to.y.toFixed(6)}`.replaceAll(
          '-0.000000',
          '0.000000',
        ),
  );
}

describe('lines', () => {
  test('cross in one point, with the place along each', () => {
    const [found] = intersectSegments(line(0, 0, 10, 0), line(2, -1, 2, 3));
    expect(found).toEqual({ kind: 'point', point: { x: 2, y: 0 }, a: 0.2, b: 0.25, tangent: false });
  });

  test('miss when the crossing lies beyond an end', () => {
    expect(intersectSegments(line(0, 0, 10, 0), line(2, 1, 2, 3))).toEqual([]);
    expect(intersectSegments(line(0, 0, 10, 0), line(12, -1, 12, 3))).toEqual([]);
  });

  test('that share an end meet there; parallel ones do not meet', () => {
    expect(places(intersectSegments(line(0, 0, 10, 0), line(10, 0, 10, 5)))).toEqual([
      'cross 10.000000 0.000000',
    ]);
    expect(intersectSegments(line(0, 0, 10, 0), line(0, 1, 10, 1))).toEqual([]);
  });

  test('on one line overlap in a stretch; end to end they touch in a point', () => {
    const [found] = intersectSegments(line(0, 0, 10, 0), line(14, 0, 4, 0));
    expect(found).toEqual({
      kind: 'overlap',
      from: { x: 4, y: 0 },
      to: { x: 10, y: 0 },
      a: [0.4, 1],
      b: [1, 0.4],
    });
    expect(places(intersectSegments(line(0, 0, 10, 0), line(10, 0, 20, 0)))).toEqual([
      'touch 10.000000 0.000000',
    ]);
    expect(intersectSegments(line(0, 0, 10, 0), line(11, 0, 20, 0))).toEqual([]);
  });
});

describe('a line and an arc', () => {
  // The upper half of the circle of radius 5 about the origin.
  const upper = arc(5, 0, -5, 0, 1);

  test('cross in two points: y = 3 meets radius 5 at x = 4 and -4', () => {
    expect(places(intersectSegments(upper, line(-10, 3, 10, 3)))).toEqual([
      'cross 4.000000 3.000000',
      'cross -4.000000 3.000000',
    ]);
  });

  test('only count points on the arc: x = 0 meets the upper half once', () => {
    expect(places(intersectSegments(upper, line(0, -10, 0, 10)))).toEqual(['cross 0.000000 5.000000']);
  });

  test('touch: y = 5 grazes the top', () => {
    expect(places(intersectSegments(upper, line(-10, 5, 10, 5)))).toEqual(['touch 0.000000 5.000000']);
    expect(intersectSegments(upper, line(-10, 5.001, 10, 5.001))).toEqual([]);
  });

  test('join smoothly: a line that leaves the end of an arc touches it there', () => {
    expect(places(intersectSegments(upper, line(-5, 0, -5, -8)))).toEqual(['touch -5.000000 0.000000']);
  });

  test('a line along the diameter meets both ends', () => {
    expect(places(intersectSegments(line(-5, 0, 5, 0), upper))).toEqual([
      'cross -5.000000 0.000000',
      'cross 5.000000 0.000000',
    ]);
  });
});

describe('two arcs', () => {
  test('of radius 5, 6 apart, meet 4 above the middle', () => {
    const a = arc(5, 0, -5, 0, 1);
    const b = arc(11, 0, 1, 0, 1);
    expect(places(intersectSegments(a, b))).toEqual(['cross 3.000000 4.000000']);
  });

  test('outside each other touch between their centres', () => {
    const a = arc(0, -5, 0, 5, 1);
    const b = arc(8, 3, 8, -3, 1);
    expect(places(intersectSegments(a, b))).toEqual(['touch 5.000000 0.000000']);
  });

  test('one inside the other touch on the far side', () => {
    const a = arc(0, -5, 0, 5, 1);
    const b = arc(3, -2, 3, 2, 1);
    expect(places(intersectSegments(a, b))).toEqual(['touch 5.000000 0.000000']);
    expect(places(intersectSegments(b, a))).toEqual(['touch 5.000000 0.000000']);
  });

  test('about one centre with different radii do not meet', () => {
    expect(intersectSegments(arc(5, 0, -5, 0, 1), arc(4, 0, -4, 0, 1))).toEqual([]);
  });

  test('of one circle overlap in a stretch', () => {
    // Upper half, and the quarter from (0, 5) on to (-5, 0) and the lower half's first quarter.
    const [found] = intersectSegments(arc(5, 0, -5, 0, 1), arc(0, 5, 0, -5, 1));
    expect(found?.kind).toBe('overlap');
    if (found?.kind !== 'overlap') return;
    expect(found.a[0]).toBeCloseTo(0.5, 12);
    expect(found.a[1]).toBeCloseTo(1, 12);
    expect(found.b[0]).toBeCloseTo(0, 12);
    expect(found.b[1]).toBeCloseTo(0.5, 12);
    expect(found.from.y).toBeCloseTo(5, 12);
    expect(found.to.x).toBeCloseTo(-5, 12);
  });

  test('that make one circle touch at both ends', () => {
    expect(places(intersectSegments(arc(5, 0, -5, 0, 1), arc(-5, 0, 5, 0, 1)))).toEqual([
      'touch 5.000000 0.000000',
      'touch -5.000000 0.000000',
    ]);
  });
});

/** Left (1) or right (-1) of a line, outside or inside of a circle; 0 too near to tell or beyond the ends. */
function sideOf(segment: Segment, p: { x: number; y: number }): number {
  const { from, to } = segment;
  if (segment.kind === 'line') {
    const dx = to.x - from.x;
    const dy = to.y - from.y;
    const along = ((p.x - from.x) * dx + (p.y - from.y) * dy) / (dx * dx + dy * dy);
    const aside = (dx * (p.y - from.y) - dy * (p.x - from.x)) / Math.hypot(dx, dy);
    return along < 0.01 || along > 0.99 || Math.abs(aside) < 1e-6 ? 0 : Math.sign(aside);
  }
  const off = Math.hypot(p.x - segment.centre.x, p.y - segment.centre.y) - segment.radius;
  const angle = Math.atan2(p.y - segment.centre.y, p.x - segment.centre.x);
  const turned = ((angle - segment.start) * Math.sign(segment.sweep) + 4 * Math.PI) % (2 * Math.PI);
  const share = turned / Math.abs(segment.sweep);
  return share < 0.01 || share > 0.99 || Math.abs(off) < 1e-6 ? 0 : Math.sign(off);
}

describe('properties', () => {
  const coordinate = fc.integer({ min: -20, max: 20 });
  const segments: fc.Arbitrary<Segment> = fc
    .tuple(
      coordinate,
      coordinate,
      coordinate,
      coordinate,
      fc.constantFrom(0, 0, 1, -1, 0.3, -0.3, 0.7, -0.05),
    )
    .filter(([x0, y0, x1, y1]) => x0 !== x1 || y0 !== y1)
    .map(([x0, y0, x1, y1, bulge]) => (bulge === 0 ? line(x0, y0, x1, y1) : arc(x0, y0, x1, y1, bulge)));

  const refereeOf = (segment: Segment): ((p: { x: number; y: number }) => number) => {
    const bulge = segment.kind === 'arc' ? Math.tan(segment.sweep / 4) : 0;
    const [piece] = piecesOf([
      { ...segment.from, bulge },
      { ...segment.to, bulge: 0 },
    ]);
    return (p) => (piece === undefined ? Infinity : distanceToPiece(piece, p));
  };

  test('every point found lies on both, where its parameters say', () => {
    fc.assert(
      fc.property(segments, segments, (a, b) => {
        const onA = refereeOf(a);
        const onB = refereeOf(b);
        for (const found of intersectSegments(a, b)) {
          const ends = found.kind === 'point' ? [found.point] : [found.from, found.to];
          for (const p of ends) {
            expect(onA(p)).toBeLessThan(1.1e-7);
            expect(onB(p)).toBeLessThan(1.1e-7);
          }
          if (found.kind === 'point') {
            const p = pointAlong(a, found.a);
            expect(Math.hypot(p.x - found.point.x, p.y - found.point.y)).toBeLessThan(1.1e-7);
          }
        }
      }),
      { numRuns: 2000, seed: 31 },
    );
  });

  test('none is missed: walking along one, every change of side of the other within its stretch is a meeting', () => {
    let changes = 0;
    fc.assert(
      fc.property(segments, segments, (a, b) => {
        const found = intersectSegments(a, b).map((f) =>
          f.kind === 'point' ? ([f.a, f.a] as const) : ([f.a[0], f.a[1]] as const),
        );
        const steps = 200;
        for (let i = 0; i < steps; i++) {
          const before = sideOf(b, pointAlong(a, i / steps));
          const after = sideOf(b, pointAlong(a, (i + 1) / steps));
          if (before === 0 || after === 0 || before === after) continue;
          changes++;
          const here = found.some(([low, high]) => low <= (i + 1) / steps + 1e-6 && high >= i / steps - 1e-6);
          expect(here).toBe(true);
        }
      }),
      { numRuns: 1000, seed: 32 },
    );
    expect(changes).toBeGreaterThan(200);
  });

  test('the order and the direction do not matter', () => {
    fc.assert(
      fc.property(segments, segments, (a, b) => {
        const forth = places(intersectSegments(a, b));
        const back = places(intersectSegments(b, a));
        const reversed = places(intersectSegments(reverseSegment(a), b));
        expect(back.length).toBe(forth.length);
        expect(reversed.length).toBe(forth.length);
        const points = (list: readonly string[]): string[] =>
          list.filter((s) => !s.startsWith('along')).toSorted();
        expect(points(back)).toEqual(points(forth));
        expect(points(reversed)).toEqual(points(forth));
      }),
      { numRuns: 1500, seed: 33 },
    );
  });
});
