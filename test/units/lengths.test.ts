// Lists of lengths: plates on hand and rows of holes, as people write them.
import { describe, expect, test } from 'vitest';
import { readLengths, writeLengths } from '../../parts-library/units/index.js';

const read = (typed: string, unit: 'mm' | 'in' = 'mm') => {
  const reading = readLengths(typed, { unit });
  return reading.ok ? reading.value : reading.problem.says;
};

describe('a list of lengths', () => {
  test('plates with how many there are of each', () => {
    expect(read('6, 3 ×2, 1.5')).toEqual([{ mm: 6 }, { mm: 3, count: 2 }, { mm: 1.5 }]);
    expect(read('3.05 ±0.02 x 2')).toEqual([{ mm: 3.05, plusMinus: 0.02, count: 2 }]);
  });

  test('inches by their mark or by the job: a quarter is 6.35 mm', () => {
    expect(read('1/4 in, 3 mm', 'mm')).toEqual([{ mm: 6.35 }, { mm: 3 }]);
    expect(read('1/4 x3, 3 mm', 'in')).toEqual([{ mm: 6.35, count: 3 }, { mm: 3 }]);
  });

  test('with semicolons a comma is the decimal mark', () => {
    expect(read('6,05; 3,02 × 2')).toEqual([{ mm: 6.05 }, { mm: 3.02, count: 2 }]);
  });

  test.each([
    ['', 'The list is empty.'],
    ['6,, 3', 'There is nothing between two separators.'],
    ['6, thin', '"thin": '],
    ['0, 3', '"0" is no length above zero.'],
    ['6 x 0', '"6 x 0": how many there are is 1 to 999.'],
    ['1 ±2', '"1 ±2": the ± is larger than the length.'],
  ])('%j is told apart', (typed, says) => {
    expect(read(typed)).toContain(says);
  });

  test('what is written reads back the same, in either unit', () => {
    const list = [
      { mm: 6.35, plusMinus: 0.02 },
      { mm: 3.175, count: 2 },
    ];
    expect(writeLengths([{ mm: 6 }, { mm: 3, count: 2 }], 'mm')).toBe('6 mm; 3 mm × 2');
    for (const unit of ['mm', 'in'] as const) {
      const back = readLengths(writeLengths(list, unit), { unit: 'mm' });
      const lengths = back.ok ? back.value : [];
      expect(lengths.map(({ count }) => count)).toEqual([undefined, 2]);
      lengths.forEach(({ mm }, index) => expect(mm).toBeCloseTo(list[index]?.mm ?? 0, 5));
    }
  });
});
