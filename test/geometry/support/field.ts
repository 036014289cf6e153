// An independent referee for offsets: the distance field and the inside of a contour, worked from its vertices with
// angles (the library works with cross products), and points walked along a contour.
import type { Vertex } from '../../../parts-library/geometry/index.js';

export interface XY {
  readonly x: number;
  readonly y: number;
}

interface Piece {
  readonly a: XY;
  readonly b: XY;
  /** Absent for a line. */
  readonly arc?: { readonly c: XY; readonly r: number; readonly start: number; readonly sweep: number };
}

/** Lines and arcs of a closed contour. The centre lies r from `a`, at a quarter turn less half the sweep off the chord. */
export function piecesOf(vertices: readonly Vertex[]): Piece[] {
  return vertices.map((a, i) => {
    const b = vertices[(i + 1) % vertices.length] ?? a;
    if (a.bulge === 0) return { a, b };
    const sweep = 4 * Math.atan(a.bulge);
    const r = Math.hypot(b.x - a.x, b.y - a.y) / 2 / Math.sin(Math.abs(sweep) / 2);
    const heading = Math.atan2(b.y - a.y, b.x - a.x) - sweep / 2;
    const side = sweep > 0 ? Math.PI / 2 : -Math.PI / 2;
    const c = { x: a.x + r * Math.cos(heading + side), y: a.y + r * Math.sin(heading + side) };
    return { a, b, arc: { c, r, start: Math.atan2(a.y - c.y, a.x - c.x), sweep } };
  });
}

export function distanceToPiece({ a, b, arc }: Piece, p: XY): number {
  if (arc === undefined) {
    const dx = b.x - a.x;
    const dy = b.y - a.y;
    const t = Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy)));
    return Math.hypot(a.x + t * dx - p.x, a.y + t * dy - p.y);
  }
  let off = Math.atan2(p.y - arc.c.y, p.x - arc.c.x) - arc.start;
  if (arc.sweep < 0) off = -off;
  off = ((off % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  if (off <= Math.abs(arc.sweep)) return Math.abs(Math.hypot(p.x - arc.c.x, p.y - arc.c.y) - arc.r);
  return Math.min(Math.hypot(p.x - a.x, p.y - a.y), Math.hypot(p.x - b.x, p.y - b.y));
}

/** The middle of a line or arc. */
export function middleOf({ a, b, arc }: Piece): XY {
  if (arc === undefined) return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const angle = arc.start + arc.sweep / 2;
  return { x: arc.c.x + arc.r * Math.cos(angle), y: arc.c.y + arc.r * Math.sin(angle) };
}

/** Distance to the nearest line or arc of any of the contours. */
export function createField(contours: readonly (readonly Vertex[])[]): (p: XY) => number {
  const pieces = contours.flatMap(piecesOf);
  return (p) => pieces.reduce((nearest, piece) => Math.min(nearest, distanceToPiece(piece, p)), Infinity);
}

/** Points along a contour, no farther apart than `step`, every vertex among them. */
export function walk(vertices: readonly Vertex[], step: number): XY[] {
  return piecesOf(vertices).flatMap(({ a, b, arc }) => {
    const length = arc === undefined ? Math.hypot(b.x - a.x, b.y - a.y) : arc.r * Math.abs(arc.sweep);
    const count = Math.max(2, Math.ceil(length / step));
    return Array.from({ length: count }, (_, i) => {
      if (i === 0) return { x: a.x, y: a.y };
      const t = i / count;
      if (arc === undefined) return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
      const angle = arc.start + arc.sweep * t;
      return { x: arc.c.x + arc.r * Math.cos(angle), y: arc.c.y + arc.r * Math.sin(angle) };
    });
  });
}

/** A contour as a polygon whose vertices lie on it, no chord farther than `error` from its arc. */
export function flatten(vertices: readonly Vertex[], error: number): XY[] {
  return piecesOf(vertices).flatMap(({ a, arc }) => {
    if (arc === undefined) return [{ x: a.x, y: a.y }];
    const count = Math.max(2, Math.ceil(Math.abs(arc.sweep) / Math.sqrt((8 * error) / arc.r)));
    return Array.from({ length: count }, (_, i) => {
      if (i === 0) return { x: a.x, y: a.y };
      const angle = arc.start + (arc.sweep * i) / count;
      return { x: arc.c.x + arc.r * Math.cos(angle), y: arc.c.y + arc.r * Math.sin(angle) };
    });
  });
}

/** Times the polygon winds round a point, by summing the angles its sides subtend there. */
export function windings(polygon: readonly XY[], p: XY): number {
  let total = 0;
  let from = polygon.at(-1);
  for (const to of polygon) {
    if (from !== undefined) {
      const ax = from.x - p.x;
      const ay = from.y - p.y;
      const bx = to.x - p.x;
      const by = to.y - p.y;
      total += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    }
    from = to;
  }
  return Math.round(total / (2 * Math.PI));
}

/** Shoelace area of a polygon, signed. */
export function polygonArea(polygon: readonly XY[]): number {
  let doubled = 0;
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length] ?? a;
    doubled += a.x * b.y - b.x * a.y;
  });
  return doubled / 2;
}
