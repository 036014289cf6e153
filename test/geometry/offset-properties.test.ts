// What an offset must not depend on: where the contour starts, which way it is drawn, how it lies on the plate.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  areaOf,
  circleContour,
  findFaults,
  lengthOf,
  offsetContour,
  offsetRegion,
  polygonContour,
  reverseContour,
  startContourAt,
  transformContour,
  type Contour,
  type OffsetResult,
} from '../../parts-library/geometry/index.js';
import { contours } from './support/arbitraries.js';
import { createField, walk } from './support/field.js';
import { randomPolygon, randomSkyline, seeded } from './support/random.js';
import {
  dogbone,
  filletedL,
  notched,
  pedalArm,
  plate,
  roundedPlate,
  slot,
  sprocket52,
  star,
} from './support/shapes.js';

interface Summary {
  readonly pieces: number;
  readonly segments: number;
  readonly area: number;
  readonly length: number;
}

function summaryOf(result: OffsetResult): Summary {
  return {
    pieces: result.pieces.length,
    segments: result.pieces.reduce((sum, p) => sum + p.contour.length, 0),
    area: result.pieces.reduce((sum, p) => sum + areaOf(p.contour), 0),
    length: result.pieces.reduce((sum, p) => sum + lengthOf(p.contour), 0),
  };
}

function expectSame(a: Summary, b: Summary, sign = 1): void {
  expect(a.pieces).toBe(b.pieces);
  expect(a.segments).toBe(b.segments);
  expect(a.area).toBeCloseTo(sign * b.area, 6);
  expect(a.length).toBeCloseTo(b.length, 6);
}

const [arm] = pedalArm();
const shapes: readonly (readonly [string, Contour])[] = [
  ['rounded plate', roundedPlate(10)],
  ['plate with fillets of 0.2', roundedPlate(0.2)],
  ['plate with fillets of 0.75', roundedPlate(0.75)],
  ['pedal arm', arm ?? plate()],
  ['notched block', notched()],
  ['dogbone', dogbone()],
  ['star', star()],
  ['L', filletedL(0.3)],
  ['slot', slot(30, 4, 10, 10)],
];
const distances = [0.75, -0.75, 1.2, -1.2, 1.6, -1.6];

describe.each(shapes)('%s', (_, contour) => {
  test.each(distances)('offset by %s is the same from every start', (distance) => {
    const expected = summaryOf(offsetContour(contour, distance));
    contour.forEach((__, start) => {
      expectSame(summaryOf(offsetContour(startContourAt(contour, start), distance)), expected);
    });
  });

  test.each(distances)('offset by %s is the same drawn backwards and moved to the other side', (distance) => {
    const expected = summaryOf(offsetContour(contour, distance));
    expectSame(summaryOf(offsetContour(reverseContour(contour), -distance)), expected, -1);
  });

  test.each(distances)('offset by %s is the same mirrored, turned and moved', (distance) => {
    const expected = summaryOf(offsetContour(contour, distance));
    for (const move of [
      { mirror: true },
      { rotateDegrees: 90, dx: 1000 },
      { rotateDegrees: 33.3, dx: -412.7, dy: 96.1 },
      { mirror: true, rotateDegrees: 180, dx: 2500, dy: 1250 },
    ]) {
      expectSame(summaryOf(offsetContour(transformContour(contour, move), distance)), expected);
    }
  });
});

describe('random contours', () => {
  const distance = fc.constantFrom(0.4, -0.4, 1.1, -1.1, 3.7, -3.7);

  test('the same from another start, mirrored, moved, and backwards to the other side', () => {
    fc.assert(
      fc.property(contours, distance, fc.nat(30), (contour, d, start) => {
        const expected = summaryOf(offsetContour(contour, d));
        expectSame(summaryOf(offsetContour(startContourAt(contour, start), d)), expected);
        expectSame(summaryOf(offsetContour(reverseContour(contour), -d)), expected, -1);
        const moved = transformContour(contour, { mirror: true, rotateDegrees: 71, dx: 800, dy: -90 });
        expectSame(summaryOf(offsetContour(moved, d)), expected);
      }),
      { numRuns: 60, seed: 61 },
    );
  });

  test('two steps outward make one: by a, then by b, is by a + b', () => {
    fc.assert(
      fc.property(contours, (contour) => {
        const once = offsetContour(contour, 2).pieces.filter((p) => areaOf(p.contour) > 0);
        const half = offsetContour(contour, 1.25).pieces.filter((p) => areaOf(p.contour) > 0);
        const [first] = half;
        if (first === undefined) throw new Error('a grown outline cannot vanish');
        const twice = offsetContour(first.contour, 0.75).pieces.filter((p) => areaOf(p.contour) > 0);
        expect(twice.length).toBe(1);
        expect(twice[0] && areaOf(twice[0].contour)).toBeCloseTo(once[0] ? areaOf(once[0].contour) : 0, 5);
      }),
      { numRuns: 60, seed: 62 },
    );
  });

  test('a contour grown and shrunk back loses nothing', () => {
    fc.assert(
      fc.property(contours, (contour) => {
        const grown = offsetContour(contour, 1).pieces.find((p) => areaOf(p.contour) > 0);
        const back = grown && offsetContour(grown.contour, -1).pieces[0];
        expect(back && areaOf(back.contour)).toBeGreaterThan(areaOf(contour) - 1e-5);
      }),
      { numRuns: 60, seed: 63 },
    );
  });

  test('the same input gives the same figures', () => {
    expect(offsetContour(sprocket52(), 0.75)).toEqual(offsetContour(sprocket52(), 0.75));
  });
});

describe('mitred', () => {
  test('polygons have straight sides only, each parallel to its source at the distance', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const polygon = randomPolygon(seeded(seed * 4001));
      const distance = [0.4, -0.4, 1.1, -1.1][seed % 4] ?? 1;
      const result = offsetContour(polygon, distance, { join: 'mitre', mitreLimit: 1000 });
      expect(result.exact).toBe(true);
      for (const { contour, sources } of result.pieces) {
        contour.forEach((p, k) => {
          const q = contour[(k + 1) % contour.length] ?? p;
          const s = sources[k] ?? -1;
          const from = polygon[s];
          const to = polygon[(s + 1) % polygon.length];
          if (from === undefined || to === undefined) throw new Error('a mitred side without a source');
          expect(p.bulge).toBe(0);
          const length = Math.hypot(to.x - from.x, to.y - from.y);
          // Right of the source line, positive.
          const aside = (v: { x: number; y: number }): number =>
            ((v.x - from.x) * (to.y - from.y) - (v.y - from.y) * (to.x - from.x)) / length;
          expect(aside(p)).toBeCloseTo(distance, 8);
          expect(aside(q)).toBeCloseTo(distance, 8);
        });
      }
    }
  });

  test('skylines with half circles and fillets keep between the distance and the limit', () => {
    for (let seed = 1; seed <= 120; seed++) {
      const random = seeded(seed * 733);
      const skyline = randomSkyline(random);
      const contour = seed % 2 === 0 ? skyline : reverseContour(skyline);
      const distance = [0.5, -0.5, 1, -1, 1.5, -1.5, 2, -2][seed % 8] ?? 1;
      const result = offsetContour(contour, distance, { join: 'mitre', mitreLimit: 3 });
      expect(result.exact).toBe(true);
      const field = createField([contour]);
      for (const piece of result.pieces) {
        const away = walk(piece.contour, 0.2).map(field);
        expect(Math.min(...away)).toBeGreaterThan(Math.abs(distance) - 1e-6);
        expect(Math.max(...away)).toBeLessThan(3 * Math.abs(distance) + 1e-6);
      }
    }
  });
});

describe('two edges a millionth of a millimetre from twice the offset', () => {
  // Whether such a notch is open or closed cannot be told at 1e-6 mm; what comes out must still be sound.
  const cases = [1e-6, -1e-6, 7e-7, 2e-6].flatMap((error) =>
    [0, 12.3, 33.3, 45, 71.9, 123.4].flatMap((rotateDegrees) =>
      [1, -1].map((side) => ({ error, rotateDegrees, side })),
    ),
  );
  const runs = cases.map(({ error, rotateDegrees, side }) => {
    const half = 1.5 + error / 2;
    const block = polygonContour([
      { x: 0, y: 0 },
      { x: 60, y: 0 },
      { x: 60, y: 40 },
      { x: 30 + half, y: 40 },
      { x: 30 + half, y: 20 },
      { x: 30 - half, y: 20 },
      { x: 30 - half, y: 40 },
      { x: 0, y: 40 },
    ]);
    const turned = transformContour(block, { rotateDegrees, dx: 17 });
    const contour = side === 1 ? turned : reverseContour(turned);
    return { contour, side, result: offsetContour(contour, 1.5 * side) };
  });

  test('some come out in chords, and say so', () => {
    const inexact = runs.filter(({ result }) => !result.exact);
    expect(inexact.length).toBeGreaterThan(0);
    for (const { result } of inexact) {
      expect(result.inexactCount).toBeGreaterThan(0);
      expect(result.notes.join()).toMatch(/chords within 0\.01 mm/);
      expect(result.pieces.every((p) => p.exact || p.contour.every((v) => v.bulge === 0))).toBe(true);
    }
  });

  test('chords lie within 0.01 mm on the scrap side, exact ones within 1e-6', () => {
    for (const { contour, side, result } of runs) {
      const field = createField([contour]);
      for (const piece of result.pieces) {
        const off = walk(piece.contour, 0.2).map((p) => (field(p) - 1.5) * side);
        expect(Math.min(...off)).toBeGreaterThan(-1.001e-6);
        expect(Math.max(...off)).toBeLessThan(piece.exact ? 1.001e-6 : 0.01);
        expect(findFaults(piece.contour)).toEqual([]);
      }
    }
  });
});

describe('a region, each contour by its own distance', () => {
  const hole = (x: number, y: number, r: number): Contour => circleContour({ x, y }, r, 'opening');

  test('outline and holes that grow their metal never collide, however thin the web', () => {
    const region = [
      { contour: plate(), distance: 0.8 },
      { contour: hole(6, 30, 5.5), distance: 0.7 },
      { contour: hole(18, 30, 5.5), distance: 0.7 },
    ];
    const { results, collisions } = offsetRegion(region);
    expect(collisions).toEqual([]);
    expect(results.map((r) => r.pieces.length)).toEqual([1, 1, 1]);
    expect(results[1]?.pieces[0] && areaOf(results[1].pieces[0].contour)).toBeCloseTo(-Math.PI * 4.8 ** 2, 9);
    expect(results[0]?.pieces[0]?.owners.every((owner) => owner === 0 || owner === -1)).toBe(true);
  });

  test('two parts side by side whose kerfs differ collide when nearer than both kerfs', () => {
    const beside = transformContour(plate(), { dx: 101.4 });
    const { collisions, results } = offsetRegion([
      { contour: plate(), distance: 0.8 },
      { contour: beside, distance: 0.7 },
    ]);
    expect(collisions.length).toBe(1);
    expect(collisions[0]?.contours).toEqual([0, 1]);
    expect(collisions[0]?.distance).toBeCloseTo(1.4, 9);
    expect(collisions[0]?.needed).toBeCloseTo(1.5, 12);
    expect(results.map((r) => r.pieces.length)).toEqual([1, 1]);
    const apart = transformContour(plate(), { dx: 101.6 });
    const clear = offsetRegion([
      { contour: plate(), distance: 0.8 },
      { contour: apart, distance: 0.7 },
    ]);
    expect(clear.collisions).toEqual([]);
  });

  test('two parts of one kerf that run together become one contour that knows both', () => {
    const beside = transformContour(plate(), { dx: 101.4 });
    const { collisions, results } = offsetRegion([
      { contour: plate(), distance: 0.8 },
      { contour: beside, distance: 0.8 },
    ]);
    expect(collisions).toEqual([]);
    const piece = results[0]?.pieces[0];
    expect(results[0]?.pieces.length).toBe(1);
    expect(results[1]?.pieces).toEqual([]);
    expect(new Set(piece?.owners)).toEqual(new Set([0, 1, -1]));
    // Two plates grown by 0.8 (6000 + 320 x 0.8 + pi 0.64 each) less the strip they share: 0.2 x 60 and two lenses' worth.
    const alone = 6000 + 320 * 0.8 + Math.PI * 0.64;
    expect(piece && areaOf(piece.contour)).toBeLessThan(2 * alone - 0.2 * 60);
    expect(piece && areaOf(piece.contour)).toBeGreaterThan(2 * alone - 0.2 * 61.6);
  });

  test('metal shrunk between a hole and the edge is cut through: the outline takes the hole in', () => {
    // Web of 1 between the edge and the hole, both moved into the metal by 0.6.
    const { results } = offsetRegion([
      { contour: plate(), distance: -0.6 },
      { contour: hole(50, 11, 10), distance: -0.6 },
    ]);
    const [first, second] = results;
    expect(first?.pieces.length).toBe(1);
    expect(second?.pieces).toEqual([]);
    // 98.8 x 58.8 less the disc of 10.6, which reaches below y = 0.6 by 0.2: a cap is not counted twice.
    const half = Math.acos(10.4 / 10.6);
    const cap = 10.6 ** 2 * (half - Math.sin(half) * Math.cos(half));
    expect(first?.pieces[0] && areaOf(first.pieces[0].contour)).toBeCloseTo(
      98.8 * 58.8 - (Math.PI * 10.6 ** 2 - cap),
      8,
    );
  });

  test('two holes shrunk towards each other run together', () => {
    const { results } = offsetRegion([
      { contour: hole(0, 0, 5), distance: -0.6 },
      { contour: hole(11, 0, 5), distance: -0.6 },
    ]);
    expect(results[0]?.pieces.length).toBe(1);
    expect(results[0]?.pieces[0] && areaOf(results[0].pieces[0].contour)).toBeLessThan(0);
    // Two discs of 5.6 whose centres are 11 apart: union = 2 pi r^2 - lens.
    const half = Math.acos(5.5 / 5.6);
    const lens = 2 * 5.6 ** 2 * (half - Math.sin(half) * Math.cos(half));
    expect(results[0]?.pieces[0] && areaOf(results[0].pieces[0].contour)).toBeCloseTo(
      -(2 * Math.PI * 5.6 ** 2 - lens),
      8,
    );
  });

  test('an island in a hole, both grown, closes the gap between them', () => {
    // Hole of radius 10 with a loose disc of radius 8 off centre by 1: gap from 1 to 3, closed where under 1.6.
    const { results } = offsetRegion([
      { contour: hole(0, 0, 10), distance: 0.8 },
      { contour: circleContour({ x: 1, y: 0 }, 8, 'outline'), distance: 0.8 },
    ]);
    // Scrap left: the disc of 9.2 outside the disc of 8.8 about (1, 0), one sickle. The circles cross at x = 4.1; they share
    // what the larger has to the right of that line and the smaller to its left.
    const x = (1 + 9.2 ** 2 - 8.8 ** 2) / 2;
    const cap = (r: number, toChord: number): number => {
      const half = Math.acos(toChord / r);
      return r * r * (half - Math.sin(half) * Math.cos(half));
    };
    const shared = cap(9.2, x) + Math.PI * 8.8 ** 2 - cap(8.8, x - 1);
    expect(results[0]?.pieces.length).toBe(1);
    expect(results[0]?.pieces[0] && areaOf(results[0].pieces[0].contour)).toBeCloseTo(
      -(Math.PI * 9.2 ** 2 - shared),
      8,
    );
  });
});
