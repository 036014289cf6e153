// Lengths, areas, centroids, extents and second moments, against values worked by hand and properties of the plane.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  arcFromBulge,
  areaOf,
  boundsOf,
  bulgeOf,
  centroidOf,
  circleContour,
  isCircle,
  isOpening,
  isOutline,
  lengthOf,
  makeContour,
  reverseContour,
  roundCorners,
  secondMoments,
  segmentAt,
  segmentsOf,
  transformContour,
} from '../../parts-library/geometry/index.js';
import { polygon, rectangle, slot } from './support/shapes.js';
import { contours } from './support/arbitraries.js';
import { walk } from './support/field.js';

describe('bulges', () => {
  test('a bulge of 1 is a half circle to the left', () => {
    const arc = arcFromBulge({ x: 0, y: 0 }, { x: 2, y: 0 }, 1);
    expect(arc.centre).toEqual({ x: 1, y: 0 });
    expect(arc.radius).toBe(1);
    expect(arc.sweep).toBeCloseTo(Math.PI, 14);
  });

  // tan(90 / 4) = sqrt(2) - 1, the bulge of a quarter circle in the DXF reference.
  test('a quarter circle of radius 10 has a bulge of 0.41421', () => {
    const arc = arcFromBulge({ x: 10, y: 0 }, { x: 0, y: 10 }, Math.SQRT2 - 1);
    expect(arc.centre.x).toBeCloseTo(0, 12);
    expect(arc.centre.y).toBeCloseTo(0, 12);
    expect(arc.radius).toBeCloseTo(10, 12);
    expect(bulgeOf(arc)).toBeCloseTo(0.414213562373095, 14);
  });

  test('a negative bulge turns right', () => {
    const arc = arcFromBulge({ x: 0, y: 10 }, { x: 10, y: 0 }, 1 - Math.SQRT2);
    expect(arc.centre.x).toBeCloseTo(0, 12);
    expect(arc.centre.y).toBeCloseTo(0, 12);
    expect(arc.sweep).toBeCloseTo(-Math.PI / 2, 14);
  });

  test('an arc that rises less than 0.0000005 is a line', () => {
    const contour = makeContour([
      { x: 0, y: 0, bulge: 1e-9 },
      { x: 100, y: 0, bulge: 1e-7 },
      { x: 50, y: 50, bulge: 0 },
    ]);
    expect(segmentsOf(contour).map((segment) => segment.kind)).toEqual(['line', 'arc', 'line']);
  });

  test('segments are counted round and round', () => {
    expect(segmentAt(rectangle(10, 5), -1)).toEqual(segmentAt(rectangle(10, 5), 3));
  });
});

describe('values worked by hand', () => {
  test('a circle of radius 10: 62.832 round, 314.159 in area', () => {
    const circle = circleContour({ x: 3, y: -4 }, 10, 'outline');
    expect(lengthOf(circle)).toBeCloseTo(20 * Math.PI, 12);
    expect(areaOf(circle)).toBeCloseTo(100 * Math.PI, 11);
    expect(boundsOf(circle)).toEqual({ minX: -7, minY: -14, maxX: 13, maxY: 6 });
    expect(isCircle(circle)).toEqual({ centre: { x: 3, y: -4 }, radius: 10 });
  });

  test('a 100 x 60 plate with corners of 10: 240 + 20 pi round, 6000 - (4 - pi) 100 in area', () => {
    const plate = roundCorners(rectangle(100, 60), 10);
    expect(lengthOf(plate)).toBeCloseTo(240 + 20 * Math.PI, 11);
    expect(areaOf(plate)).toBeCloseTo(6000 - (4 - Math.PI) * 100, 10);
    const box = boundsOf(plate);
    expect(box.minX).toBeCloseTo(0, 12);
    expect(box.minY).toBeCloseTo(0, 12);
    expect(box.maxX).toBeCloseTo(100, 12);
    expect(box.maxY).toBeCloseTo(60, 12);
  });

  test('a slot 30 between centres and 8 wide, as an opening, has -(30 x 8 + 16 pi)', () => {
    expect(areaOf(slot(30, 4, 7, 9))).toBeCloseTo(-(240 + 16 * Math.PI), 11);
    expect(isOpening(slot(30, 4, 7, 9))).toBe(true);
    expect(isOutline(slot(30, 4, 7, 9))).toBe(false);
    expect(centroidOf(slot(30, 4, 7, 9)).x).toBeCloseTo(7, 12);
    expect(centroidOf(slot(30, 4, 7, 9)).y).toBeCloseTo(9, 12);
  });

  // Half disc of radius r: area pi r^2 / 2, centroid 4 r / 3 pi (Machinery's Handbook, moments of plane figures).
  test('a half disc of radius 3 has its centroid 1.2732 above the diameter', () => {
    const half = makeContour([
      { x: -3, y: 0, bulge: 0 },
      { x: 3, y: 0, bulge: 1 },
    ]);
    expect(centroidOf(half).x).toBeCloseTo(0, 12);
    expect(centroidOf(half).y).toBeCloseTo(1.27323954, 8);
    // About its centroid: r^4 (pi / 8 - 8 / 9 pi) = 0.10976 r^4; across: pi r^4 / 8 = 0.39270 r^4.
    expect(secondMoments(half).xx).toBeCloseTo(0.109757 * 81, 3);
    expect(secondMoments(half).yy).toBeCloseTo((Math.PI / 8) * 81, 10);
    expect(secondMoments(half).xy).toBeCloseTo(0, 10);
  });

  test('a rectangle 60 x 20: b h^3 / 12 = 40000 and 360000', () => {
    const m = secondMoments(rectangle(60, 20));
    expect(m.xx).toBeCloseTo(40_000, 8);
    expect(m.yy).toBeCloseTo(360_000, 8);
    expect(m.xy).toBeCloseTo(0, 8);
  });

  test('a circle far from the origin keeps its moments: pi r^4 / 4, as an opening too', () => {
    const m = secondMoments(circleContour({ x: 2000, y: -3000 }, 10, 'opening'));
    expect(m.xx / ((Math.PI * 1e4) / 4)).toBeCloseTo(1, 10);
    expect(m.yy / ((Math.PI * 1e4) / 4)).toBeCloseTo(1, 10);
  });

  // Right triangle with legs 30 (x) and 60 (y): centroid at a third; xx = b h^3 / 36, xy = -b^2 h^2 / 72.
  test('a right triangle 30 x 60', () => {
    const triangle = polygon([0, 0], [30, 0], [0, 60]);
    expect(areaOf(triangle)).toBe(900);
    expect(centroidOf(triangle).x).toBeCloseTo(10, 12);
    expect(centroidOf(triangle).y).toBeCloseTo(20, 12);
    expect(secondMoments(triangle).xx).toBeCloseTo((30 * 60 ** 3) / 36, 7);
    expect(secondMoments(triangle).xy).toBeCloseTo(-(30 ** 2 * 60 ** 2) / 72, 7);
  });

  // Arc of radius r and half angle a: its centre of length is r sin(a) / a from the centre.
  test('a half-circle path of radius 5 balances 10 / pi above its diameter', () => {
    const path = {
      vertices: [
        { x: 5, y: 0, bulge: 1 },
        { x: -5, y: 0, bulge: 0 },
      ],
    };
    expect(lengthOf(path)).toBeCloseTo(5 * Math.PI, 12);
    expect(centroidOf(path).x).toBeCloseTo(0, 12);
    expect(centroidOf(path).y).toBeCloseTo(10 / Math.PI, 12);
    expect(boundsOf(path)).toEqual({ minX: -5, minY: 0, maxX: 5, maxY: 5 });
  });

  test('a very flat arc adds the two thirds of chord times rise that a parabola would', () => {
    // Rise 0.001 on a chord of 100: area 2 / 3 x 100 x 0.001 to within the square of the bulge.
    const bulge = (2 * 0.001) / 100;
    const flat = makeContour([
      { x: 0, y: 0, bulge },
      { x: 100, y: 0, bulge: 0 },
      { x: 50, y: 50, bulge: 0 },
    ]);
    expect(areaOf(flat) - 2500).toBeCloseTo(200 / 3000, 9);
  });
});

describe('properties', () => {
  test('the other way round: area changes sign, length, centroid and extents stay', () => {
    fc.assert(
      fc.property(contours, (contour) => {
        const back = reverseContour(contour);
        expect(areaOf(back)).toBeCloseTo(-areaOf(contour), 6);
        expect(lengthOf(back)).toBeCloseTo(lengthOf(contour), 8);
        expect(centroidOf(back).x).toBeCloseTo(centroidOf(contour).x, 7);
        expect(centroidOf(back).y).toBeCloseTo(centroidOf(contour).y, 7);
        expect(boundsOf(back).maxX).toBeCloseTo(boundsOf(contour).maxX, 9);
        expect(secondMoments(back).xx / secondMoments(contour).xx).toBeCloseTo(1, 9);
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  test('turned by a quarter: the second moments change places', () => {
    fc.assert(
      fc.property(contours, (contour) => {
        const m = secondMoments(contour);
        const q = secondMoments(transformContour(contour, { rotateDegrees: 90, dx: 31, dy: -7 }));
        expect(q.xx / m.yy).toBeCloseTo(1, 8);
        expect(q.yy / m.xx).toBeCloseTo(1, 8);
      }),
      { numRuns: 60, seed: 12 },
    );
  });

  test('twice as large: four times the area, sixteen times the second moments', () => {
    fc.assert(
      fc.property(contours, (contour) => {
        const double = makeContour(contour.map((v) => ({ x: 2 * v.x, y: 2 * v.y, bulge: v.bulge })));
        expect(areaOf(double) / areaOf(contour)).toBeCloseTo(4, 8);
        expect(secondMoments(double).xx / secondMoments(contour).xx).toBeCloseTo(16, 7);
      }),
      { numRuns: 60, seed: 13 },
    );
  });

  test('every point of a contour lies in its extents, and the extents are reached', () => {
    fc.assert(
      fc.property(contours, (contour) => {
        const box = boundsOf(contour);
        const points = walk(contour, 0.05);
        const xs = points.map((p) => p.x);
        const ys = points.map((p) => p.y);
        expect(Math.min(...xs)).toBeGreaterThan(box.minX - 1e-9);
        expect(Math.max(...xs)).toBeLessThan(box.maxX + 1e-9);
        // Steps of 0.05 on arcs of radius 0.5 and more miss a crown by s^2 / 8 r at most.
        expect(Math.min(...ys) - box.minY).toBeLessThan(1e-3);
        expect(box.maxY - Math.max(...ys)).toBeLessThan(1e-3);
      }),
      { numRuns: 30, seed: 14 },
    );
  });
});
