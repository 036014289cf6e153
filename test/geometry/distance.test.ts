// Distances, by hand and against an independent field; inside, outside and on the line.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  arcFromBulge,
  circleContour,
  containsContour,
  containsPoint,
  distanceBetweenContours,
  distanceBetweenPaths,
  distanceBetweenSegments,
  distanceToSegment,
  makeContour,
  nearestOnContour,
  nearestWithin,
  packContours,
  packedContains,
  packedSeparation,
  segmentsOf,
  transformContour,
} from '../../parts-library/geometry/index.js';
import { contours, points } from './support/arbitraries.js';
import { createField, flatten, walk, windings } from './support/field.js';
import { plate, rectangle, roundedPlate, slot } from './support/shapes.js';

const origin = { x: 0, y: 0 };

describe('a point and a segment', () => {
  test('beside a line, and beyond its end', () => {
    const line = { kind: 'line', from: { x: 0, y: 0 }, to: { x: 10, y: 0 } } as const;
    expect(distanceToSegment(line, { x: 4, y: 3 })).toBe(3);
    expect(distanceToSegment(line, { x: 13, y: 4 })).toBe(5);
  });

  test('inside, outside, behind and at the centre of an arc', () => {
    const upper = arcFromBulge({ x: 5, y: 0 }, { x: -5, y: 0 }, 1);
    expect(distanceToSegment(upper, { x: 0, y: 2 })).toBeCloseTo(3, 12);
    expect(distanceToSegment(upper, { x: 0, y: 9 })).toBeCloseTo(4, 12);
    expect(distanceToSegment(upper, { x: 5, y: -12 })).toBeCloseTo(12, 12);
    expect(distanceToSegment(upper, origin)).toBeCloseTo(5, 12);
  });
});

describe('a point and a contour', () => {
  test('the nearest to (0, 4) on a circle of radius 10 is (0, 10)', () => {
    const near = nearestOnContour(circleContour(origin, 10, 'outline'), { x: 0, y: 4 });
    expect(near.distance).toBeCloseTo(6, 12);
    expect(near.point.x).toBeCloseTo(0, 12);
    expect(near.point.y).toBeCloseTo(10, 12);
    expect(near.segment).toBe(0);
    expect(near.parameter).toBeCloseTo(0.5, 12);
  });

  test('agrees with the independent field, one by one and packed', () => {
    fc.assert(
      fc.property(contours, points, (contour, p) => {
        const field = createField([contour])(p);
        expect(nearestOnContour(contour, p).distance).toBeCloseTo(field, 8);
        expect(nearestWithin(packContours([contour]), p.x, p.y, 500)).toBeCloseTo(field, 8);
        expect(nearestWithin(packContours([contour]), p.x, p.y, field / 2)).toBe(field / 2);
      }),
      { numRuns: 300, seed: 41 },
    );
  });
});

describe('two contours', () => {
  test('the web between two holes of 9 on a circle of 90, sixty degrees apart, is 36', () => {
    const a = circleContour({ x: 45, y: 0 }, 4.5, 'opening');
    const b = circleContour({ x: 22.5, y: 45 * Math.sin(Math.PI / 3) }, 4.5, 'opening');
    expect(distanceBetweenContours(a, b).distance).toBeCloseTo(36, 12);
  });

  test('a hole of radius 5 whose centre is 12 from the edge leaves 7', () => {
    const hole = circleContour({ x: 50, y: 12 }, 5, 'opening');
    const gap = distanceBetweenContours(plate(), hole);
    expect(gap.distance).toBeCloseTo(7, 12);
    expect(gap.from).toEqual({ x: 50, y: 0 });
    expect(gap.to.x).toBeCloseTo(50, 12);
    expect(gap.to.y).toBeCloseTo(7, 12);
    expect(gap.segments[0]).toBe(0);
  });

  test('circles one inside the other off centre by 2 come within r - r - 2', () => {
    const gap = distanceBetweenContours(
      circleContour(origin, 10, 'outline'),
      circleContour({ x: 2, y: 0 }, 5, 'opening'),
    );
    expect(gap.distance).toBeCloseTo(3, 12);
    expect(gap.from.x).toBeCloseTo(10, 12);
  });

  test('that cross are 0 apart', () => {
    expect(distanceBetweenContours(plate(), slot(60, 4, 0, 30)).distance).toBe(0);
  });

  test('a score line 5 inside the edge', () => {
    const score = {
      vertices: [
        { x: 5, y: 5, bulge: 0 },
        { x: 5, y: 55, bulge: 0 },
      ],
    };
    expect(distanceBetweenPaths(score, plate()).distance).toBe(5);
    expect(distanceBetweenPaths(plate(), score).distance).toBe(5);
  });

  test('no walked pair of points comes nearer, and the two ends are that far apart', () => {
    fc.assert(
      fc.property(contours, contours, fc.integer({ min: 90, max: 140 }), (a, other, dx) => {
        const b = transformContour(other, { dx, rotateDegrees: dx });
        const gap = distanceBetweenContours(a, b);
        const field = createField([b]);
        const walked = Math.min(...walk(a, 0.5).map(field));
        expect(gap.distance).toBeLessThan(walked + 1e-9);
        // Between two steps of 0.5 the distance changes by half of that at most.
        expect(walked - gap.distance).toBeLessThan(0.2501);
        expect(Math.hypot(gap.from.x - gap.to.x, gap.from.y - gap.to.y)).toBeCloseTo(gap.distance, 9);
        expect(field(gap.from)).toBeCloseTo(gap.distance, 7);
      }),
      { numRuns: 40, seed: 42 },
    );
  });

  test('packed segments agree with loose ones where they do not cross', () => {
    fc.assert(
      fc.property(contours, contours, (a, other) => {
        const b = transformContour(other, { dx: 130 });
        const packedA = packContours([a]);
        const packedB = packContours([b]);
        segmentsOf(a).forEach((s, i) => {
          const t = segmentsOf(b)[0];
          if (t === undefined) return;
          const gap = distanceBetweenSegments(s, t).distance;
          if (gap > 0) expect(packedSeparation(packedA, i, packedB, 0)).toBeCloseTo(gap, 8);
        });
      }),
      { numRuns: 40, seed: 43 },
    );
  });
});

describe('inside, outside, on', () => {
  test('a hole: its centre is inside, its line is on, whichever way it runs', () => {
    for (const direction of ['outline', 'opening'] as const) {
      const circle = circleContour({ x: 3, y: 3 }, 10, direction);
      expect(containsPoint(circle, { x: 3, y: 3 })).toBe('inside');
      expect(containsPoint(circle, { x: 13, y: 3 })).toBe('on');
      expect(containsPoint(circle, { x: 3, y: 13.0000005 })).toBe('on');
      expect(containsPoint(circle, { x: 3, y: 13.01 })).toBe('outside');
    }
  });

  test('between a chord and its arc: inside when the arc bulges out, outside when it bulges in', () => {
    const lens = makeContour([
      { x: 0, y: 0, bulge: 0.5 },
      { x: 20, y: 0, bulge: 0 },
      { x: 20, y: 30, bulge: -0.5 },
      { x: 0, y: 30, bulge: 0 },
    ]);
    // Rise of each arc: 0.5 x 20 / 2 = 5.
    expect(containsPoint(lens, { x: 10, y: -4.9 })).toBe('inside');
    expect(containsPoint(lens, { x: 10, y: -5.1 })).toBe('outside');
    expect(containsPoint(lens, { x: 10, y: 25.1 })).toBe('outside');
    expect(containsPoint(lens, { x: 10, y: 24.9 })).toBe('inside');
  });

  test('level with vertices and along horizontal sides nothing is counted twice', () => {
    expect(containsPoint(rectangle(10, 10), { x: -5, y: 0 })).toBe('outside');
    expect(containsPoint(rectangle(10, 10), { x: -5, y: 10 })).toBe('outside');
    expect(containsPoint(roundedPlate(10), { x: 50, y: 10 })).toBe('inside');
    expect(containsPoint(roundedPlate(10), { x: -3, y: 10 })).toBe('outside');
    expect(containsPoint(roundedPlate(10), { x: 2, y: 2 })).toBe('outside');
    expect(containsPoint(roundedPlate(10), { x: 3, y: 3 })).toBe('inside');
  });

  test('agrees with windings summed on fine chords', () => {
    fc.assert(
      fc.property(contours, fc.array(points, { minLength: 20, maxLength: 20 }), (contour, list) => {
        const polygon = flatten(contour, 1e-5);
        const field = createField([contour]);
        const packed = packContours([contour]);
        for (const p of list) {
          if (field(p) < 1e-4) continue;
          const inside = windings(polygon, p) !== 0;
          expect(containsPoint(contour, p)).toBe(inside ? 'inside' : 'outside');
          expect(packedContains(packed, p.x, p.y)).toBe(inside);
        }
      }),
      { numRuns: 150, seed: 44 },
    );
  });

  test('a hole in a plate is contained; one over the edge, one beside, and one touching are not', () => {
    expect(containsContour(plate(), circleContour({ x: 50, y: 30 }, 10, 'opening'))).toBe(true);
    expect(containsContour(plate(), circleContour({ x: 95, y: 30 }, 10, 'opening'))).toBe(false);
    expect(containsContour(plate(), circleContour({ x: 150, y: 30 }, 10, 'opening'))).toBe(false);
    expect(containsContour(plate(), circleContour({ x: 90, y: 30 }, 10, 'opening'))).toBe(false);
    expect(containsContour(circleContour({ x: 50, y: 30 }, 10, 'opening'), plate())).toBe(false);
  });

  test('openings subtract from an outline when packed together', () => {
    const packed = packContours([plate(), circleContour({ x: 50, y: 30 }, 10, 'opening')]);
    expect(packedContains(packed, 50, 30)).toBe(false);
    expect(packedContains(packed, 20, 30)).toBe(true);
    expect(packed.owners[packed.count - 1]).toBe(1);
  });
});
