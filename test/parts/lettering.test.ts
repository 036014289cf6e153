// Single-stroke lettering for etched labels.
import { describe, expect, test } from 'vitest';
import { letterText } from '../../parts-library/parts/lettering/strokes.js';

describe('etched label', () => {
  test('H is two uprights and a bar; at 21 mm the face stands in its own units', () => {
    // Hershey simplex H: (4,1)-(4,22), (18,1)-(18,22), (4,11)-(18,11), advance 22; NBS Special Publication 424.
    const { strokes, width } = letterText('H', { x: 0, y: 0 }, 21);
    expect(width).toBe(22);
    expect(strokes.map(({ vertices }) => vertices.map(({ x, y }) => [x, y]))).toEqual([
      [
        [-7, 10.5],
        [-7, -10.5],
      ],
      [
        [7, 10.5],
        [7, -10.5],
      ],
      [
        [-7, 0.5],
        [7, 0.5],
      ],
    ]);
  });

  test('a line of text is centred and scales with its height', () => {
    const small = letterText('CART 4', { x: 10, y: 5 }, 6);
    const large = letterText('CART 4', { x: 10, y: 5 }, 12);
    expect(large.width).toBeCloseTo(2 * small.width, 9);
    const xs = small.strokes.flatMap(({ vertices }) => vertices.map(({ x }) => x));
    expect((Math.min(...xs) + Math.max(...xs)) / 2).toBeCloseTo(10, 0);
  });

  test('a character that the face does not have is named, not drawn as another', () => {
    expect(letterText('A⌀', { x: 0, y: 0 }, 6).missing).toEqual(['⌀']);
  });
});
