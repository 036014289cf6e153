// A linear dimension in its own frame: the rows on which its line may stand, the places of its text along it, and
// its extension lines.
import { norm } from '../geometry/index.js';
import type { LinearDimension } from '../model/index.js';
import { toSheet, type Desk } from './desk.js';
import { walk } from './occupancy.js';

/** Cells along an edge before the edge serves as the extension line; fewer are a mere crossing. */
const ON_EDGE = 5;

/** How many rows outside the part are tried, and how many inside it. */
const ROWS = 8;
const INNER_ROWS = 4;

/** Costs in font sizes of leader length: each row farther out, and a place inside the part. */
const COST_OF_ROW = 0.4;
const INSIDE = 15;

/** The dimension in its own frame: along u, across n, both unit vectors on the sheet, u pointing right or up. */
export interface Frame {
  readonly ux: number;
  readonly uy: number;
  readonly nx: number;
  readonly ny: number;
  /** Along and across coordinates of the two measured points; a1 <= a2. */
  readonly a1: number;
  readonly a2: number;
  readonly n1: number;
  readonly n2: number;
}

export function frameOf(desk: Desk, dimension: LinearDimension): Frame {
  const from = toSheet(desk, dimension.from.x, dimension.from.y);
  const to = toSheet(desk, dimension.to.x, dimension.to.y);
  let ux = dimension.along === 'y' ? 0 : 1;
  let uy = dimension.along === 'y' ? -1 : 0;
  if (dimension.along === 'aligned') {
    const length = norm(to.x - from.x, to.y - from.y);
    if (length > 0) {
      ux = (to.x - from.x) / length;
      uy = (to.y - from.y) / length;
    }
    // Text reads from the bottom, and along an upright line from the right.
    if (ux < -1e-6 || (Math.abs(ux) <= 1e-6 && uy > 0)) {
      ux = -ux;
      uy = -uy;
    }
  }
  // n points down from the text's view, so the text stands on the side of -n.
  const nx = -uy;
  const ny = ux;
  const [first, second] = from.x * ux + from.y * uy <= to.x * ux + to.y * uy ? [from, to] : [to, from];
  return {
    ux,
    uy,
    nx,
    ny,
    a1: first.x * ux + first.y * uy,
    a2: second.x * ux + second.y * uy,
    n1: first.x * nx + first.y * ny,
    n2: second.x * nx + second.y * ny,
  };
}

/** How far the outline reaches across the dimension, on the stretch that the dimension spans. */
function reachAcross({ scene, placing }: Desk, frame: Frame, margin: number): readonly [number, number] {
  let low = Math.min(frame.n1, frame.n2);
  let high = Math.max(frame.n1, frame.n2);
  for (const points of scene.contours) {
    for (let i = 0; i < points.length; i += 2) {
      const x = placing.x + (points[i] ?? 0) * placing.scale;
      const y = placing.y + (points[i + 1] ?? 0) * placing.scale;
      const along = x * frame.ux + y * frame.uy;
      if (along < frame.a1 - margin || along > frame.a2 + margin) continue;
      const across = x * frame.nx + y * frame.ny;
      if (across < low) low = across;
      if (across > high) high = across;
    }
  }
  return [low, high];
}

/** Where the text stands along the line and how the arrows point. */
export interface Fit {
  readonly textAt: number;
  readonly from: number;
  readonly to: number;
  readonly outside: boolean;
  readonly cost: number;
}

export function fits({ style }: Desk, frame: Frame, width: number): readonly Fit[] {
  const { a1, a2 } = frame;
  const length = a2 - a1;
  const middle = (a1 + a2) / 2;
  const room = width + 2 * style.pad;
  const outside = length < 2.6 * style.arrow;
  const tail = outside ? 2 * style.arrow : 0;
  if (length >= room + 2 * style.arrow) {
    const shift = Math.min((length - room - 2 * style.arrow) / 2, length * 0.28);
    const centred = { textAt: middle, from: a1, to: a2, outside: false, cost: 0 };
    if (shift < style.size) return [centred];
    return [
      centred,
      { ...centred, textAt: middle - shift, cost: 1.2 },
      { ...centred, textAt: middle + shift, cost: 1.2 },
    ];
  }
  // A text may be a little wider than the span when it stands above the line between outside arrows.
  const between: readonly Fit[] =
    length >= width + style.pad * 0.5
      ? [
          {
            textAt: middle,
            from: a1 - 2 * style.arrow,
            to: a2 + 2 * style.arrow,
            outside: true,
            cost: 0.3,
          },
        ]
      : [];
  return [
    ...between,
    {
      textAt: a2 + tail + style.pad + width / 2,
      from: a1 - tail,
      to: a2 + tail + width + 2 * style.pad,
      outside,
      cost: 1,
    },
    {
      textAt: a1 - tail - style.pad - width / 2,
      from: a1 - tail - width - 2 * style.pad,
      to: a2 + tail,
      outside,
      cost: 1.2,
    },
  ];
}

export interface Extension {
  readonly line: readonly number[];
  /** Edges of the part that it crosses. */
  readonly crossings: number;
}

const NO_EXTENSION: Extension = { line: [], crossings: 0 };

/**
 * Extension line from the measured point to the dimension line: a gap at the part, a little past the line.
 * Where an edge of the part runs the same way, the edge serves and the line starts at its end.
 */
function extensionOf(desk: Desk, frame: Frame, along: number, from: number, level: number): Extension {
  const { style, grid } = desk;
  const way = Math.sign(level - from);
  if (Math.abs(level - from) <= style.gap * 1.5) return NO_EXTENSION;
  const end = level + way * style.past;
  const lineFrom = (start: number) =>
    [
      along * frame.ux + start * frame.nx,
      along * frame.uy + start * frame.ny,
      along * frame.ux + end * frame.nx,
      along * frame.uy + end * frame.ny,
    ] as const;
  const line = lineFrom(from + way * style.gap);
  const { crossings, lead } = walk(grid, ...line);
  if (lead < ON_EDGE * grid.cell) return { line, crossings };
  const start = from + way * (lead + 2 * style.gap);
  return (level - start) * way < style.past ? NO_EXTENSION : { line: lineFrom(start), crossings: 0 };
}

/** Where a dimension line may stand, what that costs before a closer look, and its extension lines once wanted. */
export interface Row {
  readonly level: number;
  /** Between the measured points and the part's edge. */
  readonly inside: boolean;
  readonly cost: number;
  readonly extensions: () => Extension;
}

/** Both extension lines at a level, worked out once for all places of the text. */
function extensionsAt(desk: Desk, frame: Frame, level: number): () => Extension {
  let known: Extension | null = null;
  return () => {
    if (known !== null) return known;
    const first = extensionOf(desk, frame, frame.a1, frame.n1, level);
    const second = extensionOf(desk, frame, frame.a2, frame.n2, level);
    known = { line: [...first.line, ...second.line], crossings: first.crossings + second.crossings };
    return known;
  };
}

/** Rows at which a dimension line may stand. */
export function rowsOf(desk: Desk, frame: Frame): readonly Row[] {
  const { style } = desk;
  const [low, high] = reachAcross(desk, frame, style.size);
  const rows: Row[] = [];
  const add = (level: number, cost: number, inside: boolean): void => {
    rows.push({ level, cost, inside, extensions: extensionsAt(desk, frame, level) });
  };
  for (let row = 0; row < ROWS; row++) {
    const away = style.first + row * style.row;
    // Above, the text stands on the far side of the line; below, between the line and the part.
    add(low - away, row * COST_OF_ROW, false);
    add(high + away + style.size * 0.25, row * COST_OF_ROW, false);
  }
  if (Math.abs(frame.n1 - frame.n2) < style.gap) add(frame.n1, INSIDE, true);
  for (let row = 0; row < INNER_ROWS; row++) {
    const away = style.row * (row + 1);
    const above = Math.min(frame.n1, frame.n2) - away;
    const below = Math.max(frame.n1, frame.n2) + away;
    if (above > low) add(above, INSIDE, true);
    if (below < high) add(below, INSIDE, true);
  }
  return rows;
}

/** Length of the dimension line on the sheet; short ones stand nearest to the part. */
export function spanOf(desk: Desk, dimension: LinearDimension): number {
  const frame = frameOf(desk, dimension);
  return frame.a2 - frame.a1;
}
