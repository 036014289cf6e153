// An ear joined to a plate, or a bite taken out of its edge: two contours that cross at two places become one.
import { GeometryError } from './errors.js';
import { intersectSegments } from './intersect.js';
import { makeContour, reverseContour } from './make.js';
import { norm } from './norm.js';
import { directionAlong, pointAlong, segmentsOf } from './segments.js';
import { shortestSegment } from './tolerances.js';
import type { Contour, Point, Segment, Vertex } from './types.js';

export interface Spliced {
  /** Counter-clockwise. */
  readonly contour: Contour;
  /** The two corners where one contour passes over into the other: indices of vertices. */
  readonly corners: readonly number[];
}

/** A place along a contour: which segment, and how far along it. */
interface Place {
  readonly segment: number;
  readonly parameter: number;
  readonly point: Point;
}

interface Crossing {
  readonly body: Place;
  readonly other: Place;
  /** True where travel along the body passes into the other. */
  readonly enters: boolean;
}

/** Crossings of two counter-clockwise contours; a meeting in a vertex shared by two segments counts once. */
function crossingsOf(body: Contour, other: Contour): readonly Crossing[] {
  const found: Crossing[] = [];
  const theirs = segmentsOf(other);
  segmentsOf(body).forEach((a, i) => {
    theirs.forEach((b, j) => {
      for (const meeting of intersectSegments(a, b)) {
        if (meeting.kind !== 'point' || meeting.tangent) {
          throw new GeometryError('The two outlines touch or run along each other instead of crossing.');
        }
        const { point } = meeting;
        if (found.some(({ body: { point: p } }) => norm(p.x - point.x, p.y - point.y) < shortestSegment))
          continue;
        const u = directionAlong(b, meeting.b);
        const v = directionAlong(a, meeting.a);
        found.push({
          body: { segment: i, parameter: meeting.a, point },
          other: { segment: j, parameter: meeting.b, point },
          enters: u.x * v.y - u.y * v.x > 0,
        });
      }
    });
  });
  return found;
}

function part(segment: Segment, from: number, to: number): Vertex {
  const bulge = segment.kind === 'arc' ? Math.tan((segment.sweep * (to - from)) / 4) : 0;
  return { ...pointAlong(segment, from), bulge };
}

/** Vertices along a contour from one place to another, in its direction; the last place itself is left out. */
function stretch(contour: Contour, from: Place, to: Place): readonly Vertex[] {
  const segments = segmentsOf(contour);
  const count = segments.length;
  const isAhead = to.segment === from.segment && to.parameter > from.parameter;
  const steps = isAhead
    ? 0
    : ((to.segment - from.segment + count) % count) + (to.segment === from.segment ? count : 0);
  const vertices: Vertex[] = [];
  for (let step = 0; step <= steps; step++) {
    const segment = segments[(from.segment + step) % count];
    if (segment === undefined) continue;
    const start = step === 0 ? from.parameter : 0;
    const end = step === steps ? to.parameter : 1;
    const length = norm(
      pointAlong(segment, end).x - pointAlong(segment, start).x,
      pointAlong(segment, end).y - pointAlong(segment, start).y,
    );
    if (length >= shortestSegment) vertices.push(part(segment, start, end));
  }
  const [head, ...rest] = vertices;
  // The exact meeting point, the same for both contours.
  return head === undefined ? [] : [{ ...from.point, bulge: head.bulge }, ...rest];
}

function splice(body: Contour, other: Contour, way: 'join' | 'bite'): Spliced {
  const crossings = crossingsOf(body, other);
  const enter = crossings.find(({ enters }) => enters);
  const leave = crossings.find(({ enters }) => !enters);
  if (crossings.length !== 2 || enter === undefined || leave === undefined) {
    throw new GeometryError(
      `The two outlines cross at ${crossings.length} places; an ear or a bite crosses the edge at two.`,
    );
  }
  const kept = stretch(body, leave.body, enter.body);
  const reversed = reverseContour(other);
  const count = other.length;
  const mirrored = ({ segment, parameter, point }: Place): Place => ({
    segment: count - 1 - segment,
    parameter: 1 - parameter,
    point,
  });
  const added =
    way === 'join'
      ? stretch(other, enter.other, leave.other)
      : stretch(reversed, mirrored(enter.other), mirrored(leave.other));
  const contour = makeContour([...kept, ...added], { direction: 'outline' });
  const corners = [leave.body.point, enter.body.point].flatMap((point) => {
    const index = contour.findIndex(({ x, y }) => norm(x - point.x, y - point.y) < shortestSegment);
    return index < 0 ? [] : [index];
  });
  return { contour, corners };
}

/**
 * Two counter-clockwise outlines that cross at exactly two places, as one outline round both.
 * @throws GeometryError when they cross at none or more, or run along each other
 * @example a 100 × 20 bar and a circle of radius 15 round the middle of its upper edge
 */
export const joinContours = (body: Contour, ear: Contour): Spliced => splice(body, ear, 'join');

/**
 * An outline with a bite taken out of its edge: what the bite covers is gone.
 * @throws GeometryError when the two cross at none or more than two places
 */
export const biteContour = (body: Contour, bite: Contour): Spliced => splice(body, bite, 'bite');
