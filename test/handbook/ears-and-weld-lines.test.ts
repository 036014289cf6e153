// A strip with a hole under tension, and straight fillets treated as lines.
import { describe, expect, test } from 'vitest';
import { netSection, weldLine } from '../../parts-library/handbook/index.js';

describe('net section', () => {
  test('40 × 6 A36 with a 13.5 hole: gross 54.0 kN, net 44.1 kN, 47.7 without the 2 mm', () => {
    // AISC 360 D2 by hand: 0.9 × 250 × 240 = 54 000; 0.75 × 400 × (40 − 15.5) × 6 = 44 100; without damage × 26.5.
    const a36 = { width: 40, thickness: 6, yieldMegapascals: 250, tensileMegapascals: 400 };
    const strip = netSection({ ...a36, hole: 13.5 });
    expect(strip.grossDesignNewtons).toBeCloseTo(54_000, 6);
    expect(strip.netDesignNewtons).toBeCloseTo(44_100, 6);
    expect(netSection({ ...a36, hole: 11.5 }).netDesignNewtons).toBeCloseTo(47_700, 6);
  });

  test('working load: the lesser of 60 000 ÷ 1.67 and 58 800 ÷ 2', () => {
    const strip = netSection({
      width: 40,
      hole: 13.5,
      thickness: 6,
      yieldMegapascals: 250,
      tensileMegapascals: 400,
    });
    expect(strip.governs).toBe('net');
    expect(strip.allowableNewtons).toBeCloseTo(29_400, 6);
  });

  test('a strip without a hole yields over its whole width where the steel is soft and tough', () => {
    // 304: 205 × 100 ÷ 1.67 = 12 275 against 515 × 98 ÷ 2 = 25 235.
    const strip = netSection({
      width: 100,
      hole: 0,
      thickness: 1,
      yieldMegapascals: 205,
      tensileMegapascals: 515,
    });
    expect(strip.governs).toBe('gross');
    expect(strip.allowableNewtons).toBeCloseTo(12_275.4, 1);
  });

  test('a hole wider than the strip leaves nothing', () => {
    expect(
      netSection({ width: 10, hole: 12, thickness: 5, yieldMegapascals: 235, tensileMegapascals: 360 })
        .allowableNewtons,
    ).toBe(0);
  });
});

describe('fillets as lines', () => {
  const pair = { length: 50, sides: 2, apart: 6, away: 0, along: 0, moment: 0 } as const;

  test('two fillets of 50 mm share a pull: 2000 N make 20 N/mm', () => {
    expect(weldLine({ ...pair, away: 2000 }).combined).toBeCloseTo(20, 9);
  });

  test('a moment in the plate’s plane is carried by d³/6: 20 N·m make 24 N/mm at the ends', () => {
    // Unit second moment of two lines d³/6 = 20 833 mm³ (Shigley Table 9-2, from memory); 20 000 × 25 ÷ 20 833 = 24.
    expect(weldLine({ ...pair, moment: 20_000 }).bending).toBeCloseTo(24, 9);
  });

  test('pull and bending add, shear stands square to them: 20 + 24 and 33 make 55', () => {
    expect(weldLine({ ...pair, away: 2000, moment: 20_000, along: -3300 }).combined).toBeCloseTo(55, 9);
  });

  test('folded over, two fillets are a couple a plate’s thickness apart; one fillet is none', () => {
    expect(weldLine({ ...pair, folding: 3000 }).folding).toBeCloseTo(10, 9);
    expect(weldLine({ ...pair, sides: 1, folding: 3000 }).combined).toBe(Infinity);
  });
});
