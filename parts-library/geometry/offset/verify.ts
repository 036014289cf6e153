// Verification: nothing leaves the offset kernel unproved. Every boundary must keep its distance from the whole source
// (exactly, segment by segment), and no boundary may be missing (curves left unused and scattered points are asked).
import { norm } from '../norm.js';
import { intersectSegments } from '../intersect.js';
import {
  nearestWithin,
  packContours,
  packedContains,
  packedSeparation,
  type PackedContours,
} from '../pack.js';
import { directionAlong, pointAlong } from '../segments.js';
import { exactOffset, inexactOffset } from '../tolerances.js';
import type { Contour, Segment, Vertex } from '../types.js';
import type { Carrier } from './carriers.js';

/**
 * True when no point of the boundary is nearer to the source than `distance`, less the exactness. Every segment lies
 * on a curve that is `distance` from its own source segment, so this makes it exact.
 */
export function keepsDistance(
  source: PackedContours,
  vertices: readonly Vertex[],
  sources: readonly number[],
  distance: number,
): boolean {
  const reach = Math.abs(distance);
  // A hair less than allowed, so that the rounding of the distance itself stays within it.
  const least = reach - exactOffset * 0.999;
  const boundary = packContours([vertices]);
  const { boxes } = boundary;
  let sound = true;
  for (let i = 0; i < boundary.count; i++) {
    const minX = Number(boxes[4 * i]);
    const minY = Number(boxes[4 * i + 1]);
    const maxX = Number(boxes[4 * i + 2]);
    const maxY = Number(boxes[4 * i + 3]);
    const own = sources[i];
    source.tree.search(minX - reach, minY - reach, maxX + reach, maxY + reach, (j, x0, y0, x1, y1) => {
      if (!sound || j === own) return false;
      const dx = Math.max(x0 - maxX, minX - x1, 0);
      const dy = Math.max(y0 - maxY, minY - y1, 0);
      if (dx * dx + dy * dy >= least * least) return false;
      if (packedSeparation(boundary, i, source, j) < least) sound = false;
      else if (dx === 0 && dy === 0 && cross(boundary.segments[i], source.segments[j])) sound = false;
      return false;
    });
  }
  return sound;
}

function cross(a: Segment | undefined, b: Segment | undefined): boolean {
  return a !== undefined && b !== undefined && intersectSegments(a, b).length > 0;
}

/**
 * True when every vertex and every middle of a chord polygon lies to the right of the ideal by no more than
 * `inexactOffset`. The polygon is known to be one of chords about a curve moved a little too far.
 */
export function staysBeside(
  source: PackedContours,
  vertices: readonly Vertex[],
  distance: number,
  mitreReach: number,
): boolean {
  const reach = Math.abs(distance);
  const least = distance > 0 ? reach - exactOffset : reach - inexactOffset;
  const most = distance > 0 ? mitreReach + inexactOffset : mitreReach + exactOffset;
  return vertices.every((a, i) => {
    const b = vertices[(i + 1) % vertices.length] ?? a;
    return [a, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }].every(({ x, y }) => {
      const away = nearestWithin(source, x, y, most + inexactOffset);
      return away > least && away < most;
    });
  });
}

/** How far beside an unused carrier the completeness check of an exact result looks, mm. */
export const exactProbe = 1e-4;

/** The same for a result in chords: beyond their error. */
export const chordProbe = 1.2 * inexactOffset;

/**
 * True when a place just off the carrier, on the far side from its source, is truly out of the source's reach. Such a
 * place lies in open scrap, and a boundary must part it from the source.
 */
function isFree(
  source: PackedContours,
  curve: Segment,
  at: number,
  distance: number,
  probe: number,
): [number, number] | undefined {
  const p = pointAlong(curve, at);
  const u = directionAlong(curve, at);
  const side = Math.sign(distance) * probe;
  const x = p.x + u.y * side;
  const y = p.y - u.x * side;
  const reach = Math.abs(distance) + probe;
  return nearestWithin(source, x, y, reach) >= reach - probe * 1e-3 ? [x, y] : undefined;
}

/** True when a corner of the source is so near that its mitre might cover the place. */
function cornerNear(source: PackedContours, x: number, y: number, reach: number): boolean {
  let found = false;
  source.tree.search(x - reach, y - reach, x + reach, y + reach, (j) => {
    const from = source.segments[j]?.from;
    const to = source.segments[j]?.to;
    if (from !== undefined && norm(from.x - x, from.y - y) <= reach) found = true;
    if (to !== undefined && norm(to.x - x, to.y - y) <= reach) found = true;
    return false;
  });
  return found;
}

export interface Completeness {
  readonly distance: number;
  /** The farthest a mitred corner may reach, mm: places between that and the distance prove nothing. */
  readonly mitreReach: number;
  /** Whether the enclosed area grows. */
  readonly grown: boolean;
  /** How far beside the ideal to look, mm: a gap narrower than twice this does not count as lost. */
  readonly probe: number;
}

/** Scattered points asked by the completeness check. */
const scattered = 48;

/**
 * True when the pieces part the plane where the offset should: asked beside every carrier that no piece uses, and at
 * scattered points (seeded, so the same input is always asked the same).
 */
export function isComplete(
  source: PackedContours,
  carriers: readonly Carrier[],
  used: ReadonlySet<number>,
  pieces: readonly Contour[],
  question: Completeness,
): boolean {
  const { distance, mitreReach, grown, probe } = question;
  const reach = Math.abs(distance);
  const result = packContours(pieces);
  for (const [index, carrier] of carriers.entries()) {
    if (used.has(index)) continue;
    for (const at of [0.5, 0.13, 0.87]) {
      const free = isFree(source, carrier.curve, at, distance, probe);
      if (free === undefined || (mitreReach > reach && cornerNear(source, ...free, mitreReach))) continue;
      // Free of the source's reach: on the far side of the boundary from it.
      if (packedContains(result, ...free) !== expected(source, ...free, false, grown)) return false;
    }
  }
  const box = boxOf(source, reach * 1.5);
  const next = createRandom(0x9e3779b9 ^ source.count);
  for (let i = 0; i < scattered; i++) {
    const x = box.minX + next() * (box.maxX - box.minX);
    const y = box.minY + next() * (box.maxY - box.minY);
    const away = nearestWithin(source, x, y, mitreReach + probe);
    if (away > reach - probe && away < mitreReach + probe) continue;
    if (packedContains(result, x, y) !== expected(source, x, y, away < reach, grown)) return false;
  }
  return true;
}

/** Whether a point belongs to the area enclosed after the offset; `near`: within the distance of the source's line. */
function expected(source: PackedContours, x: number, y: number, near: boolean, grown: boolean): boolean {
  if (near) return grown;
  return packedContains(source, x, y);
}

function boxOf(
  source: PackedContours,
  margin: number,
): { minX: number; minY: number; maxX: number; maxY: number } {
  const { tree } = source;
  return {
    minX: tree.minX - margin,
    minY: tree.minY - margin,
    maxX: tree.maxX + margin,
    maxY: tree.maxY + margin,
  };
}

/** Numbers in [0, 1) from a seed (mulberry32, public domain). */
function createRandom(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
