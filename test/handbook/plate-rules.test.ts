import { describe, expect, test } from 'vitest';
import {
  bearing,
  clearToEdge,
  cutTolerance,
  fitClearance,
  fitLimits,
  floorEdgeDistance,
  generalTolerance,
  goodEdgeDistance,
  goodWeb,
  holeSpacing,
  maxSpacing,
  minEdgeDistance,
  minWeb,
  perpendicularity,
} from '../../parts-library/handbook/index.js';
import { inch, row } from './rows.js';

const kip = 4448.2216;
const ksi = 6.894757;

describe('edge distance', () => {
  // AISC 360-16 Tables J3.4 and J3.4M.
  test.each([
    [16, 'metric', 22],
    [20, 'metric', 26],
    [12.7, 'unified', inch(3 / 4)],
    [inch(5 / 8), 'unified', inch(7 / 8)],
    [inch(3 / 4), 'unified', inch(1)],
  ] as const)('a %d bolt (%s) stands %d from an edge', (bolt, system, edge) => {
    const rule = minEdgeDistance(bolt, system);
    expect(rule.value).toBeCloseTo(edge, 6);
    expect(rule.source.certainty).toBe('published');
  });

  test('below the table a shop rule of 1.5 d holds, and says what it is', () => {
    expect(minEdgeDistance(10, 'metric')).toMatchObject({
      value: 15,
      source: { certainty: 'common practice' },
    });
    expect(goodEdgeDistance(10).value).toBe(20);
    expect(floorEdgeDistance(10).value).toBe(10);
  });

  // AISC J3.3 and J3.5: 2-2/3 d, 3 d; 12 t to 6 in, 24 t to 12 in.
  test('spacing', () => {
    expect(holeSpacing(12)).toMatchObject({ min: 32, preferred: 36 });
    expect(maxSpacing(6)).toMatchObject({ edge: 72, spacing: 144 });
    expect(maxSpacing(20).edge).toBeCloseTo(152.4, 9);
    expect(maxSpacing(20).spacing).toBeCloseTo(304.8, 9);
  });

  // Common practice 1 t and 3 mm; published guideline 1.5 t.
  test('webs of 6 mm and 2 mm plate', () => {
    expect(minWeb(6).value).toBe(6);
    expect(minWeb(2).value).toBe(3);
    expect(goodWeb(6).value).toBe(9);
  });
});

describe('bearing and tear-out', () => {
  // Structural Steel Designer's Handbook pp. 5.42–5.48 (AISC 2005): kips, to the figure printed.
  test('7/8 bolt on 3/8 A36, far from any edge: 34.3 kip', () => {
    const got = bearing({
      bolt: inch(7 / 8),
      thickness: inch(3 / 8),
      clear: 1000,
      tensileMegapascals: 58 * ksi,
    });
    expect(got.designNewtons / kip).toBeCloseTo(34.26, 2);
    expect(got.governs).toBe('bearing');
  });

  test.each([
    ['0.245 web, Fu 65, edge 1.5', 0.245, 65, 1.5 - 15 / 32, 14.7],
    ['the same, spacing 3', 0.245, 65, 3 - 15 / 16, 29.5],
    ['3/8 A36, edge 1.5', 0.375, 58, 1.5 - 15 / 32, 20.2],
  ])('7/8 bolt, %s', (_, thickness, tensile, clear, printed) => {
    const got = bearing({
      bolt: inch(7 / 8),
      thickness: inch(thickness),
      clear: inch(clear),
      tensileMegapascals: tensile * ksi,
    });
    expect(Math.abs(got.tearOutNewtons * 0.75 - printed * kip)).toBeLessThan(0.1 * kip);
  });

  // By hand: 1.2 × 13.25 × 6 × 360 = 34.34 kN; 2.4 × 12 × 6 × 360 = 62.21 kN; φ 25.76 kN.
  test('an M12 in 6 mm S235, 20 from the edge in a 13.5 hole', () => {
    const clear = clearToEdge(20, 13.5);
    expect(clear).toBe(13.25);
    const got = bearing({ bolt: 12, thickness: 6, clear, tensileMegapascals: 360 });
    expect(got.tearOutNewtons).toBeCloseTo(34344, 3);
    expect(got.bearingNewtons).toBeCloseTo(62208, 3);
    expect(got.designNewtons).toBeCloseTo(25758, 3);
    expect(got.allowableNewtons).toBeCloseTo(17172, 3);
    expect(got.governs).toBe('tear-out');
  });

  test('a hole that reaches past the edge carries nothing', () => {
    expect(bearing({ bolt: 12, thickness: 6, clear: -2, tensileMegapascals: 360 }).nominalNewtons).toBe(0);
  });
});

describe('ISO 9013', () => {
  // Public excerpt of the tables: class, plate, nominal, ±.
  test.each([
    [2, 6, 32, 0.9],
    [2, 6, 2.9, 0.7],
    [2, 6.3, 110, 0.9],
    [2, 6.31, 110, 1.3],
    [2, 12, 150, 1.9],
    [2, 3, 9.99, 0.6],
    [2, 3, 10, 0.7],
    [1, 6, 32, 0.25],
    [1, 12, 200, 0.45],
    [1, 3.15, 2, 0.1],
  ] as const)('class %d, %d mm plate, %d: ±%d', (cutClass, thickness, nominal, printed) => {
    expect(row(cutTolerance(thickness, nominal, cutClass)).value).toBe(printed);
  });

  test('blank cells, thick plate and long parts have none', () => {
    expect(cutTolerance(8, 2, 2).found).toBe(false);
    expect(cutTolerance(120, 500, 2).found).toBe(false);
    expect(cutTolerance(6, 4000, 2).found).toBe(false);
    expect(cutTolerance(0, 50, 2).found).toBe(false);
    expect(cutTolerance(6, NaN, 2).found).toBe(false);
  });

  test('class 2 above 20 mm rests on memory', () => {
    expect(row(cutTolerance(20, 100, 2)).source.certainty).toBe('published');
    expect(row(cutTolerance(25, 100, 2)).source.certainty).toBe('from memory');
  });

  test('a thicker plate or a longer part is never cut closer', () => {
    for (const cutClass of [1, 2] as const) {
      for (const nominal of [12, 50, 200, 500, 1500, 3000]) {
        const plates = [1, 3, 6, 10, 15, 20, 25, 30].map(
          (plate) => row(cutTolerance(plate, nominal, cutClass)).value,
        );
        expect(plates).toEqual(plates.toSorted((first, second) => first - second));
      }
    }
  });

  // Public sources for u: at 6 mm 0.068, 0.192, 0.46, 0.92; at 12 mm 1.62 in range 5.
  test.each([
    [6, 1, 0.068],
    [6, 2, 0.192],
    [6, 3, 0.46],
    [6, 4, 0.92],
    [12, 5, 1.62],
  ] as const)('%d mm in range %d leans %d', (thickness, range, printed) => {
    expect(perpendicularity(thickness, range).value).toBeCloseTo(printed, 9);
  });
});

describe('fits and general tolerances', () => {
  // Public ISO 286 tables, µm.
  test.each([
    ['H7', 8, 15, 0],
    ['H7', 10, 15, 0],
    ['H7', 25, 21, 0],
    ['H8', 25, 33, 0],
    ['H11', 60, 190, 0],
    ['h6', 25, 0, -13],
    ['h6', 30, 0, -13],
    ['f7', 25, -20, -41],
    ['h11', 16, 0, -110],
  ] as const)('%s at %d is %d / %d µm', (toleranceClass, diameter, upper, lower) => {
    const limits = row(fitLimits(toleranceClass, diameter));
    expect(limits.upper * 1000).toBeCloseTo(upper, 9);
    expect(limits.lower * 1000).toBeCloseTo(lower, 9);
  });

  // H7/h6 at 25: 0 to 34 µm; H8/f7 at 25: 20 to 74; H11/h11 at 60: 0 to 0.38 mm.
  test('clearances', () => {
    expect(row(fitClearance('H7', 'h6', 25)).most).toBeCloseTo(0.034, 9);
    expect(row(fitClearance('H7', 'h6', 25)).least).toBe(0);
    expect(row(fitClearance('H8', 'f7', 25)).least).toBeCloseTo(0.02, 9);
    expect(row(fitClearance('H8', 'f7', 25)).most).toBeCloseTo(0.074, 9);
    expect(row(fitClearance('H11', 'h11', 60)).most).toBeCloseTo(0.38, 9);
  });

  test('outside the printed bands the certainty drops, and 300 mm has none', () => {
    expect(row(fitLimits('H7', 57.15)).source.certainty).toBe('published');
    expect(row(fitLimits('H7', 100)).source.certainty).toBe('from memory');
    expect(fitLimits('H7', 300).found).toBe(false);
    expect(fitClearance('H7', 'h6', 3).found).toBe(false);
  });

  // ISO 2768-1.
  test.each([
    ['m', 110, 0.3],
    ['m', 120, 0.3],
    ['m', 120.1, 0.5],
    ['f', 25, 0.1],
    ['c', 5, 0.3],
    ['v', 500, 4],
  ] as const)('2768-%s at %d is ±%d', (generalClass, nominal, printed) => {
    expect(row(generalTolerance(nominal, generalClass)).value).toBe(printed);
  });

  test('f has none above 2 m, v none below 3 mm', () => {
    expect(generalTolerance(2500, 'f').found).toBe(false);
    expect(generalTolerance(2, 'v').found).toBe(false);
    expect(generalTolerance(0.2, 'm').found).toBe(false);
  });
});
