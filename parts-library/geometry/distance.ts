// Distances, exact for lines and arcs: a point to a segment or contour, and contours and paths to each other.
import { norm } from './norm.js';
import { intersectSegments, locate } from './intersect.js';
import { segmentBounds } from './measure.js';
import { packSegments } from './pack.js';
import { pointAlong, segmentsOf } from './segments.js';
import type { Arc, Contour, OpenPath, Point, Segment } from './types.js';

/** The nearest place on a contour or path. */
export interface Nearest {
  readonly distance: number;
  readonly point: Point;
  /** Index of the segment and the parameter (0..1) along it. */
  readonly segment: number;
  readonly parameter: number;
}

/** The shortest link between two shapes; distance 0 when they cross. */
export interface Gap {
  readonly distance: number;
  readonly from: Point;
  readonly to: Point;
  /** Index of the segment at each end. */
  readonly segments: readonly [number, number];
}

/** Distance from a point to a segment, mm, never negative. */
export function distanceToSegment(segment: Segment, p: Point): number {
  return nearestOnSegment(segment, p).distance;
}

/** The nearest place on one segment (`segment` is 0). */
export function nearestOnSegment(segment: Segment, p: Point): Nearest {
  const t = locate(segment, p);
  if (t >= 0 && t <= 1) {
    const point = pointAlong(segment, t);
    const distance =
      segment.kind === 'arc'
        ? Math.abs(norm(p.x - segment.centre.x, p.y - segment.centre.y) - segment.radius)
        : norm(p.x - point.x, p.y - point.y);
    return { distance, point, segment: 0, parameter: t };
  }
  const toFrom = norm(p.x - segment.from.x, p.y - segment.from.y);
  const toTo = norm(p.x - segment.to.x, p.y - segment.to.y);
  return toFrom <= toTo
    ? { distance: toFrom, point: plain(segment.from), segment: 0, parameter: 0 }
    : { distance: toTo, point: plain(segment.to), segment: 0, parameter: 1 };
}

/**
 * The nearest place on a contour or path to a point.
 * @example on a circle of radius 10 about the origin, the nearest to (0, 4) is (0, 10) at 6 mm
 */
export function nearestOnContour(contour: Contour | OpenPath, p: Point): Nearest {
  let best: Nearest = { distance: Infinity, point: p, segment: -1, parameter: 0 };
  segmentsOf(contour).forEach((segment, index) => {
    const near = nearestOnSegment(segment, p);
    if (near.distance < best.distance) best = { ...near, segment: index };
  });
  return best;
}

/** The shortest link between two segments; distance 0 where they meet. `segments` is [0, 0]. */
export function distanceBetweenSegments(a: Segment, b: Segment): Gap {
  const meeting = intersectSegments(a, b)[0];
  if (meeting !== undefined) {
    const point = meeting.kind === 'point' ? meeting.point : meeting.from;
    return { distance: 0, from: point, to: point, segments: [0, 0] };
  }
  let best: Gap = { distance: Infinity, from: a.from, to: b.from, segments: [0, 0] };
  const offer = (from: Point, to: Point): void => {
    const distance = norm(from.x - to.x, from.y - to.y);
    if (distance < best.distance) best = { distance, from: plain(from), to: plain(to), segments: [0, 0] };
  };
  offer(a.from, nearestOnSegment(b, a.from).point);
  offer(a.to, nearestOnSegment(b, a.to).point);
  offer(nearestOnSegment(a, b.from).point, b.from);
  offer(nearestOnSegment(a, b.to).point, b.to);
  // Between ends, the shortest link is square to both: it passes through the centres of the arcs.
  if (a.kind === 'arc') {
    for (const p of facing(a, b)) offer(p, nearestOnSegment(b, p).point);
  }
  if (b.kind === 'arc') {
    for (const p of facing(b, a)) offer(nearestOnSegment(a, p).point, p);
  }
  return best;
}

/** The points of an arc on the common normal with another segment, towards it and away from it. */
function facing(arc: Arc, other: Segment): Point[] {
  const { centre, radius } = arc;
  let dx: number;
  let dy: number;
  if (other.kind === 'arc') {
    dx = other.centre.x - centre.x;
    dy = other.centre.y - centre.y;
  } else {
    dx = other.to.y - other.from.y;
    dy = other.from.x - other.to.x;
  }
  const length = norm(dx, dy);
  if (length === 0) return [];
  const points: Point[] = [];
  for (const side of [radius / length, -radius / length]) {
    const p = { x: centre.x + dx * side, y: centre.y + dy * side };
    const t = locate(arc, p);
    if (t > 0 && t < 1) points.push(p);
  }
  return points;
}

/**
 * The shortest link between two contours, measured from line to line: 0 when they cross or touch, and positive also
 * when one lies within the other. For the metal between a hole and the edge this is the web.
 */
export function distanceBetweenContours(a: Contour, b: Contour): Gap {
  return shortestLink(segmentsOf(a), segmentsOf(b));
}

/** The shortest link between two contours or open paths, in any pairing. */
export function distanceBetweenPaths(a: Contour | OpenPath, b: Contour | OpenPath): Gap {
  return shortestLink(segmentsOf(a), segmentsOf(b));
}

function shortestLink(a: readonly Segment[], b: readonly Segment[]): Gap {
  const packed = packSegments(b);
  let best: Gap = { distance: Infinity, from: { x: 0, y: 0 }, to: { x: 0, y: 0 }, segments: [-1, -1] };
  a.forEach((segment, i) => {
    const { minX, minY, maxX, maxY } = segmentBounds(segment);
    const reach = best.distance;
    packed.tree.search(minX - reach, minY - reach, maxX + reach, maxY + reach, (j, x0, y0, x1, y1) => {
      const dx = Math.max(x0 - maxX, minX - x1, 0);
      const dy = Math.max(y0 - maxY, minY - y1, 0);
      const other = b[j];
      if (other === undefined || norm(dx, dy) >= best.distance) return false;
      const gap = distanceBetweenSegments(segment, other);
      if (gap.distance < best.distance) best = { ...gap, segments: [i, j] };
      return false;
    });
  });
  return best;
}

/** A vertex without its bulge. */
function plain({ x, y }: Point): Point {
  return { x, y };
}
