// Random contours for property tests: a seed that draws a polygon, a filleted polygon or one with random bulges.
import fc from 'fast-check';
import type { Contour } from '../../../parts-library/geometry/index.js';
import { randomBulged, randomFilleted, randomPolygon, seeded } from './random.js';

/** Sound outlines of 6 to 60 segments, some 100 mm across. */
export const contours: fc.Arbitrary<Contour> = fc
  .tuple(fc.nat(100_000), fc.constantFrom('polygon', 'filleted', 'bulged'))
  .map(([seed, kind]) => {
    const random = seeded(seed * 31 + 7);
    for (let i = 0; i < 5; i++) random();
    if (kind === 'polygon') return randomPolygon(random);
    if (kind === 'filleted') return randomFilleted(random);
    return randomBulged(random) ?? randomFilleted(random);
  });

/** A point within a square of 160 mm about the origin. */
export const points = fc.record({
  x: fc.double({ min: -80, max: 80, noNaN: true }),
  y: fc.double({ min: -80, max: 80, noNaN: true }),
});
