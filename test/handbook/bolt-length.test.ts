// Bolt lengths: grip, washers, nut, two threads to see, rounded up to what is stocked.
import { describe, expect, test } from 'vitest';
import { boltLength, findThread } from '../../parts-library/handbook/index.js';

function length(bolt: string, grip: number, into?: number) {
  const thread = findThread(bolt);
  if (!thread.found) throw new Error(thread.says);
  const answer = boltLength(thread.row, grip, into);
  if (!answer.found) throw new Error(answer.says);
  return answer.row;
}

describe('bolt length', () => {
  test.each([
    // Worked by hand: washers 1.8, 2.2, 2.7 (ISO 7089 maximum, published); nuts 6.8, 8.4, 10.8 (ISO 4032, from memory).
    ['M8', 12, '25', 12 + 2 * 1.8 + 6.8 + 2 * 1.25],
    ['M10', 16, '35', 16 + 2 * 2.2 + 8.4 + 2 * 1.5],
    ['M12', 20, '40', 20 + 2 * 2.7 + 10.8 + 2 * 1.75],
  ])('%s through %d mm is %s long', (bolt, grip, name, least) => {
    const row = length(bolt, grip);
    expect(row.name).toBe(name);
    expect(row.least).toBeCloseTo(least, 9);
    expect(row.length).toBeGreaterThanOrEqual(row.least);
  });

  test('into a tapped hole it takes one washer and the engaged thread', () => {
    // 6 + 1.8 + 8 = 15.8, worked by hand.
    expect(length('M8', 6, 8)).toMatchObject({ name: '16', nut: 0, washers: 1 });
  });

  test('inch bolts come in eighths to one inch, quarters above', () => {
    // 3/8-16: grip 12.7 + 2 × 1.905 + 21/64 in 8.334 + 2 × 1.5875 = 28.02 mm = 1.103 in, so 1-1/4; worked by hand.
    expect(length('3/8-16', 12.7).name).toBe('1-1/4 in');
    // 1/4-20: grip 6.35 + 2 × 1.27 + 5.556 + 2 × 1.27 = 16.99 mm = 0.669 in, so 3/4.
    expect(length('1/4-20', 6.35).name).toBe('3/4 in');
    expect(length('1/4-20', 6.35).length).toBeCloseTo(19.05, 9);
  });
});
