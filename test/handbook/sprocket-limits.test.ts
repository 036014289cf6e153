// What a caliper may read over a sprocket's gaps, and how thick its plate may be.
import { describe, expect, test } from 'vitest';
import { listChains, rootLimits, toothRange } from '../../parts-library/handbook/index.js';
import { chain, inch } from './rows.js';

describe('caliper diameter', () => {
  // ASME B29.1 formulas (published): caliper 2.0797 in for 40 on 15 teeth; commercial 0.006 + 0.002 P √N, by hand
  // 0.006 + 0.001 × 3.873 = 0.009873 in under.
  test('40 on 15 teeth: 2.0797 in, 0.0099 under', () => {
    const limits = rootLimits(chain('40'), 15, 'ansi');
    expect((limits?.most ?? 0) / 25.4).toBeCloseTo(2.0797, 4);
    expect(((limits?.most ?? 0) - (limits?.least ?? 0)) / 25.4).toBeCloseTo(0.009873, 5);
    expect(limits?.source.certainty).toBe('published');
  });

  // ISO 606 root diameter 72.674 for 08B z 20 (published formula); 0 / −0.25 to 127 mm, from memory.
  test.each([
    ['08B', 20, 72.674, 0.25],
    ['520', 45, 217.417, 0.3],
  ])('%s on %d teeth by ISO 606', (name, teeth, root, under) => {
    const limits = rootLimits(chain(name), teeth, 'iso');
    // On odd teeth the caliper reads PD (1 − cos(90°/45)) = 0.139 less than the root, by hand.
    expect(limits?.most).toBeCloseTo(teeth % 2 === 0 ? root : root - 0.139, 2);
    expect((limits?.most ?? 0) - (limits?.least ?? 0)).toBeCloseTo(under, 9);
    expect(limits?.source.certainty).toBe('from memory');
  });

  test('teeth that make no sprocket have no limits', () => {
    expect(rootLimits(chain('40'), 4, 'ansi')).toBeUndefined();
    expect(rootLimits(chain('40'), 9.5, 'iso')).toBeUndefined();
  });
});

describe('thickness at the teeth', () => {
  // Published: nominal with a sprocket maker's tolerances, and the stock that lies inside them, inches.
  test.each([
    ['35', 0.1495, true],
    ['35', 0.1644, true],
    ['41', 0.1969, true],
    ['41', 3 / 16, false],
    ['40', 1 / 4, true],
    ['50', 5 / 16, true],
    ['60', 7 / 16, true],
    ['60', 10 / 25.4, false],
    ['80', 9 / 16, true],
    ['80', 1 / 2, false],
    ['80', 5 / 8, false],
  ])('%s and plate of %d in: inside %s', (name, thickness, inside) => {
    const { low = 0, high } = toothRange(chain(name));
    expect(inch(thickness) >= low && inch(thickness) <= high).toBe(inside);
  });

  // Published DIN 8187 width 7.2 for 08B; h14 of it 0.36 (ISO 286, from memory).
  test('08B takes 6.85 to 7.21', () => {
    const { low, high, source } = toothRange(chain('08B'));
    expect(low).toBeCloseTo(6.85, 2);
    expect(high).toBeCloseTo(7.21, 2);
    expect(source.certainty).toBe('from memory');
  });

  // Usual sprockets: 428 from 6.8 to 7.2, 520 from 5.8 to 6 (from memory); 0.93 W is 7.21 and 5.91.
  test.each([
    ['428', 6.8, 7.21],
    ['520', 5.8, 6],
  ])('%s takes %d to %d', (name, low, high) => {
    expect(toothRange(chain(name)).low).toBe(low);
    expect(toothRange(chain(name)).high).toBeCloseTo(high, 2);
  });

  test('25 has no lower limit in print', () => {
    expect(toothRange(chain('25')).low).toBeUndefined();
    expect(toothRange(chain('25')).high / 25.4).toBeCloseTo(0.11, 3);
  });

  test('every chain has a range that its inner width holds', () => {
    for (const one of listChains()) {
      const { low = 0, nominal, high } = toothRange(one);
      expect(low).toBeLessThan(high);
      expect(high).toBeGreaterThanOrEqual(nominal - 1e-9);
      expect(high, one.name).toBeLessThan(one.innerWidth);
    }
  });
});
