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

interface Glyph {
  readonly advance: number;
  /** Points of each stroke in the face's own units, from the base line. */
  readonly strokes: readonly (readonly Point[])[];
}

const glyphs = new Map<string, Glyph | undefined>();

/** A character's strokes, taken apart once: a label is drawn again at every keystroke. */
function glyphOf(character: string): Glyph | undefined {
  if (glyphs.has(character)) return glyphs.get(character);
  const row = SIMPLEX[character];
  const glyph =
    row === undefined
      ? undefined
      : {
          advance: row[0],
          strokes: row[1].split(';').map((stroke) =>
            stroke.split(',').map((pair) => {
              const [x = 0, y = 0] = pair.split(' ').map(Number);
              return { x, y };
            }),
          ),
        };
  glyphs.set(character, glyph);
  return glyph;
}

/**
 * Letters one line of text, centred on `centre`, `height` mm being the height of a capital; base line along x.
 *
 * @example letterText('A', {x: 0, y: 0}, 21).width // 18 mm: the advance of A in the face's own units
 */
export function letterText(text: string, centre: Point, height: number): Lettering {
  const scale = height / CAPITAL_HEIGHT;
  const letters = Array.from(text).map((character) => ({ character, glyph: glyphOf(character) }));
  const units = letters.reduce((sum, { glyph }) => sum + (glyph?.advance ?? BLANK_ADVANCE), 0);
  const width = units * scale;
  const strokes: OpenPath[] = [];
  let pen = centre.x - width / 2;
  for (const { glyph } of letters) {
    for (const stroke of glyph?.strokes ?? []) {
      if (stroke.length < 2) continue;
      const vertices = stroke.map(({ x, y }) => ({
        x: pen + x * scale,
        y: centre.y - height / 2 + y * scale,
        bulge: 0,
      }));
      strokes.push({ vertices });
    }
    pen += (glyph?.advance ?? BLANK_ADVANCE) * scale;
  }
  const missing = letters.filter(({ character, glyph }) => glyph === undefined && character.trim() !== '');
  return { strokes, width, missing: [...new Set(missing.map(({ character }) => character))] };
}
