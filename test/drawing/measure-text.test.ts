// Text widths from the table, and where lines break.
import { describe, expect, test } from 'vitest';
import { breakLines, textWidth, writable } from '../../parts-library/drawing/index.js';
import { boxOfText } from '../../parts-library/drawing/measure-text.js';

describe('text widths', () => {
  test('a width is the sum of its advances: Barlow 3 is 515 and 5 is 514 thousandths of the size', () => {
    expect(textWidth('35', 'regular', 1000)).toBeCloseTo(515 + 514, 6);
    expect(textWidth('35', 'regular', 10)).toBeCloseTo(10.29, 6);
  });

  test('a character that the face lacks counts as 0.84 em', () => {
    expect(textWidth('τ', 'regular', 100)).toBeCloseTo(84, 6);
  });

  test('the diameter sign is written with the letter that Barlow has', () => {
    expect(writable('6 × ⌀8.5')).toBe('6 × Ø8.5');
  });
});

describe('the box of a text', () => {
  test('stands on its baseline and grows to the side of its anchor', () => {
    const start = boxOfText(10, 20, 'start', 10, 30);
    expect([start.minX, start.maxX]).toEqual([10, 40]);
    expect(start.minY).toBeCloseTo(20 - 7.8, 6);
    expect(start.maxY).toBeCloseTo(20 + 2.1, 6);
    expect(boxOfText(10, 20, 'end', 10, 30).minX).toBe(-20);
    expect(boxOfText(10, 20, 'middle', 10, 30).minX).toBe(-5);
  });

  test('read from the right, a text stands left of its upright baseline', () => {
    const upright = boxOfText(10, 20, 'middle', 10, 30, 0, -1);
    expect(upright.minX).toBeCloseTo(10 - 7.8, 6);
    expect(upright.maxX).toBeCloseTo(10 + 2.1, 6);
    expect([upright.minY, upright.maxY]).toEqual([5, 35]);
  });
});

describe('breaking lines', () => {
  const width = textWidth('bolt holes on', 'regular', 10);

  test('breaks at spaces and fills each line', () => {
    expect(breakLines('bolt holes on a circle', 'regular', 10, width)).toEqual(['bolt holes on', 'a circle']);
  });

  test('keeps a number with its unit at a no-break space', () => {
    const narrow = textWidth('holds 62', 'regular', 10) + 1;
    expect(breakLines('holds 62\u00a0%', 'regular', 10, narrow)).toEqual(['holds', '62\u00a0%']);
  });

  test('cuts a word that is wider than a line, and loses no letter', () => {
    const lines = breakLines('countersinkingandreaming', 'regular', 10, 40);
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.join('')).toBe('countersinkingandreaming');
    for (const line of lines) expect(textWidth(line, 'regular', 10)).toBeLessThanOrEqual(40);
  });

  test('nothing gives no line', () => {
    expect(breakLines('  ', 'regular', 10, 40)).toEqual([]);
  });
});
