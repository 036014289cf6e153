// Whatever is typed, a reader gives a value or a problem with its place, and never throws.
import * as fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  readAngle,
  readCount,
  readForce,
  readLength,
  readMass,
  readMeasure,
  readSpeed,
  readTime,
  readTorque,
} from '../../parts-library/units/index.js';
import type { Reading } from '../../parts-library/units/index.js';

const READERS: ReadonlyArray<{ readonly name: string; readonly read: (text: string) => Reading<unknown> }> = [
  { name: 'length', read: (text) => readLength(text, { unit: 'mm' }) },
  { name: 'signed length', read: (text) => readLength(text, { unit: 'in', allowNegative: true }) },
  { name: 'angle', read: (text) => readAngle(text) },
  { name: 'force', read: (text) => readForce(text, { unit: 'mm' }) },
  { name: 'torque', read: (text) => readTorque(text, { unit: 'in' }) },
  { name: 'mass', read: (text) => readMass(text, { unit: 'mm' }) },
  { name: 'speed', read: (text) => readSpeed(text, { unit: 'in' }) },
  { name: 'time', read: (text) => readTime(text) },
  { name: 'count', read: (text) => readCount(text) },
  { name: 'measure', read: (text) => readMeasure(text, { unit: 'mm' }) },
];

const MARKS = '0 1 2 9 . , ; : + - * / ( ) ± − × ½ ⅜ ° ′ ″ \' " x é １２ 😀'.split(' ');
const UNIT_WORDS = 'mm in ft cm m N N·m lb ft-lb kg oz mm/min ipm s min h deg rad'.split(' ');
const TAG_WORDS =
  'circle adjacent every-2nd near-edges far-edges across from-bore centres hole bore step'.split(' ');
const AMOUNTS = '1 3/8|1-3/8|1,234|57,1|+/-|(0,1)|(1;2)'.split('|');
const BLANKS = [' ', '\t', '\u00a0', '\ud800'];
const PIECES = [...MARKS, ...UNIT_WORDS, ...TAG_WORDS, ...AMOUNTS, ...BLANKS];

const nearlyTyped = fc.array(fc.constantFrom(...PIECES), { maxLength: 30 }).map((pieces) => pieces.join(''));
const anything = fc.oneof(
  nearlyTyped,
  fc.string({ unit: 'binary', maxLength: 300 }),
  fc.string({ unit: 'grapheme', maxLength: 100 }),
);

function expectSound(text: string, reading: Reading<unknown>): void {
  if (reading.ok) {
    const numbers = JSON.stringify(reading.value);
    // JSON writes what is not finite as null.
    expect(numbers).not.toContain('null');
    return;
  }
  const { typed, readTo, says, accepts } = reading.problem;
  expect(typed).toBe(text);
  expect(readTo).toBeGreaterThanOrEqual(0);
  expect(readTo).toBeLessThanOrEqual(text.length);
  expect(text.slice(0, readTo)).toBe(text.slice(0, readTo).trimEnd());
  expect(says.length).toBeGreaterThan(10);
  expect(says.length).toBeLessThan(350);
  expect(accepts).not.toBe('');
}

describe('any text gives a value or a problem', () => {
  test.each(READERS)('as $name', ({ read }) => {
    fc.assert(
      fc.property(anything, (text) => expectSound(text, read(text))),
      { numRuns: 1500, seed: 9 },
    );
  });

  it('even a hundred thousand characters of it', () => {
    const long = [
      '(',
      ')',
      '-',
      '1',
      ',',
      '1,',
      ' ',
      ';',
      '1+',
      "1'",
      '°',
      '😀',
      'centres (',
      '(1,2)',
      'N ',
      '\ud800',
    ];
    for (const piece of long) {
      const text = piece.repeat(Math.ceil(100_000 / piece.length));
      for (const { read } of READERS) {
        expectSound(text, read(text));
        expectSound(text.slice(0, 200), read(text.slice(0, 200)));
        expectSound(text.slice(0, 20_000), read(text.slice(0, 20_000)));
      }
      expectSound(
        `centres ${text.slice(0, 19_000)}`,
        readMeasure(`centres ${text.slice(0, 19_000)}`, { unit: 'mm' }),
      );
    }
  });
});
