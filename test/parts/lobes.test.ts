// The lobed outside: ears and hollows that touch without a corner.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, makeContour, segmentsOf } from '../../parts-library/geometry/index.js';
import { drawLobes, floorOfScallop, scallopForFloor } from '../../parts-library/parts/shared/lobes.js';

const even = (count: number, reach: number, first = 90) =>
  Array.from({ length: count }, (_, index) => ({ degrees: first + (360 * index) / count, reach }));

describe('a hollow between two ears', () => {
  test('three ears of 10 on a circle of 80, hollow floor 20 from the middle: radius 55, worked by hand', () => {
    // R = 40, ρ = 10, q = 20, β = 60°: s = (100 − 400 − 1600 + 800) / (2 (20 − 20 − 10)) = −1100 / −20 = 55.
    expect(scallopForFloor(20, 40, 10, (120 * Math.PI) / 180)).toBeCloseTo(55, 10);
  });

  test('its floor comes back from its radius', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 30, max: 200, noNaN: true }),
        fc.integer({ min: 3, max: 8 }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        (reach, count, share) => {
          const half = Math.PI / count;
          const ear = 0.4 * reach * Math.sin(half);
          const lowest = reach * Math.cos(half) - (reach * Math.sin(half) - ear);
          const floor = lowest + share * (reach * Math.cos(half) + ear - lowest);
          const radius = scallopForFloor(floor, reach, ear, 2 * half);
          expect(radius).toBeDefined();
          expect(floorOfScallop(radius ?? 0, reach, ear, 2 * half)).toBeCloseTo(floor, 6);
        },
      ),
    );
  });

  test('a hollow too small to reach both ears does not exist', () => {
    expect(floorOfScallop(5, 100, 10, Math.PI / 2)).toBeUndefined();
  });
});

describe('the whole outside', () => {
  // 50 cos 22.5° − (50 sin 22.5° − 12) = 39.0598: eight ears stand too close for a hollow down to 34.
  test.each([
    [3, 34],
    [4, 34],
    [5, 34],
    [6, 34],
    [8, 39.059805],
  ])('%i lobes: valid, tangent at every joint, hollow down to %f', (count, lowest) => {
    const drawn = drawLobes(even(count, 50), 12, { floor: 34 });
    if (!drawn.ok) throw new Error(drawn.says);
    const contour = makeContour(drawn.value.vertices, { direction: 'outline' });
    const segments = segmentsOf(contour);
    segments.forEach((segment, index) => {
      const next = segments[(index + 1) % segments.length];
      if (segment.kind !== 'arc' || next?.kind !== 'arc') throw new Error('every side is an arc');
      // Tangent circles: centres and joint lie on one line.
      const cross =
        (segment.centre.x - next.from.x) * (next.centre.y - next.from.y) -
        (segment.centre.y - next.from.y) * (next.centre.x - next.from.x);
      expect(Math.abs(cross) / (segment.radius * next.radius)).toBeLessThan(1e-9);
    });
    expect(boundsOf(contour).maxY).toBeCloseTo(62, 9);
    expect(drawn.value.leastReach).toBeCloseTo(lowest, 6);
    expect(areaOf(contour)).toBeGreaterThan(Math.PI * 34 ** 2);
    expect(areaOf(contour)).toBeLessThan(Math.PI * 62 ** 2);
  });

  test('lobes that run into each other name the edge distance', () => {
    const drawn = drawLobes(even(8, 30), 13, { floor: 15 });
    expect(drawn).toMatchObject({ ok: false, field: 'edge' });
  });

  test('a web that leaves no room for a hollow names the web', () => {
    const drawn = drawLobes(even(5, 50), 10, { floor: 55 });
    expect(drawn).toMatchObject({ ok: false, field: 'web' });
  });
});
