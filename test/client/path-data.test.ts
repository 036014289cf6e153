// Path data: what the display list says in commands, SVG says in letters.
import { describe, expect, it } from 'vitest';
import { writePathData } from '../../client/drawing/path-data.js';

describe('path data', () => {
  it('keeps an arc an arc, with its two flags', () => {
    expect(writePathData([['M', 0, 0], ['A', 5, 0, 1, 10, 0], ['L', 10, 20.126], ['Z']])).toBe(
      'M0 0A5 5 0 0 1 10 0L10 20.13Z',
    );
  });
});
