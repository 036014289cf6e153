// Openings in guards and how far the danger has to lie behind them.
import { describe, expect, test } from 'vitest';
import { reachDistance, widestOpening } from '../../parts-library/handbook/index.js';

describe('ISO 13857 Table 4', () => {
  test.each([
    // From memory: fingertip e ≤ 4: 2; ≤ 6: 10/5/5; finger ≤ 8: 20/15/5; ≤ 10: 80/25/20; ≤ 12: 100/80/80; ≤ 20: 120;
    // hand ≤ 30: 850/120/120; arm ≤ 40: 850/200/120; ≤ 120: 850.
    ['slot', 4, 2],
    ['slot', 6, 10],
    ['round', 6, 5],
    ['slot', 8, 20],
    ['square', 8, 15],
    ['round', 8, 5],
    ['slot', 10, 80],
    ['round', 10.5, 80],
    ['slot', 25, 850],
    ['square', 40, 200],
    ['round', 120, 850],
  ] as const)('%s of %d mm: %d mm', (shape, opening, distance) => {
    expect(reachDistance(shape, opening)).toBe(distance);
  });

  test('over 120 mm there is no distance', () => {
    expect(reachDistance('round', 121)).toBeUndefined();
  });

  test('25 mm behind the plate a slot may be 8 wide, a round hole 10', () => {
    expect(widestOpening('slot', 25)).toBe(8);
    expect(widestOpening('round', 25)).toBe(10);
    expect(widestOpening('slot', 1)).toBe(0);
  });
});
