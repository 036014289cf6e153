// What a slotted joint holds by friction: the preload of the torque tables times friction.
import { describe, expect, test } from 'vitest';
import { findGrade, findThread, slipLoad } from '../../parts-library/handbook/index.js';

describe('slip of a slotted joint', () => {
  test.each([
    // Preloads 15.92 kN (M8 8.8), 25.23 kN (M10 8.8), 36.11 kN (M10 10.9): T = K D F tables (published) and worked
    // by hand from 0.75 Sp As; friction 0.2 counted.
    ['M8', '8.8', 4, 4 * 0.2 * 15.92],
    ['M10', '8.8', 2, 2 * 0.2 * 25.23],
    ['M10', '10.9', 2, 2 * 0.2 * 36.11],
  ] as const)('%s %s, %i bolts', (bolt, name, count, kilonewtons) => {
    const thread = findThread(bolt);
    if (!thread.found) throw new Error(thread.says);
    const grade = findGrade(name, thread.row);
    if (!grade.found) throw new Error(grade.says);
    expect(slipLoad(thread.row, grade.row, count).newtons / 1000).toBeCloseTo(kilonewtons, 1);
  });
});
