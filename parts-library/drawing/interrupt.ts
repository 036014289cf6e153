// Ghosts and centre lines are interrupted where a text stands, so that no line runs through it (ISO 129-1).
import { norm } from '../geometry/index.js';
import { boxOfCorners, growBox, type Box } from './boxes.js';
import type { DisplayItem, PathCommand, Stroke } from './display-list.js';
import { outside, pathOf, pointAt, WHOLE, type Interval } from './piece-cuts.js';
import { piecesOf, type Piece } from './pieces.js';
import { roundPath } from './to-sheet.js';

type Bounds = Pick<Box, 'minX' | 'minY' | 'maxX' | 'maxY'>;

const apart = (a: Bounds, b: Bounds): boolean =>
  a.maxX < b.minX || b.maxX < a.minX || a.maxY < b.minY || b.maxY < a.minY;

/** An upright box round a path, perhaps a little large: an arc counts as its whole circle's size about both ends. */
function roughBounds(path: readonly PathCommand[]): Bounds {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const command of path) {
    if (command[0] === 'Z') continue;
    const isArc = command[0] === 'A';
    const x = isArc ? command[4] : command[1];
    const y = isArc ? command[5] : command[2];
    const reach = isArc ? command[1] * 2 : 0;
    minX = Math.min(minX, x - reach);
    minY = Math.min(minY, y - reach);
    maxX = Math.max(maxX, x + reach);
    maxY = Math.max(maxY, y + reach);
  }
  return { minX, minY, maxX, maxY };
}

/**
 * Whether a piece may come near a box, without making a box of its own, since a weld has a hundred ticks: a line by
 * its upright box, an arc by the ring that it lies on.
 */
function isNear(piece: Piece, box: Box): boolean {
  if (piece.kind === 'line') {
    return (
      Math.max(piece.x1, piece.x2) >= box.minX &&
      Math.min(piece.x1, piece.x2) <= box.maxX &&
      Math.max(piece.y1, piece.y2) >= box.minY &&
      Math.min(piece.y1, piece.y2) <= box.maxY
    );
  }
  const left = box.minX - piece.x;
  const right = box.maxX - piece.x;
  const top = box.minY - piece.y;
  const bottom = box.maxY - piece.y;
  const nearX = Math.max(0, left, -right);
  const nearY = Math.max(0, top, -bottom);
  const farX = Math.max(-left, right);
  const farY = Math.max(-top, bottom);
  const squared = piece.radius ** 2;
  return nearX ** 2 + nearY ** 2 <= squared && farX ** 2 + farY ** 2 >= squared;
}

/** What the boxes leave of a piece; undefined when they leave all of it. */
function leftOf(piece: Piece, boxes: readonly Box[]): readonly Interval[] | undefined {
  let intervals: readonly Interval[] | undefined;
  for (const box of boxes) {
    if (isNear(piece, box)) {
      intervals = (intervals ?? [WHOLE]).flatMap((one) => outside(piece, one, box));
    }
  }
  const [only] = intervals ?? [];
  return intervals?.length === 1 && only?.[0] === 0 && only[1] === 1 ? undefined : intervals;
}

function interrupt(stroke: Stroke, allBoxes: readonly Box[]): Stroke {
  const rough = roughBounds(stroke.path);
  const boxes = allBoxes.filter((box) => !apart(box, rough));
  if (boxes.length === 0) return stroke;
  const pieces = piecesOf(stroke.path);
  const left = pieces.map((piece) => leftOf(piece, boxes));
  if (left.every((intervals) => intervals === undefined)) return stroke;
  const path = pieces.flatMap((piece, i) => {
    const intervals = left[i];
    if (intervals !== undefined) return intervals.flatMap((one) => pathOf(piece, one));
    // Uncut pieces of one run stay joined, so that their dashes run on.
    const [move, ...rest] = pathOf(piece, WHOLE);
    const before = pieces[i - 1];
    const [endX, endY] = before === undefined ? [NaN, NaN] : pointAt(before, 1);
    const [x, y] = pointAt(piece, 0);
    const joined = norm(endX - x, endY - y) < 1e-3;
    return move === undefined || joined ? rest : [move, ...rest];
  });
  return { ...stroke, path: roundPath(path) };
}

const YIELDING: ReadonlySet<string> = new Set(['ghost', 'centre', 'weld']);

/** The items with every ghost, weld and centre line opened where one of the texts stands. */
export function interruptLines(
  items: readonly DisplayItem[],
  texts: readonly DisplayItem[],
  space: number,
): readonly DisplayItem[] {
  const boxes = texts.flatMap((item) =>
    item.kind === 'text' ? [growBox(boxOfCorners(item.box), space)] : [],
  );
  return items.map((item) =>
    item.kind === 'stroke' && YIELDING.has(item.role) ? interrupt(item, boxes) : item,
  );
}
