// Options for linear dimensions: a narrow line with arrows, extension lines from the part, text above the line
// reading from the bottom or from the right (ISO 129-1).
import type { LinearDimension } from '../model/index.js';
import { makeBox } from './boxes.js';
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
  type Desk,
  type Words,
} from './desk.js';
import type { DisplayItem, PathCommand } from './display-list.js';
import type { Option, Options } from './labels.js';
import { fits, frameOf, rowsOf, type Fit, type Frame, type Row } from './linear-frame.js';
import { walk } from './occupancy.js';

/** From the dimension line up to the text's baseline, in font sizes: descenders stay clear of the line. */
const ABOVE_LINE = 0.34;

/** Costs in font sizes: a length of extension line, an outline crossed by either line. */
const EXTENSION_LENGTH = 0.42;
const OUTLINE_UNDER_EXTENSION = 0.8;
const OUTLINE_UNDER_LINE = 9;
/** An edge that passes this near a dimension line inside the part is mistaken for it. */
const BESIDE_LINE = 0.5;
const OUTLINE_BESIDE_LINE = 4;

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
  row: Row,
  floor: number,
  below: number,
): Option | number {
  const { level } = row;
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
  if (row.inside) {
    for (const beside of [-BESIDE_LINE * style.size, BESIDE_LINE * style.size]) {
      const { crossings } = walk(
        desk.grid,
        x1 + beside * nx,
        y1 + beside * ny,
        x2 + beside * nx,
        y2 + beside * ny,
      );
      cost += OUTLINE_BESIDE_LINE * crossings;
    }
  }
  const { line: extensions, crossings } = row.extensions();
  cost += OUTLINE_UNDER_EXTENSION * crossings;
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

/** All options of a linear dimension; rows and text places are ordered by what is known without looking. */
export function linearOptions(desk: Desk, words: Words, dimension: LinearDimension): Options {
  const frame = frameOf(desk, dimension);
  const textPlaces = fits(desk, frame, words.width);
  const steps = rowsOf(desk, frame)
    .flatMap((row) => {
      const reach = (Math.abs(row.level - frame.n1) + Math.abs(row.level - frame.n2)) / desk.style.size;
      return textPlaces.map((fit) => ({ row, fit, floor: row.cost + fit.cost + reach * EXTENSION_LENGTH }));
    })
    .toSorted((a, b) => a.floor - b.floor);
  return {
    floors: steps.map(({ floor }) => floor),
    at: (index, below) => {
      const step = steps[index];
      return step === undefined
        ? Infinity
        : optionAt(desk, words, frame, step.fit, step.row, step.floor, below);
    },
  };
}
