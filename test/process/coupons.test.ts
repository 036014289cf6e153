// Coupons: rungs of the ladders, and what their readings come to.
import { describe, expect, test } from 'vitest';
import {
  delayRungs,
  holeKerfFrom,
  holeSpeedRows,
  holeTaper,
  kerfFromCoupon,
  runUp,
  slotForTab,
  speedShares,
} from '../../parts-library/process/index.js';

describe('ladders', () => {
  test('pierce delays run 50, 75, 100, 125, 150, 200 % of the chart’s, at least 0.1 s apart', () => {
    // Rungs: common practice; chart 0.8 s gives 0.4, 0.6, 0.8, 1, 1.2, 1.6 by hand.
    expect(delayRungs(0.8, 6)).toEqual([0.4, 0.6, 0.8, 1, 1.2, 1.6]);
    // 25 % of 0.3 s is less than the least step.
    expect(delayRungs(0.3, 6)).toEqual([0.15, 0.25, 0.35, 0.45, 0.55, 0.65]);
    expect(delayRungs(0.8, 8).slice(6)).toEqual([2, 2.4]);
  });

  test('speeds run from −15 to +15 % in steps of 5', () => {
    // Published procedure of an independent table maker: −15 to +15 % in 5 % steps.
    expect(speedShares(0.05, 7).map((share) => Math.round(share * 100))).toEqual([
      85, 90, 95, 100, 105, 110, 115,
    ]);
    expect(speedShares(0.1, 7).map((share) => Math.round(share * 100))).toEqual([
      70, 80, 90, 100, 110, 120, 130,
    ]);
  });

  test('8000 mm/min at 1 m/s² take 9 mm to run up', () => {
    // v² / 2a = (133.3 mm/s)² / 2000 = 8.89.
    expect(runUp(8000, 1)).toBeCloseTo(8.89, 2);
  });

  test('hole speeds are 50, 60, 70, 80 and 100 % of the chart’s', () => {
    expect(holeSpeedRows(5)).toEqual([0.5, 0.6, 0.7, 0.8, 1]);
    expect(holeSpeedRows(9)).toEqual([]);
  });
});

describe('readings', () => {
  test('kerf is kerf set + nominal − measured outside, and + measured − nominal in the window', () => {
    // Worked by hand: 1.5 + 100 − 99.8 = 1.7; 1.5 + 45.3 − 45 = 1.8.
    const reading = kerfFromCoupon({
      square: 100,
      window: 45,
      measuredSquare: 99.8,
      measuredWindow: 45.3,
      kerfSet: 1.5,
    });
    expect(reading.outer).toBeCloseTo(1.7, 9);
    expect(reading.inner).toBeCloseTo(1.8, 9);
    expect(reading.kerf).toBeCloseTo(1.75, 9);
    expect(reading.difference).toBeCloseTo(-0.1, 9);
  });

  test('an axis that moves 1.004 mm for a millimetre shows as scale, and the kerf of 1.6 comes back', () => {
    // M = s (P + k₀) − k = 1.004 × 101.5 − 1.6 = 100.306; M = s (P − k₀) + k = 1.004 × 43.5 + 1.6 = 45.274.
    const reading = kerfFromCoupon({
      square: 100,
      window: 45,
      measuredSquare: 100.306,
      measuredWindow: 45.274,
      kerfSet: 1.5,
    });
    expect(reading.scale).toBeCloseTo(1.004, 9);
    expect(reading.scaledKerf).toBeCloseTo(1.6, 9);
  });

  test('a hole of 12 cut on a path for 1.7 that measures 11.8 was cut 1.5 wide', () => {
    // Path 12 − 1.7 = 10.3; measured bottom = path + kerf.
    expect(holeKerfFrom(12, 11.8, 1.7)).toBeCloseTo(1.5, 9);
  });

  test.each([
    // Δd = 2 t tan θ: 6 mm at 2° is 0.42 mm, 10 mm at 3° is 1.05 mm.
    [12.42, 12, 6, 2],
    [21.05, 20, 10, 3],
  ])('⌀%f over ⌀%f in %f mm plate leans %f degrees', (top, bottom, thickness, degrees) => {
    expect(holeTaper(top, bottom, thickness)).toBeCloseTo(degrees, 1);
  });

  test('a slot for a 6 mm tab in 6 mm plate is 6.51 to 6.71', () => {
    // From memory: tab + 0.3 to 0.5 and t tan θ; 6 × tan 2° = 0.2095.
    expect(slotForTab(6, 6).least).toBeCloseTo(6.51, 2);
    expect(slotForTab(6, 6).most).toBeCloseTo(6.71, 2);
  });
});
