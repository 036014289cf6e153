import { describe, expect, test } from 'vitest';
import { findMaterial, sourceOf } from '../../parts-library/handbook/index.js';
import {
  chartMaterial,
  chartMaterialFor,
  chartRow,
  startingChart,
  suggestClass,
} from '../../parts-library/process/index.js';
import type { ChartAnswer, ChartMaterial, ChartRow, CutChart } from '../../parts-library/process/index.js';

function ask(
  processClass: string,
  thickness: number,
  material: ChartMaterial = 'mild steel',
): ChartAnswer & { found: true } {
  const answer = chartRow(startingChart, { processClass, material, thickness });
  if (!answer.found) throw new Error(answer.says);
  return answer;
}

const rowOf = (processClass: string, thickness: number, material?: ChartMaterial): ChartRow =>
  ask(processClass, thickness, material).row;

describe('the starting chart', () => {
  // Air-plasma maker's operating manual, 40 A class, 30 A columns: quality and maximum, mm/min.
  test.each([
    [1.5, 4800, 5800],
    [3, 1950, 2500],
    [4, 1150, 1500],
    [6, 600, 820],
    [8, 360, 500],
  ])('30 A on %d mm is the published %d and %d', (thickness, quality, maximum) => {
    const row = rowOf('air-30A', thickness);
    expect(row.startSpeed).toBe(quality);
    expect(row.ceilingSpeed).toBe(maximum);
    expect(row.source.certainty).toBe('published');
  });

  // Published anchor: a 55 A air cutter does 6.35 mm at 70 in/min = 1780 mm/min, between these two classes.
  test('a published 55 A speed falls between 45 and 65 A', () => {
    expect(rowOf('air-45A', 6.35).startSpeed).toBeLessThan(1780);
    expect(rowOf('air-65A', 6.35).startSpeed).toBeGreaterThan(1780);
  });

  test('it has 109 rows in five classes and three materials, each row once', () => {
    expect(startingChart.rows).toHaveLength(109);
    const keys = startingChart.rows.map(
      ({ processClass, material, thickness }) => `${processClass} ${material} ${thickness}`,
    );
    expect(new Set(keys).size).toBe(109);
    expect(startingChart.classes.map(({ amps }) => amps)).toEqual([30, 45, 65, 85, 105]);
  });

  test('thicker plate is slower and has a wider kerf; more current is faster', () => {
    for (const { id } of startingChart.classes) {
      for (const material of ['mild steel', 'stainless', 'aluminium'] as const) {
        const rows = startingChart.rows.filter((row) => row.processClass === id && row.material === material);
        rows.forEach((row, index) => {
          const thinner = rows[index - 1];
          if (thinner === undefined) return;
          expect(row.startSpeed).toBeLessThan(thinner.startSpeed);
          expect(row.ceilingSpeed).toBeLessThan(thinner.ceilingSpeed);
          expect(row.kerf).toBeGreaterThan(thinner.kerf);
        });
        for (const row of rows) expect(row.ceilingSpeed).toBeGreaterThan(row.startSpeed);
      }
    }
    const at6 = startingChart.classes.map(({ id }) => rowOf(id, 6).startSpeed);
    expect(at6).toEqual(at6.toSorted((first, second) => first - second));
  });

  // Kerf model a + 0.05 t, a = 1.15 1.30 1.55 1.75 2.00, +0.1 stainless and aluminium (from memory); printed to 0.01.
  test('kerf follows a + 0.05 t', () => {
    const base: Readonly<Record<string, number>> = {
      'air-30A': 1.15,
      'air-45A': 1.3,
      'air-65A': 1.55,
      'air-85A': 1.75,
      'air-105A': 2,
    };
    for (const { processClass, material, thickness, kerf } of startingChart.rows) {
      const model = (base[processClass] ?? NaN) + 0.05 * thickness + (material === 'mild steel' ? 0 : 0.1);
      expect(Math.abs(kerf - model)).toBeLessThanOrEqual(0.0051);
    }
  });

  test('each figure says how it is known', () => {
    const row = rowOf('air-45A', 6);
    expect(row.source.certainty).toBe('from memory');
    expect(sourceOf(row, 'cutHeight').certainty).toBe('published');
    expect(sourceOf(row, 'pierceSeconds').certainty).toBe('from memory');
    expect(sourceOf(row, 'kerf').certainty).toBe('from memory');
    expect(sourceOf(rowOf('air-105A', 6), 'cutHeight').certainty).toBe('from memory');
    expect(rowOf('air-30A', 5).source.certainty).toBe('from memory');
    expect(row.kerfPlusMinus).toBe(0.3);
  });
});

describe('reading between the rows', () => {
  // Log–log by hand between 6 mm 1450 and 8 mm 950: n = −1.470, at 6.35 mm 1334 mm/min.
  test('6.35 mm at 45 A starts at 1334 mm/min', () => {
    expect(rowOf('air-45A', 6.35).startSpeed).toBeCloseTo(1334, 0);
  });

  test('kerf and pierce delay lie on a straight line', () => {
    const row = rowOf('air-45A', 7);
    expect(row.kerf).toBeCloseTo(1.65, 9);
    expect(row.pierceSeconds).toBeCloseTo(0.55, 9);
    expect(row.thickness).toBe(7);
  });

  test('between rows the speed is below the straight line', () => {
    expect(rowOf('air-45A', 7).startSpeed).toBeLessThan((1450 + 950) / 2);
  });

  test('on a row the row itself is read', () => {
    expect(rowOf('air-65A', 8)).toMatchObject({
      startSpeed: 1600,
      ceilingSpeed: 2100,
      kerf: 1.95,
      pierceSeconds: 0.5,
    });
  });

  test('outside the rows the nearest row is taken, and the note says so', () => {
    const thick = ask('air-45A', 20);
    expect(thick.clamped).toBe(true);
    expect(thick.row.startSpeed).toBe(480);
    expect(thick.row.edgeStart).toBe(true);
    expect(thick.notes.join(' ')).toContain('1.5 to 12 mm');
    const thin = ask('air-65A', 1);
    expect(thin.clamped).toBe(true);
    expect(thin.row.startSpeed).toBe(6600);
    expect(ask('air-45A', 6).clamped).toBe(false);
  });

  test('past its pierce capacity a class starts from an edge', () => {
    expect(rowOf('air-45A', 11).edgeStart).toBe(true);
    expect(ask('air-45A', 11).notes.join(' ')).toContain('from an edge');
    expect(rowOf('air-45A', 10).edgeStart).toBe(false);
    expect(rowOf('air-30A', 8).pierceSeconds).toBeUndefined();
    expect(rowOf('air-30A', 7).pierceSeconds).toBeUndefined();
    expect(rowOf('air-85A', 20).edgeStart).toBe(true);
  });

  test('starting values say that they are, a shop’s own chart does not', () => {
    expect(ask('air-45A', 6).notes[0]).toContain('Starting values');
    const own: CutChart = { ...startingChart, starting: false };
    const answer = chartRow(own, { processClass: 'air-45A', material: 'mild steel', thickness: 6 });
    expect(answer.found && answer.notes).toEqual([]);
  });

  test('rows need not be in order', () => {
    const shuffled: CutChart = { ...startingChart, rows: startingChart.rows.toReversed() };
    const answer = chartRow(shuffled, { processClass: 'air-45A', material: 'mild steel', thickness: 6.35 });
    expect(answer.found && answer.row.startSpeed).toBeCloseTo(1334, 0);
  });

  test('classes are never mixed: an unlisted one is refused with the known ones', () => {
    expect(
      chartRow(startingChart, { processClass: 'air-55A', material: 'mild steel', thickness: 6 }),
    ).toMatchObject({
      found: false,
      field: 'processClass',
      known: ['air-30A', 'air-45A', 'air-65A', 'air-85A', 'air-105A'],
    });
  });

  test('a material without rows is refused with those that have them', () => {
    const steelOnly: CutChart = {
      ...startingChart,
      rows: startingChart.rows.filter(({ material }) => material === 'mild steel'),
    };
    expect(
      chartRow(steelOnly, { processClass: 'air-45A', material: 'aluminium', thickness: 6 }),
    ).toMatchObject({
      found: false,
      field: 'material',
      known: ['mild steel'],
    });
  });

  test.each([0, -3, NaN, Infinity])('a plate of %d mm is refused', (thickness) => {
    expect(
      chartRow(startingChart, { processClass: 'air-45A', material: 'mild steel', thickness }),
    ).toMatchObject({
      found: false,
      field: 'thickness',
    });
  });
});

describe('which class, which column', () => {
  // Common practice: the lowest current that holds the plate with a third in hand.
  test.each([
    [2, 'air-30A'],
    [3, 'air-30A'],
    [4, 'air-45A'],
    [6, 'air-45A'],
    [6.35, 'air-45A'],
    [8, 'air-65A'],
    [10, 'air-85A'],
    [12, 'air-105A'],
    [16, 'air-105A'],
  ])('%d mm starts with %s', (thickness, id) => {
    expect(suggestClass(thickness)?.processClass.id).toBe(id);
  });

  test('6 mm could be cut with any of four', () => {
    expect(suggestClass(6)?.usable.map(({ amps }) => amps)).toEqual([45, 65, 85, 105]);
  });

  test('a shop with one class gets that one; nothing holds 25 mm', () => {
    const one: CutChart = {
      ...startingChart,
      classes: startingChart.classes.filter(({ amps }) => amps === 45),
    };
    expect(suggestClass(10, one)?.processClass.id).toBe('air-45A');
    expect(suggestClass(25)).toBeUndefined();
  });

  test.each([
    ['S275', 'mild steel'],
    ['A36', 'mild steel'],
    ['mild steel', 'mild steel'],
    ['304', 'stainless'],
    ['6061-T6', 'aluminium'],
  ])('%s is cut by the %s column', (grade, column) => {
    expect(chartMaterialFor(grade)).toEqual({ found: true, row: column });
    const material = findMaterial(grade);
    if (material.found) expect(chartMaterial(material.row)).toBe(column);
  });

  test('an unknown grade has no column', () => {
    expect(chartMaterialFor('cheese').found).toBe(false);
  });
});
