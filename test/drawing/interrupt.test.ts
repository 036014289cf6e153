// Ghosts and centre lines open where a text stands.
import { describe, expect, test } from 'vitest';
import type { DisplayItem, PathCommand, Stroke, Text } from '../../parts-library/drawing/index.js';
import { interruptLines } from '../../parts-library/drawing/interrupt.js';

const line = (role: Stroke['role'], path: readonly PathCommand[]): Stroke => ({
  kind: 'stroke',
  role,
  type: 'continuous',
  weight: 'narrow',
  path,
});

/** A text whose box is 20 wide and 10 high about a centre. */
const textAbout = (x: number, y: number): Text => ({
  kind: 'text',
  role: 'dimension',
  at: { x, y },
  anchor: 'middle',
  degrees: 0,
  size: 10,
  face: 'condensed',
  text: '35',
  box: [
    { x: x - 10, y: y - 5 },
    { x: x + 10, y: y - 5 },
    { x: x + 10, y: y + 5 },
    { x: x - 10, y: y + 5 },
  ],
});

const pathOf = (items: readonly DisplayItem[]): readonly PathCommand[] => {
  const [first] = items;
  if (first?.kind !== 'stroke') throw new Error('no stroke');
  return first.path;
};

describe('interrupted lines', () => {
  test('a centre line stops 2 before a text and goes on 2 after it', () => {
    const centre = line('centre', [
      ['M', 0, 50],
      ['L', 100, 50],
    ]);
    expect(pathOf(interruptLines([centre], [textAbout(50, 50)], 2))).toEqual([
      ['M', 0, 50],
      ['L', 38, 50],
      ['M', 62, 50],
      ['L', 100, 50],
    ]);
  });

  test('a ghost circle keeps its radius and loses only the arc behind the text', () => {
    const circle = line('ghost', [['M', 80, 50], ['A', 30, 0, 1, 20, 50], ['A', 30, 0, 1, 80, 50], ['Z']]);
    const path = pathOf(interruptLines([circle], [textAbout(50, 80)], 0));
    // At x = 40 and x = 60 the circle is at y = 50 + sqrt(900 - 100) = 78.284.
    expect(path).toContainEqual(['A', 30, 0, 1, 60, 78.284]);
    expect(path).toContainEqual(['M', 40, 78.284]);
    expect(path.filter(([command]) => command === 'M')).toHaveLength(2);
  });

  test('an outline is never interrupted', () => {
    const outline = line('outline', [
      ['M', 0, 50],
      ['L', 100, 50],
    ]);
    expect(interruptLines([outline], [textAbout(50, 50)], 2)).toEqual([outline]);
  });

  test('a line that no text meets stays as it is', () => {
    const centre = line('centre', [
      ['M', 0, 0],
      ['L', 100, 0],
    ]);
    expect(interruptLines([centre], [textAbout(50, 50)], 2)[0]).toBe(centre);
  });
});
