// Angular tolerances of welded frames.
import { describe, expect, test } from 'vitest';
import { weldAngle } from '../../parts-library/handbook/index.js';

describe('ISO 13920 angles', () => {
  test.each([
    // From memory: ±20′, 45′, 1° to 400 mm; 15′, 30′, 45′ to 1000; 10′, 20′, 30′ beyond.
    ['A', 300, 20],
    ['B', 300, 45],
    ['C', 400, 60],
    ['A', 401, 15],
    ['B', 1000, 30],
    ['C', 1001, 30],
    ['B', 2500, 20],
  ] as const)('class %s, shorter leg %d mm: ±%d′', (weldClass, leg, minutes) => {
    expect(weldAngle(weldClass, leg) * 60).toBeCloseTo(minutes, 9);
  });
});
