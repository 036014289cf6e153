// A line or arc cut at the sides of a box: what lies inside, what lies outside, and the path that is left.
import type { Box } from './boxes.js';
import type { PathCommand } from './display-list.js';
import { arcCovers, type ArcPiece, type Piece } from './pieces.js';

/** Share of a piece from its start to its end, 0 to 1. */
export type Interval = readonly [from: number, to: number];

/** A piece from end to end. */
export const WHOLE: Interval = [0, 1];

export const pointAt = (piece: Piece, t: number): readonly [number, number] => {
  if (piece.kind === 'line') {
    return [piece.x1 + (piece.x2 - piece.x1) * t, piece.y1 + (piece.y2 - piece.y1) * t];
  }
  const angle = piece.start + piece.sweep * t;
  return [piece.x + piece.radius * Math.cos(angle), piece.y + piece.radius * Math.sin(angle)];
};

const isInside = (box: Box, [x, y]: readonly [number, number]): boolean =>
  Math.abs((x - box.x) * box.ux + (y - box.y) * box.uy) < box.halfWidth &&
  Math.abs((y - box.y) * box.ux - (x - box.x) * box.uy) < box.halfHeight;

/** Where an arc meets the four sides of a box, as shares of its sweep; sides are taken as endless lines. */
function arcMeetings(arc: ArcPiece, box: Box): readonly number[] {
  const cx = (arc.x - box.x) * box.ux + (arc.y - box.y) * box.uy;
  const cy = (arc.y - box.y) * box.ux - (arc.x - box.x) * box.uy;
  const turned = Math.atan2(box.uy, box.ux);
  const angles: number[] = [];
  for (const side of [-1, 1]) {
    const acrossX = (side * box.halfWidth - cx) / arc.radius;
    const acrossY = (side * box.halfHeight - cy) / arc.radius;
    if (Math.abs(acrossX) < 1) angles.push(Math.acos(acrossX), -Math.acos(acrossX));
    if (Math.abs(acrossY) < 1) angles.push(Math.asin(acrossY), Math.PI - Math.asin(acrossY));
  }
  const turn = 2 * Math.PI;
  const way = Math.sign(arc.sweep);
  return angles
    .map((angle) => angle + turned)
    .filter((angle) => arcCovers(arc, angle))
    .map((angle) => ((((angle - arc.start) * way) % turn) + turn) % turn)
    .map((angle) => angle / Math.abs(arc.sweep));
}

function lineMeetings(piece: Extract<Piece, { kind: 'line' }>, box: Box): readonly number[] {
  const px = (piece.x1 - box.x) * box.ux + (piece.y1 - box.y) * box.uy;
  const py = (piece.y1 - box.y) * box.ux - (piece.x1 - box.x) * box.uy;
  const dx = (piece.x2 - piece.x1) * box.ux + (piece.y2 - piece.y1) * box.uy;
  const dy = (piece.y2 - piece.y1) * box.ux - (piece.x2 - piece.x1) * box.uy;
  return [-1, 1]
    .flatMap((side) => [(side * box.halfWidth - px) / dx, (side * box.halfHeight - py) / dy])
    .filter((t) => t > 0 && t < 1);
}

/** Stretches of an interval of a piece that lie inside a box, or outside it. */
function parts(piece: Piece, [from, to]: Interval, box: Box, wanted: boolean): readonly Interval[] {
  const meetings = piece.kind === 'line' ? lineMeetings(piece, box) : arcMeetings(piece, box);
  const stops = [from, ...meetings.filter((t) => t > from && t < to).toSorted((a, b) => a - b), to];
  const kept: Interval[] = [];
  for (let i = 0; i + 1 < stops.length; i++) {
    const start = stops[i] ?? from;
    const end = stops[i + 1] ?? to;
    if (end - start < 1e-9 || isInside(box, pointAt(piece, (start + end) / 2)) !== wanted) continue;
    const last = kept.at(-1);
    if (last !== undefined && last[1] === start) kept[kept.length - 1] = [last[0], end];
    else kept.push([start, end]);
  }
  return kept;
}

/** What is left of an interval of a piece once the part inside a box is gone. */
export const outside = (piece: Piece, interval: Interval, box: Box): readonly Interval[] =>
  parts(piece, interval, box, false);

/** What of a piece lies inside a box. */
export const inside = (piece: Piece, box: Box): readonly Interval[] => parts(piece, WHOLE, box, true);

/** The path of an interval of a piece, beginning with a move. */
export function pathOf(piece: Piece, [from, to]: Interval): readonly PathCommand[] {
  const start: PathCommand = ['M', ...pointAt(piece, from)];
  const end = pointAt(piece, to);
  if (piece.kind === 'line') return [start, ['L', ...end]];
  const swept = Math.abs(piece.sweep * (to - from));
  return [start, ['A', piece.radius, swept > Math.PI ? 1 : 0, piece.sweep > 0 ? 1 : 0, ...end]];
}
