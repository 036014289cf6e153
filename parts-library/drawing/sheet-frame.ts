// The paper round a drawing: border after ISO 5457, notes column, title block with the fields of ISO 7200.
import type { DisplayItem, PathCommand } from './display-list.js';
import { drawNotes } from './notes-column.js';
import type { PrintInput } from './print-input.js';
import type { Extent } from './scene.js';
import { drawTitleBlock, TITLE_BLOCK_HEIGHT } from './title-block.js';
import { letteringOf } from './style.js';
import { roundPath } from './to-sheet.js';

/** ISO 5457: 20 mm on the left for filing, 10 mm on the other sides. */
const FILING_MARGIN = 20;
const MARGIN = 10;

/** The notes column takes this share of the width inside the border. */
const NOTES_SHARE = 0.27;

interface SheetPlan {
  readonly border: Extent;
  readonly drawing: Extent;
  readonly title: Extent;
  readonly notes: Extent | null;
}

function planSheet({ size, notes }: PrintInput): SheetPlan {
  const border = {
    minX: FILING_MARGIN,
    minY: MARGIN,
    maxX: size.width - MARGIN,
    maxY: size.height - MARGIN,
  };
  const titleTop = border.maxY - TITLE_BLOCK_HEIGHT * letteringOf(size.height);
  const noted = notes !== undefined && notes.length > 0;
  const column = border.maxX - (noted ? NOTES_SHARE * (border.maxX - border.minX) : 0);
  return {
    border,
    drawing: { minX: border.minX, minY: border.minY, maxX: column, maxY: titleTop },
    title: { ...border, minY: titleTop },
    notes: noted ? { minX: column, minY: border.minY, maxX: border.maxX, maxY: titleTop } : null,
  };
}

/** The room for the drawing itself. */
export function drawingAreaOf(input: PrintInput): Extent {
  if (input.frame === 'sheet') return planSheet(input).drawing;
  return { minX: 0, minY: 0, maxX: input.size.width, maxY: input.size.height };
}

const line = (weight: 'wide' | 'narrow', path: readonly PathCommand[]): DisplayItem => ({
  kind: 'stroke',
  role: 'frame',
  type: 'continuous',
  weight,
  path: roundPath(path),
});

/** Border, title block and notes of a sheet; nothing for a drawing that stands on a page. */
export function drawSheet(input: PrintInput, statedScale: string): readonly DisplayItem[] {
  if (input.frame === 'drawing') return [];
  const { border, title, notes } = planSheet(input);
  return [
    line('wide', [
      ['M', border.minX, border.minY],
      ['L', border.maxX, border.minY],
      ['L', border.maxX, border.maxY],
      ['L', border.minX, border.maxY],
      ['Z'],
    ]),
    line('wide', [
      ['M', title.minX, title.minY],
      ['L', title.maxX, title.minY],
    ]),
    ...drawTitleBlock(input, title, statedScale),
    ...(notes === null
      ? []
      : [
          line('narrow', [
            ['M', notes.minX, notes.minY],
            ['L', notes.minX, notes.maxY],
          ]),
          ...drawNotes(input, notes),
        ]),
  ];
}
