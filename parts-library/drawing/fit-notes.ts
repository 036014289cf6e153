// How much of each note a column has room for: all of it, or the later ones by title alone, or only the first few.
import { breakLines, writable, type Face } from './measure-text.js';
import type { SheetNote } from './print-input.js';

export interface NoteLine {
  readonly text: string;
  readonly face: Face;
  readonly size: number;
}

/** Sizes and widths of a column, mm. */
export interface Column {
  /** Font sizes of titles and words, and of sources. */
  readonly words: number;
  readonly source: number;
  readonly balloon: number;
  /** Width of the notes' texts, and of the whole column for the line below them. */
  readonly width: number;
  readonly wholeWidth: number;
}

export interface NoteBlock {
  readonly note: SheetNote;
  readonly lines: readonly NoteLine[];
  /** With the space below it. */
  readonly height: number;
}

export interface FittedNotes {
  readonly blocks: readonly NoteBlock[];
  /** What is missing and where it is; empty when nothing is. */
  readonly footer: readonly NoteLine[];
  readonly fits: boolean;
}

/** Line spacing in font sizes, and the space below a note. */
export const LEADING = 1.28;
const BELOW_NOTE = 0.7;

const set = (text: string, face: Face, size: number, width: number): readonly NoteLine[] =>
  breakLines(writable(text), face, size, width).map((line) => ({ text: line, face, size }));

const heightOf = (lines: readonly NoteLine[]): number =>
  lines.reduce((sum, { size }) => sum + size * LEADING, 0);

function blockOf(note: SheetNote, column: Column, titleOnly: boolean): NoteBlock {
  const { words, source, width, balloon } = column;
  // What it says sometimes begins by repeating its title.
  const says = note.says.startsWith(note.title)
    ? note.says.slice(note.title.length).replace(/^[.:;, ]+/, '')
    : note.says;
  const lines = [
    ...set(note.title, 'semi-bold', words, width),
    ...(titleOnly ? [] : set(says, 'regular', words, width)),
    ...(titleOnly ? [] : set(note.source, 'regular', source, width)),
  ];
  return { note, lines, height: Math.max(heightOf(lines), 2 * balloon) + words * BELOW_NOTE };
}

const numbersOf = (notes: readonly SheetNote[]): string =>
  notes.length === 1 ? `${notes[0]?.number}` : `${notes[0]?.number} to ${notes.at(-1)?.number}`;

/**
 * Fits notes into a height. The first keep their words and sources as long as all can at least be named; when not
 * even the titles fit, the last are left out. The footer says what is missing and where it is.
 */
export function fitNotes(notes: readonly SheetNote[], column: Column, room: number): FittedNotes {
  const full = notes.map((note) => blockOf(note, column, false));
  const named = notes.map((note) => blockOf(note, column, true));
  const footerOf = (text: string): readonly NoteLine[] =>
    set(text, 'semi-bold', column.source, column.wholeWidth);
  const standing = (blocks: readonly NoteBlock[], footer: readonly NoteLine[]): boolean =>
    blocks.reduce((sum, { height }) => sum + height, heightOf(footer)) <=
    room + (footer.length === 0 ? column.words * BELOW_NOTE : 0);

  if (standing(full, [])) return { blocks: full, footer: [], fits: true };
  for (let count = notes.length - 1; count >= 0; count--) {
    const blocks = [...full.slice(0, count), ...named.slice(count)];
    const footer = footerOf(
      `Words and sources of ${numbersOf(notes.slice(count))}: with this print on the bench.`,
    );
    if (standing(blocks, footer)) return { blocks, footer, fits: false };
  }
  for (let count = notes.length - 1; count > 0; count--) {
    const left = notes.slice(count);
    const footer = footerOf(
      `${left.length} more, ${numbersOf(left)}, and all words: with this print on the bench.`,
    );
    const blocks = named.slice(0, count);
    if (standing(blocks, footer)) return { blocks, footer, fits: false };
  }
  return {
    blocks: [],
    footer: footerOf(`Notes ${numbersOf(notes)}: with this print on the bench.`),
    fits: false,
  };
}
