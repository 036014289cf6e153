// Area, perimeter, centroid and validity of random contours against another library.
import Centroid from 'jsts/org/locationtech/jts/algorithm/Centroid.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory, { type Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import IsValidOp from 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js';
import { describe, expect, test } from 'vitest';
import {
  areaOf,
  centroidOf,
  findFaults,
  lengthOf,
  reverseContour,
} from '../../parts-library/geometry/index.js';
import { flatten, type XY } from '../geometry/support/field.js';
import { randomFilleted, randomPolygon, seeded } from '../geometry/support/random.js';

const factory = new GeometryFactory();

function toJsts(points: readonly XY[]): Geometry {
  const ring = [...points, ...points.slice(0, 1)].map((p) => new Coordinate(p.x, p.y));
  return factory.createPolygon(factory.createLinearRing(ring));
}

describe('polygons', () => {
  test('have the same area, perimeter and centroid', () => {
    for (let seed = 1; seed <= 200; seed++) {
      const polygon = randomPolygon(seeded(seed * 613));
      const referee = toJsts(polygon);
      expect(areaOf(polygon)).toBeCloseTo(referee.getArea(), 8);
      expect(areaOf(reverseContour(polygon))).toBeCloseTo(-referee.getArea(), 8);
      expect(lengthOf(polygon)).toBeCloseTo(referee.getLength(), 8);
      expect(centroidOf(polygon).x).toBeCloseTo(Centroid.getCentroid(referee).x, 8);
      expect(centroidOf(polygon).y).toBeCloseTo(Centroid.getCentroid(referee).y, 8);
    }
  });

  test('with corners thrown anywhere are sound exactly when the other library finds them valid', () => {
    let sound = 0;
    for (let seed = 1; seed <= 2000; seed++) {
      const random = seeded(seed * 409);
      const corners = 4 + Math.floor(random() * 5);
      const points = Array.from({ length: corners }, () => ({ x: 100 * random(), y: 100 * random() }));
      const faults = findFaults(points.map((p) => ({ ...p, bulge: 0 })));
      expect(faults.length === 0).toBe(IsValidOp.isValid(toJsts(points)));
      if (faults.length === 0) sound++;
    }
    // Both answers must have come up often.
    expect(sound).toBeGreaterThan(100);
    expect(sound).toBeLessThan(1900);
  });

  test('on a coarse grid, where corners meet corners and edges, too', () => {
    let sound = 0;
    for (let seed = 1; seed <= 2000; seed++) {
      const random = seeded(seed * 1009);
      const corners = 4 + Math.floor(random() * 3);
      const points = Array.from({ length: corners }, () => ({
        x: Math.floor(8 * random()),
        y: Math.floor(8 * random()),
      }));
      const repeated = points.some((p, i) => {
        const q = points[(i + 1) % corners];
        return p.x === q?.x && p.y === q.y;
      });
      if (repeated) continue;
      const faults = findFaults(points.map((p) => ({ ...p, bulge: 0 })));
      expect(faults.length === 0).toBe(IsValidOp.isValid(toJsts(points)));
      if (faults.length === 0) sound++;
    }
    expect(sound).toBeGreaterThan(100);
  });
});

describe('contours with arcs', () => {
  test('agree with their fine chords, to the error of those', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const contour = randomFilleted(seeded(seed * 613));
      const referee = toJsts(flatten(contour, 1e-6));
      const length = lengthOf(contour);
      expect(Math.abs(areaOf(contour) - referee.getArea())).toBeLessThan(1e-6 * length);
      expect(Math.abs(length - referee.getLength())).toBeLessThan(1e-5 * length);
      expect(centroidOf(contour).x).toBeCloseTo(Centroid.getCentroid(referee).x, 5);
      expect(centroidOf(contour).y).toBeCloseTo(Centroid.getCentroid(referee).y, 5);
    }
  });
});
