// Lettering as single strokes: text to open paths that a torch or a scribe can follow.
import type { OpenPath, Point } from '../../geometry/index.js';
import { BLANK_ADVANCE, CAPITAL_HEIGHT, SIMPLEX } from './simplex.js';

export interface Lettering {
  readonly strokes: readonly OpenPath[];
  /** Width of the line of text, mm. */
  readonly width: number;
  /** Characters that the face does not have, and that were left blank. */
  readonly missing: readonly string[];
}

function strokePoints(stroke: string, place: (x: number, y: number) => Point): readonly Point[] {
  return stroke.split(',').map((pair) => {
    const [x = 0, y = 0] = pair.split(' ').map(Number);
    return place(x, y);
  });
}

/**
 * Letters one line of text, centred on `centre`, `height` mm being the height of a capital; base line along x.
 *
 * @example letterText('A', {x: 0, y: 0}, 21).width // 18 mm: the advance of A in the face's own units
 */
export function letterText(text: string, centre: Point, height: number): Lettering {
  const scale = height / CAPITAL_HEIGHT;
  const glyphs = Array.from(text).map((character) => ({ character, glyph: SIMPLEX[character] }));
  const units = glyphs.reduce((sum, { glyph }) => sum + (glyph?.[0] ?? BLANK_ADVANCE), 0);
  const width = units * scale;
  const strokes: OpenPath[] = [];
  let pen = centre.x - width / 2;
  for (const { glyph } of glyphs) {
    for (const stroke of glyph?.[1].split(';') ?? []) {
      const from = pen;
      const points = strokePoints(stroke, (x, y) => ({
        x: from + x * scale,
        y: centre.y - height / 2 + y * scale,
      }));
      if (points.length > 1) strokes.push({ vertices: points.map((point) => ({ ...point, bulge: 0 })) });
    }
    pen += (glyph?.[0] ?? BLANK_ADVANCE) * scale;
  }
  const missing = glyphs.filter(({ character, glyph }) => glyph === undefined && character.trim() !== '');
  return { strokes, width, missing: [...new Set(missing.map(({ character }) => character))] };
}
