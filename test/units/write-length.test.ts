// Lengths written in either unit, in both, and as shop fractions.
import * as fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  echoLength,
  readLength,
  writeDecimal,
  writeFraction,
  writeLength,
} from '../../parts-library/units/index.js';
import { mm, valueOf } from './units.js';

describe('a length is written', () => {
  test.each([
    [35, 'mm', '35 mm'],
    [34.925, 'in', '1.375 in'],
    [57.15, 'mm', '57.15 mm'],
    [11.1125, 'in', '0.4375 in'],
    [100, 'mm', '100 mm'],
    [0, 'mm', '0 mm'],
    [-0, 'mm', '0 mm'],
    [-0.0001, 'mm', '0 mm'],
    [-52.4, 'mm', '-52.4 mm'],
    [0.1 + 0.2, 'mm', '0.3 mm'],
  ] as const)('%d mm in %s as %s', (length, unit, text) => {
    expect(writeLength(length, { unit })).toBe(text);
  });
  it('with as many decimals as asked for, none included', () => {
    expect(writeLength(35, { unit: 'in', decimals: 2 })).toBe('1.38 in');
    expect(writeLength(1200, { unit: 'mm', decimals: 0 })).toBe('1200 mm');
  });
  it('in both units to echo what was understood', () => {
    expect(echoLength(35)).toBe('35 mm · 1.378 in');
    expect(echoLength(34.925)).toBe('34.925 mm · 1.375 in');
  });
  it('never as something that is not a number', () => {
    expect(() => writeLength(Number.NaN, { unit: 'mm' })).toThrow(RangeError);
    expect(() => writeDecimal(Number.POSITIVE_INFINITY, 3)).toThrow(RangeError);
    expect(() => writeFraction(Number.NaN)).toThrow(RangeError);
  });
});

describe('a shop fraction', () => {
  test.each([
    [34.925, '1-3/8"'],
    [12.7, '1/2"'],
    [25.4, '1"'],
    [0, '0"'],
    [11.1125, '7/16"'],
    [0.396875, '1/64"'],
    [114.3, '4-1/2"'],
    [-34.925, '-1-3/8"'],
    [50.403125, '1-63/64"'],
  ])('of %d mm is %s, exactly', (length, text) => {
    expect(writeFraction(length)).toEqual({ text, errorMm: 0 });
  });
  it('says by how much it misses: 35 mm is 1-3/8" less 0.075 mm', () => {
    const fraction = writeFraction(35);
    expect(fraction.text).toBe('1-3/8"');
    expect(fraction.errorMm).toBeCloseTo(-0.075, 12);
  });
  it('of nearly an inch is the inch', () => {
    expect(writeFraction(25.3)).toEqual({ text: '1"', errorMm: expect.closeTo(0.1, 12) });
  });
  it('of nearly nothing has no sign', () => {
    expect(writeFraction(-0.1).text).toBe('0"');
    expect(writeFraction(-0.1).errorMm).toBeCloseTo(0.1, 12);
  });
  it('reads back to what it says, and is never further off than 1/128 in', () => {
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), (length) => {
        const { text, errorMm } = writeFraction(length);
        expect(mm(text, { unit: 'mm', allowNegative: true })).toBeCloseTo(length + errorMm, 8);
        expect(Math.abs(errorMm)).toBeLessThanOrEqual(25.4 / 128 + 1e-9);
      }),
      { numRuns: 1000, seed: 3 },
    );
  });
});

describe('a written length reads back', () => {
  it('within the last decimal printed, in either unit and any count of decimals', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -99_999, max: 99_999, noNaN: true }),
        fc.constantFrom('mm' as const, 'in' as const),
        fc.integer({ min: 0, max: 8 }),
        (length, unit, decimals) => {
          const text = writeLength(length, { unit, decimals });
          const half = (0.5 * (unit === 'mm' ? 1 : 25.4)) / 10 ** decimals;
          const read = valueOf(readLength(text, { unit: 'mm', allowNegative: true })).mm;
          expect(Math.abs(read - length)).toBeLessThanOrEqual(half + 1e-9);
          expect(text).not.toMatch(/^-0 /u);
          expect(text).not.toMatch(/\.\d*0 /u);
        },
      ),
      { numRuns: 1000, seed: 4 },
    );
  });
});
