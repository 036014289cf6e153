// Offsetting the contours of a region, each by its own distance: those that stay clear of each other one by one, those
// of one distance that run together as a group, and a report of any of different distances that would collide.
import { distanceBetweenContours } from '../distance.js';
import { boundsOf, isOutline } from '../measure.js';
import { packContours, packedContains } from '../pack.js';
import type { Bounds, Contour, OffsetPiece, OffsetResult, Point } from '../types.js';
import { chordNotes, offsetContour } from './offset-contour.js';
import { offsetGroup, type OffsetOptions } from './offset-group.js';

export interface RegionContour {
  readonly contour: Contour;
  /** To the right of travel, mm. */
  readonly distance: number;
}

export interface RegionPiece extends OffsetPiece {
  /** For each segment, the index of the contour its source segment belongs to, or -1 for a rounded corner. */
  readonly owners: readonly number[];
}

export interface RegionOffset extends OffsetResult {
  readonly pieces: readonly RegionPiece[];
}

/** Two contours with different distances whose offsets would meet. */
export interface Collision {
  readonly contours: readonly [number, number];
  /** Distance between the two source contours, mm, and the distance their offsets need to stay apart. */
  readonly distance: number;
  readonly needed: number;
  readonly at: Point;
  readonly says: string;
}

export interface RegionResult {
  /** One result per given contour, in the same order. Where contours ran together, the first of them has the pieces. */
  readonly results: readonly RegionOffset[];
  readonly collisions: readonly Collision[];
}

/**
 * Moves every contour of a region by its own distance to the right of its travel (metal grows for positive ones).
 * Contours must not cross each other.
 * @example an outline moved by 0.8 and a hole by 0.7: both grow the metal, away from each other; no collisions
 */
export function offsetRegion(region: readonly RegionContour[], options: OffsetOptions = {}): RegionResult {
  const group = region.map((_, i) => i);
  const collisions: Collision[] = [];
  const boxes = region.map(({ contour }) => boundsOf(contour));
  for (let i = 0; i < region.length; i++) {
    for (let j = i + 1; j < region.length; j++) {
      const a = region[i];
      const b = region[j];
      if (a === undefined || b === undefined || !boxesNear(boxes[i], boxes[j], a, b)) continue;
      const needed = approach(a, b);
      if (needed <= 0) continue;
      const gap = distanceBetweenContours(a.contour, b.contour);
      if (gap.distance > needed) continue;
      if (a.distance === b.distance) {
        const merged = group[j];
        const into = group[i] ?? i;
        group.forEach((g, k) => {
          if (g === merged) group[k] = into;
        });
      } else {
        collisions.push(collisionOf(i, j, gap.distance, needed, middle(gap.from, gap.to)));
      }
    }
  }
  const results = region.map(({ contour, distance }, i): RegionOffset => {
    const members = group.flatMap((g, k) => (g === group[i] ? [k] : []));
    if (members.length === 1) return alone(contour, distance, i, options);
    if (members[0] === i) return together(region, members, distance, options);
    const note = `It runs together with contour ${members[0]}, which has the result.`;
    return { pieces: [], exact: true, inexactCount: 0, notes: [note] };
  });
  return { results, collisions };
}

function alone(contour: Contour, distance: number, index: number, options: OffsetOptions): RegionOffset {
  const result = offsetContour(contour, distance, options);
  const pieces = result.pieces.map((piece) => ({
    ...piece,
    owners: piece.sources.map((source) => (source === -1 ? -1 : index)),
  }));
  return { ...result, pieces };
}

function together(
  region: readonly RegionContour[],
  members: readonly number[],
  distance: number,
  options: OffsetOptions,
): RegionOffset {
  const contours: Contour[] = [];
  const ownerOf: number[] = [];
  const segmentOf: number[] = [];
  for (const member of members) {
    const contour = region[member]?.contour;
    if (contour === undefined) continue;
    contours.push(contour);
    contour.forEach((_, k) => {
      ownerOf.push(member);
      segmentOf.push(k);
    });
  }
  const { pieces } = offsetGroup(contours, distance, options);
  const inexactCount = pieces.filter((piece) => !piece.exact).length;
  const left = pieces.length === 0 ? ' and vanish' : '';
  return {
    exact: inexactCount === 0,
    inexactCount,
    notes: [`Contours ${members.join(', ')} run together${left}.`, ...chordNotes(inexactCount)],
    pieces: pieces.map((piece) => ({
      ...piece,
      owners: piece.sources.map((s) => (s === -1 ? -1 : (ownerOf[s] ?? -1))),
      sources: piece.sources.map((s) => (s === -1 ? -1 : (segmentOf[s] ?? -1))),
    })),
  };
}

/** How much nearer the offsets of two contours come to each other, mm; negative when they part. */
function approach(a: RegionContour, b: RegionContour): number {
  const metalBetween = isMetalBetween(a.contour, b.contour);
  return metalBetween ? -(a.distance + b.distance) : a.distance + b.distance;
}

/** Whether the strip between two contours is metal: the inside of the outer one, or the outside of either. */
function isMetalBetween(a: Contour, b: Contour): boolean {
  const inA = liesIn(b, a);
  const inB = !inA && liesIn(a, b);
  if (inA) return isOutline(a);
  if (inB) return isOutline(b);
  return !isOutline(a);
}

function liesIn(inner: Contour, outer: Contour): boolean {
  const p = inner[0];
  return p !== undefined && packedContains(packContours([outer]), p.x, p.y);
}

function boxesNear(
  a: Bounds | undefined,
  b: Bounds | undefined,
  first: RegionContour,
  second: RegionContour,
): boolean {
  if (a === undefined || b === undefined) return false;
  const reach = Math.abs(first.distance) + Math.abs(second.distance);
  return (
    a.minX - reach <= b.maxX &&
    b.minX - reach <= a.maxX &&
    a.minY - reach <= b.maxY &&
    b.minY - reach <= a.maxY
  );
}

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

function collisionOf(i: number, j: number, distance: number, needed: number, at: Point): Collision {
  const says =
    `Contours ${i} and ${j} are ${distance.toFixed(3)} mm apart near (${at.x.toFixed(2)}, ${at.y.toFixed(2)}); ` +
    `their offsets need ${needed.toFixed(3)} mm. Move them apart.`;
  return { contours: [i, j], distance, needed, at, says };
}
