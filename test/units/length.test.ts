// Lengths as people type them.
import { describe, expect, it, test } from 'vitest';
import { readLength } from '../../parts-library/units/index.js';
import { mm, valueOf } from './units.js';

// 1 in = 25.4 mm exactly, 1 ft = 304.8 mm exactly: NIST SP 811 (2008), Appendix B.8. The rest is arithmetic.
describe('a length typed in a millimetre job', () => {
  test.each([
    ['35', 35],
    ['35 mm', 35],
    ['35mm', 35],
    ['  35  ', 35],
    ['35.', 35],
    ['.5', 0.5],
    ['0', 0],
    ['3.5cm', 35],
    ['0.5m', 500],
    ['250 µm', 0.25],
    ['5 thou', 0.127],
    ['1 3/8', 1.375],
    ['1 3/8"', 34.925],
    ['1-3/8"', 34.925],
    ['1-3/8 in', 34.925],
    ['1-3/8', 1.375],
    ['1.375in', 34.925],
    ['1.375 in.', 34.925],
    ['1.375"', 34.925],
    ['1.375 INCHES', 34.925],
    ['7/16', 0.4375],
    ['7/16"', 11.1125],
    ['1/2in', 12.7],
    ['2*17.5+3', 38],
    ['2×17.5+3', 38],
    ['2 x 17.5 + 3', 38],
    ['(4+1/2)in', 114.3],
    ['4 1/2 in', 114.3],
    ['1in + 3mm', 28.4],
    ['1in + 3', 28.4],
    ['3 + 1in', 28.4],
    ['2*1in', 50.8],
    ['1in/2', 12.7],
    ['35 − 3', 32],
    ['35 – 3', 32],
    ['35-3', 32],
    ['5 + -3', 2],
    ['--5', 5],
    ['((35))', 35],
    ['½', 0.5],
    ['1½', 1.5],
    ['1 ¼ in', 31.75],
    ['2-¾"', 69.85],
    ['1⅜″', 34.925],
    ['1⁄2 in', 12.7],
    [`1' 2"`, 355.6],
    [`1'2"`, 355.6],
    [`1'-2"`, 355.6],
    [`1' 2`, 355.6],
    [`1'2-1/2"`, 368.3],
    [`1'-2 1/2"`, 368.3],
    ['1′ 2½″', 368.3],
    [`1' 2''`, 355.6],
    ['2 ft', 609.6],
    ['2 ft 3 in', 685.8],
    [`1.5'`, 457.2],
    ['57,1', 57.1],
    [',5', 0.5],
    ['0,125', 0.125],
    ['12,3456', 12.3456],
    ['1234,567', 1234.567],
    ['1.234', 1.234],
    ['57,1 * 2', 114.2],
    ['100 m', 100_000],
  ])('%s is %d mm', (text, expected) => {
    expect(mm(text)).toBeCloseTo(expected, 10);
  });
});

describe('a length typed in an inch job', () => {
  test.each([
    ['1.375', 34.925],
    ['1 3/8', 34.925],
    ['1-3/8', 34.925],
    ['7/16', 11.1125],
    ['35 mm', 35],
    ['2*1.5+1/4', 82.55],
    ['1 + 3mm', 28.4],
    ['1,5', 38.1],
  ])('%s is %d mm', (text, expected) => {
    expect(mm(text, { unit: 'in' })).toBeCloseTo(expected, 10);
  });
});

describe('a hyphen', () => {
  it('joins a whole number and a proper fraction when nothing stands between them', () => {
    expect(mm('1-3/8')).toBe(1.375);
    expect(mm('10 + 1-3/8')).toBe(11.375);
    expect(mm('5-1-3/8')).toBe(3.625);
  });
  it('subtracts with blanks, as a typeset minus, and before a fraction that is not proper', () => {
    expect(mm('1 - 3/8')).toBe(0.625);
    expect(mm('1−3/8')).toBe(0.625);
    expect(mm('10-9/2')).toBe(5.5);
    expect(mm('1.5-3/8')).toBe(1.125);
  });
  it('joins feet and inches when nothing stands between them, and subtracts with blanks or another unit', () => {
    expect(mm(`1'-2"`)).toBeCloseTo(355.6, 10);
    expect(mm(`1' - 2"`)).toBeCloseTo(254, 10);
    expect(mm(`1'-2mm`)).toBeCloseTo(302.8, 10);
  });
});

describe('a division', () => {
  it('by a number keeps the length, and a fraction takes the unit after it as a whole', () => {
    expect(mm('3in/4')).toBeCloseTo(19.05, 10);
    expect(mm('3/4in')).toBeCloseTo(19.05, 10);
    expect(mm('2*3/4in')).toBeCloseTo(38.1, 10);
    expect(mm('17.5/2 in')).toBeCloseTo(222.25, 10);
  });
  it('of a length by a length is a ratio that scales a length or takes a unit', () => {
    expect(mm('35mm * (10in/4in)')).toBeCloseTo(87.5, 10);
    expect(mm('35mm / (10in/4in)')).toBeCloseTo(14, 10);
    expect(mm('(10in/4in) mm')).toBeCloseTo(2.5, 10);
    expect(mm('(10in/4in + 1) mm')).toBeCloseTo(3.5, 10);
  });
  it('is done from the left', () => {
    expect(mm('8/4/2')).toBe(1);
    expect(mm('8/1-1/2')).toBeCloseTo(8 / 1.5, 12);
    expect(mm('10-8/4*3')).toBe(4);
  });
});

describe('a ±', () => {
  test.each([
    ['57.1±0.1', 'mm', 57.1, 0.1],
    ['57.1 +/- 0.1', 'mm', 57.1, 0.1],
    ['57.1+-0.1', 'mm', 57.1, 0.1],
    ['57,1±0,1', 'mm', 57.1, 0.1],
    ['2*28.55 ± 0.2/2', 'mm', 57.1, 0.1],
    ['57.15 ± 0.1 mm', 'in', 57.15, 0.1],
    ['57.15 mm ± 0.1', 'in', 57.15, 0.1],
    ['(2+1/4)in ± (0.0025 in * 2)', 'mm', 57.15, 0.127],
    ['(57.15 ± 0.1) mm', 'in', 57.15, 0.1],
    ['2.25in ± 0.005in', 'mm', 57.15, 0.127],
    ['2.25in ± 0.005', 'mm', 57.15, 0.127],
    ['2.25 ± 0.005', 'in', 57.15, 0.127],
    ['2.25 ± 5 thou', 'in', 57.15, 0.127],
    ['57.15 ± 50 µm', 'mm', 57.15, 0.05],
    [`1' 2" ± 1/16`, 'mm', 355.6, 1.5875],
    ['57.1 ± 0', 'mm', 57.1, 0],
  ] as const)('%s in a job in %s is %d mm ± %d mm', (text, unit, length, plusMinus) => {
    const read = valueOf(readLength(text, { unit }));
    expect(read.mm).toBeCloseTo(length, 10);
    expect(read.plusMinus).toBeCloseTo(plusMinus, 10);
  });
  it('is absent when none was typed', () => {
    expect(valueOf(readLength('57.1', { unit: 'mm' }))).toEqual({ typed: '57.1', mm: 57.1 });
  });
});

describe('a negative length', () => {
  it('is read where it makes sense', () => {
    expect(mm('-52.4', { unit: 'mm', allowNegative: true })).toBe(-52.4);
    expect(mm('-1-3/8"', { unit: 'mm', allowNegative: true })).toBeCloseTo(-34.925, 10);
    expect(mm('3 - 5', { unit: 'mm', allowNegative: true })).toBe(-2);
  });
  it('is never -0', () => {
    expect(Object.is(mm('-0', { unit: 'mm' }), 0)).toBe(true);
  });
});

describe('a number instead of a text', () => {
  it('is in mm whatever the unit of the job, and says so', () => {
    expect(valueOf(readLength(35, { unit: 'in' }))).toEqual({ typed: '35 mm', mm: 35 });
    expect(valueOf(readLength(1e-7, { unit: 'mm' })).mm).toBe(1e-7);
  });
});
