// The numbered notes of a sheet: as many as fit, and a line that says how many more there are and where.
import type { DisplayItem } from './display-list.js';
import { breakLines, writable } from './measure-text.js';
import { numberFindings } from './place-balloon.js';
import type { PrintInput, SheetNote } from './print-input.js';
import type { Extent } from './scene.js';
import { drawText, type Face } from './sheet-text.js';
import { letteringOf } from './style.js';
import { roundPoint, round } from './to-sheet.js';

/** Sizes in the drawing's lettering: headings and words, then sources; the smallest is 1.8 mm capitals on A4. */
const WORDS = 0.86;
const SOURCE = 0.74;
/** Smaller lettering is tried before notes are left for the page. */
const SHARES = [1, 0.93, 0.86];
const LEAST_SIZE = 1.8 / 0.7;

const LEADING = 1.28;
const PAD = 0.8;

interface Line {
  readonly text: string;
  readonly face: Face;
  readonly size: number;
}

interface Column {
  readonly words: number;
  readonly source: number;
  readonly balloon: number;
  readonly textX: number;
  readonly width: number;
}

function columnOf(area: Extent, lettering: number, share: number): Column {
  const words = Math.max(LEAST_SIZE, lettering * WORDS * share);
  const balloon = words * 0.72;
  const textX = area.minX + PAD * lettering + 2 * balloon + words * 0.5;
  return {
    words,
    source: Math.max(LEAST_SIZE, lettering * SOURCE * share),
    balloon,
    textX,
    width: area.maxX - PAD * lettering - textX,
  };
}

function linesOf(note: SheetNote, { words, source, width }: Column): readonly Line[] {
  const set = (text: string, face: Face, size: number): readonly Line[] =>
    breakLines(writable(text), face, size, width).map((line) => ({ text: line, face, size }));
  // What it says usually begins by repeating its title.
  const says = note.says.startsWith(note.title)
    ? note.says.slice(note.title.length).replace(/^[.:;, ]+/, '')
    : note.says;
  return [
    ...set(note.title, 'semi-bold', words),
    ...set(says, 'regular', words),
    ...set(note.source, 'regular', source),
  ];
}

const heightOf = (lines: readonly Line[]): number => lines.reduce((sum, { size }) => sum + size * LEADING, 0);

const moreLine = (left: readonly SheetNote[]): string => {
  const numbers = left.map(({ number }) => number);
  const which = numbers.length === 1 ? `number ${numbers[0]}` : `numbers ${numbers[0]} to ${numbers.at(-1)}`;
  return `${numbers.length} more, ${which}: with this print on the bench.`;
};

/** Draws the notes of a sheet in its column. */
export function drawNotes(input: PrintInput, area: Extent): readonly DisplayItem[] {
  const notes = input.notes ?? [];
  const lettering = letteringOf(input.size.height);
  const top = area.minY + PAD * lettering;
  const room = area.maxY - PAD * lettering - top;
  const codes = new Map(numberFindings(input.findings).map(({ number, finding }) => [number, finding.code]));

  const layout = (share: number) => {
    const column = columnOf(area, lettering, share);
    const blocks = notes.map((note) => ({ note, lines: linesOf(note, column) }));
    const heading = column.words * LEADING * 1.4;
    const space = column.words * 0.7;
    const heights = blocks.map(({ lines }) => Math.max(heightOf(lines), 2 * column.balloon) + space);
    const whole = heading + heights.reduce((sum, height) => sum + height, 0) - space;
    return { column, blocks, heading, heights, whole };
  };
  const tried = SHARES.map(layout);
  const chosen = tried.find(({ whole }) => whole <= room) ?? tried.at(-1);
  if (chosen === undefined) return [];
  const { column, blocks, heading, heights, whole } = chosen;

  const items: DisplayItem[] = [
    drawText(
      'note',
      { text: 'Notes', face: 'semi-bold', size: column.source },
      area.minX + PAD * lettering,
      top + column.source * 0.8,
    ),
  ];
  let y = top + heading;
  const footer = (left: readonly SheetNote[]): readonly Line[] =>
    breakLines(moreLine(left), 'semi-bold', column.source, area.maxX - area.minX - 2 * PAD * lettering).map(
      (text) => ({ text, face: 'semi-bold' as const, size: column.source }),
    );
  const end = top + room;
  const reserved = whole <= room ? 0 : heightOf(footer(notes));
  const fitting = blocks.findIndex((_, i) => {
    const used = heights.slice(0, i + 1).reduce((sum, height) => sum + height, 0);
    return top + heading + used > end - reserved + column.words * 0.7;
  });
  const count = whole <= room || fitting < 0 ? blocks.length : fitting;
  blocks.slice(0, count).forEach(({ note, lines }, i) => {
    items.push({
      kind: 'balloon',
      at: roundPoint(area.minX + PAD * lettering + column.balloon, y + column.balloon),
      radius: round(column.balloon),
      number: note.number,
      level: note.level === 'pass' ? 'note' : note.level,
      code: codes.get(note.number) ?? '',
    });
    let baseline = y + column.balloon + column.words * 0.35;
    lines.forEach((line, j) => {
      if (j > 0) baseline += line.size * LEADING;
      items.push(drawText('note', line, column.textX, baseline));
    });
    y += heights[i] ?? 0;
  });
  if (count < blocks.length) {
    let baseline = y + column.source * 0.9;
    for (const line of footer(notes.slice(count))) {
      items.push(drawText('note', line, area.minX + PAD * lettering, baseline));
      baseline += line.size * LEADING;
    }
  }
  return items;
}
