import { describe, expect, test } from 'vitest';
import {
  drillForPercent,
  findThread,
  listThreads,
  percentOfThread,
  sourceOf,
} from '../../parts-library/handbook/index.js';
import { inch, thread } from './rows.js';

describe('threads as people write them', () => {
  test.each([
    ['M10', 'M10'],
    ['m10', 'M10'],
    [' M 10 ', 'M10'],
    ['M10x1.5', 'M10'],
    ['M10 × 1,25', 'M10x1.25'],
    ['M10*1.25', 'M10x1.25'],
    ['M10x1.25-6g', 'M10x1.25'],
    ['M8 - 6H', 'M8'],
    ['M8 fine', 'M8x1'],
    ['M10 coarse', 'M10'],
    ['3/8-16', '3/8-16 UNC'],
    ['3/8"-16', '3/8-16 UNC'],
    ['3/8 in - 24', '3/8-24 UNF'],
    ['3/8 UNF', '3/8-24 UNF'],
    ['3/8', '3/8-16 UNC'],
    ['1/4-20 UNC', '1/4-20 UNC'],
    ['1/4-20UNC-2A', '1/4-20 UNC'],
    ['.375-16', '3/8-16 UNC'],
    ['#10-32', '#10-32 UNF'],
    ['10-24', '#10-24 UNC'],
    ['No. 8-32', '#8-32 UNC'],
    ['no 8 - 36', '#8-36 UNF'],
  ])('%s is %s', (written, name) => {
    expect(thread(written).name).toBe(name);
  });

  test('a pitch that is not made lists the pitches of that size', () => {
    const answer = findThread('M10x2');
    expect(answer).toMatchObject({ found: false, asked: 'M10x2', known: ['M10', 'M10x1.25', 'M10x1'] });
  });

  test('“M10 fine” is two threads, so it is asked back', () => {
    expect(findThread('M10 fine')).toMatchObject({ found: false, known: ['M10', 'M10x1.25', 'M10x1'] });
  });

  test('1/4-20 UNF contradicts itself and lists both quarter-inch threads', () => {
    expect(findThread('1/4-20 UNF')).toMatchObject({ found: false, known: ['1/4-20 UNC', '1/4-28 UNF'] });
  });

  test.each(['', 'bolt', 'M', 'M3', '7/8-9', 'x', '3/8-16-2', 'M10x', 'M99999999999999999999'])(
    '“%s” is not known and says what is',
    (written) => {
      const answer = findThread(written);
      expect(answer.found).toBe(false);
      if (!answer.found) expect(answer.known.length).toBeGreaterThan(0);
    },
  );

  test('every thread is found by its own name, once', () => {
    const names = listThreads().map(({ name }) => name);
    expect(new Set(names).size).toBe(41);
    for (const name of names) expect(thread(name).name).toBe(name);
  });
});

describe('thread dimensions', () => {
  // Machinery's Handbook 31st ed. p. 1978 Table 4a, inches: pitch diameter, minor diameter internal, UNR minor.
  test.each([
    ['1/4-20', 0.2175, 0.1959, 0.1905],
    ['5/16-18', 0.2764, 0.2524, 0.2463],
    ['3/8-16', 0.3344, 0.3073, 0.3006],
    ['7/16-14', 0.3911, 0.3602, 0.3524],
    ['1/2-13', 0.45, 0.4167, 0.4084],
    ['5/8-11', 0.566, 0.5266, 0.5167],
    ['3/4-10', 0.685, 0.6417, 0.6309],
  ])('%s agrees with the printed diameters', (name, pitchDiameter, internal, external) => {
    const row = thread(name);
    expect(Math.abs(row.pitchDiameter - inch(pitchDiameter))).toBeLessThanOrEqual(inch(0.00006));
    expect(Math.abs(row.minorInternal - inch(internal))).toBeLessThanOrEqual(inch(0.00006));
    expect(Math.abs(row.minorExternal - inch(external))).toBeLessThanOrEqual(inch(0.00006));
  });

  // ISO 724 metric fine, public reprint: M10x1.25 d2 9.188, D1 8.647, d3 8.466; M12x1.5 11.026, 10.376, 10.160.
  test.each([
    ['M10x1.25', 9.188, 8.647, 8.466],
    ['M12x1.5', 11.026, 10.376, 10.16],
  ])('%s agrees with the printed diameters', (name, d2, internal, external) => {
    const row = thread(name);
    expect(row.pitchDiameter).toBeCloseTo(d2, 3);
    expect(row.minorInternal).toBeCloseTo(internal, 3);
    expect(row.minorExternal).toBeCloseTo(external, 3);
  });

  // Stress area π/4 (d − 0.9382 P)² (ISO 898-1), from memory: every printed metric area follows to 1 %.
  test('printed metric stress areas follow the formula', () => {
    for (const row of listThreads().filter(({ system }) => system === 'metric')) {
      const formula = (Math.PI / 4) * (row.diameter - 0.9382 * row.pitch) ** 2;
      expect(Math.abs(row.stressArea / formula - 1), row.name).toBeLessThan(0.01);
    }
  });

  // Shigley 9th ed. Table 8-2: 3/8-16 At 0.0775 in², 1/2-13 0.1419, 3/8-24 0.0878.
  test.each([
    ['3/8-16', 0.0775],
    ['1/2-13', 0.1419],
    ['3/8-24', 0.0878],
  ])('%s has a stress area of %d in²', (name, area) => {
    expect(thread(name).stressArea).toBeCloseTo(area * 645.16, 3);
  });

  test('a cell that rests on memory says so while its row is published', () => {
    const m10 = thread('M10');
    expect(m10.source.certainty).toBe('published');
    expect(sourceOf(m10, 'stressArea').certainty).toBe('published');
    expect(sourceOf(m10, 'pitchDiameter').certainty).toBe('from memory');
    expect(sourceOf(thread('M20x1.5'), 'stressArea').certainty).toBe('from memory');
    expect(sourceOf(thread('M20x1.5'), 'tapDrill').certainty).toBe('common practice');
    expect(sourceOf(thread('3/8-16'), 'pitchDiameter').certainty).toBe('published');
    expect(sourceOf(thread('3/8-24'), 'pitchDiameter').certainty).toBe('from memory');
  });
});

describe('tap drills', () => {
  // Maker's published tap-drill chart.
  test.each([
    ['M8', 6.8],
    ['M10', 8.5],
    ['M12', 10.3],
    ['3/8-16', 7.9375],
    ['1/4-20', 5.1054],
  ])('%s is tapped from %d', (name, drill) => {
    expect(thread(name).tapDrill.diameter).toBeCloseTo(drill, 4);
  });

  // Published shop chart: #7 (0.201 in) in 1/4-20 is 75.4 % by the 1.299 convention.
  test('#7 leaves 75.4 % in 1/4-20', () => {
    expect(percentOfThread(thread('1/4-20'), inch(0.201))).toBeCloseTo(75.4, 1);
  });

  test('a drill for 65 % in M10 is 8.73, and reads back as 65 %', () => {
    const m10 = thread('M10');
    expect(drillForPercent(m10, 65)).toBeCloseTo(8.73, 2);
    expect(percentOfThread(m10, drillForPercent(m10, 65))).toBeCloseTo(65, 9);
  });
});
