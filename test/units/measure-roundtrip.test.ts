// Every measure written reads back to the same readings, in either unit.
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readMeasure, writeMeasure } from '../../parts-library/units/index.js';
import type { Size, Tagged, Unit } from '../../parts-library/units/index.js';
import { valueOf } from './units.js';

const distance = fc.double({ min: 0.001, max: 5000, noNaN: true });
const tolerance = fc.double({ min: 0, max: 2, noNaN: true });

const plusMinus: fc.Arbitrary<{ readonly plusMinus?: number }> = fc.oneof(
  fc.constant({}),
  tolerance.map((amount) => ({ plusMinus: amount })),
);
/** A distance and its ±, which is never larger. */
const sized: fc.Arbitrary<readonly [number, { readonly plusMinus?: number }]> = fc
  .tuple(distance, plusMinus)
  .map(([mm, rest]) => [mm, rest.plusMinus === undefined ? {} : { plusMinus: Math.min(rest.plusMinus, mm) }]);
const size: fc.Arbitrary<Size> = sized.map(([mm, rest]) => ({ mm, ...rest }));
const side = fc.constantFrom('near' as const, 'far' as const);
const step = fc.integer({ min: 1, max: 360 });

const tagged: fc.Arbitrary<Tagged> = fc.oneof(
  sized.map(([diameter, rest]): Tagged => ({ way: 'circle', diameter, ...rest })),
  fc
    .tuple(sized, step)
    .map(([[apart, rest], k]): Tagged => ({ way: 'steps', step: k, distance: apart, ...rest })),
  fc.tuple(sized, step, side, size).map(([[apart, rest], k, of, hole]): Tagged => ({
    way: 'edges',
    side: of,
    step: k,
    distance: apart,
    ...rest,
    hole,
  })),
  sized.map(([apart, rest]): Tagged => ({ way: 'across', side: 'centres', distance: apart, ...rest })),
  fc.tuple(sized, side, size).map(([[apart, rest], of, hole]): Tagged => ({
    way: 'across',
    side: of,
    distance: apart,
    ...rest,
    hole,
  })),
  fc.tuple(sized, size, size).map(([[apart, rest], bore, hole]): Tagged => ({
    way: 'from-bore',
    distance: apart,
    ...rest,
    bore,
    hole,
  })),
  fc
    .tuple(
      fc.array(
        fc.record({
          x: fc.double({ min: -5000, max: 5000, noNaN: true }),
          y: fc.double({ min: -5000, max: 5000, noNaN: true }),
        }),
        { minLength: 3, maxLength: 12 },
      ),
      plusMinus,
    )
    .map(([centres, rest]): Tagged => ({ way: 'centres', centres, ...rest })),
);

const pair: fc.Arbitrary<readonly Tagged[]> = fc
  .tuple(distance, distance, step)
  .map(([near, far, k]): readonly Tagged[] => [
    { way: 'edges', side: 'near', step: k, distance: near },
    { way: 'edges', side: 'far', step: k, distance: far },
  ]);

const several: fc.Arbitrary<readonly Tagged[]> = fc.oneof(
  pair,
  fc.array(tagged, { minLength: 1, maxLength: 5 }),
);

/** The same readings with every number replaced by its place, and the numbers in order. */
function partNumbers(readings: readonly Tagged[]): { readonly shape: string; readonly numbers: number[] } {
  const numbers: number[] = [];
  const sorted = (value: unknown): unknown => {
    if (typeof value === 'number') return numbers.push(value);
    if (Array.isArray(value)) return value.map(sorted);
    if (typeof value !== 'object' || value === null) return value;
    const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
    return entries.map(([key, inner]) => [key, sorted(inner)]);
  };
  return { shape: JSON.stringify(sorted(readings)), numbers };
}

function expectBack(readings: readonly Tagged[], unit: Unit, jobUnit: Unit): void {
  const written = writeMeasure({ typed: '', readings }, unit);
  const back = partNumbers(valueOf(readMeasure(written, { unit: jobUnit })).readings);
  const before = partNumbers(readings);
  expect(back.shape).toBe(before.shape);
  for (const [place, number] of before.numbers.entries()) {
    expect(Math.abs((back.numbers[place] ?? Number.NaN) - number)).toBeLessThanOrEqual(0.500001e-6);
  }
}

describe('a written measure reads back to the same readings within a millionth of a millimetre', () => {
  it('whatever unit it is written in and whatever job reads it', () => {
    const unit = fc.constantFrom('mm' as const, 'in' as const);
    fc.assert(fc.property(several, unit, unit, expectBack), { numRuns: 1000, seed: 8 });
  });
});
