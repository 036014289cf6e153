// Measured bolt patterns: what each way of typing them means, and what is said when it means nothing.
import { describe, expect, it, test } from 'vitest';
import { MEASURE_WAYS, readMeasure, writeMeasure } from '../../parts-library/units/index.js';
import type { Tagged } from '../../parts-library/units/index.js';
import { problemOf, readings, valueOf } from './units.js';

const CLAIMS: ReadonlyArray<readonly [string, Tagged]> = [
  ['circle 95', { way: 'circle', diameter: 95 }],
  ['95', { way: 'circle', diameter: 95 }],
  ['95 ± 0.2', { way: 'circle', diameter: 95, plusMinus: 0.2 }],
  ['2*47.5', { way: 'circle', diameter: 95 }],
  ['(40+7.5)*2 mm', { way: 'circle', diameter: 95 }],
  ['Circle 57,1', { way: 'circle', diameter: 57.1 }],
  ['circle 5in', { way: 'circle', diameter: 127 }],
  ['adjacent 55.84±0.1', { way: 'steps', step: 1, distance: 55.84, plusMinus: 0.1 }],
  ['every-2nd 90.35', { way: 'steps', step: 2, distance: 90.35 }],
  ['every-3rd 80', { way: 'steps', step: 3, distance: 80 }],
  ['every-4th 80', { way: 'steps', step: 4, distance: 80 }],
  ['every-2 80', { way: 'steps', step: 2, distance: 80 }],
  ['near-edges 47.3 hole 8.5', { way: 'edges', side: 'near', step: 1, distance: 47.3, hole: { mm: 8.5 } }],
  [
    'near-edges 47.3±0.1 hole 8.5±0.05 step 2',
    {
      way: 'edges',
      side: 'near',
      step: 2,
      distance: 47.3,
      plusMinus: 0.1,
      hole: { mm: 8.5, plusMinus: 0.05 },
    },
  ],
  [
    'far-edges 64.3 step 2 hole 8.5',
    { way: 'edges', side: 'far', step: 2, distance: 64.3, hole: { mm: 8.5 } },
  ],
  ['across 110', { way: 'across', side: 'centres', distance: 110 }],
  ['across near-edges 101.5 hole 8.5', { way: 'across', side: 'near', distance: 101.5, hole: { mm: 8.5 } }],
  ['across far-edges 118.5 hole 8.5', { way: 'across', side: 'far', distance: 118.5, hole: { mm: 8.5 } }],
  [
    'from-bore 20.5 bore 57.15 hole 8.5',
    { way: 'from-bore', distance: 20.5, bore: { mm: 57.15 }, hole: { mm: 8.5 } },
  ],
  [
    'from-bore 20.5±0.1 hole 8.5 bore 57.15±0.02',
    {
      way: 'from-bore',
      distance: 20.5,
      plusMinus: 0.1,
      bore: { mm: 57.15, plusMinus: 0.02 },
      hole: { mm: 8.5 },
    },
  ],
];

describe('a measure typed in a millimetre job', () => {
  test.each(CLAIMS)('%s', (text, expected) => {
    expect(readings(text)).toEqual([expected]);
  });

  it('keeps what was typed', () => {
    expect(valueOf(readMeasure('adjacent 55.84', { unit: 'mm' })).typed).toBe('adjacent 55.84');
  });

  it('as a bare number in an inch job is in inches, and as a JSON number in mm', () => {
    expect(readings('circle 4.5', 'in')).toEqual([{ way: 'circle', diameter: 4.5 * 25.4 }]);
    expect(valueOf(readMeasure(95, { unit: 'in' }))).toEqual({
      typed: '95 mm',
      readings: [{ way: 'circle', diameter: 95 }],
    });
  });

  it('takes every way that it names as accepted', () => {
    for (const { example } of MEASURE_WAYS) expect(readings(example).length).toBeGreaterThan(0);
  });
});

describe('several readings of one pattern', () => {
  it('are parted by semicolons', () => {
    expect(readings('circle 95; adjacent 55.84;')).toEqual([
      { way: 'circle', diameter: 95 },
      { way: 'steps', step: 1, distance: 55.84 },
    ]);
  });
  it('need no hole size when both sides of one pair are there', () => {
    expect(readings('near-edges 47.3; far-edges 64.3')).toEqual([
      { way: 'edges', side: 'near', step: 1, distance: 47.3 },
      { way: 'edges', side: 'far', step: 1, distance: 64.3 },
    ]);
    expect(readings('across far-edges 118.5; across near-edges 101.5')).toEqual([
      { way: 'across', side: 'far', distance: 118.5 },
      { way: 'across', side: 'near', distance: 101.5 },
    ]);
  });
});

describe('hole centres', () => {
  const three: Tagged = {
    way: 'centres',
    centres: [
      { x: 0, y: 55.2 },
      { x: -52.4, y: 17.1 },
      { x: 52.5, y: 17 },
    ],
  };
  test.each([
    ['centres (0,55.2) (-52.4,17.1) (52.5,17)', three],
    ['centers ( 0 , 55.2 )(-52.4, 17.1)(105/2, 17)', three],
    ['centres (0; 55,2) (-52,4; 17,1) (52,5; 17)', three],
    ['centres (0; 55.2) (-52.4, 17.1) (52,5; 17)', three],
    ['centres (0,55.2) (-52.4,17.1) (52.5,17) ±0.05', { ...three, plusMinus: 0.05 }],
  ] as const)('%s', (text, expected) => {
    expect(readings(text)).toEqual([expected]);
  });
  it('take the unit at the end, or that of the ±', () => {
    const inches = readings('centres (0,55.2) (-52.4,17.1) (52.5,17) mm', 'in');
    expect(inches).toEqual([three]);
    expect(readings('centres (0,55.2) (-52.4,17.1) (52.5,17) ±0.05 mm', 'in')).toEqual([
      { ...three, plusMinus: 0.05 },
    ]);
  });
});

describe('a text that is no measure', () => {
  test.each([
    ['', 0, 'no measure was typed'],
    [';', 0, 'a reading was expected'],
    ['circle 95;;circle 96', 10, 'a reading was expected'],
    ['circel 95', 0, 'not a way of measuring a pattern'],
    ['constructor 95', 0, 'not a way of measuring a pattern'],
    ['circle', 6, 'no length was typed'],
    ['circle 95 mn', 9, 'not a unit of length'],
    ['circle 1,234', 6, 'write 1.234 for the one or 1234 for the other'],
    ['circle 0', 8, 'must be more than nothing'],
    ['95 ± 200', 8, 'the ± is larger than the size'],
    ['adjacent 55±60', 14, 'the ± is larger than the size'],
    ['near-edges 47.3 hole 8.5±8.6', 28, 'the ± is larger than the size'],
    ['circle -95', 10, 'a negative length has no meaning here'],
    ['circle 95; adjacent 55 mn', 22, 'not a unit of length'],
    ['circle 95 hole 8.5', 9, `'hole' does not belong to this reading`],
    ['across 110 hole 8.5', 10, `'hole' does not belong to this reading`],
    ['every-1st 80', 0, `are 'adjacent'`],
    ['every-0th 80', 0, 'steps run from 2 to 360'],
    ['every-361st 80', 0, 'steps run from 2 to 360'],
    ['every-two 80', 0, 'not a way of measuring a pattern'],
    ['near-edges 47.3', 15, 'near edges alone need the hole size'],
    ['far-edges 64.3', 14, 'far edges alone need the hole size'],
    ['across near-edges 101.5', 23, 'near edges alone need the hole size'],
    ['near-edges 47.3; circle 95', 15, 'near edges alone need the hole size'],
    ['near-edges 47.3; near-edges 47.4', 15, 'near edges alone need the hole size'],
    ['near-edges 47.3; far-edges 98 step 2', 15, 'near edges alone need the hole size'],
    ['near-edges 47.3; across far-edges 98 hole 8.5', 15, 'near edges alone need the hole size'],
    ['near-edges 47.3 wormhole 8.5', 15, 'not a unit of length'],
    ['near-edges 47.3 hole', 20, 'no length was typed'],
    ['near-edges 47.3 hole 8.5 hole 9', 24, `'hole' is given twice`],
    ['near-edges 47.3 hole 8.5 step 0', 29, 'a whole number of steps'],
    ['near-edges 47.3 hole 8.5 step two', 29, 'a whole number of steps'],
    ['near-edges 47.3 hole 8.5 bore 5', 24, `'bore' does not belong`],
    ['from-bore 20.5', 14, `'bore' and its size must follow`],
    ['from-bore 20.5 hole 8.5', 23, `'bore' and its size must follow`],
    ['from-bore 20.5 bore 57.15', 25, `'hole' and its size must follow`],
    ['centres', 7, '3 or more hole centres were expected'],
    ['centres (0,55.2) (-52.4,17.1)', 29, '3 or more hole centres were expected'],
    [
      'centres (0,5, 55,2) (1,2) (3,4)',
      9,
      'more than one comma in a point, so write (0.5, 55.2) or (0,5; 55,2)',
    ],
    ['centres (0;1;2) (1,2) (3,4)', 9, 'a point has two coordinates'],
    ['centres (0) (1,2) (3,4)', 9, 'a point is (x, y)'],
    ['centres (0;1,234) (1,2) (3,4)', 11, 'write 1.234 for the one or 1234 for the other'],
    ['centres (0,1) (1,2) (3,4', 19, 'this bracket is not closed'],
    ['centres (0,1) (1,2) (3,4 mn)', 24, 'not a unit of length'],
    ['centres (0,1) (1,2) (3,4±1)', 24, 'a ± has no place here'],
    ['centres (0,1) (1,2) (3,4) and more', 25, 'a point, a ± or a unit was expected'],
    ['centres (0,1) (1,2) (3,4) mm ±1', 28, 'write the ± before it'],
    ['centres (0,1) (1,2) (3,4) ±', 27, 'no length was typed'],
    ['centres (0,1) (1,2) (3,200m)', 27, 'more than 100 m'],
  ])('%j is read to %i: %s', (text, readTo, why) => {
    const problem = problemOf(readMeasure(text, { unit: 'mm' }));
    expect([problem.readTo, problem.says]).toEqual([readTo, expect.stringContaining(why)]);
    expect(problem.accepts).toContain('circle 95');
  });

  it('is bounded in length, in readings and in centres', () => {
    expect(problemOf(readMeasure('circle 95;'.repeat(2001), { unit: 'mm' })).says).toContain('longer than');
    expect(problemOf(readMeasure('circle 95;'.repeat(65), { unit: 'mm' })).says).toContain('64 readings');
    expect(readings('circle 95;'.repeat(64))).toHaveLength(64);
    const many = `centres ${'(1,2)'.repeat(501)}`;
    const tail = `centres (0,1) (1,2) (3,4) ${'±'.repeat(201)}`;
    expect(problemOf(readMeasure(tail, { unit: 'mm' })).says).toContain('longer than 200 characters');
    expect(problemOf(readMeasure(many, { unit: 'mm' })).says).toContain('more than 500 centres');
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, -3, 0])('is the number %d', (number) => {
    expect(readMeasure(number, { unit: 'mm' }).ok).toBe(false);
  });
});

describe('a written measure', () => {
  test.each([
    ['95', 'circle 95 mm'],
    ['adjacent 55.84±0.1', 'adjacent 55.84±0.1 mm'],
    ['every-2 90.35', 'every-2nd 90.35 mm'],
    ['every-11 90', 'every-11th 90 mm'],
    ['every-23 90', 'every-23rd 90 mm'],
    ['near-edges 47.3 hole 8.5±0.05 step 2', 'near-edges 47.3 mm hole 8.5±0.05 mm step 2'],
    ['near-edges 47.3; far-edges 64.3', 'near-edges 47.3 mm; far-edges 64.3 mm'],
    ['across 110', 'across 110 mm'],
    ['across far-edges 118.5 hole 8.5', 'across far-edges 118.5 mm hole 8.5 mm'],
    ['from-bore 20.5 hole 8.5 bore 57.15', 'from-bore 20.5 mm bore 57.15 mm hole 8.5 mm'],
    ['centres (0,1)(-1,2)(3,4)±0,05', 'centres (0, 1) (-1, 2) (3, 4) ±0.05 mm'],
    ['centres (0,1)(-1,2)(3,4)', 'centres (0, 1) (-1, 2) (3, 4) mm'],
  ])('of %s is %s', (typed, written) => {
    expect(writeMeasure(valueOf(readMeasure(typed, { unit: 'mm' })), 'mm')).toBe(written);
  });
  it('in inches, or to fewer decimals', () => {
    const measure = valueOf(readMeasure('circle 114.3', { unit: 'mm' }));
    expect(writeMeasure(measure, 'in')).toBe('circle 4.5 in');
    expect(writeMeasure(valueOf(readMeasure('adjacent 55.84', { unit: 'mm' })), 'in', 3)).toBe(
      'adjacent 2.198 in',
    );
  });
});
