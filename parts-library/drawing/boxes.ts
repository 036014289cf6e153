// Boxes at any angle, and what they run into: other boxes, segments, arcs, circles.
import { norm } from '../geometry/index.js';
import type { SheetPoint } from './display-list.js';

/** A rectangle: centre, unit vector of its long side, half sizes, and the upright box round it. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly ux: number;
  readonly uy: number;
  readonly halfWidth: number;
  readonly halfHeight: number;
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export type Corners = readonly [SheetPoint, SheetPoint, SheetPoint, SheetPoint];

/** A box from its centre, half sizes and clockwise rotation given as a unit vector. */
export function makeBox(x: number, y: number, halfWidth: number, halfHeight: number, ux = 1, uy = 0): Box {
  const reachX = Math.abs(ux) * halfWidth + Math.abs(uy) * halfHeight;
  const reachY = Math.abs(uy) * halfWidth + Math.abs(ux) * halfHeight;
  return {
    x,
    y,
    ux,
    uy,
    halfWidth,
    halfHeight,
    minX: x - reachX,
    minY: y - reachY,
    maxX: x + reachX,
    maxY: y + reachY,
  };
}

/** The upright box between two corners. */
export const uprightBox = (minX: number, minY: number, maxX: number, maxY: number): Box =>
  makeBox((minX + maxX) / 2, (minY + maxY) / 2, (maxX - minX) / 2, (maxY - minY) / 2);

/** The same box, larger by a margin on every side (smaller for a negative one). */
export const growBox = (box: Box, margin: number): Box =>
  makeBox(box.x, box.y, box.halfWidth + margin, box.halfHeight + margin, box.ux, box.uy);

/** Corners in the order top left, top right, bottom right, bottom left as the text reads. */
export function cornersOf(box: Box): Corners {
  const wx = box.ux * box.halfWidth;
  const wy = box.uy * box.halfWidth;
  const hx = -box.uy * box.halfHeight;
  const hy = box.ux * box.halfHeight;
  return [
    { x: box.x - wx - hx, y: box.y - wy - hy },
    { x: box.x + wx - hx, y: box.y + wy - hy },
    { x: box.x + wx + hx, y: box.y + wy + hy },
    { x: box.x - wx + hx, y: box.y - wy + hy },
  ];
}

/** The box that has these corners. */
export function boxOfCorners([a, b, c, d]: Corners): Box {
  const width = norm(b.x - a.x, b.y - a.y);
  const height = norm(d.x - a.x, d.y - a.y);
  const ux = width > 0 ? (b.x - a.x) / width : 1;
  const uy = width > 0 ? (b.y - a.y) / width : 0;
  return makeBox((a.x + c.x) / 2, (a.y + c.y) / 2, width / 2, height / 2, ux, uy);
}

/** True when two boxes share area (separating axis test); touching edges do not count. */
export function boxesOverlap(a: Box, b: Box): boolean {
  if (a.maxX <= b.minX || b.maxX <= a.minX || a.maxY <= b.minY || b.maxY <= a.minY) return false;
  if (Math.abs(a.ux * a.uy) + Math.abs(b.ux * b.uy) < 1e-9) return true;
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const c = Math.abs(a.ux * b.ux + a.uy * b.uy);
  const s = Math.abs(a.ux * b.uy - a.uy * b.ux);
  return (
    Math.abs(dx * a.ux + dy * a.uy) < a.halfWidth + b.halfWidth * c + b.halfHeight * s &&
    Math.abs(dy * a.ux - dx * a.uy) < a.halfHeight + b.halfWidth * s + b.halfHeight * c &&
    Math.abs(dx * b.ux + dy * b.uy) < b.halfWidth + a.halfWidth * c + a.halfHeight * s &&
    Math.abs(dy * b.ux - dx * b.uy) < b.halfHeight + a.halfWidth * s + a.halfHeight * c
  );
}

/** True when a segment passes through the inside of a box (clipping in the box's own frame). */
export function segmentHitsBox(box: Box, x1: number, y1: number, x2: number, y2: number): boolean {
  if (Math.max(x1, x2) <= box.minX || Math.min(x1, x2) >= box.maxX) return false;
  if (Math.max(y1, y2) <= box.minY || Math.min(y1, y2) >= box.maxY) return false;
  const px = (x1 - box.x) * box.ux + (y1 - box.y) * box.uy;
  const py = (y1 - box.y) * box.ux - (x1 - box.x) * box.uy;
  const dx = (x2 - x1) * box.ux + (y2 - y1) * box.uy;
  const dy = (y2 - y1) * box.ux - (x2 - x1) * box.uy;
  let enter = 0;
  let leave = 1;
  if (Math.abs(dx) < 1e-12) {
    if (Math.abs(px) >= box.halfWidth) return false;
  } else {
    const t1 = (-box.halfWidth - px) / dx;
    const t2 = (box.halfWidth - px) / dx;
    enter = Math.max(enter, Math.min(t1, t2));
    leave = Math.min(leave, Math.max(t1, t2));
  }
  if (Math.abs(dy) < 1e-12) {
    if (Math.abs(py) >= box.halfHeight) return false;
  } else {
    const t1 = (-box.halfHeight - py) / dy;
    const t2 = (box.halfHeight - py) / dy;
    enter = Math.max(enter, Math.min(t1, t2));
    leave = Math.min(leave, Math.max(t1, t2));
  }
  return enter < leave - 1e-9;
}

/** True when two segments cross or touch. */
export function segmentsCross(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  dx: number,
  dy: number,
): boolean {
  const side1 = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  const side2 = (bx - ax) * (dy - ay) - (by - ay) * (dx - ax);
  if (side1 * side2 > 0) return false;
  const side3 = (dx - cx) * (ay - cy) - (dy - cy) * (ax - cx);
  const side4 = (dx - cx) * (by - cy) - (dy - cy) * (bx - cx);
  return side3 * side4 <= 0 && side1 !== side2;
}

/** Distance from a point to a box, 0 inside. */
export function distanceToBox(box: Box, x: number, y: number): number {
  const along = Math.abs((x - box.x) * box.ux + (y - box.y) * box.uy) - box.halfWidth;
  const across = Math.abs((y - box.y) * box.ux - (x - box.x) * box.uy) - box.halfHeight;
  return norm(Math.max(along, 0), Math.max(across, 0));
}

/** True when a circular disc shares area with a box. */
export const discHitsBox = (box: Box, x: number, y: number, radius: number): boolean =>
  distanceToBox(box, x, y) < radius - 1e-9;

/** Distance from a point to a segment. */
export function distanceToSegment(
  x: number,
  y: number,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
): number {
  const dx = x2 - x1;
  const dy = y2 - y1;
  const squared = dx * dx + dy * dy;
  const t = squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - x1) * dx + (y - y1) * dy) / squared));
  return norm(x - x1 - t * dx, y - y1 - t * dy);
}
