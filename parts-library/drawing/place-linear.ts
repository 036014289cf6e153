// Options for linear dimensions: a narrow line with arrows, extension lines from the part, text above the line
// reading from the bottom or from the right (ISO 129-1).
import type { LinearDimension } from '../model/index.js';
import { makeBox } from './boxes.js';
import type { DisplayItem, PathCommand } from './display-list.js';
import {
  arrowPath,
  boxOfWords,
  clearanceOf,
  costOfText,
  crossingsFrom,
  drawInk,
  drawLine,
  drawWords,
  pointInArea,
  toSheet,
  type Desk,
  type Words,
} from './desk.js';
import type { Option, Options } from './labels.js';
import { walk } from './occupancy.js';

/** Cells along an edge before the edge serves as the extension line; fewer are a mere crossing. */
const ON_EDGE = 5;

/** From the dimension line up to the text's baseline, in font sizes: descenders stay clear of the line. */
const ABOVE_LINE = 0.34;

/** How many rows outside the part are tried, and how many inside it. */
const ROWS = 9;
const INNER_ROWS = 4;

/** Costs in font sizes: a length of extension line, an outline crossed by either line, a place inside the part. */
const EXTENSION_LENGTH = 0.42;
const OUTLINE_UNDER_EXTENSION = 0.8;
const OUTLINE_UNDER_LINE = 5;
const INSIDE = 15;

/** The dimension in its own frame: along u, across n, both unit vectors on the sheet, u pointing right or up. */
interface Frame {
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

function frameOf(desk: Desk, dimension: LinearDimension): Frame {
  const from = toSheet(desk, dimension.from.x, dimension.from.y);
  const to = toSheet(desk, dimension.to.x, dimension.to.y);
  let ux = dimension.along === 'y' ? 0 : 1;
  let uy = dimension.along === 'y' ? -1 : 0;
  if (dimension.along === 'aligned') {
    const length = Math.hypot(to.x - from.x, to.y - from.y);
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
interface Fit {
  readonly textAt: number;
  readonly from: number;
  readonly to: number;
  readonly outside: boolean;
  readonly cost: number;
}

function fits({ style }: Desk, frame: Frame, width: number): readonly Fit[] {
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

interface Extension {
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

const strokeOf = (lines: readonly number[]): readonly PathCommand[] =>
  Array.from({ length: lines.length / 4 }, (_, i): readonly PathCommand[] => [
    ['M', lines[4 * i] ?? 0, lines[4 * i + 1] ?? 0],
    ['L', lines[4 * i + 2] ?? 0, lines[4 * i + 3] ?? 0],
  ]).flat();

function optionAt(
  desk: Desk,
  words: Words,
  frame: Frame,
  fit: Fit,
  level: number,
  floor: number,
  below: number,
): Option | number {
  const { style } = desk;
  const { ux, uy, nx, ny } = frame;
  const x1 = fit.from * ux + level * nx;
  const y1 = fit.from * uy + level * ny;
  const x2 = fit.to * ux + level * nx;
  const y2 = fit.to * uy + level * ny;
  if (!pointInArea(desk, x1, y1) || !pointInArea(desk, x2, y2)) return Infinity;
  const baseline = level - style.size * ABOVE_LINE;
  const textX = fit.textAt * ux + baseline * nx;
  const textY = fit.textAt * uy + baseline * ny;
  const box = boxOfWords(words, textX, textY, 'middle', ux, uy);
  let cost = floor + costOfText(desk, box);
  if (cost >= below) return cost;
  cost += OUTLINE_UNDER_LINE * crossingsFrom(desk, x1, y1, x2, y2);
  if (cost >= below) return cost;
  const first = extensionOf(desk, frame, frame.a1, frame.n1, level);
  const second = extensionOf(desk, frame, frame.a2, frame.n2, level);
  const extensions = [...first.line, ...second.line];
  cost += OUTLINE_UNDER_EXTENSION * (first.crossings + second.crossings);
  if (cost >= below) return cost;
  const lines = [x1, y1, x2, y2];
  const top = level - style.size * 1.25;
  const bottom = level + style.size * 0.35;
  const middle = (fit.from + fit.to) / 2;
  const across = (top + bottom) / 2;
  const owner = words.dimensionId === undefined ? {} : { dimensionId: words.dimensionId };

  const draw = (): readonly DisplayItem[] => {
    const way = fit.outside ? 1 : -1;
    const p1x = frame.a1 * ux + level * nx;
    const p1y = frame.a1 * uy + level * ny;
    const p2x = frame.a2 * ux + level * nx;
    const p2y = frame.a2 * uy + level * ny;
    return [
      ...(extensions.length > 0 ? [drawLine('extension', strokeOf(extensions), owner)] : []),
      drawLine('dimension', strokeOf(lines), owner),
      drawInk(
        'dimension',
        [
          ...arrowPath(p1x, p1y, way * ux, way * uy, style),
          ...arrowPath(p2x, p2y, -way * ux, -way * uy, style),
        ],
        owner,
      ),
      drawWords(words, textX, textY, 'middle', ux, uy),
    ];
  };
  return {
    cost,
    box: clearanceOf(desk, box),
    lines,
    extensions,
    strip: makeBox(
      middle * ux + across * nx,
      middle * uy + across * ny,
      (fit.to - fit.from) / 2,
      (bottom - top) / 2,
      ux,
      uy,
    ),
    draw,
  };
}

/** Rows at which a dimension line may stand, with what each costs before it is looked at closely. */
function levelsOf(desk: Desk, frame: Frame): readonly { readonly level: number; readonly cost: number }[] {
  const { style } = desk;
  const [low, high] = reachAcross(desk, frame, style.size);
  const levels: { level: number; cost: number }[] = [];
  for (let row = 0; row < ROWS; row++) {
    const away = style.first + row * style.row;
    // Above, the text stands on the far side of the line; below, between the line and the part.
    levels.push({ level: low - away, cost: row * 0.4 });
    levels.push({ level: high + away + style.size * 0.25, cost: row * 0.4 });
  }
  if (Math.abs(frame.n1 - frame.n2) < style.gap) levels.push({ level: frame.n1, cost: INSIDE });
  for (let row = 0; row < INNER_ROWS; row++) {
    const away = style.row * (row + 1);
    const above = Math.min(frame.n1, frame.n2) - away;
    const below = Math.max(frame.n1, frame.n2) + away;
    if (above > low) levels.push({ level: above, cost: INSIDE });
    if (below < high) levels.push({ level: below, cost: INSIDE });
  }
  return levels;
}

/** All options of a linear dimension; rows and text places are ordered by what is known without looking. */
export function linearOptions(desk: Desk, words: Words, dimension: LinearDimension): Options {
  const frame = frameOf(desk, dimension);
  const textPlaces = fits(desk, frame, words.width);
  const steps = levelsOf(desk, frame)
    .flatMap(({ level, cost }) => {
      const reach = (Math.abs(level - frame.n1) + Math.abs(level - frame.n2)) / desk.style.size;
      return textPlaces.map((fit) => ({ level, fit, floor: cost + fit.cost + reach * EXTENSION_LENGTH }));
    })
    .toSorted((a, b) => a.floor - b.floor);
  return {
    count: steps.length,
    floor: (index) => steps[index]?.floor ?? Infinity,
    at: (index, below) => {
      const step = steps[index];
      return step === undefined
        ? Infinity
        : optionAt(desk, words, frame, step.fit, step.level, step.floor, below);
    },
  };
}

/** Length of the dimension line on the sheet; short ones stand nearest to the part. */
export function spanOf(desk: Desk, dimension: LinearDimension): number {
  const frame = frameOf(desk, dimension);
  return frame.a2 - frame.a1;
}
