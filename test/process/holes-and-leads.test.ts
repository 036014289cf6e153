import { describe, expect, test } from 'vitest';
import {
  drillDrift,
  holeKerf,
  holeSpeedFactor,
  holeSpeedFloor,
  holeVerdict,
  leadInFloor,
  leadInLength,
  partSpacing,
  pierceClearance,
  pierceRadius,
  pilotDiameter,
  smallestInsideRadius,
} from '../../parts-library/process/index.js';

describe('how small a hole can be cut', () => {
  // Published: not below one thickness (primer), 1.5 t minimum (cutter's guideline). 4 k is common practice.
  test.each([
    [5, 6, 1.6, 'drill', 6.4],
    [6.3, 6, 1.6, 'drill', 6.4],
    [6.4, 6, 1.6, 'rough', 9],
    [8.9, 6, 1.6, 'rough', 9],
    [9, 6, 1.6, 'test first', 12],
    [11.9, 6, 1.6, 'test first', 12],
    [12, 6, 1.6, 'normal', 12],
    [9.9, 10, 1.8, 'drill', 10],
    [10, 10, 1.8, 'rough', 15],
    [5.7, 3, 1.45, 'drill', 5.8],
    [5.8, 3, 1.45, 'test first', 6],
    [6, 3, 1.45, 'normal', 6],
    [5.4, 1.5, 1.38, 'drill', 5.52],
    [5.6, 1.5, 1.38, 'normal', 5.52],
  ] as const)('⌀%d in %d mm with a kerf of %d: %s', (diameter, thickness, kerf, verdict, limit) => {
    const got = holeVerdict(diameter, thickness, kerf);
    expect(got.verdict).toBe(verdict);
    expect(got.limit).toBeCloseTo(limit, 9);
  });

  test('the verdict carries its numbers and its source', () => {
    const got = holeVerdict(8, 6, 1.6);
    expect(got.formula).toBe('8 < 1.5 t = 1.5 × 6 = 9');
    expect(got.source.certainty).toBe('published');
    expect(got.smallest).toBeCloseTo(6.4, 9);
    expect(holeVerdict(5, 6, 1.6).source.certainty).toBe('common practice');
    expect(holeVerdict(9, 10, 1.8).source.certainty).toBe('published');
  });
});

describe('holes under the torch', () => {
  // Published primer: 60 to 70 % of chart speed up to 37 mm.
  test.each([
    [5, 0.6],
    [12.5, 0.6],
    [24.75, 0.65],
    [37, 0.7],
    [56, 0.85],
    [75, 1],
    [200, 1],
  ])('⌀%d is cut at %d of the chart speed', (diameter, factor) => {
    expect(holeSpeedFactor(diameter)).toBeCloseTo(factor, 9);
    expect(factor).toBeGreaterThanOrEqual(holeSpeedFloor);
  });

  // From memory: 1.05 to 1.10 × kerf. 1.6 ±0.3 → lowest 1.05 × 1.3, highest 1.1 × 1.9.
  test('the hole kerf’s ± covers both the kerf’s and the factor’s', () => {
    const got = holeKerf(1.6, 0.3);
    expect(got.kerf).toBeCloseTo(1.72, 9);
    expect(got.kerf + got.plusMinus).toBeGreaterThanOrEqual(1.1 * 1.9 - 1e-9);
    expect(got.kerf - got.plusMinus).toBeLessThanOrEqual(1.05 * 1.3 + 1e-9);
  });
});

describe('lead-ins', () => {
  // L = max(t, 3 k, 4): 45 A 3 mm 4.35, 6 mm 6, 10 mm 10; 65 A 3 mm 5.1 (common practice).
  test.each([
    [3, 1.45, 4.35],
    [6, 1.6, 6],
    [10, 1.8, 10],
    [3, 1.7, 5.1],
    [1.5, 1.22, 4],
  ])('in %d mm with a kerf of %d it is %d long', (thickness, kerf, length) => {
    expect(leadInLength(thickness, kerf)).toBeCloseTo(length, 9);
    expect(leadInLength(thickness, kerf)).toBeGreaterThanOrEqual(leadInFloor(kerf));
  });

  test('a crater at 45 A on 6 mm has a radius of 2.4, and no lead is shorter than 3.4', () => {
    expect(pierceRadius(1.6)).toBeCloseTo(2.4, 9);
    expect(leadInFloor(1.6)).toBeCloseTo(3.4, 9);
  });

  test('a pierce keeps 6 from its edge, 4.2 from a neighbour, 3.2 from an earlier cut', () => {
    const got = pierceClearance(6, 1.6);
    expect(got.finishedEdge).toBeCloseTo(6, 9);
    expect(got.neighbour).toBeCloseTo(4.2, 9);
    expect(got.earlierKerf).toBeCloseTo(3.2, 9);
    expect(got.spatter).toBeCloseTo(4.5, 9);
  });

  // gap = max(5, t), with a lead-in between max(that, L + r): 45 A 6 mm 8.4, 10 mm 12.7; edge max(10, gap).
  test('parts keep 6 apart in 6 mm, 8.4 with a lead-in; 12.7 in 10 mm', () => {
    expect(partSpacing(6, 1.6)).toMatchObject({ parts: 6, plateEdge: 10 });
    expect(partSpacing(6, 1.6).withLead).toBeCloseTo(8.4, 9);
    expect(partSpacing(10, 1.8).withLead).toBeCloseTo(12.7, 9);
    expect(partSpacing(3, 1.45).parts).toBe(5);
    expect(partSpacing(12, 1.9).plateEdge).toBe(12);
  });

  test('no inside corner is sharper than half the kerf', () => {
    expect(smallestInsideRadius(1.6)).toBe(0.8);
  });
});

describe('drilling by hand', () => {
  // Common practice: ±0.3 to 0.5 from a punched mark; pilot 3 mm under the drill.
  test('a drilled hole wanders 0.3 to 0.5', () => {
    expect(drillDrift).toMatchObject({ low: 0.3, high: 0.5, source: { certainty: 'common practice' } });
  });

  test('under a 17.5 drill the pilot is 14.5; under a 3 mm drill there is none', () => {
    expect(pilotDiameter(17.5)).toBe(14.5);
    expect(pilotDiameter(3)).toBeUndefined();
  });
});
