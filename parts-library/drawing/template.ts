// A paper template at true size, to try on the real parts before any steel is cut: tiled on A4 or Letter, every page
// with a bar of 100 mm to measure, because printers scale.
import { boundsOf, isCircle } from '../geometry/index.js';
import { isCut, isMark, outlineOf, type Feature, type Part } from '../model/index.js';
import { uprightBox, cornersOf, type Box } from './boxes.js';
import type { DisplayItem, DisplayList, LineType, PathCommand, Role, Text } from './display-list.js';
import { boxOfText, textWidth, writable } from './measure-text.js';
import { inside, pathOf } from './piece-cuts.js';
import { pathOfContour, pathOfOpenPath, piecesOf } from './pieces.js';
import { placePath, roundCorners, roundPath } from './to-sheet.js';

/** Sheets of ISO 216 and ANSI, mm. */
export const TEMPLATE_PAPERS = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
} as const;

export type TemplatePaper = keyof typeof TEMPLATE_PAPERS;

/** Unprintable edge of office printers, and the band at the foot for words and bar, mm. */
const MARGIN = 10;
const FOOT = 18;
/** Strip that two pages share, so that they can be laid over each other and taped, mm. */
const OVERLAP = 10;
/** What the check bar measures, mm, and the height of its end marks. */
const BAR = 100;
const BAR_END = 2;
const LETTERING = 3.2;
const SMALL = 2.5;
/** Arm of a centre cross beyond its hole, and of a crop mark, mm. */
const CROSS = 4;

interface Tile {
  readonly column: number;
  readonly row: number;
  /** Corner of the tile on the part, mm, y down. */
  readonly x: number;
  readonly y: number;
}

interface Layout {
  readonly paper: { readonly width: number; readonly height: number };
  /** Where a tile lies on its page, and how large it is. */
  readonly window: Box;
  readonly columns: number;
  readonly rows: number;
  readonly tiles: readonly Tile[];
}

/** Pages that a part of this size needs, the paper standing or lying, whichever takes fewer. */
function layOut(
  paper: { readonly width: number; readonly height: number },
  extent: { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number },
): Layout {
  const turned = { width: paper.height, height: paper.width };
  const [standing, lying] = [paper, turned].map(({ width, height }): Layout => {
    const window = uprightBox(MARGIN, MARGIN, width - MARGIN, height - MARGIN - FOOT);
    const [w, h] = [2 * window.halfWidth, 2 * window.halfHeight];
    const count = (size: number, tile: number): number =>
      size <= tile ? 1 : Math.ceil((size - OVERLAP) / (tile - OVERLAP));
    const [columns, rows] = [count(extent.maxX - extent.minX, w), count(extent.maxY - extent.minY, h)];
    // The part stands in the middle of all tiles together.
    const left = (extent.minX + extent.maxX - (columns * (w - OVERLAP) + OVERLAP)) / 2;
    const top = (extent.minY + extent.maxY - (rows * (h - OVERLAP) + OVERLAP)) / 2;
    const tiles = Array.from({ length: columns * rows }, (_, i): Tile => {
      const [column, row] = [i % columns, Math.floor(i / columns)];
      return { column, row, x: left + column * (w - OVERLAP), y: top + row * (h - OVERLAP) };
    });
    return { paper: { width, height }, window, columns, rows, tiles };
  });
  if (standing === undefined || lying === undefined) throw new Error('A paper stands or lies.');
  return lying.tiles.length < standing.tiles.length ? lying : standing;
}

/** What a tile shows of a path, or nothing. */
function clipped(path: readonly PathCommand[], window: Box): readonly PathCommand[] {
  return piecesOf(path).flatMap((piece) =>
    inside(piece, window).flatMap((interval) => pathOf(piece, interval)),
  );
}

function words(text: string, x: number, y: number, size: number, anchor: Text['anchor'] = 'start'): Text {
  const shown = writable(text);
  const box = boxOfText(x, y, anchor, size, textWidth(shown, 'regular', size));
  return {
    kind: 'text',
    role: 'note',
    at: { x, y },
    anchor,
    degrees: 0,
    size,
    face: 'regular',
    text: shown,
    box: roundCorners(cornersOf(box)),
  };
}

const line = (role: Role, type: LineType, path: readonly PathCommand[]): DisplayItem => ({
  kind: 'stroke',
  role,
  type,
  weight: role === 'outline' || role === 'opening' ? 'wide' : 'narrow',
  path: roundPath(path),
});

interface Centre {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly says: string;
}

/** Round holes and marks, with what is written beside them; y down. */
function centresOf(features: readonly Feature[], length: (mm: number) => string): readonly Centre[] {
  return features.flatMap((feature): readonly Centre[] => {
    if (isMark(feature)) {
      const says = feature.hole === undefined ? '' : `Ø${length(feature.hole.size)}`;
      return [{ x: feature.at.x, y: -feature.at.y, radius: 0, says }];
    }
    const circle = isCut(feature) && feature.purpose === 'opening' ? isCircle(feature.contour) : undefined;
    return circle === undefined
      ? []
      : [
          {
            x: circle.centre.x,
            y: -circle.centre.y,
            radius: circle.radius,
            says: `Ø${length(2 * circle.radius)}`,
          },
        ];
  });
}

const crossPath = ({ x, y, radius }: Centre): readonly PathCommand[] => {
  const arm = radius + CROSS;
  return [
    ['M', x - arm, y],
    ['L', x + arm, y],
    ['M', x, y - arm],
    ['L', x, y + arm],
  ];
};

interface TemplateLine {
  readonly role: Role;
  readonly type: LineType;
  readonly path: readonly PathCommand[];
}

/** Lines of a part at true size, y down: what is cut, what is marked, and the centres of holes. */
function linesOf(part: Part): readonly TemplateLine[] {
  return part.features.flatMap((feature): readonly TemplateLine[] => {
    if (isMark(feature)) return [];
    if (isCut(feature)) {
      return [{ role: feature.purpose, type: 'continuous', path: pathOfContour(feature.contour) }];
    }
    const type: LineType = feature.purpose === 'score' ? 'dashed' : 'continuous';
    return [{ role: feature.purpose, type, path: pathOfOpenPath(feature.path) }];
  });
}

/** `A1`, `B1` for the columns of the first row. */
const tileName = ({ column, row }: Tile): string =>
  `${column < 26 ? String.fromCodePoint(65 + column) : `Z${column - 25}`}${row + 1}`;

/** Crosses where the strips of two pages lie over each other: laid cross on cross, the pages fit. */
function cropMarks({ window, columns, rows }: Layout, tile: Tile): readonly DisplayItem[] {
  const xs = [
    ...(tile.column > 0 ? [window.minX + OVERLAP / 2] : []),
    ...(tile.column < columns - 1 ? [window.maxX - OVERLAP / 2] : []),
  ];
  const ys = [
    ...(tile.row > 0 ? [window.minY + OVERLAP / 2] : []),
    ...(tile.row < rows - 1 ? [window.maxY - OVERLAP / 2] : []),
  ];
  const places = [
    ...xs.flatMap((x) => [window.minY + OVERLAP, window.maxY - OVERLAP].map((y) => ({ x, y }))),
    ...ys.flatMap((y) => [window.minX + OVERLAP, window.maxX - OVERLAP].map((x) => ({ x, y }))),
  ];
  return places.map(({ x, y }) => line('frame', 'continuous', crossPath({ x, y, radius: 0, says: '' })));
}

function footOf(layout: Layout, tile: Tile, title: string): readonly DisplayItem[] {
  const { window, paper, columns, rows } = layout;
  const top = window.maxY + 6;
  const bar = paper.height - MARGIN - 2;
  const left = window.minX;
  const pages =
    columns * rows === 1
      ? 'one page'
      : `page ${tileName(tile)} of ${columns} × ${rows}, laid over each other cross on cross`;
  return [
    words(title, left, top, LETTERING),
    words(`True size: print at 100 %, ${pages}`, left, top + 4.4, SMALL),
    line('scale-bar', 'continuous', [
      ['M', left, bar],
      ['L', left + BAR, bar],
      ['M', left, bar - BAR_END],
      ['L', left, bar + BAR_END],
      ['M', left + BAR / 2, bar - BAR_END / 2],
      ['L', left + BAR / 2, bar + BAR_END / 2],
      ['M', left + BAR, bar - BAR_END],
      ['L', left + BAR, bar + BAR_END],
    ]),
    words('must measure 100 mm', left + BAR + 4, bar + 1, SMALL),
  ];
}

/**
 * A part's template as pages at true size.
 *
 * @param paper `a4` or `letter`; it lies or stands, whichever takes fewer pages
 * @param options title for the foot of each page, and how to write a diameter
 * @returns one display list in mm for each page, row after row, scale 1
 */
export function drawTemplate(
  part: Part,
  paper: TemplatePaper,
  options: { readonly title: string; readonly length: (mm: number) => string },
): readonly DisplayList[] {
  const { minX, minY, maxX, maxY } = boundsOf(outlineOf(part).contour);
  const layout = layOut(TEMPLATE_PAPERS[paper], { minX, minY: -maxY, maxX, maxY: -minY });
  const lines = linesOf(part);
  const centres = centresOf(part.features, options.length);
  return layout.tiles.map((tile): DisplayList => {
    const placing = { scale: 1, x: layout.window.minX - tile.x, y: layout.window.minY - tile.y };
    const show = (role: Role, type: LineType, path: readonly PathCommand[]): readonly DisplayItem[] => {
      const seen = clipped(placePath(path, placing), layout.window);
      return seen.length === 0 ? [] : [line(role, type, seen)];
    };
    const labels = centres.flatMap(({ x, y, radius, says }): readonly DisplayItem[] => {
      const text = words(says, placing.x + x + radius + 1, placing.y + y - 1, SMALL);
      const within = text.box.every(
        (corner) =>
          corner.x > layout.window.minX &&
          corner.x < layout.window.maxX &&
          corner.y > layout.window.minY &&
          corner.y < layout.window.maxY,
      );
      return within && says !== '' ? [text] : [];
    });
    return {
      width: layout.paper.width,
      height: layout.paper.height,
      scale: 1,
      items: [
        ...lines.flatMap(({ role, type, path }) => show(role, type, path)),
        ...centres.flatMap((centre) => show('centre', 'continuous', crossPath(centre))),
        ...labels,
        ...cropMarks(layout, tile),
        ...footOf(layout, tile, options.title),
      ],
      tabOrder: [],
    };
  });
}
