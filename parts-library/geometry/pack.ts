// Segments packed in one typed array: the form in which the offset, nesting and cutting kernels ask "how far" and
// "inside or not" thousands of times without allocating.
import { norm } from './norm.js';
import Flatbush from 'flatbush';
import { segmentBounds } from './measure.js';
import { segmentsAlong } from './segments.js';
import type { Segment, Vertex } from './types.js';

/** Numbers per packed segment: from x, y, to x, y, centre x, y, radius (0 for a line), side (+1 left turn, -1 right). */
export const packedStride = 8;

/** Closed contours laid flat: `data` holds `count` segments, `boxes` four bounds each, `tree` finds them by box. */
export interface PackedContours {
  readonly count: number;
  readonly data: Float64Array;
  readonly boxes: Float64Array;
  readonly segments: readonly Segment[];
  /** For each segment, the contour it belongs to. */
  readonly owners: Int32Array;
  readonly tree: Flatbush;
}

/** Lays contours flat for repeated questions. The contours need not be validated. */
export function packContours(contours: readonly (readonly Vertex[])[]): PackedContours {
  const segments: Segment[] = [];
  const owned: number[] = [];
  contours.forEach((contour, owner) => {
    for (const segment of segmentsAlong(contour, true)) {
      segments.push(segment);
      owned.push(owner);
    }
  });
  return { ...packSegments(segments), owners: Int32Array.from(owned) };
}

/** Lays segments flat; all belong to owner 0. At least one segment is needed. */
export function packSegments(segments: readonly Segment[]): PackedContours {
  const count = segments.length;
  const data = new Float64Array(count * packedStride);
  const boxes = new Float64Array(count * 4);
  const tree = new Flatbush(Math.max(count, 1));
  segments.forEach((segment, i) => {
    const k = i * packedStride;
    data[k] = segment.from.x;
    data[k + 1] = segment.from.y;
    data[k + 2] = segment.to.x;
    data[k + 3] = segment.to.y;
    if (segment.kind === 'arc') {
      data[k + 4] = segment.centre.x;
      data[k + 5] = segment.centre.y;
      data[k + 6] = segment.radius;
      data[k + 7] = Math.sign(segment.sweep);
    }
    const box = segmentBounds(segment);
    boxes[i * 4] = box.minX;
    boxes[i * 4 + 1] = box.minY;
    boxes[i * 4 + 2] = box.maxX;
    boxes[i * 4 + 3] = box.maxY;
    tree.add(box.minX, box.minY, box.maxX, box.maxY);
  });
  if (count === 0) tree.add(Infinity, Infinity, -Infinity, -Infinity);
  tree.finish();
  return { count, data, boxes, segments, owners: new Int32Array(count), tree };
}

/** Distance from a point to packed segment `index`, mm. */
export function packedDistance(packed: PackedContours, index: number, x: number, y: number): number {
  const { data } = packed;
  const k = index * packedStride;
  const ax = Number(data[k]);
  const ay = Number(data[k + 1]);
  const bx = Number(data[k + 2]);
  const by = Number(data[k + 3]);
  const radius = Number(data[k + 6]);
  const ex = bx - ax;
  const ey = by - ay;
  if (radius === 0) {
    const along = ((x - ax) * ex + (y - ay) * ey) / (ex * ex + ey * ey);
    const t = along < 0 ? 0 : along > 1 ? 1 : along;
    // At an end, measure from the stored point: a + 1 * (b - a) need not give b back.
    if (t === 1) return norm(x - bx, y - by);
    return norm(x - ax - ex * t, y - ay - ey * t);
  }
  const cx = Number(data[k + 4]);
  const cy = Number(data[k + 5]);
  const vx = x - cx;
  const vy = y - cy;
  const away = norm(vx, vy);
  // The foot on the circle belongs to the arc when it lies on the arc's side of the chord (sweeps never exceed pi).
  const scale = away > 0 ? radius / away : 0;
  const cross = ex * (cy + vy * scale - ay) - ey * (cx + vx * scale - ax);
  if (away === 0) return radius;
  if (cross * Number(data[k + 7]) <= 0) return Math.abs(away - radius);
  return Math.min(norm(x - ax, y - ay), norm(x - bx, y - by));
}

/**
 * Distance between two packed segments that do not cross, mm (for those that do, ask `intersectSegments`): from each
 * end to the other segment, and along the common normal of arcs.
 */
export function packedSeparation(a: PackedContours, i: number, b: PackedContours, j: number): number {
  const k = i * packedStride;
  const m = j * packedStride;
  const ends = Math.min(
    packedDistance(b, j, Number(a.data[k]), Number(a.data[k + 1])),
    packedDistance(b, j, Number(a.data[k + 2]), Number(a.data[k + 3])),
    packedDistance(a, i, Number(b.data[m]), Number(b.data[m + 1])),
    packedDistance(a, i, Number(b.data[m + 2]), Number(b.data[m + 3])),
  );
  return Math.min(ends, normalSeparation(a, i, b, j), normalSeparation(b, j, a, i));
}

/** Distance from the points of arc `i` that face segment `j` squarely, or Infinity when there are none. */
function normalSeparation(a: PackedContours, i: number, b: PackedContours, j: number): number {
  const k = i * packedStride;
  const m = j * packedStride;
  const radius = Number(a.data[k + 6]);
  if (radius === 0) return Infinity;
  const cx = Number(a.data[k + 4]);
  const cy = Number(a.data[k + 5]);
  const toLine = Number(b.data[m + 6]) === 0;
  const nx = toLine ? Number(b.data[m + 3]) - Number(b.data[m + 1]) : Number(b.data[m + 4]) - cx;
  const ny = toLine ? Number(b.data[m]) - Number(b.data[m + 2]) : Number(b.data[m + 5]) - cy;
  const length = norm(nx, ny);
  if (length === 0) return Infinity;
  const ax = Number(a.data[k]);
  const ay = Number(a.data[k + 1]);
  const ex = Number(a.data[k + 2]) - ax;
  const ey = Number(a.data[k + 3]) - ay;
  const side = Number(a.data[k + 7]);
  let nearest = Infinity;
  for (let scale = radius / length, turn = 0; turn < 2; scale = -scale, turn++) {
    const x = cx + nx * scale;
    const y = cy + ny * scale;
    if ((ex * (y - ay) - ey * (x - ax)) * side <= 0) nearest = Math.min(nearest, packedDistance(b, j, x, y));
  }
  return nearest;
}

/**
 * Distance from a point to the nearest packed segment, mm; `within` when nothing is nearer than that.
 */
export function nearestWithin(packed: PackedContours, x: number, y: number, within: number): number {
  let nearest = within;
  packed.tree.search(x - within, y - within, x + within, y + within, (index) => {
    const distance = packedDistance(packed, index, x, y);
    if (distance < nearest) nearest = distance;
    return false;
  });
  return nearest;
}

/**
 * True when a point lies in the area the packed contours enclose, counted even-odd (openings subtract). A point on
 * a contour may fall either way: ask the distance first where that matters.
 */
export function packedContains(packed: PackedContours, x: number, y: number): boolean {
  const { data, count } = packed;
  let inside = false;
  for (let k = 0; k < count * packedStride; k += packedStride) {
    const ax = Number(data[k]);
    const ay = Number(data[k + 1]);
    const bx = Number(data[k + 2]);
    const by = Number(data[k + 3]);
    const radius = Number(data[k + 6]);
    const spans = ay > y !== by > y;
    if (!spans && radius === 0) continue;
    const cross = (bx - ax) * (y - ay) - (by - ay) * (x - ax);
    const up = by > ay;
    if (spans && (up ? cross > 0 : cross < 0)) inside = !inside;
    if (radius > 0) {
      // The cap between chord and arc flips the answer. "Left of the chord" must break ties as the crossing test does.
      const left = spans ? (up ? cross > 0 : cross >= 0) : cross > 0 || (cross === 0 && bx > ax);
      if (left !== Number(data[k + 7]) > 0) {
        const vx = x - Number(data[k + 4]);
        const vy = y - Number(data[k + 5]);
        if (vx * vx + vy * vy < radius * radius) inside = !inside;
      }
    }
  }
  return inside;
}
