// Path commands taken apart into lines and arcs, for measuring and for collision tests; and contours into paths.
import { norm } from '../geometry/index.js';
import type { Contour, OpenPath, Vertex } from '../geometry/index.js';
import { boxesOverlap, segmentHitsBox, uprightBox, type Box } from './boxes.js';
import type { PathCommand } from './display-list.js';

export interface LinePiece {
  readonly kind: 'line';
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** `start` and `sweep` in radians with y down: positive sweeps turn clockwise as seen. */
export interface ArcPiece {
  readonly kind: 'arc';
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
}

export type Piece = LinePiece | ArcPiece;

const TURN = 2 * Math.PI;

/** Centre of an SVG arc command (SVG 1.1 appendix F.6.5 for a circle). */
function arcPiece(
  x1: number,
  y1: number,
  radius: number,
  large: 0 | 1,
  clockwise: 0 | 1,
  x2: number,
  y2: number,
): ArcPiece {
  const chord = norm(x2 - x1, y2 - y1);
  const r = Math.max(radius, chord / 2);
  const height = Math.sqrt(Math.max(0, r * r - (chord * chord) / 4));
  const side = large === clockwise ? -1 : 1;
  const x = (x1 + x2) / 2 - (side * height * (y2 - y1)) / (chord || 1);
  const y = (y1 + y2) / 2 + (side * height * (x2 - x1)) / (chord || 1);
  const start = Math.atan2(y1 - y, x1 - x);
  let sweep = Math.atan2(y2 - y, x2 - x) - start;
  if (clockwise === 1 && sweep <= 0) sweep += TURN;
  if (clockwise === 0 && sweep >= 0) sweep -= TURN;
  return { kind: 'arc', x, y, radius: r, start, sweep };
}

/** The lines and arcs of a path, in order. */
export function piecesOf(path: readonly PathCommand[]): readonly Piece[] {
  const pieces: Piece[] = [];
  let x = 0;
  let y = 0;
  let startX = 0;
  let startY = 0;
  for (const command of path) {
    if (command[0] === 'M') {
      [, startX, startY] = command;
      x = startX;
      y = startY;
    } else if (command[0] === 'Z') {
      if (x !== startX || y !== startY) pieces.push({ kind: 'line', x1: x, y1: y, x2: startX, y2: startY });
      x = startX;
      y = startY;
    } else if (command[0] === 'L') {
      pieces.push({ kind: 'line', x1: x, y1: y, x2: command[1], y2: command[2] });
      x = command[1];
      y = command[2];
    } else {
      pieces.push(arcPiece(x, y, command[1], command[2], command[3], command[4], command[5]));
      x = command[4];
      y = command[5];
    }
  }
  return pieces;
}

/** A full circle as one arc. */
export const wholeCircle = (x: number, y: number, radius: number): ArcPiece => ({
  kind: 'arc',
  x,
  y,
  radius,
  start: 0,
  sweep: TURN,
});

/** True when an angle lies on an arc. */
export function arcCovers(arc: ArcPiece, angle: number): boolean {
  const from = arc.sweep >= 0 ? arc.start : arc.start + arc.sweep;
  const turned = (((angle - from) % TURN) + TURN) % TURN;
  return turned <= Math.abs(arc.sweep);
}

/** The upright box round a piece. */
export function boundsOfPiece(piece: Piece): Box {
  if (piece.kind === 'line') {
    return uprightBox(
      Math.min(piece.x1, piece.x2),
      Math.min(piece.y1, piece.y2),
      Math.max(piece.x1, piece.x2),
      Math.max(piece.y1, piece.y2),
    );
  }
  const { x, y, radius, start, sweep } = piece;
  if (sweep >= TURN) return uprightBox(x - radius, y - radius, x + radius, y + radius);
  const xs = [x + radius * Math.cos(start), x + radius * Math.cos(start + sweep)];
  const ys = [y + radius * Math.sin(start), y + radius * Math.sin(start + sweep)];
  if (arcCovers(piece, 0)) xs.push(x + radius);
  if (arcCovers(piece, Math.PI / 2)) ys.push(y + radius);
  if (arcCovers(piece, Math.PI)) xs.push(x - radius);
  if (arcCovers(piece, -Math.PI / 2)) ys.push(y - radius);
  return uprightBox(Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys));
}

/** True when a piece passes through the inside of a box. */
export function pieceHitsBox(piece: Piece, box: Box): boolean {
  if (piece.kind === 'line') return segmentHitsBox(box, piece.x1, piece.y1, piece.x2, piece.y2);
  const bounds = boundsOfPiece(piece);
  const touches = boxesOverlap(
    uprightBox(bounds.minX - 1e-9, bounds.minY - 1e-9, bounds.maxX + 1e-9, bounds.maxY + 1e-9),
    box,
  );
  if (!touches) return false;
  const cx = (piece.x - box.x) * box.ux + (piece.y - box.y) * box.uy;
  const cy = (piece.y - box.y) * box.ux - (piece.x - box.x) * box.uy;
  const turned = Math.atan2(box.uy, box.ux);
  const w = box.halfWidth - 1e-9;
  const h = box.halfHeight - 1e-9;
  const endX = cx + piece.radius * Math.cos(piece.start - turned);
  const endY = cy + piece.radius * Math.sin(piece.start - turned);
  if (Math.abs(endX) < w && Math.abs(endY) < h) return true;
  for (const side of [-1, 1]) {
    const reachX = piece.radius ** 2 - (side * w - cx) ** 2;
    const reachY = piece.radius ** 2 - (side * h - cy) ** 2;
    for (const root of [-1, 1]) {
      if (reachX > 0) {
        const y = cy + root * Math.sqrt(reachX);
        if (Math.abs(y) < h && arcCovers(piece, Math.atan2(y - cy, side * w - cx) + turned)) return true;
      }
      if (reachY > 0) {
        const x = cx + root * Math.sqrt(reachY);
        if (Math.abs(x) < w && arcCovers(piece, Math.atan2(side * h - cy, x - cx) + turned)) return true;
      }
    }
  }
  return false;
}

/** One segment with bulge, in sheet axes (y down): `from` and `to` are already on the sheet. */
function commandOf(from: Vertex, to: Vertex): PathCommand {
  if (from.bulge === 0) return ['L', to.x, to.y];
  const chord = norm(to.x - from.x, to.y - from.y);
  const radius = (chord * (1 + from.bulge ** 2)) / (4 * Math.abs(from.bulge));
  return ['A', radius, 0, from.bulge > 0 ? 0 : 1, to.x, to.y];
}

const flip = (vertex: Vertex): Vertex => ({ x: vertex.x, y: -vertex.y, bulge: vertex.bulge });

/** A closed contour as a path at full size, y down. A bulge is a true arc; left turns become sweep 0. */
export function pathOfContour(contour: Contour): readonly PathCommand[] {
  const first = contour[0];
  if (first === undefined) return [];
  const path: PathCommand[] = [['M', first.x, -first.y]];
  contour.forEach((vertex, i) => {
    const next = contour[i + 1] ?? first;
    path.push(commandOf(flip(vertex), flip(next)));
  });
  path.push(['Z']);
  return path;
}

/** An open path at full size, y down. */
export function pathOfOpenPath({ vertices }: OpenPath): readonly PathCommand[] {
  return vertices.map((vertex, i) => {
    const before = vertices[i - 1];
    return before === undefined ? ['M', vertex.x, -vertex.y] : commandOf(flip(before), flip(vertex));
  });
}

/** A full circle as two half arcs. */
export const circlePath = (x: number, y: number, radius: number): readonly PathCommand[] => [
  ['M', x + radius, y],
  ['A', radius, 0, 1, x - radius, y],
  ['A', radius, 0, 1, x + radius, y],
  ['Z'],
];
