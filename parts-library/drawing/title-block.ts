// The title block: what the part is, from what, how many, at which scale, and the caution that goes with every print.
import type { DisplayItem, Text } from './display-list.js';
import { drawText, fitText, type Face } from './sheet-text.js';
import type { PrintInput, TitleBlock } from './print-input.js';
import type { Extent } from './scene.js';
import { letteringOf } from './style.js';
import { roundPath } from './to-sheet.js';

/** Height of the block, of one of its two rows, in font sizes of the drawing's lettering. */
const ROW = 2.75;
const CAUTION_ROW = 1.6;
export const TITLE_BLOCK_HEIGHT = 2 * ROW + CAUTION_ROW;

/** Labels are the smallest lettering of ISO 3098, values as large as the drawing's. */
const LABEL = 0.72;
const PAD = 0.5;

interface Cell {
  readonly label: string;
  readonly value: string;
  /** Share of the row's width. */
  readonly share: number;
  readonly face?: Face;
}

const rowsOf = (title: TitleBlock, scale: string): readonly (readonly Cell[])[] => [
  [
    { label: 'Part', value: title.part, share: 30, face: 'semi-bold' },
    { label: 'Job', value: title.job, share: 20 },
    { label: 'Material', value: title.material, share: 14 },
    { label: 'Thickness', value: title.thickness, share: 14 },
    { label: 'Quantity', value: title.quantity, share: 10 },
    { label: 'Scale', value: scale, share: 12 },
  ],
  [
    { label: 'Mass', value: title.mass, share: 14 },
    { label: 'Cut length', value: title.cutLength, share: 16 },
    { label: 'Pierces', value: title.pierces, share: 10 },
    { label: 'Marks', value: title.marks, share: 10 },
    { label: 'Torch time', value: title.time, share: 18 },
    { label: 'Date of issue', value: title.date ?? '', share: 20 },
    { label: 'Revision', value: title.revision ?? '', share: 12 },
  ],
];

const CAUTION: Readonly<Record<PrintInput['unit'], string>> = {
  mm: 'Dimensions in millimetres, finished sizes; kerf is not in them. Check against the mating parts before cutting. Do not scale from the print.',
  in: 'Dimensions in inches, finished sizes; kerf is not in them. Check against the mating parts before cutting. Do not scale from the print.',
};

function drawCell(cell: Cell, minX: number, maxX: number, top: number, size: number): readonly Text[] {
  const width = maxX - minX - 2 * PAD * size;
  const x = minX + PAD * size;
  const label = fitText(cell.label, 'regular', size * LABEL, width);
  const value = fitText(cell.value, cell.face ?? 'condensed', size, width);
  return [
    drawText('title', label, x, top + size * 0.95),
    ...(value.text === '' ? [] : [drawText('title', value, x, top + size * 2.25)]),
  ];
}

/** Two rows of cells and a line of caution. Without a title there is only the scale and the caution. */
export function drawTitleBlock(input: PrintInput, area: Extent, scale: string): readonly DisplayItem[] {
  const size = letteringOf(input.size.height);
  const items: DisplayItem[] = [];
  const rows =
    input.title === undefined ? [[{ label: 'Scale', value: scale, share: 1 }]] : rowsOf(input.title, scale);
  const divide = (x1: number, y1: number, x2: number, y2: number): void => {
    items.push({
      kind: 'stroke',
      role: 'frame',
      type: 'continuous',
      weight: 'narrow',
      path: roundPath([
        ['M', x1, y1],
        ['L', x2, y2],
      ]),
    });
  };
  rows.forEach((cells, row) => {
    const top = area.minY + row * ROW * size;
    const bottom = top + ROW * size;
    const whole = cells.reduce((sum, { share }) => sum + share, 0);
    let x = area.minX;
    cells.forEach((cell, i) => {
      const next = x + ((area.maxX - area.minX) * cell.share) / whole;
      if (i > 0) divide(x, top, x, bottom);
      items.push(...drawCell(cell, x, next, top, size));
      x = next;
    });
    divide(area.minX, bottom, area.maxX, bottom);
  });
  const caution = fitText(
    CAUTION[input.unit],
    'regular',
    size * LABEL,
    area.maxX - area.minX - 2 * PAD * size,
  );
  items.push(drawText('title', caution, area.minX + PAD * size, area.maxY - size * 0.55));
  return items;
}
