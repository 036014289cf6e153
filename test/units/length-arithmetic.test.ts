// The reader's arithmetic against exact rational arithmetic on the same sum, written out as text.
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLength } from '../../parts-library/units/index.js';
import { valueOf } from './units.js';

/** An exact fraction of whole numbers. */
interface Rational {
  readonly above: bigint;
  readonly below: bigint;
}

/** A sum as text with its exact value in mm (or plain), and how tightly its outermost sign binds. */
interface Sum {
  readonly text: string;
  readonly exact: Rational;
  readonly binds: 'sum' | 'product' | 'term';
}

const rational = (above: bigint, below: bigint): Rational => ({ above, below });
const plus = (a: Rational, b: Rational): Rational =>
  rational(a.above * b.below + b.above * a.below, a.below * b.below);
const times = (a: Rational, b: Rational): Rational => rational(a.above * b.above, a.below * b.below);
const negative = (a: Rational): Rational => rational(-a.above, a.below);
const inverse = (a: Rational): Rational => rational(a.below, a.above);

// Scaled so that the quotient of two large whole numbers keeps its digits.
function toNumber(a: Rational): number {
  const scale = 10n ** 24n;
  return Number((a.above * scale) / a.below) / 1e24;
}

const inBrackets = (sum: Sum, ...tooLoose: ReadonlyArray<Sum['binds']>): string =>
  tooLoose.includes(sum.binds) ? `(${sum.text})` : sum.text;

const added = (a: Sum, b: Sum): Sum => ({
  text: `${a.text} + ${b.text}`,
  exact: plus(a.exact, b.exact),
  binds: 'sum',
});
const subtracted = (a: Sum, b: Sum): Sum => ({
  text: `${a.text} - ${inBrackets(b, 'sum')}`,
  exact: plus(a.exact, negative(b.exact)),
  binds: 'sum',
});
const multiplied = (a: Sum, b: Sum, tight: boolean): Sum => ({
  text: `${inBrackets(a, 'sum')}${tight ? '*' : ' × '}${inBrackets(b, 'sum', 'product')}`,
  exact: times(a.exact, b.exact),
  binds: 'product',
});
const divided = (a: Sum, b: Sum, tight: boolean): Sum => ({
  text: `${inBrackets(a, 'sum')}${tight ? '/' : ' / '}${inBrackets(b, 'sum', 'product')}`,
  exact: times(a.exact, inverse(b.exact)),
  binds: 'product',
});

const decimal = fc
  .record({ thousandths: fc.integer({ min: 1, max: 99_999 }), comma: fc.boolean() })
  .map(({ thousandths, comma }): Sum => {
    const [whole = '', part = ''] = (thousandths / 1000).toFixed(3).split('.');
    // Four decimals keep a comma from looking like a thousands mark.
    return {
      text: comma ? `${whole},${part}0` : `${whole}.${part}`,
      exact: rational(BigInt(thousandths), 1000n),
      binds: 'term',
    };
  });

const mixed = fc
  .record({
    whole: fc.integer({ min: 1, max: 40 }),
    power: fc.integer({ min: 1, max: 6 }),
    seed: fc.nat(),
    hyphen: fc.boolean(),
  })
  .map(({ whole, power, seed, hyphen }): Sum => {
    const below = 2 ** power;
    const above = 1 + (seed % (below - 1));
    return {
      text: `${whole}${hyphen ? '-' : ' '}${above}/${below}`,
      exact: rational(BigInt(whole * below + above), BigInt(below)),
      binds: 'term',
    };
  });

const plain: fc.Arbitrary<Sum> = fc.letrec<{ sum: Sum; number: Sum }>((tie) => ({
  number: fc.oneof(decimal, mixed),
  sum: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    tie('number'),
    fc.tuple(tie('sum'), tie('sum')).map(([a, b]) => added(a, b)),
    fc.tuple(tie('sum'), tie('sum')).map(([a, b]) => subtracted(a, b)),
    fc.tuple(tie('sum'), tie('sum'), fc.boolean()).map(([a, b, tight]) => multiplied(a, b, tight)),
    fc.tuple(tie('sum'), tie('number'), fc.boolean()).map(([a, b, tight]) => divided(a, b, tight)),
  ),
})).sum;

// Exact factors to mm: NIST SP 811 (2008), B.8.
const UNITS: ReadonlyArray<readonly [string, Rational]> = [
  ['mm', rational(1n, 1n)],
  ['cm', rational(10n, 1n)],
  [' in', rational(254n, 10n)],
  ['"', rational(254n, 10n)],
  [' ft', rational(3048n, 10n)],
];

const length: fc.Arbitrary<Sum> = fc.letrec<{ sum: Sum; length: Sum }>((tie) => ({
  length: fc
    .tuple(fc.oneof(decimal, mixed), fc.constantFrom(...UNITS))
    .map(([number, [name, factor]]): Sum => ({
      text: `${number.text}${name}`,
      exact: times(number.exact, factor),
      binds: 'term',
    })),
  sum: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    tie('length'),
    fc.tuple(tie('sum'), tie('sum')).map(([a, b]) => added(a, b)),
    fc.tuple(tie('sum'), plain).map(([a, b]) => added(a, b)),
    fc.tuple(tie('sum'), tie('sum')).map(([a, b]) => subtracted(a, b)),
    fc.tuple(tie('sum'), plain, fc.boolean()).map(([a, b, tight]) => multiplied(a, b, tight)),
    fc.tuple(plain, tie('sum'), fc.boolean()).map(([a, b, tight]) => multiplied(a, b, tight)),
    fc.tuple(tie('sum'), mixed, fc.boolean()).map(([a, b, tight]) => divided(a, b, tight)),
    fc.tuple(plain, fc.constantFrom(...UNITS)).map(([number, [name, factor]]): Sum => ({
      text: `(${number.text})${name}`,
      exact: times(number.exact, factor),
      binds: 'term',
    })),
  ),
})).sum;

// Sums may cancel, so closeness is judged against a length that such sums pass through, not the result alone.
function expectRead(sum: Sum): void {
  const exact = toNumber(sum.exact);
  fc.pre(sum.text.length <= 200 && Math.abs(exact) < 90_000);
  const read = valueOf(readLength(sum.text, { unit: 'mm', allowNegative: true })).mm;
  expect(Math.abs(read - exact)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(exact)));
}

describe('the arithmetic of a typed length agrees with exact fractions', () => {
  it('for bare numbers', () => {
    fc.assert(fc.property(plain, expectRead), { numRuns: 1000, seed: 1 });
  });
  it('for numbers and lengths in several units', () => {
    fc.assert(fc.property(length, expectRead), { numRuns: 1000, seed: 2 });
  });
});
