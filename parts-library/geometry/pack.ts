// Segments packed in one typed array: the form in which the offset, nesting and cutting kernels ask "how far" and
// "inside or not" thousands of times without allocating.
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
    if (t === 1) return Math.hypot(x - bx, y - by);
    return Math.hypot(x - ax - ex * t, y - ay - ey * t);
  }
  const cx = Number(data[k + 4]);
  const cy = Number(data[k + 5]);
  const vx = x - cx;
  const vy = y - cy;
  const away = Math.hypot(vx, vy);
  // The foot on the circle belongs to the arc when it lies on the arc's side of the chord (sweeps never exceed pi).
  const scale = away > 0 ? radius / away : 0;
  const cross = ex * (cy + vy * scale - ay) - ey * (cx + vx * scale - ax);
  if (away === 0) return radius;
  if (cross * Number(data[k + 7]) <= 0) return Math.abs(away - radius);
  return Math.min(Math.hypot(x - ax, y - ay), Math.hypot(x - bx, y - by));
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
