// Turning, mirroring, moving, starting elsewhere and splitting: what must stay the same.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  areaOf,
  boundsOf,
  centroidOf,
  findFaults,
  GeometryError,
  lengthOf,
  splitSegment,
  startContourAt,
  transformContour,
  transformPath,
  transformPoint,
} from '../../parts-library/geometry/index.js';
import { contours } from './support/arbitraries.js';
import { createField, walk } from './support/field.js';
import { plate, rectangle, roundedPlate } from './support/shapes.js';

describe('worked by hand', () => {
  test('a quarter turn is exact', () => {
    expect(transformPoint({ x: 3.3, y: 1.1 }, { rotateDegrees: 90 })).toEqual({ x: -1.1, y: 3.3 });
    expect(transformPoint({ x: 3.3, y: 1.1 }, { rotateDegrees: -90 })).toEqual({ x: 1.1, y: -3.3 });
    expect(transformPoint({ x: 3.3, y: 1.1 }, { rotateDegrees: 540 })).toEqual({ x: -3.3, y: -1.1 });
  });

  test('four quarter turns give the contour back, figure for figure', () => {
    let turned = roundedPlate(10);
    for (let i = 0; i < 4; i++) turned = transformContour(turned, { rotateDegrees: 90 });
    turned.forEach((v, i) => {
      expect(v.x === roundedPlate(10)[i]?.x && v.y === roundedPlate(10)[i]?.y).toBe(true);
    });
  });

  test('mirror, then turn, then move: (1, 0) goes to (-1, 0), to (0, -1), to (5, 1)', () => {
    const p = transformPoint({ x: 1, y: 0 }, { mirror: true, rotateDegrees: 90, dx: 5, dy: 2 });
    expect(p.x).toBe(5);
    expect(p.y).toBe(1);
  });

  test('30 degrees: (10, 0) goes to (8.6603, 5)', () => {
    const p = transformPoint({ x: 10, y: 0 }, { rotateDegrees: 30 });
    expect(p.x).toBeCloseTo(8.660254, 6);
    expect(p.y).toBeCloseTo(5, 12);
  });

  test('a mirrored path keeps its direction of travel and bends the other way', () => {
    const path = {
      vertices: [
        { x: 1, y: 0, bulge: 0.5 },
        { x: 4, y: 0, bulge: 0 },
      ],
    };
    expect(transformPath(path, { mirror: true }).vertices).toEqual([
      { x: -1, y: 0, bulge: -0.5 },
      { x: -4, y: 0, bulge: 0 },
    ]);
  });

  test('a plate can start in the middle of its right side', () => {
    const started = startContourAt(rectangle(100, 60), { x: 100, y: 30 });
    expect(started.length).toBe(5);
    expect(started[0]).toEqual({ x: 100, y: 30, bulge: 0 });
    expect(started[1]).toEqual({ x: 100, y: 60, bulge: 0 });
  });

  test('starting at a vertex adds none; starting off the line is refused', () => {
    expect(startContourAt(plate(), { x: 100, y: 60 }).length).toBe(4);
    expect(startContourAt(plate(), 2)[0]).toEqual({ x: 100, y: 60, bulge: 0 });
    expect(startContourAt(plate(), -1)[0]).toEqual({ x: 0, y: 60, bulge: 0 });
    expect(() => startContourAt(plate(), { x: 50, y: 30 })).toThrow(/30\.0000 mm off its line/);
  });

  test('half of a quarter circle has the bulge of an eighth: tan(11.25)', () => {
    const contour = roundedPlate(10);
    const arc = contour.findIndex((v) => v.bulge !== 0);
    const split = splitSegment(contour, arc, 0.5);
    expect(split[arc]?.bulge).toBeCloseTo(Math.tan((11.25 * Math.PI) / 180), 12);
    expect(split[arc + 1]?.bulge).toBeCloseTo(Math.tan((11.25 * Math.PI) / 180), 12);
    expect(() => splitSegment(contour, arc, 1)).toThrow(GeometryError);
  });
});

describe('properties', () => {
  const moves = fc.record({
    rotateDegrees: fc.double({ min: -720, max: 720, noNaN: true }),
    mirror: fc.boolean(),
    dx: fc.double({ min: -500, max: 500, noNaN: true }),
    dy: fc.double({ min: -500, max: 500, noNaN: true }),
  });

  test('area and length survive any move, and so does which side the metal is on', () => {
    fc.assert(
      fc.property(contours, moves, (contour, move) => {
        const moved = transformContour(contour, move);
        expect(areaOf(moved)).toBeCloseTo(areaOf(contour), 6);
        expect(lengthOf(moved)).toBeCloseTo(lengthOf(contour), 8);
        expect(findFaults(moved)).toEqual([]);
        const centre = transformPoint(centroidOf(contour), move);
        expect(centroidOf(moved).x).toBeCloseTo(centre.x, 6);
        expect(centroidOf(moved).y).toBeCloseTo(centre.y, 6);
      }),
      { numRuns: 80, seed: 21 },
    );
  });

  test('every moved point lies on the moved contour', () => {
    fc.assert(
      fc.property(contours, moves, (contour, move) => {
        const field = createField([transformContour(contour, move)]);
        const off = walk(contour, 5).map((p) => field(transformPoint(p, move)));
        expect(Math.max(...off)).toBeLessThan(1e-8);
      }),
      { numRuns: 30, seed: 22 },
    );
  });

  test('mirrored twice, it is itself', () => {
    fc.assert(
      fc.property(contours, (contour) => {
        const twice = transformContour(transformContour(contour, { mirror: true }), { mirror: true });
        expect(twice).toEqual(contour);
      }),
      { numRuns: 40, seed: 23 },
    );
  });

  test('split and started anywhere, it measures the same', () => {
    fc.assert(
      fc.property(
        contours,
        fc.nat(200),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (contour, index, at) => {
          const started = startContourAt(splitSegment(contour, index, at), index + 1);
          expect(started.length).toBe(contour.length + 1);
          expect(areaOf(started)).toBeCloseTo(areaOf(contour), 7);
          expect(lengthOf(started)).toBeCloseTo(lengthOf(contour), 8);
          expect(boundsOf(started).minX).toBeCloseTo(boundsOf(contour).minX, 9);
        },
      ),
      { numRuns: 60, seed: 24 },
    );
  });
});
