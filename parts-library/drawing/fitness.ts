// Whether a drawing is fit to read: nothing stands on anything that it would spoil, nothing leaves the sheet.
import { norm } from '../geometry/index.js';
import { boxesOverlap, boxOfCorners, discHitsBox, type Box } from './boxes.js';
import type { Balloon, DisplayList, Stroke, Text } from './display-list.js';
import { boundsOfPiece, pieceHitsBox, piecesOf, type Piece } from './pieces.js';

export type CollisionKind =
  | 'text-over-text'
  | 'text-over-edge'
  | 'text-over-line'
  | 'text-over-border'
  | 'text-over-balloon'
  | 'balloon-over-balloon'
  | 'balloon-over-border'
  | 'off-the-sheet';

export interface Collision {
  readonly kind: CollisionKind;
  /** One sentence: what runs into what, and where on the sheet. */
  readonly says: string;
}

/** Coordinates are rounded to thousandths, so two things that just touch may seem to overlap by this much. */
const ROUNDING = 0.002;

const shrink = (box: Box): Box => ({
  ...box,
  halfWidth: box.halfWidth - ROUNDING,
  halfHeight: box.halfHeight - ROUNDING,
  minX: box.minX + ROUNDING,
  minY: box.minY + ROUNDING,
  maxX: box.maxX - ROUNDING,
  maxY: box.maxY - ROUNDING,
});

const kindOf = (role: Stroke['role']): CollisionKind => {
  if (role === 'outline' || role === 'opening') return 'text-over-edge';
  return role === 'frame' ? 'text-over-border' : 'text-over-line';
};

const place = ({ x, y }: { readonly x: number; readonly y: number }): string =>
  `${x.toFixed(1)}, ${y.toFixed(1)}`;

/**
 * Everything that collides on a display list: a text over a text, an edge of the part, any other line, a border or
 * a balloon; a balloon over another or over a border; anything off the sheet. None is what a print must have.
 */
export function checkFitness(list: DisplayList): readonly Collision[] {
  const collisions: Collision[] = [];
  const report = (kind: CollisionKind, says: string): void => {
    collisions.push({ kind, says });
  };
  const texts = list.items
    .filter((item): item is Text => item.kind === 'text')
    .map((text) => ({ text, box: shrink(boxOfCorners(text.box)) }));
  const balloons = list.items.filter((item): item is Balloon => item.kind === 'balloon');
  const strokes = list.items
    .filter((item): item is Stroke => item.kind === 'stroke' && item.role !== 'metal')
    .map((stroke) => ({ stroke, pieces: piecesOf(stroke.path) }));
  const isOff = ({ minX, minY, maxX, maxY }: Pick<Box, 'minX' | 'minY' | 'maxX' | 'maxY'>): boolean =>
    minX < -ROUNDING || minY < -ROUNDING || maxX > list.width + ROUNDING || maxY > list.height + ROUNDING;

  texts.forEach(({ text, box }, i) => {
    const words = `“${text.text}” at ${place(text.at)}`;
    if (isOff(box)) report('off-the-sheet', `${words} leaves the sheet.`);
    for (const other of texts.slice(i + 1)) {
      if (boxesOverlap(box, other.box)) report('text-over-text', `${words} runs into “${other.text.text}”.`);
    }
    for (const balloon of balloons) {
      if (discHitsBox(box, balloon.at.x, balloon.at.y, balloon.radius - ROUNDING)) {
        report('text-over-balloon', `${words} runs into balloon ${balloon.number}.`);
      }
    }
    for (const { stroke, pieces } of strokes) {
      if (pieces.some((piece) => pieceHitsBox(piece, box))) {
        report(kindOf(stroke.role), `${words} runs over a line (${stroke.role}).`);
      }
    }
  });
  balloons.forEach((balloon, i) => {
    const { at, radius, number } = balloon;
    const words = `Balloon ${number} at ${place(at)}`;
    if (isOff({ minX: at.x - radius, minY: at.y - radius, maxX: at.x + radius, maxY: at.y + radius })) {
      report('off-the-sheet', `${words} leaves the sheet.`);
    }
    for (const other of balloons.slice(i + 1)) {
      if (norm(other.at.x - at.x, other.at.y - at.y) < radius + other.radius - ROUNDING) {
        report('balloon-over-balloon', `${words} runs into balloon ${other.number}.`);
      }
    }
    for (const { stroke, pieces } of strokes) {
      if (stroke.role === 'frame' && pieces.some((piece) => meetsDisc(piece, balloon))) {
        report('balloon-over-border', `${words} runs over a border.`);
      }
    }
  });
  for (const { stroke, pieces } of strokes) {
    if (pieces.some((piece) => isOff(boundsOfPiece(piece)))) {
      report('off-the-sheet', `A line (${stroke.role}) leaves the sheet.`);
    }
  }
  return collisions;
}

/** Borders are upright or level lines, so the box round one is the line itself. */
const meetsDisc = (piece: Piece, { at, radius }: Balloon): boolean =>
  discHitsBox(boundsOfPiece(piece), at.x, at.y, radius - ROUNDING);
