// How far metal reaches from a point in one direction.
import { describe, expect, test } from 'vitest';
import { circleContour, polygonContour, reachAlong } from '../../parts-library/geometry/index.js';

describe('reach along a direction', () => {
  test('from the middle of a circle every direction reaches the radius', () => {
    const circle = circleContour({ x: 3, y: -4 }, 20, 'outline');
    for (const degrees of [0, 37, 90, 200, 359]) {
      const angle = (degrees * Math.PI) / 180;
      expect(reachAlong(circle, { x: 3, y: -4 }, { x: Math.cos(angle), y: Math.sin(angle) })).toBeCloseTo(
        20,
        6,
      );
    }
  });

  test('in a rectangle it is the nearest side ahead, whatever the length of the direction', () => {
    // 40 x 60 from the origin; from (10, 20) along (3, 4): the right side is met at (40, 60) after 50 (3-4-5 triangle).
    const plate = polygonContour([
      { x: 0, y: 0 },
      { x: 40, y: 0 },
      { x: 40, y: 100 },
      { x: 0, y: 100 },
    ]);
    expect(reachAlong(plate, { x: 10, y: 20 }, { x: 3, y: 4 })).toBeCloseTo(50, 6);
    expect(reachAlong(plate, { x: 10, y: 20 }, { x: 0, y: -0.1 })).toBeCloseTo(20, 6);
  });

  test('a ray that leaves from outside and away meets nothing', () => {
    const circle = circleContour({ x: 0, y: 0 }, 5, 'outline');
    expect(reachAlong(circle, { x: 10, y: 0 }, { x: 1, y: 0 })).toBe(Infinity);
  });
});
