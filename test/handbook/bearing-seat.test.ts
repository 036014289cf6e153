// Bores for the outer rings of rolling bearings.
import { describe, expect, test } from 'vitest';
import { bearingSeat } from '../../parts-library/handbook/index.js';

const seat = (outside: number, fit: 'H7' | 'N7') => {
  const answer = bearingSeat(outside, fit);
  if (!answer.found) throw new Error(answer.says);
  return answer.row;
};

describe('bearing seats', () => {
  test.each([
    // ISO 286 H7: 18–30 +21, 30–50 +25, 50–80 +30 µm (published).
    [30, 30.021],
    [47, 47.025],
    [52, 52.03],
  ])('H7 for %d goes from the size itself to %d', (outside, most) => {
    expect(seat(outside, 'H7').most).toBeCloseTo(most, 6);
    expect(seat(outside, 'H7').least).toBe(outside);
    expect(seat(outside, 'H7').source.certainty).toBe('published');
  });

  test.each([
    // ISO 286 N7 (from memory): 30–50 −8/−33, 50–80 −9/−39 µm.
    [47, 46.967, 46.992],
    [52, 51.961, 51.991],
  ])('N7 for %d is pressed: %d to %d', (outside, least, most) => {
    expect(seat(outside, 'N7').least).toBeCloseTo(least, 6);
    expect(seat(outside, 'N7').most).toBeCloseTo(most, 6);
    expect(seat(outside, 'N7').source.certainty).toBe('from memory');
  });

  test('sizes beyond the tables are not guessed', () => {
    expect(bearingSeat(300, 'N7').found).toBe(false);
    expect(bearingSeat(300, 'H7').found).toBe(false);
  });
});
