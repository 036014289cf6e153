// Bars along circles, ears joined to an edge and bites taken out of it: by area, length and corners.
import { describe, expect, test } from 'vitest';
import {
  areaOf,
  biteContour,
  circleContour,
  containsPoint,
  joinContours,
  lengthOf,
  rectangleContour,
  roundCorners,
  tangentChain,
} from '../../parts-library/geometry/index.js';

const disc = (x: number, y: number, radius: number) => ({ centre: { x, y }, radius });

describe('a bar along circles', () => {
  test('two equal circles, radius 10, 50 apart: two sides of 50 and a whole circle', () => {
    const { contour, insideCorners } = tangentChain([disc(0, 0, 10), disc(50, 0, 10)]);
    expect(lengthOf(contour)).toBeCloseTo(100 + 20 * Math.PI, 9);
    expect(areaOf(contour)).toBeCloseTo(1000 + 100 * Math.PI, 9);
    expect(insideCorners).toEqual([]);
  });

  test('radii 20 and 10, 50 apart: sides of √(50² − 10²) = 48.990, worked by hand', () => {
    // Angle of the taper asin(10/50) = 11.537°; the large arc sweeps 180 + 2 × 11.537, the small one the rest.
    const taper = Math.asin(0.2);
    const { contour } = tangentChain([disc(0, 0, 20), disc(50, 0, 10)]);
    expect(lengthOf(contour)).toBeCloseTo(
      2 * Math.sqrt(2400) + 20 * (Math.PI + 2 * taper) + 10 * (Math.PI - 2 * taper),
      9,
    );
  });

  test('a right-angled bar has one arc outside the turn and one inside corner', () => {
    const { contour, insideCorners } = tangentChain([disc(0, 0, 10), disc(100, 0, 10), disc(100, 80, 10)]);
    // Bars of 100 × 20 and 80 × 20, two half circles at the ends, a quarter circle outside and 100 mm² shared inside.
    expect(areaOf(contour)).toBeCloseTo(2000 + 1600 + 100 * Math.PI + 25 * Math.PI - 100, 9);
    const corner = contour[insideCorners[0] ?? -1];
    expect(insideCorners).toHaveLength(1);
    expect(corner?.x).toBeCloseTo(90, 9);
    expect(corner?.y).toBeCloseTo(10, 9);
    // A fillet of 15 fills (1 − π/4) 15² of the corner.
    const radii = contour.map((_, index) => (insideCorners.includes(index) ? 15 : 0));
    expect(areaOf(roundCorners(contour, radii)) - areaOf(contour)).toBeCloseTo((1 - Math.PI / 4) * 225, 9);
  });

  test('a turn the other way mirrors it', () => {
    const up = tangentChain([disc(0, 0, 10), disc(100, 0, 12), disc(180, 40, 8)]);
    const down = tangentChain([disc(0, 0, 10), disc(100, 0, 12), disc(180, -40, 8)]);
    expect(areaOf(down.contour)).toBeCloseTo(areaOf(up.contour), 9);
    expect(down.insideCorners).toHaveLength(1);
  });

  test('cut straight across the end', () => {
    const { contour } = tangentChain([disc(0, 0, 10), disc(50, 0, 10)], { flatEnd: true });
    expect(areaOf(contour)).toBeCloseTo(1000 + 50 * Math.PI, 9);
  });

  test.each([
    [[disc(0, 0, 30), disc(10, 0, 5)], /inside its neighbour/],
    [[disc(0, 0, 10), disc(12, 0, 10), disc(0, 8, 10)], /do not meet/],
    [[disc(0, 0, 10)], /at least two/],
  ])('what cannot be drawn says why', (discs, says) => {
    expect(() => tangentChain(discs)).toThrow(says);
  });
});

describe('ears and bites', () => {
  const bar = rectangleContour({ centre: { x: 0, y: 0 }, width: 100, height: 20 }, 'outline');

  test('a circle of radius 15 round the middle of an edge adds its outer half', () => {
    const { contour, corners } = joinContours(bar, circleContour({ x: 0, y: 10 }, 15, 'outline'));
    expect(areaOf(contour)).toBeCloseTo(2000 + (225 * Math.PI) / 2, 9);
    expect(corners.map((index) => contour[index]?.x).sort((a = 0, b = 0) => a - b)).toEqual([-15, 15]);
  });

  test('the same circle as a bite takes its inner half, when that stays inside', () => {
    const { contour } = biteContour(bar, circleContour({ x: 20, y: 10 }, 5, 'outline'));
    expect(areaOf(contour)).toBeCloseTo(2000 - (25 * Math.PI) / 2, 9);
    expect(containsPoint(contour, { x: 20, y: 8 })).toBe('outside');
  });

  test('an ear over a corner of the bar', () => {
    const { contour } = joinContours(bar, circleContour({ x: 50, y: 10 }, 8, 'outline'));
    expect(areaOf(contour)).toBeCloseTo(2000 + (3 / 4) * 64 * Math.PI, 9);
  });

  test.each([
    ['none', circleContour({ x: 0, y: 0 }, 5, 'outline')],
    ['four', circleContour({ x: 0, y: 0 }, 15, 'outline')],
  ])('crossing at %s places is refused', (_, other) => {
    expect(() => joinContours(bar, other)).toThrow(/cross at/);
  });

  test('touching is refused', () => {
    expect(() => joinContours(bar, circleContour({ x: 0, y: 15 }, 5, 'outline'))).toThrow(/touch/);
  });
});
