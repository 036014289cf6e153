// Contours that repeat round the origin: one sector drawn, the rest turned.
import { describe, expect, test } from 'vitest';
import {
  areaOf,
  findFaults,
  lengthOf,
  turnedContour,
  type Vertex,
} from '../../parts-library/geometry/index.js';

const at = (radius: number, degrees: number, bulge = 0): Vertex => ({
  x: radius * Math.cos((degrees * Math.PI) / 180),
  y: radius * Math.sin((degrees * Math.PI) / 180),
  bulge,
});

describe('a sector turned round the origin', () => {
  test('one corner, four times, is a square of side 14.142', () => {
    const square = turnedContour([at(10, 0)], 4);
    expect(square).toHaveLength(4);
    expect(areaOf(square)).toBeCloseTo(200, 9);
  });

  test('a sixth of a circle, six times, is the circle', () => {
    // A quarter of 60° is 15°.
    const circle = turnedContour([at(20, 0, Math.tan(Math.PI / 12))], 6);
    expect(areaOf(circle)).toBeCloseTo(400 * Math.PI, 9);
    expect(lengthOf(circle)).toBeCloseTo(40 * Math.PI, 9);
  });

  test('a five-pointed star closes, and the general inspection finds nothing wrong with it', () => {
    const star = turnedContour([at(10, 0), at(4, 36)], 5);
    expect(star).toHaveLength(10);
    expect(findFaults(star)).toEqual([]);
  });

  test.each([
    ['two turns', [at(10, 0)], 2, /whole number of turns from 3/],
    ['half a turn too many', [at(10, 0)], 4.5, /whole number of turns from 3/],
    ['nothing to turn', [], 4, /needs a sector/],
    [
      'a sector that crosses itself',
      [at(10, 0), at(5, 40), at(5, 10), at(8, 50)],
      5,
      /segments 0 and 2 - cross/,
    ],
    ['a sector that runs into the next', [at(10, 0), at(5, 80)], 5, /cross/],
    [
      'a sector that goes the long way round',
      [at(10, 0), at(5, -90), at(5, 180), at(5, 120)],
      5,
      /clockwise/,
    ],
    ['a sector that reaches beyond its first vertex', [at(10, 0), at(12, 30)], 5, /farther out/],
    ['an arc that reaches beyond it', [at(10, 0, 0.9)], 6, /farther out/],
  ] as const)('%s is refused in a sentence', (_name, sector, count, says) => {
    expect(() => turnedContour(sector, count)).toThrow(says);
  });
});
