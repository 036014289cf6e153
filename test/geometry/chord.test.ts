// Chords on a stated side within a stated error, and fillets.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  areaOf,
  chordContour,
  chordCount,
  circleContour,
  findFaults,
  lengthOf,
  makeContour,
  reverseContour,
  roundCorners,
  segmentsOf,
} from '../../parts-library/geometry/index.js';
import { contours } from './support/arbitraries.js';
import { createField, flatten, polygonArea, windings } from './support/field.js';
import { polygon, rectangle, star } from './support/shapes.js';

describe('chords', () => {
  // Sagitta of a chord: r (1 - cos(step / 2)); 36 chords to a half circle of radius 10: 0.0095, 35: 0.01007.
  test('a half circle of radius 10 within 0.01 takes 36 chords', () => {
    expect(chordCount(10, Math.PI, 0.01)).toBe(36);
    expect(10 * (1 - Math.cos(Math.PI / 72))).toBeLessThan(0.01);
    expect(10 * (1 - Math.cos(Math.PI / 70))).toBeGreaterThan(0.01);
  });

  test('a circle: inscribed is smaller, circumscribed is larger, by the error times the length at most', () => {
    const circle = circleContour({ x: 0, y: 0 }, 10, 'outline');
    const exact = 100 * Math.PI;
    const inside = polygonArea(chordContour(circle, 0.01, 'inside'));
    const outside = polygonArea(chordContour(circle, 0.01, 'outside'));
    expect(inside).toBeLessThan(exact);
    expect(outside).toBeGreaterThan(exact);
    expect(exact - inside).toBeLessThan(0.01 * 62.84);
    expect(outside - exact).toBeLessThan(0.01 * 62.84);
  });

  test('keep to their side and their error, whichever way the contour runs', () => {
    fc.assert(
      fc.property(
        contours,
        fc.constantFrom('outside', 'inside', 'on'),
        fc.constantFrom(0.01, 0.2),
        fc.boolean(),
        (outline, side, tolerance, reversed) => {
          const contour = reversed ? reverseContour(outline) : outline;
          const chords = chordContour(contour, tolerance, side);
          const field = createField([contour]);
          const fine = flatten(contour, 1e-6);
          chords.forEach((p, i) => {
            const q = chords[(i + 1) % chords.length] ?? p;
            for (const t of [0, 0.25, 0.5]) {
              const at = { x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t };
              const off = field(at);
              expect(off).toBeLessThan(tolerance + 1e-9);
              // A clear distance from the contour must be on the stated side.
              if (side === 'on' || off < 1e-5) continue;
              expect(windings(fine, at) !== 0).toBe(side === 'inside');
            }
          });
        },
      ),
      { numRuns: 40, seed: 51 },
    );
  });
});

describe('fillets', () => {
  test('a 100 x 60 plate with 10: eight segments, 240 + 20 pi round', () => {
    const plate = roundCorners(rectangle(100, 60), 10);
    expect(plate.length).toBe(8);
    expect(lengthOf(plate)).toBeCloseTo(240 + 20 * Math.PI, 10);
    expect(segmentsOf(plate).flatMap((s) => (s.kind === 'arc' ? [s.radius] : []))[0]).toBeCloseTo(10, 12);
  });

  test('one radius per corner; 0 leaves it sharp', () => {
    const plate = roundCorners(rectangle(100, 60), [0, 5, 0, 20]);
    expect(plate.length).toBe(6);
    expect(areaOf(plate)).toBeCloseTo(6000 - (1 - Math.PI / 4) * (25 + 400), 10);
  });

  test('as large as half the height, the short sides are gone: a slot shape', () => {
    const obround = roundCorners(rectangle(100, 60), 30);
    expect(obround.length).toBe(6);
    expect(areaOf(obround)).toBeCloseTo(40 * 60 + Math.PI * 900, 9);
  });

  test('an inner corner gets a fillet that adds metal: (1 - pi / 4) r^2', () => {
    const bracket = polygon([0, 0], [80, 0], [80, 20], [20, 20], [20, 60], [0, 60]);
    const filleted = roundCorners(bracket, [0, 0, 0, 8, 0, 0]);
    expect(areaOf(filleted) - areaOf(bracket)).toBeCloseTo((1 - Math.PI / 4) * 64, 10);
  });

  test('between a line and an arc it is tangent to both', () => {
    // A D shape: half disc of radius 20 on a diameter; corners of 90 degrees between line and arc.
    const shape = makeContour([
      { x: -20, y: 0, bulge: 0 },
      { x: 20, y: 0, bulge: 1 },
    ]);
    const rounded = roundCorners(shape, 3);
    // The centre is 3 above the line and 17 from the middle: (sqrt(17^2 - 3^2), 3); it meets the line below itself.
    expect(rounded.length).toBe(4);
    const x = Math.sqrt(17 ** 2 - 3 ** 2);
    expect(rounded.some((v) => Math.abs(v.x - x) < 1e-9 && Math.abs(v.y) < 1e-9)).toBe(true);
    expect(findFaults(rounded)).toEqual([]);
  });

  test('that does not fit is refused, with its place', () => {
    expect(() => roundCorners(rectangle(100, 60), 31)).toThrow(/overlap by 2\.000 mm/);
    expect(() => roundCorners(rectangle(100, 60), [0, 70, 0, 0])).toThrow(
      /radius 70 does not fit at vertex 1/,
    );
    expect(() => roundCorners(rectangle(100, 60), -1)).toThrow(/radius of zero or more/);
  });

  test('of a star stay tangent at every joint', () => {
    const rounded = roundCorners(star(), 0.5);
    const segments = segmentsOf(rounded);
    segments.forEach((s, i) => {
      const next = segments[(i + 1) % segments.length];
      if (next === undefined) return;
      const u = headingOf(s, 1);
      const v = headingOf(next, 0);
      expect(Math.abs(u.x * v.y - u.y * v.x)).toBeLessThan(1e-9);
    });
  });
});

function headingOf(segment: ReturnType<typeof segmentsOf>[number], end: 0 | 1): { x: number; y: number } {
  if (segment.kind === 'line') {
    const dx = segment.to.x - segment.from.x;
    const dy = segment.to.y - segment.from.y;
    return { x: dx / Math.hypot(dx, dy), y: dy / Math.hypot(dx, dy) };
  }
  const p = end === 0 ? segment.from : segment.to;
  const turn = Math.sign(segment.sweep) / segment.radius;
  return { x: -(p.y - segment.centre.y) * turn, y: (p.x - segment.centre.x) * turn };
}
