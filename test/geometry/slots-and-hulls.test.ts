// Slots, round-cornered rectangles, hulls of circles and corner reliefs, against figures worked by hand.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  arcSlotContour,
  areaOf,
  boundsOf,
  containsPoint,
  findFaults,
  GeometryError,
  hullContour,
  isCircle,
  lengthOf,
  makeContour,
  rectangleContour,
  relieveCorners,
  slotContour,
} from '../../parts-library/geometry/index.js';

const O = { x: 0, y: 0 };

describe('slots', () => {
  test('a straight slot is a rectangle and two half circles', () => {
    // Worked by hand: 2 × 20 + π 10, and 20 × 10 + π 25.
    const slot = slotContour(O, { x: 12, y: 16 }, 10, 'opening');
    expect(lengthOf(slot)).toBeCloseTo(71.4159, 4);
    expect(areaOf(slot)).toBeCloseTo(-278.5398, 4);
    expect(slot).toHaveLength(4);
  });

  test('a slot along a circle keeps its width: area is width times its middle line, and the round ends', () => {
    // Worked by hand: 10 × 50 × π/2 + π 25 = 863.94; outer, inner and two ends 55 π/2 + 45 π/2 + 10 π = 188.5.
    const slot = arcSlotContour(
      { centre: O, radius: 50, fromDegrees: -20, toDegrees: 70, width: 10 },
      'opening',
    );
    expect(areaOf(slot)).toBeCloseTo(-863.938, 3);
    expect(lengthOf(slot)).toBeCloseTo(188.4956, 4);
  });

  test('a slot along three quarters of a circle is one contour without a fault', () => {
    const slot = arcSlotContour(
      { centre: { x: 5, y: 7 }, radius: 30, fromDegrees: 0, toDegrees: 270, width: 12 },
      'opening',
    );
    expect(findFaults(slot)).toEqual([]);
    expect(areaOf(slot)).toBeCloseTo(-(12 * 30 * 1.5 * Math.PI + 36 * Math.PI), 6);
  });

  test.each([
    ['wider than its circle', { radius: 5, fromDegrees: 0, toDegrees: 40, width: 12 }],
    ['ends that meet', { radius: 30, fromDegrees: 0, toDegrees: 345, width: 12 }],
    ['no length', { radius: 30, fromDegrees: 20, toDegrees: 20, width: 12 }],
  ])('%s: refused', (_, slot) => {
    expect(() => arcSlotContour({ centre: O, ...slot }, 'opening')).toThrow(GeometryError);
  });

  test('a rectangle loses (4 − π) r² to its corners, down to a circle', () => {
    const plate = rectangleContour({ centre: O, width: 100, height: 60, corner: 10 }, 'outline');
    expect(areaOf(plate)).toBeCloseTo(6000 - (4 - Math.PI) * 100, 9);
    expect(lengthOf(plate)).toBeCloseTo(302.8319, 4);
    const round = rectangleContour({ centre: O, width: 40, height: 40, corner: 20 }, 'outline');
    expect(areaOf(round)).toBeCloseTo(400 * Math.PI, 9);
    expect(() => rectangleContour({ centre: O, width: 40, height: 10, corner: 6 }, 'outline')).toThrow(
      GeometryError,
    );
  });
});

describe('hulls of circles', () => {
  test('two equal circles: half of each and two lines', () => {
    const belt = hullContour(
      [
        { centre: O, radius: 10 },
        { centre: { x: 30, y: 40 }, radius: 10 },
      ],
      'outline',
    );
    expect(lengthOf(belt)).toBeCloseTo(2 * 50 + 20 * Math.PI, 9);
    expect(belt).toHaveLength(4);
  });

  test('an open belt on wheels of radius 60 and 30, 150 apart is 588.8 long', () => {
    // Worked by hand: L = 2 √(C² − (R − r)²) + R (π + 2 a) + r (π − 2 a), a = asin(30/150) = 0.20136:
    // 293.939 + 60 × 3.54431 + 30 × 2.73887 = 588.764.
    const belt = hullContour(
      [
        { centre: O, radius: 60 },
        { centre: { x: 150, y: 0 }, radius: 30 },
      ],
      'outline',
    );
    expect(lengthOf(belt)).toBeCloseTo(588.764, 2);
  });

  test('a circle inside another changes nothing; points make a polygon', () => {
    const swallowed = hullContour(
      [
        { centre: O, radius: 20 },
        { centre: { x: 5, y: 0 }, radius: 4 },
      ],
      'outline',
    );
    expect(isCircle(swallowed)?.radius).toBe(20);
    const square = hullContour(
      [O, { x: 10, y: 0 }, { x: 10, y: 10 }, { x: 0, y: 10 }, { x: 5, y: 5 }].map((centre) => ({
        centre,
        radius: 0,
      })),
      'outline',
    );
    expect(square).toHaveLength(4);
    expect(areaOf(square)).toBeCloseTo(100, 9);
  });

  test('any few circles: a sound contour that holds every centre and reaches as far as the farthest', () => {
    const disc = fc.record({
      centre: fc.record({
        x: fc.integer({ min: -100, max: 100 }),
        y: fc.integer({ min: -100, max: 100 }),
      }),
      radius: fc.integer({ min: 1, max: 40 }),
    });
    fc.assert(
      fc.property(fc.array(disc, { minLength: 1, maxLength: 7 }), (discs) => {
        const belt = hullContour(discs, 'outline');
        expect(findFaults(belt)).toEqual([]);
        for (const { centre } of discs) expect(containsPoint(belt, centre)).toBe('inside');
        expect(boundsOf(belt).maxX).toBeCloseTo(
          Math.max(...discs.map(({ centre, radius }) => centre.x + radius)),
          6,
        );
        expect(boundsOf(belt).minY).toBeCloseTo(
          Math.min(...discs.map(({ centre, radius }) => centre.y - radius)),
          6,
        );
      }),
      { numRuns: 200, seed: 7 },
    );
  });

  test('nothing to go round is refused', () => {
    expect(() => hullContour([], 'outline')).toThrow(GeometryError);
  });
});

describe('corner reliefs', () => {
  const slot = [O, { x: 40, y: 0 }, { x: 40, y: 20 }, { x: 0, y: 20 }];

  test('a square corner becomes a half circle through the corner, 0.293 ρ past both sides', () => {
    const relieved = makeContour(
      relieveCorners(slot, () => 2),
      { direction: 'opening' },
    );
    const { minX, maxX, minY } = boundsOf(relieved);
    // Worked by hand: the middle stands 2 / √2 = 1.4142 inside both sides, the circle reaches 2 − 1.4142 past them.
    expect(minX).toBeCloseTo(-0.5858, 4);
    expect(maxX).toBeCloseTo(40.5858, 4);
    expect(minY).toBeCloseTo(-0.5858, 4);
    // Each corner gains the half disc outside its chord less the triangle that the chord cut off: π 4/2 − 4.
    expect(areaOf(relieved)).toBeCloseTo(-(800 + 4 * (2 * Math.PI - 4)), 9);
    expect(containsPoint(relieved, { x: 0, y: 0 })).toBe('on');
  });

  test('a corner asked for nothing stays sharp', () => {
    expect(relieveCorners(slot, (index) => (index === 0 ? 2 : 0))).toHaveLength(5);
  });

  test('reliefs that use up a side are refused', () => {
    expect(() => relieveCorners(slot, () => 8)).toThrow(GeometryError);
  });
});
