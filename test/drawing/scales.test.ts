// Which scales a print may have.
import { describe, expect, test } from 'vitest';
import { fullScale, paperScales, readScale, screenScales } from '../../parts-library/drawing/scales.js';

describe('scales', () => {
  test('a 100 mm square on a 300 by 200 area with 10 all round fits at 1.8', () => {
    const square = { minX: 0, minY: 0, maxX: 100, maxY: 100 };
    const area = { minX: 0, minY: 0, maxX: 300, maxY: 200 };
    expect(fullScale(square, area, { x: 10, y: 10 })).toBeCloseTo(1.8, 9);
  });

  test('paper takes the largest of the preferred scales that fits (ISO 5455: 2:1, 1:1, 1:2, 1:5, 1:10)', () => {
    expect(paperScales(2.3, null)[0]).toEqual({ scale: 2, stated: '2:1' });
    expect(paperScales(0.7, null)[0]).toEqual({ scale: 0.5, stated: '1:2' });
    expect(paperScales(0.19, null)[0]).toEqual({ scale: 0.1, stated: '1:10' });
  });

  test('a smaller scale that is asked for is taken, a larger one that does not fit is not', () => {
    expect(paperScales(2.3, 0.5)[0]?.stated).toBe('1:2');
    expect(paperScales(0.7, 1)[0]?.stated).toBe('1:2');
  });

  test('scales are read as they are stated', () => {
    expect(readScale('1:2')).toBe(0.5);
    expect(readScale('5 : 1')).toBe(5);
    expect(readScale('half')).toBeNull();
    expect(readScale('1:0')).toBeNull();
  });

  test('a window may use any scale, the largest first', () => {
    const scales = screenScales(3).map(({ scale }) => scale);
    expect(scales[0]).toBe(3);
    expect(scales).toEqual(scales.toSorted((a, b) => b - a));
  });
});
