// What is said when a length cannot be read: how far it was understood, and why it stopped.
import { describe, expect, it, test } from 'vitest';
import { readLength } from '../../parts-library/units/index.js';
import { problemOf } from './units.js';

describe('a text that is not a length', () => {
  test.each([
    ['', 0, 'no length was typed'],
    ['   ', 0, 'no length was typed'],
    ['abc', 0, 'not a unit of length'],
    ['@35', 0, 'not part of a length'],
    ['mm', 0, 'a number was expected'],
    ['35 mn', 2, 'not a unit of length'],
    ['  35 mn', 4, 'not a unit of length'],
    ['35 inx', 2, 'not a unit of length'],
    ['35 mm mm', 5, 'a second unit'],
    ['35 36', 2, 'a sign was expected between two numbers'],
    ['2(3)', 1, 'a sign was expected between two numbers'],
    ['2*', 2, 'a number was expected'],
    ['2**3', 2, 'a number was expected'],
    ['2+*3', 2, 'a number was expected'],
    ['(2+3', 4, 'a closing bracket was expected'],
    ['2+3)', 3, 'no bracket was opened for it'],
    ['()', 1, 'a number was expected'],
    ['35 €', 2, 'not part of a length'],
    ['35😀', 2, 'not part of a length'],
    ['1,234', 0, 'write 1.234 for the one or 1234 for the other'],
    ['5 + 12,345', 3, 'write 12.345 for the one or 12345 for the other'],
    ['1,234.5', 0, 'both a point and a comma'],
    ['1.234,5', 0, 'both a point and a comma'],
    ['1,234,567', 0, 'more than one comma'],
    ['1.2.3', 0, 'more than one decimal point'],
    ['35, 36', 2, 'not part of a length'],
    ['5/0', 2, 'a division by zero'],
    ['1 3/0', 4, 'a division by zero'],
    ['5/(2-2)', 2, 'a division by zero'],
    ['5in/0mm', 4, 'a division by zero'],
    ['1 9/8', 1, 'the fraction of a mixed number must be less than one'],
    ['2in*3in', 4, 'a length times a length is not a length'],
    ['2/(3in)', 2, 'a number divided by a length is not a length'],
    ['10in/2in', 8, 'it needs a unit'],
    ['10in/2in + 3mm', 10, 'a length and a plain ratio cannot be added'],
    ['(3in)mm', 5, 'has a unit already'],
    [`1' 14"`, 2, 'after ft the in must be below 12'],
    [`1.5' 2"`, 4, 'a sign was expected between two numbers'],
    ['-5', 2, 'a negative length has no meaning here'],
    ['3 - 5', 5, 'a negative length has no meaning here'],
    ['100.001 m', 9, 'more than 100 m'],
    ['99999999999999999999*99999999999999999999', 41, 'more than 100 m'],
    ['57±', 3, 'a number was expected'],
    ['57±0.1±0.1', 6, 'a second ±'],
    ['2*(57±1)', 5, 'a ± stands only after the whole'],
    ['(5) + (3 ± 1)', 8, 'a ± stands only after the whole'],
    ['(57±0.1', 7, 'a closing bracket was expected'],
    ['(57mm±0.1mm)in', 12, 'has a unit already'],
    ['57±-0.1', 7, 'must not be negative'],
    ['3.5cm ± 0.1', 11, 'the unit of the ± is not plain'],
    ['1in + 3mm ± 0.1', 15, 'the unit of the ± is not plain'],
    ['2 ft ± 1/8', 10, 'the unit of the ± is not plain'],
    ['57 ± 200 m', 10, 'a ± of more than 100 m'],
    ['1e3', 1, 'not a unit of length'],
  ])('%j is read to %i: %s', (text, readTo, why) => {
    const problem = problemOf(readLength(text, { unit: 'mm' }));
    expect(problem.readTo).toBe(readTo);
    expect(problem.says).toContain(why);
    expect(problem.typed).toBe(text);
  });

  it('is told in one sentence, with examples that would do', () => {
    expect(problemOf(readLength('35 mn', { unit: 'mm' }))).toEqual({
      typed: '35 mn',
      readTo: 2,
      says: "Read 35, then stopped at 'mn': not a unit of length.",
      accepts: '35, 35 mm, 3.5 cm, 1 3/8, 1-3/8", 1.375 in, 7/16, 2*17.5+3, (4+1/2)in or 57.1±0.1',
    });
    expect(problemOf(readLength('', { unit: 'mm' })).says).toBe('Nothing to read: no length was typed.');
    expect(problemOf(readLength('2*', { unit: 'mm' })).says).toBe(
      'Read 2* to the end: a number was expected.',
    );
    expect(problemOf(readLength('mn', { unit: 'mm' })).says).toBe(
      "Stopped at the start, at 'mn': not a unit of length.",
    );
  });

  it('keeps its sentence short when the text is long', () => {
    const problem = problemOf(readLength(`${'1+'.repeat(90)}${'z'.repeat(19)}`, { unit: 'mm' }));
    expect(problem.readTo).toBe(180);
    expect(problem.says).toBe(
      "Read …1+1+1+1+1+1+1+1+1+1+1+1+, then stopped at 'zzzzzzzzzzzzzzzzzzz': not a unit of length.",
    );
  });
});

describe('a length that may not be had here', () => {
  it('has no ± where none makes sense', () => {
    const problem = problemOf(readLength('57.1 ± 0.1', { unit: 'mm', plusMinus: false }));
    expect(problem.readTo).toBe(4);
    expect(problem.says).toContain('a ± has no place here');
  });
  it('is longer than 200 characters', () => {
    const problem = problemOf(readLength('1+'.repeat(100_000), { unit: 'mm' }));
    expect(problem.readTo).toBe(0);
    expect(problem.says).toContain('longer than 200 characters');
  });
  it('has brackets 33 deep; 32 are read', () => {
    expect(readLength(`${'('.repeat(32)}5${')'.repeat(32)}`, { unit: 'mm' }).ok).toBe(true);
    const problem = problemOf(readLength(`${'('.repeat(33)}5${')'.repeat(33)}`, { unit: 'mm' }));
    expect(problem.readTo).toBe(32);
    expect(problem.says).toContain('brackets deeper than 32');
  });
  test.each([Number.NaN, Number.POSITIVE_INFINITY, -3, 100_001])('is the number %d', (number) => {
    expect(problemOf(readLength(number, { unit: 'mm' })).typed).toBe(`${number} mm`);
  });
});
