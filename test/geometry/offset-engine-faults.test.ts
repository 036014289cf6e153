// The polygon engine only settles topology, and it is not trusted: when it loses or invents a loop, the offset must
// notice, try again, and rather refuse than hand out a wrong contour.
import { afterEach, describe, expect, test, vi } from 'vitest';
import {
  areaOf,
  GeometryError,
  makeContour,
  offsetContour,
  type Contour,
} from '../../parts-library/geometry/index.js';
import type * as Engine from '../../parts-library/geometry/offset/inflate.js';
import { dogbone, roundedPlate } from './support/shapes.js';

type Polygons = Float64Array[];

const fault = vi.hoisted(() => ({
  calls: 0,
  spoil: (polygons: Float64Array[], _call: number): Float64Array[] => polygons,
}));

vi.mock('../../parts-library/geometry/offset/inflate.js', async (original) => {
  const engine = await original<typeof Engine>();
  return {
    ...engine,
    inflate: (...given: Parameters<typeof engine.inflate>) =>
      fault.spoil(engine.inflate(...given), fault.calls++),
  };
});

afterEach(() => {
  fault.calls = 0;
  fault.spoil = (polygons) => polygons;
});

/** A block with a bore of radius 10 behind a mouth 2 wide. */
function keyhole(): Contour {
  const a = Math.asin(1 / 10);
  const mouth = 30 + 10 * Math.cos(a);
  const bulge = -Math.tan((Math.PI - a) / 4);
  return makeContour([
    { x: 0, y: 0, bulge: 0 },
    { x: 60, y: 0, bulge: 0 },
    { x: 60, y: 60, bulge: 0 },
    { x: 31, y: 60, bulge: 0 },
    { x: 31, y: mouth, bulge },
    { x: 30, y: 20, bulge },
    { x: 29, y: mouth, bulge: 0 },
    { x: 29, y: 60, bulge: 0 },
    { x: 0, y: 60, bulge: 0 },
  ]);
}

function size(polygon: Float64Array): number {
  let doubled = 0;
  for (let i = 0; i < polygon.length; i += 2) {
    const j = (i + 2) % polygon.length;
    doubled += Number(polygon[i]) * Number(polygon[j + 1]) - Number(polygon[j]) * Number(polygon[i + 1]);
  }
  return Math.abs(doubled);
}

function withoutSmallest(polygons: Polygons): Polygons {
  return polygons.toSorted((a, b) => size(b) - size(a)).slice(0, -1);
}

describe('a lost loop', () => {
  test('once: the bore behind the mouth is still there, exact, at the second try', () => {
    const sound = offsetContour(keyhole(), 1.2);
    fault.calls = 0;
    fault.spoil = (polygons, call) => (call === 0 ? withoutSmallest(polygons) : polygons);
    const result = offsetContour(keyhole(), 1.2);
    expect(fault.calls).toBe(2);
    expect(result.exact).toBe(true);
    expect(result.pieces.length).toBe(2);
    const areas = (list: typeof result.pieces): number[] =>
      list.map((p) => areaOf(p.contour)).toSorted((a, b) => a - b);
    areas(result.pieces).forEach((area, i) => expect(area).toBeCloseTo(areas(sound.pieces)[i] ?? 0, 6));
  });

  test('every time while exact curves are sought: the chords have it, and say that they are chords', () => {
    fault.spoil = (polygons, call) => (call < 3 ? withoutSmallest(polygons) : polygons);
    const result = offsetContour(keyhole(), 1.2);
    expect(result.exact).toBe(false);
    expect(result.inexactCount).toBe(2);
    expect(result.pieces.length).toBe(2);
  });

  test('always: refused, not handed out without its bore', () => {
    fault.spoil = withoutSmallest;
    expect(() => offsetContour(keyhole(), 1.2)).toThrow(GeometryError);
    expect(() => offsetContour(dogbone(), 1.2)).toThrow(GeometryError);
  });

  test('all of them: a plate does not vanish', () => {
    fault.spoil = () => [];
    expect(() => offsetContour(roundedPlate(10), 0.75)).toThrow(GeometryError);
  });
});

describe('a false loop', () => {
  const twist = (polygons: Polygons): Polygons =>
    polygons.map((polygon) => polygon.map((value, i) => (i % 2 === 0 ? value : value * 0.9)));

  test('squashed once: exact at the second try', () => {
    fault.spoil = (polygons, call) => (call === 0 ? twist(polygons) : polygons);
    const result = offsetContour(roundedPlate(10), 0.75);
    expect(result.exact).toBe(true);
    expect(result.pieces[0]?.contour.length).toBe(8);
  });

  test('squashed always: refused', () => {
    fault.spoil = twist;
    expect(() => offsetContour(roundedPlate(10), 0.75)).toThrow(GeometryError);
  });

  test('given twice: refused, for the plane would be parted twice', () => {
    fault.spoil = (polygons) => [...polygons, ...polygons];
    expect(() => offsetContour(roundedPlate(10), 0.75)).toThrow(GeometryError);
  });
});
