// Carriers: the exact lines and circles on which an offset must lie, strung on raw loops of chords.
//
// Moving every segment square to itself and going round each corner that opens gives a loop that tangles where the
// offset is tighter than the shape. The area it winds round at least once is exactly the grown (or shrunk) shape: for
// a corner that closes, the loop runs to the vertex and out again, which only adds windings within the distance of
// that vertex. So the polygon engine can sort out the tangle, and each chord knows the exact curve it stands for.
import { chordCount } from '../chord.js';
import { boundsOf } from '../measure.js';
import { directionAlong, parallelSegment, segmentLength, segmentsOf } from '../segments.js';
import { negligible } from '../tolerances.js';
import type { Arc, Contour, Line, Point, Segment } from '../types.js';
import { largestWhole, type WholePolygon } from './inflate.js';

export type Join = 'round' | 'mitre';

/** One exact piece of the raw offset. */
export interface Carrier {
  readonly curve: Segment;
  readonly length: number;
  /** Index of the source segment over all contours, or -1 for a rounded corner. */
  readonly source: number;
  /** The carrier that begins exactly where this one ends, and the one before, or -1. */
  next: number;
  previous: number;
}

/** The whole-number frame of the raw loops: whole = (mm - origin) * scale. */
export interface Frame {
  readonly originX: number;
  readonly originY: number;
  readonly scale: number;
}

export interface RawOffset {
  readonly frame: Frame;
  readonly carriers: readonly Carrier[];
  readonly loops: readonly WholePolygon[];
  /** For each raw vertex, loop after loop: the carrier of the edge that arrives at it, or -1. */
  readonly arriving: readonly number[];
  /** For each raw vertex the index of the next one round its loop. */
  readonly following: readonly number[];
  /** Arcs whose radius the offset used up. */
  readonly lostArcs: number;
  readonly chordError: number;
}

/** No finer whole-number frame than this, per mm: files do not resolve more than 1e-6 mm. */
const finestScale = 1e6;

export interface RawOptions {
  /** Distance to the right of travel, mm. */
  readonly distance: number;
  readonly join: Join;
  readonly mitreLimit: number;
  readonly chordError: number;
}

/** How two offset segments meet at the vertex between them. */
type Corner =
  | { readonly kind: 'tangent' | 'closing' }
  | { readonly kind: 'round'; readonly turn: number }
  | { readonly kind: 'mitre'; readonly tip: Point };

/** Turns this near to half a turn are cusps, radians: which way they turn shows only in how the sides bend. */
const cuspTurn = 1e-7;

/** The turn from one segment to the next, -pi to pi, left positive. */
function turnAt(a: Segment, b: Segment, u: Point, v: Point): number {
  const turn = Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y);
  if (Math.abs(turn) < Math.PI - cuspTurn) return turn;
  // Both sides leave the vertex the same way. Where the second lies to the right of the first, metal is between them.
  return bendOf(b) < -bendOf(a) ? Math.PI : -Math.PI;
}

/** Curvature, left positive, per mm. */
function bendOf(segment: Segment): number {
  return segment.kind === 'line' ? 0 : Math.sign(segment.sweep) / segment.radius;
}

/** The carriers and raw loops of contours moved `distance` to the right of their travel. */
export function buildRawOffset(contours: readonly Contour[], options: RawOptions): RawOffset {
  const builder = createBuilder(frameOf(contours, options), options.chordError);
  let base = 0;
  for (const contour of contours) {
    const segments = segmentsOf(contour);
    addLoop(builder, segments, base, options);
    base += segments.length;
  }
  return builder.finish();
}

function frameOf(contours: readonly Contour[], options: RawOptions): Frame {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (const contour of contours) {
    const box = boundsOf(contour);
    minX = Math.min(minX, box.minX);
    minY = Math.min(minY, box.minY);
    maxX = Math.max(maxX, box.maxX);
    maxY = Math.max(maxY, box.maxY);
  }
  const reach = Math.abs(options.distance) * (options.join === 'mitre' ? options.mitreLimit : 1);
  const half = Math.max(maxX - minX, maxY - minY) / 2 + reach;
  return {
    originX: (minX + maxX) / 2,
    originY: (minY + maxY) / 2,
    scale: Math.min(finestScale, largestWhole / half),
  };
}

function cornerBetween(a: Segment, b: Segment, options: RawOptions): Corner {
  const u = directionAlong(a, 1);
  const v = directionAlong(b, 0);
  const turn = turnAt(a, b, u, v);
  const { distance } = options;
  if (Math.abs(turn * distance) < negligible) return { kind: 'tangent' };
  if (turn > 0 !== distance > 0) return { kind: 'closing' };
  const stretch = 1 / Math.cos(turn / 2);
  if (options.join === 'round' || !(stretch <= options.mitreLimit)) return { kind: 'round', turn };
  // The tip lies on the bisector of the two normals.
  const aside = distance * Math.tan(turn / 2);
  const { x, y } = b.from;
  return { kind: 'mitre', tip: { x: x + u.y * distance + u.x * aside, y: y - u.x * distance + u.y * aside } };
}

interface Builder {
  readonly carriers: Carrier[];
  readonly beginLoop: () => void;
  readonly endLoop: (closed: boolean) => void;
  readonly carry: (curve: Segment, source: number, joined: boolean) => void;
  readonly ghost: (arc: Arc, signedRadius: number) => void;
  readonly visit: (p: Point) => void;
  readonly finish: () => RawOffset;
}

function createBuilder(frame: Frame, chordError: number): Builder {
  const carriers: Carrier[] = [];
  const loops: WholePolygon[] = [];
  const arriving: number[] = [];
  const following: number[] = [];
  let lostArcs = 0;
  let points: number[] = [];
  let labels: number[] = [];
  let firstCarrier = 0;

  const push = (x: number, y: number, label: number): void => {
    const wx = Math.round((x - frame.originX) * frame.scale);
    const wy = Math.round((y - frame.originY) * frame.scale);
    const last = points.length;
    if (last > 0 && points[last - 2] === wx && points[last - 1] === wy) return;
    points.push(wx, wy);
    labels.push(label);
  };

  const sweepArc = (centre: Point, radius: number, start: number, sweep: number, label: number): void => {
    const count = chordCount(Math.abs(radius), sweep, chordError);
    for (let i = 1; i < count; i++) {
      const angle = start + (sweep * i) / count;
      push(centre.x + radius * Math.cos(angle), centre.y + radius * Math.sin(angle), label);
    }
  };

  return {
    carriers,
    beginLoop: () => {
      points = [];
      labels = [];
      firstCarrier = carriers.length;
    },
    endLoop: (closed) => {
      const last = carriers.length - 1;
      const lastCarrier = carriers[last];
      const first = carriers[firstCarrier];
      if (closed && lastCarrier !== undefined && first !== undefined && last > firstCarrier) {
        lastCarrier.next = firstCarrier;
        first.previous = last;
      }
      const end = points.length;
      if (end > 2 && points[end - 2] === points[0] && points[end - 1] === points[1]) {
        points.length = end - 2;
        labels[0] = labels.pop() ?? -1;
      }
      const base = arriving.length;
      const count = labels.length;
      labels.forEach((label, i) => {
        arriving.push(label);
        following.push(base + ((i + 1) % count));
      });
      loops.push(Float64Array.from(points));
    },
    carry: (curve, source, joined) => {
      const index = carriers.length;
      const previous = joined && index > firstCarrier ? index - 1 : -1;
      const before = carriers[previous];
      if (before !== undefined) before.next = index;
      carriers.push({ curve, length: segmentLength(curve), source, next: -1, previous });
      if (previous === -1) push(curve.from.x, curve.from.y, -1);
      if (curve.kind === 'arc') sweepArc(curve.centre, curve.radius, curve.start, curve.sweep, index);
      push(curve.to.x, curve.to.y, index);
    },
    ghost: (arc, signedRadius) => {
      lostArcs++;
      const { centre, radius, from, to, start, sweep } = arc;
      const scale = signedRadius / radius;
      push(centre.x + (from.x - centre.x) * scale, centre.y + (from.y - centre.y) * scale, -1);
      sweepArc(centre, signedRadius, start, sweep, -1);
      push(centre.x + (to.x - centre.x) * scale, centre.y + (to.y - centre.y) * scale, -1);
    },
    visit: (p) => push(p.x, p.y, -1),
    finish: () => ({ frame, carriers, loops, arriving, following, lostArcs, chordError }),
  };
}

function addLoop(builder: Builder, segments: readonly Segment[], base: number, options: RawOptions): void {
  const { distance } = options;
  const count = segments.length;
  const corners = segments.map((segment, i) => {
    const after = segments[(i + 1) % count];
    return cornerBetween(segment, after ?? segment, options);
  });
  builder.beginLoop();
  // Whether the curve so far ends exactly where the next carrier begins.
  let joined = false;
  // Whether the loop's very beginning is the start of its first carrier, so that the last one can join it.
  let headIsCarrier = true;
  const head = builder.carriers.length;
  segments.forEach((segment, i) => {
    const before = corners[(i + count - 1) % count];
    const after = corners[i];
    const tipBefore = before?.kind === 'mitre' ? before.tip : undefined;
    const tipAfter = after?.kind === 'mitre' ? after.tip : undefined;
    const curve = parallelSegment(segment, distance);
    if (curve === undefined) {
      // Its tangents are still drawn out to a mitred tip.
      const [start, end] = lostEnds(segment, distance);
      if (tipBefore !== undefined) builder.carry(line(tipBefore, start), base + i, joined);
      joined = addLostArc(builder, segment, distance, joined || tipBefore !== undefined);
      if (tipAfter !== undefined) {
        builder.carry(line(end, tipAfter), base + i, joined);
        joined = true;
      }
      if (builder.carriers.length === head) headIsCarrier = false;
    } else if (curve.kind === 'line') {
      builder.carry({ ...curve, from: tipBefore ?? curve.from, to: tipAfter ?? curve.to }, base + i, joined);
      joined = true;
    } else {
      if (tipBefore !== undefined) {
        builder.carry(line(tipBefore, curve.from), base + i, joined);
        joined = true;
      }
      builder.carry(curve, base + i, joined);
      if (tipAfter !== undefined) builder.carry(line(curve.to, tipAfter), base + i, true);
      joined = true;
    }
    if (after?.kind === 'closing') {
      builder.visit(segment.to);
      joined = false;
    } else if (after?.kind === 'round') {
      builder.carry(cornerArc(segment, distance, after.turn), -1, joined);
      joined = true;
    }
  });
  builder.endLoop(joined && headIsCarrier);
}

/** Where the ends of a segment land, square to it. */
function lostEnds(segment: Segment, distance: number): [Point, Point] {
  const u = directionAlong(segment, 0);
  const v = directionAlong(segment, 1);
  const { from, to } = segment;
  return [
    { x: from.x + u.y * distance, y: from.y - u.x * distance },
    { x: to.x + v.y * distance, y: to.y - v.x * distance },
  ];
}

/** An arc whose radius is used up still takes part in the winding. Answers whether its neighbours now join. */
function addLostArc(builder: Builder, segment: Segment, distance: number, joined: boolean): boolean {
  if (segment.kind === 'line') return joined;
  const signedRadius = segment.radius + Math.sign(segment.sweep) * distance;
  builder.ghost(segment, signedRadius);
  return joined && signedRadius >= -negligible;
}

function line(from: Point, to: Point): Line {
  return { kind: 'line', from, to };
}

/** The arc about the end of a segment that bridges the gap to the next offset segment. */
function cornerArc(segment: Segment, distance: number, turn: number): Arc {
  const u = directionAlong(segment, 1);
  const centre = { x: segment.to.x, y: segment.to.y };
  const from = { x: centre.x + u.y * distance, y: centre.y - u.x * distance };
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const cosine = Math.cos(turn);
  const sine = Math.sin(turn);
  const dx = from.x - centre.x;
  const dy = from.y - centre.y;
  return {
    kind: 'arc',
    centre,
    radius: Math.abs(distance),
    from,
    to: { x: centre.x + dx * cosine - dy * sine, y: centre.y + dx * sine + dy * cosine },
    start,
    sweep: turn,
  };
}
