// Where two segments meet: lines and arcs in every pairing, crossings, tangent touches and overlaps.
import { norm } from './norm.js';
import { segmentLength } from './segments.js';
import { coincidentPoints } from './tolerances.js';
import type { Arc, Line, Point, Segment } from './types.js';

/** A single common point. `a` and `b` are the parameters (0..1) along the two segments. */
export interface Meeting {
  readonly kind: 'point';
  readonly point: Point;
  readonly a: number;
  readonly b: number;
  /** They run side by side there: a tangent touch rather than a crossing. */
  readonly tangent: boolean;
}

/** A stretch that both segments share (on one line, or on one circle). `b` may run backwards. */
export interface Overlap {
  readonly kind: 'overlap';
  readonly from: Point;
  readonly to: Point;
  readonly a: readonly [number, number];
  readonly b: readonly [number, number];
}

export type Intersection = Meeting | Overlap;

/**
 * All common points and stretches of two segments, in order along `a`. Curves that miss each other by less than
 * `tolerance` mm meet.
 * @example a line through the middle of a half circle of radius 5 meets it at one point, 5 mm from the centre
 */
export function intersectSegments(
  a: Segment,
  b: Segment,
  tolerance: number = coincidentPoints,
): Intersection[] {
  if (farApart(a, b, tolerance)) return [];
  const found: Intersection[] = sharedStretches(a, b, tolerance);
  const onStretch = (p: Point): boolean =>
    found.some((f) => f.kind === 'overlap' && parameterWithin(f, locate(a, p), segmentLength(a), tolerance));
  const add = (p: Point, tangent: boolean): void => {
    const ta = onSegment(a, p, tolerance);
    const tb = onSegment(b, p, tolerance);
    if (ta === undefined || tb === undefined || onStretch(p)) return;
    const near = found.some((f) => f.kind === 'point' && apart(f.point, p) <= 2 * tolerance);
    if (!near) found.push({ kind: 'point', point: { x: p.x, y: p.y }, a: ta, b: tb, tangent });
  };
  // Ends first: an end that lies on the other segment is the exact meeting point.
  const tangentAt = (p: Point): boolean => {
    const ta = locate(a, p);
    const tb = locate(b, p);
    return Math.abs(crossOfDirections(a, ta, b, tb)) < 1e-6;
  };
  for (const p of [a.from, a.to, b.from, b.to]) {
    if (onSegment(a, p, tolerance) !== undefined && onSegment(b, p, tolerance) !== undefined) {
      add(p, tangentAt(p));
    }
  }
  const ends = found.length;
  for (const { point, tangent } of curveMeetings(a, b, tolerance)) {
    // A tangent touch that already ends on the other segment is one touch, though its foot is badly determined.
    if (tangent && ends > 0) continue;
    add(point, tangent);
  }
  return found.sort((p, q) => first(p) - first(q));
}

/** True when the boxes of two segments (for an arc, of its whole circle) are clear of each other. */
function farApart(a: Segment, b: Segment, tolerance: number): boolean {
  return (
    coarse(a, 'x', -1) > coarse(b, 'x', 1) + tolerance ||
    coarse(b, 'x', -1) > coarse(a, 'x', 1) + tolerance ||
    coarse(a, 'y', -1) > coarse(b, 'y', 1) + tolerance ||
    coarse(b, 'y', -1) > coarse(a, 'y', 1) + tolerance
  );
}

/** The lowest (-1) or highest (1) x or y a segment can have. */
function coarse(segment: Segment, axis: 'x' | 'y', side: -1 | 1): number {
  if (segment.kind === 'arc') return segment.centre[axis] + side * segment.radius;
  const { from, to } = segment;
  return side === 1 ? Math.max(from[axis], to[axis]) : Math.min(from[axis], to[axis]);
}

/**
 * Common points of the unbounded line or circle that carries each segment: none, one (tangent) or two.
 * Empty when they coincide or are parallel.
 */
export function curveMeetings(
  a: Segment,
  b: Segment,
  tolerance: number = coincidentPoints,
): { readonly point: Point; readonly tangent: boolean }[] {
  if (a.kind === 'line') return b.kind === 'line' ? meetLines(a, b) : meetLineCircle(a, b, tolerance);
  return b.kind === 'line' ? meetLineCircle(b, a, tolerance) : meetCircles(a, b, tolerance);
}

/** The parameter on a segment's carrier nearest to a point; outside 0..1 when the foot lies beyond an end. */
export function locate(segment: Segment, p: Point): number {
  const { from, to } = segment;
  if (segment.kind === 'line') {
    const dx = to.x - from.x;
    const dy = to.y - from.y;
    return ((p.x - from.x) * dx + (p.y - from.y) * dy) / (dx * dx + dy * dy);
  }
  const { centre, sweep } = segment;
  const angle = Math.atan2(p.y - centre.y, p.x - centre.x);
  // Measure from the middle of the arc, so that the seam lies opposite it.
  let off = angle - (segment.start + sweep / 2);
  off -= 2 * Math.PI * Math.round(off / (2 * Math.PI));
  return 0.5 + off / sweep;
}

function first(found: Intersection): number {
  return found.kind === 'point' ? found.a : found.a[0];
}

function apart(p: Point, q: Point): number {
  return norm(p.x - q.x, p.y - q.y);
}

/** The parameter of a point that lies on the segment within the tolerance, else undefined. */
function onSegment(segment: Segment, p: Point, tolerance: number): number | undefined {
  if (apart(segment.from, p) <= tolerance) return 0;
  if (apart(segment.to, p) <= tolerance) return 1;
  const t = locate(segment, p);
  if (t < 0 || t > 1) return undefined;
  if (segment.kind === 'arc') {
    return Math.abs(apart(segment.centre, p) - segment.radius) <= tolerance ? t : undefined;
  }
  const { from, to } = segment;
  const aside = (to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x);
  return Math.abs(aside) <= tolerance * segmentLength(segment) ? t : undefined;
}

function crossOfDirections(a: Segment, ta: number, b: Segment, tb: number): number {
  const u = headingAt(a, ta);
  const v = headingAt(b, tb);
  return u.x * v.y - u.y * v.x;
}

function headingAt(segment: Segment, t: number): Point {
  if (segment.kind === 'line') {
    const length = segmentLength(segment);
    return { x: (segment.to.x - segment.from.x) / length, y: (segment.to.y - segment.from.y) / length };
  }
  const angle = segment.start + segment.sweep * t;
  return { x: -Math.sin(angle), y: Math.cos(angle) };
}

function meetLines(a: Line, b: Line): { point: Point; tangent: boolean }[] {
  const ax = a.to.x - a.from.x;
  const ay = a.to.y - a.from.y;
  const bx = b.to.x - b.from.x;
  const by = b.to.y - b.from.y;
  const cross = ax * by - ay * bx;
  // Below this the crossing point of near-parallel lines has no correct digit left.
  if (Math.abs(cross) <= 1e-14 * norm(ax, ay) * norm(bx, by)) return [];
  const t = ((b.from.x - a.from.x) * by - (b.from.y - a.from.y) * bx) / cross;
  return [{ point: { x: a.from.x + ax * t, y: a.from.y + ay * t }, tangent: false }];
}

function meetLineCircle(line: Line, arc: Arc, tolerance: number): { point: Point; tangent: boolean }[] {
  const { from, to } = line;
  const length = segmentLength(line);
  const ux = (to.x - from.x) / length;
  const uy = (to.y - from.y) / length;
  const along = (arc.centre.x - from.x) * ux + (arc.centre.y - from.y) * uy;
  const aside = (arc.centre.x - from.x) * uy - (arc.centre.y - from.y) * ux;
  const foot = { x: arc.centre.x - aside * uy, y: arc.centre.y + aside * ux };
  const gap = Math.abs(aside) - arc.radius;
  if (gap > tolerance) return [];
  if (gap > -tolerance * 1e-3) return [{ point: foot, tangent: true }];
  const half = Math.sqrt((arc.radius - Math.abs(aside)) * (arc.radius + Math.abs(aside)));
  return [along - half, along + half].map((t) => ({
    point: { x: foot.x + ux * (t - along), y: foot.y + uy * (t - along) },
    tangent: false,
  }));
}

function meetCircles(a: Arc, b: Arc, tolerance: number): { point: Point; tangent: boolean }[] {
  const dx = b.centre.x - a.centre.x;
  const dy = b.centre.y - a.centre.y;
  const between = norm(dx, dy);
  if (between <= tolerance) return [];
  const ux = dx / between;
  const uy = dy / between;
  const outer = between - (a.radius + b.radius);
  const inner = Math.abs(a.radius - b.radius) - between;
  if (outer > tolerance || inner > tolerance) return [];
  if (Math.max(outer, inner) > -tolerance * 1e-3) {
    // Outside each other, or one inside the other: the touch lies towards or away from the smaller one's centre.
    const towards = outer > inner || a.radius > b.radius ? 1 : -1;
    const r = a.radius * towards;
    return [{ point: { x: a.centre.x + ux * r, y: a.centre.y + uy * r }, tangent: true }];
  }
  const along = ((a.radius - b.radius) * (a.radius + b.radius) + between * between) / (2 * between);
  const half = Math.sqrt(Math.max(0, (a.radius - along) * (a.radius + along)));
  return [-half, half].map((h) => ({
    point: { x: a.centre.x + ux * along - uy * h, y: a.centre.y + uy * along + ux * h },
    tangent: false,
  }));
}

/** Stretches that two segments share; a stretch no longer than the tolerance is left to be found as a point. */
function sharedStretches(a: Segment, b: Segment, tolerance: number): Overlap[] {
  if (a.kind !== b.kind) return [];
  if (a.kind === 'line') return sharedOfLines(a, b, tolerance);
  if (b.kind === 'line') return [];
  if (apart(a.centre, b.centre) > tolerance || Math.abs(a.radius - b.radius) > tolerance) return [];
  return sharedIntervals(a, b, tolerance, 2 * Math.PI);
}

function sharedOfLines(a: Line, b: Segment, tolerance: number): Overlap[] {
  const length = segmentLength(a);
  const ux = (a.to.x - a.from.x) / length;
  const uy = (a.to.y - a.from.y) / length;
  const tf = (b.from.x - a.from.x) * ux + (b.from.y - a.from.y) * uy;
  const tt = (b.to.x - a.from.x) * ux + (b.to.y - a.from.y) * uy;
  const low = Math.max(0, Math.min(tf, tt));
  const high = Math.min(length, Math.max(tf, tt));
  if (high - low <= tolerance) return [];
  // Both ends of the stretch must lie within the tolerance of the other line.
  const aside = (t: number): number => {
    const s = (t - tf) / (tt - tf);
    const x = b.from.x + (b.to.x - b.from.x) * s - (a.from.x + ux * t);
    const y = b.from.y + (b.to.y - b.from.y) * s - (a.from.y + uy * t);
    return Math.abs(x * uy - y * ux);
  };
  if (aside(low) > tolerance || aside(high) > tolerance) return [];
  return [overlapOf(a, low / length, high / length, (low - tf) / (tt - tf), (high - tf) / (tt - tf))];
}

function sharedIntervals(a: Arc, b: Arc, tolerance: number, turn: number): Overlap[] {
  const aLow = a.sweep > 0 ? a.start : a.start + a.sweep;
  const bLow = b.sweep > 0 ? b.start : b.start + b.sweep;
  const aSpan = Math.abs(a.sweep);
  const bSpan = Math.abs(b.sweep);
  const offset = bLow - aLow - turn * Math.floor((bLow - aLow) / turn);
  const stretches: Overlap[] = [];
  for (const shift of [offset - turn, offset]) {
    const low = Math.max(0, shift);
    const high = Math.min(aSpan, shift + bSpan);
    if ((high - low) * a.radius <= tolerance) continue;
    const onA = (t: number): number => (a.sweep > 0 ? t / aSpan : 1 - t / aSpan);
    const onB = (t: number): number => (b.sweep > 0 ? (t - shift) / bSpan : 1 - (t - shift) / bSpan);
    const [p, q] = a.sweep > 0 ? [low, high] : [high, low];
    stretches.push(overlapOf(a, onA(p), onA(q), onB(p), onB(q)));
  }
  return stretches;
}

function overlapOf(a: Segment, a0: number, a1: number, b0: number, b1: number): Overlap {
  return { kind: 'overlap', from: pointOn(a, a0), to: pointOn(a, a1), a: [a0, a1], b: [b0, b1] };
}

function pointOn(segment: Segment, t: number): Point {
  if (segment.kind === 'line') {
    const { from, to } = segment;
    return { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t };
  }
  const angle = segment.start + segment.sweep * t;
  return {
    x: segment.centre.x + segment.radius * Math.cos(angle),
    y: segment.centre.y + segment.radius * Math.sin(angle),
  };
}

function parameterWithin(overlap: Overlap, t: number, length: number, tolerance: number): boolean {
  const slack = (2 * tolerance) / length;
  return t >= overlap.a[0] - slack && t <= overlap.a[1] + slack;
}
