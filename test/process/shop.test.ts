import { describe, expect, test } from 'vitest';
import { findThread, listDrills, sourceOf } from '../../parts-library/handbook/index.js';
import type { Thread } from '../../parts-library/handbook/index.js';
import {
  drillOnHand,
  hasTap,
  inchTools,
  metricTools,
  startingMachine,
} from '../../parts-library/process/index.js';

function thread(name: string): Thread {
  const answer = findThread(name);
  if (!answer.found) throw new Error(answer.says);
  return answer.row;
}

describe('tools on hand', () => {
  test.each([
    ['metric', metricTools],
    ['inch', inchTools],
  ])('every drill and tap of the %s list is one the handbook knows, once', (_, tools) => {
    const known = new Set(listDrills().map(({ name }) => name));
    for (const name of tools.drills) expect(known.has(name), name).toBe(true);
    for (const name of tools.taps) expect(thread(name).name).toBe(name);
    expect(new Set(tools.drills).size).toBe(tools.drills.length);
    expect(tools.source.certainty).toBe('common practice');
  });

  test('every tap on a list has its usual tap drill on it', () => {
    for (const tools of [metricTools, inchTools]) {
      for (const name of tools.taps) {
        const drill = thread(name).tapDrill;
        expect(drillOnHand(tools, drill.diameter)?.diameter, name).toBeCloseTo(drill.diameter, 6);
      }
    }
  });

  test('a metric shop has M10 and not 3/8-16, nor M10x1', () => {
    expect(hasTap(metricTools, thread('M10'))).toBe(true);
    expect(hasTap(metricTools, thread('3/8-16'))).toBe(false);
    expect(hasTap(metricTools, thread('M10x1'))).toBe(false);
    expect(hasTap({ ...metricTools, taps: ['3/8"-16', 'rubbish'] }, thread('3/8-16'))).toBe(true);
  });

  test('for 65 % thread in M10, 8.73 asked, the shop drills 8.5; with no drills nothing', () => {
    expect(drillOnHand(metricTools, 8.73)?.name).toBe('8.5 mm');
    expect(drillOnHand({ ...metricTools, drills: [] }, 8.73)).toBeUndefined();
  });
});

describe('the machine', () => {
  // Published: clockwise swirl cuts square on the right of travel. The rest from memory: 0.5–3 m/s², 5–20 m/min, 2–4 s.
  test('it starts from values that are within what small tables do', () => {
    expect(startingMachine.squareSide).toBe('right');
    expect(startingMachine.acceleration).toBeGreaterThanOrEqual(500);
    expect(startingMachine.acceleration).toBeLessThanOrEqual(3000);
    expect(startingMachine.rapidSpeed).toBeGreaterThanOrEqual(5000);
    expect(startingMachine.rapidSpeed).toBeLessThanOrEqual(20_000);
    expect(startingMachine.probeSeconds).toBeGreaterThanOrEqual(2);
    expect(startingMachine.probeSeconds).toBeLessThanOrEqual(4);
    expect(startingMachine.starting).toBe(true);
    expect(sourceOf(startingMachine, 'squareSide').certainty).toBe('published');
    expect(sourceOf(startingMachine, 'acceleration').certainty).toBe('from memory');
  });
});
