// Making and inspecting contours: what is refused, where the fault is, and what a sound contour keeps.
import { describe, expect, test } from 'vitest';
import {
  areaOf,
  circleContour,
  findFaults,
  GeometryError,
  isCircle,
  isOpening,
  isOutline,
  lengthOf,
  makeContour,
  polygonContour,
  reverseContour,
  type Vertex,
} from '../../parts-library/geometry/index.js';
import { rectangle, roundedPlate, sprocket52 } from './support/shapes.js';

function vertices(...list: readonly (readonly [number, number, number?])[]): Vertex[] {
  return list.map(([x, y, bulge = 0]) => ({ x, y, bulge }));
}

function kinds(list: readonly Vertex[]): string[] {
  return findFaults(list).map((fault) => fault.kind);
}

describe('faults', () => {
  test('a bow tie crosses itself at its knot', () => {
    const [fault] = findFaults(vertices([0, 0], [10, 10], [10, 0], [0, 10]));
    expect(fault?.kind).toBe('crosses-itself');
    expect(fault?.segments).toEqual([0, 2]);
    expect(fault?.at.x).toBeCloseTo(5, 12);
    expect(fault?.at.y).toBeCloseTo(5, 12);
    expect(fault?.says).toMatch(/\(5\.000, 5\.000\).*segments 0 and 2/);
  });

  test('two arcs that bulge into each other cross twice', () => {
    // A thin bar whose long sides bulge inward by 5 across a width of 6.
    const bar = vertices([0, 0, -0.2], [50, 0], [50, 6, -0.2], [0, 6]);
    const found = findFaults(bar);
    expect(found.map((fault) => fault.kind)).toContain('crosses-itself');
    expect(found[0]?.segments).toEqual([0, 2]);
  });

  test('a corner that rests on an edge touches it', () => {
    const [fault] = findFaults(vertices([0, 0], [40, 0], [40, 20], [20, 0], [0, 20]));
    expect(fault?.kind).toBe('touches-itself');
    expect(fault?.at).toEqual({ x: 20, y: 0 });
  });

  test('two lobes that share a vertex touch', () => {
    expect(kinds(vertices([0, 0], [10, 5], [20, 0], [20, 10], [10, 5], [0, 10]))).toContain('touches-itself');
  });

  test('a spike that runs back along itself is found', () => {
    const [fault] = findFaults(vertices([0, 0], [10, 0], [10, 10], [10, 4], [0, 4]));
    expect(fault?.kind).toBe('touches-itself');
    expect(fault?.segments).toEqual([1, 2]);
  });

  test('a tangent touch of an arc is found: a round boss that grazes the far side', () => {
    // From (30, 10) to (10, 10), a half circle turning right passes under the chord and grazes the line y = 0 at (20, 0).
    const over = vertices([0, 0], [40, 0], [40, 10], [30, 10, 1], [10, 10], [0, 10]);
    expect(findFaults(over)).toEqual([]);
    const [touch] = findFaults(vertices([0, 0], [40, 0], [40, 10], [30, 10, -1], [10, 10], [0, 10]));
    expect(touch?.kind).toBe('touches-itself');
    expect(touch?.at.x).toBeCloseTo(20, 6);
    expect(touch?.at.y).toBeCloseTo(0, 6);
  });

  test('a point so sharp that its arcs cross is found', () => {
    // Two right-turning arcs meet at the tip (0, 0) and cross again above it.
    expect(kinds(vertices([-4, 20, -0.4], [0, 0, -0.4], [4, 20]))).toContain('crosses-itself');
  });

  test('a tangent join rounded to four decimals is sound', () => {
    const rounded = roundedPlate(7.3).map((v) => ({
      x: Number((v.x + 0.1234).toFixed(4)),
      y: Number((v.y * 1.00001).toFixed(4)),
      bulge: Number(v.bulge.toFixed(6)),
    }));
    expect(findFaults(rounded)).toEqual([]);
  });

  test('numbers that are none, coordinates in the next county, points on one spot, too little of anything', () => {
    expect(kinds(vertices([0, 0], [Number.NaN, 0], [5, 5]))).toEqual(['not-a-number']);
    expect(kinds(vertices([0, 0], [2e5, 0], [5, 5]))).toEqual(['out-of-range']);
    expect(kinds(vertices([0, 0], [10, 0], [10, 0], [5, 5]))).toEqual(['zero-segment']);
    expect(kinds(vertices([0, 0]))).toEqual(['too-few-vertices']);
    expect(kinds([])).toEqual(['too-few-vertices']);
    expect(kinds(vertices([0, 0], [10, 0]))).toEqual(['no-area']);
    expect(kinds(vertices([0, 0, 0.5], [10, 0, -0.5]))).toEqual(['no-area']);
    expect(kinds(vertices([0, 0, 1.5], [10, 0]))).toEqual(['bulge-too-large']);
  });

  test('sound shapes have none, and a faulty one among 208 segments is still found', () => {
    expect(findFaults(sprocket52())).toEqual([]);
    const spoiled = sprocket52().map((v, i) => (i === 50 ? { ...v, x: -1.2 * v.x, y: -1.2 * v.y } : v));
    expect(findFaults(spoiled).length).toBeGreaterThan(0);
  });

  test('direction is not a fault', () => {
    expect(findFaults(rectangle(10, 5))).toEqual([]);
    expect(findFaults(reverseContour(rectangle(10, 5)))).toEqual([]);
  });
});

describe('makeContour', () => {
  test('throws with every fault found', () => {
    try {
      makeContour(vertices([0, 0], [10, 10], [10, 0], [0, 10]));
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(GeometryError);
      if (error instanceof GeometryError) expect(error.faults.map((f) => f.kind)).toEqual(['crosses-itself']);
    }
  });

  test('splits an arc over half a circle in two equal ones', () => {
    // 270 degrees about the origin from (10, 0) to (0, -10): bulge tan(67.5).
    const contour = makeContour(vertices([10, 0, Math.tan((3 * Math.PI) / 8)], [0, -10]));
    expect(contour.length).toBe(3);
    expect(contour[1]?.x).toBeCloseTo(-10 * Math.SQRT1_2, 12);
    expect(contour[1]?.y).toBeCloseTo(10 * Math.SQRT1_2, 12);
    expect(areaOf(contour)).toBeCloseTo((3 / 4) * Math.PI * 100 + 50, 10);
  });

  test('refuses an arc whose gap is too small to find its centre', () => {
    expect(() => makeContour(vertices([0, 0, 5000], [0.001, 0]))).toThrow(/more than half a circle/);
  });

  test('keeps every vertex, also those in the middle of a straight side', () => {
    expect(makeContour(vertices([0, 0], [5, 0], [10, 0], [10, 5])).length).toBe(4);
  });

  test('runs the way it is told, from the same first vertex', () => {
    const drawn = vertices([0, 0], [0, 5], [10, 5], [10, 0]);
    const outline = makeContour(drawn, { direction: 'outline' });
    expect(isOutline(outline)).toBe(true);
    expect(outline[0]).toEqual({ x: 0, y: 0, bulge: 0 });
    expect(isOpening(makeContour(drawn, { direction: 'opening' }))).toBe(true);
    expect(isOpening(makeContour(drawn))).toBe(true);
  });

  test('a bulge of 1 plus rounding is a half circle', () => {
    const contour = makeContour(vertices([10, 0, 1 + 4e-10], [-10, 0, 1]));
    expect(contour.map((v) => v.bulge)).toEqual([1, 1]);
  });
});

describe('circles', () => {
  test('a hole runs clockwise in two half turns', () => {
    const hole = circleContour({ x: 2, y: 3 }, 4.5, 'opening');
    expect(hole.map((v) => v.bulge)).toEqual([-1, -1]);
    expect(areaOf(hole)).toBeCloseTo(-Math.PI * 20.25, 11);
  });

  test('is known again, also when two half turns make no circle', () => {
    expect(isCircle(circleContour({ x: 2, y: 3 }, 4.5, 'opening'))).toEqual({
      centre: { x: 2, y: 3 },
      radius: 4.5,
    });
    expect(isCircle(makeContour(vertices([0, 0, 1], [10, 0])))).toBeUndefined();
    expect(isCircle(rectangle(5, 5))).toBeUndefined();
  });

  test('needs a radius', () => {
    expect(() => circleContour({ x: 0, y: 0 }, 0, 'opening')).toThrow(GeometryError);
    expect(() => circleContour({ x: 0, y: 0 }, Number.NaN, 'opening')).toThrow(GeometryError);
  });
});

describe('reverseContour', () => {
  test('keeps the first vertex and undoes itself', () => {
    const plate = roundedPlate(10);
    const back = reverseContour(plate);
    expect({ x: back[0]?.x, y: back[0]?.y }).toEqual({ x: plate[0]?.x, y: plate[0]?.y });
    expect(lengthOf(back)).toBeCloseTo(lengthOf(plate), 10);
    expect(reverseContour(back)).toEqual(plate);
  });
});

test('a polygon is made of straight lines', () => {
  const triangle = polygonContour([
    { x: 0, y: 0 },
    { x: 4, y: 0 },
    { x: 0, y: 3 },
  ]);
  expect(triangle.every((v) => v.bulge === 0)).toBe(true);
  expect(lengthOf(triangle)).toBe(12);
});
