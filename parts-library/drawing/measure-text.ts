// How wide a text is on the sheet, the box it fills, and where long words break, from the table of advances.
import type { Text } from './display-list.js';
import { makeBox, type Box } from './boxes.js';
import { CHARACTERS, FACES } from './font-advances.js';

export type Face = Text['face'];

/**
 * Ink above and below the baseline, em. Barlow's capitals are 0.7 em, ascenders and brackets 0.78 em at most,
 * descenders 0.2 em (read from the outlines of the faces used).
 */
export const INK_ABOVE = 0.78;
export const INK_BELOW = 0.21;

/**
 * Advance of a character that Barlow lacks and another face supplies (Greek, roots, inequalities), em: as wide
 * as the widest of them in common sans-serif faces, so that a text never outgrows its box (from memory).
 */
const BORROWED_ADVANCE = 0.84;

const tableOf = (face: Face): ReadonlyMap<string, number> => {
  const { unitsPerEm, advances } = FACES[face];
  return new Map(Array.from(CHARACTERS, (character, i) => [character, (advances[i] ?? 0) / unitsPerEm]));
};

const ADVANCES: Readonly<Record<Face, ReadonlyMap<string, number>>> = {
  regular: tableOf('regular'),
  'semi-bold': tableOf('semi-bold'),
  condensed: tableOf('condensed'),
};

/**
 * The text as the faces can write it. Barlow has no diameter sign (U+2300); the capital letter Ø stands for it,
 * as in most lettering, with the same meaning as ISO 129-1's symbol.
 */
export const writable = (text: string): string => text.replaceAll('⌀', 'Ø');

/**
 * Width of a text in sheet units, without kerning (the painters turn kerning off).
 *
 * @example textWidth('35', 'condensed', 10) // 10.31
 */
export function textWidth(text: string, face: Face, size: number): number {
  const table = ADVANCES[face];
  let em = 0;
  for (const character of text) em += table.get(character) ?? BORROWED_ADVANCE;
  return em * size;
}

/**
 * Box of the ink of a text whose baseline starts, centres or ends at a point, turned clockwise about it by the
 * angle whose unit vector is (ux, uy).
 */
export function boxOfText(
  x: number,
  y: number,
  anchor: Text['anchor'],
  size: number,
  width: number,
  ux = 1,
  uy = 0,
): Box {
  const along = anchor === 'start' ? width / 2 : anchor === 'end' ? -width / 2 : 0;
  const up = ((INK_ABOVE - INK_BELOW) / 2) * size;
  return makeBox(
    x + along * ux + up * uy,
    y + along * uy - up * ux,
    width / 2,
    ((INK_ABOVE + INK_BELOW) / 2) * size,
    ux,
    uy,
  );
}

/** Pieces of a word that is wider than the line by itself. */
function splitWord(word: string, face: Face, size: number, width: number): readonly string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const character of word) {
    if (piece !== '' && textWidth(piece + character, face, size) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += character;
  }
  return [...pieces, piece];
}

/**
 * Breaks a text into lines no wider than `width`, at spaces; a word wider than a line is cut.
 * A no-break space keeps a number with its unit.
 */
export function breakLines(text: string, face: Face, size: number, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \n\t]+/).filter((part) => part !== '')) {
    for (const part of splitWord(word, face, size, width)) {
      const longer = line === '' ? part : `${line} ${part}`;
      if (line !== '' && textWidth(longer, face, size) > width) {
        lines.push(line);
        line = part;
      } else {
        line = longer;
      }
    }
  }
  return line === '' ? lines : [...lines, line];
}
