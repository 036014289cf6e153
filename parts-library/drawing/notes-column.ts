// The numbered notes of a sheet, in a column beside the drawing.
import type { DisplayItem } from './display-list.js';
import { fitNotes, LEADING, type Column } from './fit-notes.js';
import { numberFindings } from './place-balloon.js';
import type { PrintInput } from './print-input.js';
import type { Extent } from './scene.js';
import { drawText } from './sheet-text.js';
import { letteringOf } from './style.js';
import { round, roundPoint } from './to-sheet.js';

/** Sizes in the drawing's lettering: titles and words, then sources. */
const WORDS = 0.86;
const SOURCE = 0.74;
/** Smaller lettering is tried before anything is left out, down to ISO 3098-1's smallest: 1.8 mm capitals. */
const SHARES = [1, 0.93, 0.86];
const LEAST_SIZE = 1.8 / 0.7;

const PAD = 0.8;
const BELOW_HEADING = 1.4;

/** Where the texts start, from the column's inner edge, in balloon radii and font sizes. */
const textOffset = ({ balloon, words }: Pick<Column, 'balloon' | 'words'>): number =>
  2 * balloon + words * 0.5;

function columnOf(width: number, lettering: number, share: number): Column {
  const words = Math.max(LEAST_SIZE, lettering * WORDS * share);
  const balloon = words * 0.72;
  return {
    words,
    source: Math.max(LEAST_SIZE, lettering * SOURCE * share),
    balloon,
    width: width - textOffset({ balloon, words }),
    wholeWidth: width,
  };
}

/** Draws the notes of a sheet in its column. */
export function drawNotes(input: PrintInput, area: Extent): readonly DisplayItem[] {
  const notes = input.notes ?? [];
  const lettering = letteringOf(input.size.height);
  const left = area.minX + PAD * lettering;
  const top = area.minY + PAD * lettering;
  const room = area.maxY - PAD * lettering - top;
  const codes = new Map(numberFindings(input.findings).map(({ number, finding }) => [number, finding.code]));

  const tried = SHARES.map((share) => {
    const column = columnOf(area.maxX - PAD * lettering - left, lettering, share);
    const heading = column.words * LEADING * BELOW_HEADING;
    return { column, heading, ...fitNotes(notes, column, room - heading) };
  });
  const chosen = tried.find(({ fits }) => fits) ?? tried.at(-1);
  if (chosen === undefined) return [];
  const { column, heading, blocks, footer } = chosen;

  const items: DisplayItem[] = [
    drawText(
      'note',
      { text: 'Notes', face: 'semi-bold', size: column.source },
      left,
      top + column.source * 0.8,
    ),
  ];
  let y = top + heading;
  for (const { note, lines, height } of blocks) {
    items.push({
      kind: 'balloon',
      at: roundPoint(left + column.balloon, y + column.balloon),
      radius: round(column.balloon),
      number: note.number,
      level: note.level === 'pass' ? 'note' : note.level,
      code: codes.get(note.number) ?? '',
    });
    let baseline = y + column.balloon + column.words * 0.35;
    lines.forEach((line, i) => {
      if (i > 0) baseline += line.size * LEADING;
      items.push(drawText('note', line, left + textOffset(column), baseline));
    });
    y += height;
  }
  let baseline = y + column.source * 0.9;
  for (const line of footer) {
    items.push(drawText('note', line, left, baseline));
    baseline += line.size * LEADING;
  }
  return items;
}
