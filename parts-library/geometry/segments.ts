// Segments: the lines and arcs between vertices, and the bulge that stores an arc in one number.
import { norm } from './norm.js';
import { flattestRise, negligible } from './tolerances.js';
import type { Arc, Contour, OpenPath, Point, Segment, Vertex } from './types.js';

/**
 * The arc from one point to another with a bulge (tangent of a quarter of the sweep, positive turns left, never 0).
 * @example arcFromBulge({ x: 0, y: 0 }, { x: 2, y: 0 }, 1) has centre (1, 0), radius 1, start pi, sweep pi
 */
export function arcFromBulge(from: Point, to: Point, bulge: number): Arc {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  // The centre sits on the chord's perpendicular, (1 - b^2) / 4b chord lengths to the left of its middle.
  const aside = (1 - bulge * bulge) / (4 * bulge);
  const centre = { x: (from.x + to.x) / 2 - dy * aside, y: (from.y + to.y) / 2 + dx * aside };
  return {
    kind: 'arc',
    from,
    to,
    centre,
    radius: (norm(dx, dy) * (1 + bulge * bulge)) / (4 * Math.abs(bulge)),
    start: Math.atan2(from.y - centre.y, from.x - centre.x),
    sweep: 4 * Math.atan(bulge),
  };
}

/** The bulge that stores a segment: 0 for a line, tan(sweep / 4) for an arc. A quarter circle to the left is 0.41421. */
export function bulgeOf(segment: Segment): number {
  return segment.kind === 'line' ? 0 : Math.tan(segment.sweep / 4);
}

/** The segment from a vertex to a point: a line, or the arc of its bulge unless it rises less than `flattest` mm. */
export function segmentBetween(from: Vertex, to: Point, flattest: number = flattestRise): Segment {
  const rise = (Math.abs(from.bulge) * norm(to.x - from.x, to.y - from.y)) / 2;
  return rise < flattest ? { kind: 'line', from, to } : arcFromBulge(from, to, from.bulge);
}

/**
 * One segment of a contour: the one that leaves vertex `index` (counted round and round, so -1 is the last).
 */
export function segmentAt(contour: Contour, index: number): Segment {
  return segmentBetween(vertexAt(contour, index), vertexAt(contour, index + 1));
}

/** Vertex `index` of a contour, counted round and round. */
export function vertexAt(contour: readonly Vertex[], index: number): Vertex {
  const count = contour.length;
  const vertex = contour[((index % count) + count) % count];
  if (vertex === undefined) throw new RangeError('a contour without vertices has no vertex to give');
  return vertex;
}

/** Segments already worked out. A shape never changes, so its segments do not, and one drawing asks for them often. */
const known = new WeakMap<object, readonly Segment[]>();

/** All segments in order of travel; segment i leaves vertex i. A path of n vertices has n - 1, a contour n. */
export function segmentsOf(shape: Contour | OpenPath): readonly Segment[] {
  const before = known.get(shape);
  if (before !== undefined) return before;
  const segments = 'vertices' in shape ? segmentsAlong(shape.vertices, false) : segmentsAlong(shape, true);
  known.set(shape, segments);
  return segments;
}

/** The segments along a list of vertices that need not be a valid contour. */
export function segmentsAlong(vertices: readonly Vertex[], closed: boolean): Segment[] {
  const segments: Segment[] = [];
  let from: Vertex | undefined;
  for (const vertex of vertices) {
    if (from !== undefined) segments.push(segmentBetween(from, vertex));
    from = vertex;
  }
  const first = vertices[0];
  if (closed && from !== undefined && first !== undefined) segments.push(segmentBetween(from, first));
  return segments;
}

/** The point at `parameter` of a segment, 0 at its start, 1 at its end, even in length between. */
export function pointAlong(segment: Segment, parameter: number): Point {
  if (parameter === 0) return { x: segment.from.x, y: segment.from.y };
  if (parameter === 1) return { x: segment.to.x, y: segment.to.y };
  if (segment.kind === 'line') {
    const { from, to } = segment;
    return { x: from.x + (to.x - from.x) * parameter, y: from.y + (to.y - from.y) * parameter };
  }
  const angle = segment.start + segment.sweep * parameter;
  return {
    x: segment.centre.x + segment.radius * Math.cos(angle),
    y: segment.centre.y + segment.radius * Math.sin(angle),
  };
}

/** The direction of travel at `parameter` of a segment, as a vector of length 1. */
export function directionAlong(segment: Segment, parameter: number): Point {
  if (segment.kind === 'line') {
    const dx = segment.to.x - segment.from.x;
    const dy = segment.to.y - segment.from.y;
    const length = norm(dx, dy);
    return { x: dx / length, y: dy / length };
  }
  const angle = segment.start + segment.sweep * parameter;
  const turn = Math.sign(segment.sweep);
  return { x: -turn * Math.sin(angle), y: turn * Math.cos(angle) };
}

/** The length of a segment, mm. A quarter circle of radius 10 is 15.708. */
export function segmentLength(segment: Segment): number {
  return segment.kind === 'line'
    ? norm(segment.to.x - segment.from.x, segment.to.y - segment.from.y)
    : segment.radius * Math.abs(segment.sweep);
}

/** The same segment travelled the other way. */
export function reverseSegment(segment: Segment): Segment {
  return segment.kind === 'line'
    ? { kind: 'line', from: segment.to, to: segment.from }
    : {
        ...segment,
        from: segment.to,
        to: segment.from,
        start: segment.start + segment.sweep,
        sweep: -segment.sweep,
      };
}

/** A segment moved `distance` mm square to its right, or undefined when that uses up the radius of an arc. */
export function parallelSegment(segment: Segment, distance: number): Segment | undefined {
  if (segment.kind === 'line') {
    const u = directionAlong(segment, 0);
    const dx = u.y * distance;
    const dy = -u.x * distance;
    return {
      kind: 'line',
      from: { x: segment.from.x + dx, y: segment.from.y + dy },
      to: { x: segment.to.x + dx, y: segment.to.y + dy },
    };
  }
  const radius = segment.radius + Math.sign(segment.sweep) * distance;
  if (radius <= negligible) return undefined;
  // Scaled from the centre through the stored ends, so that neighbours on the same normal get the same point.
  const { centre, from, to } = segment;
  const scale = radius / segment.radius;
  return {
    ...segment,
    radius,
    from: { x: centre.x + (from.x - centre.x) * scale, y: centre.y + (from.y - centre.y) * scale },
    to: { x: centre.x + (to.x - centre.x) * scale, y: centre.y + (to.y - centre.y) * scale },
  };
}
