// Fillets: corners of a contour replaced by tangent arcs, between lines and arcs in any pairing.
import { norm } from './norm.js';
import { GeometryError } from './errors.js';
import { curveMeetings, locate } from './intersect.js';
import { makeContour } from './make.js';
import {
  directionAlong,
  parallelSegment,
  pointAlong,
  segmentAt,
  segmentLength,
  segmentsOf,
} from './segments.js';
import { shortestSegment } from './tolerances.js';
import type { Contour, Point, Segment, Vertex } from './types.js';

/** Corners that turn less than this are left alone, radians: they are tangent already. */
const leastTurn = 1e-6;

interface Fillet {
  /** Where it leaves the segment before and joins the one after: parameter along each. */
  readonly leaves: number;
  readonly joins: number;
  readonly bulge: number;
}

/**
 * The contour with a tangent arc in place of each corner. `radii` is one radius for all corners or one per vertex; 0
 * leaves a corner sharp. A segment that two fillets use up wholly is gone.
 * @throws GeometryError when a fillet does not fit between its neighbours
 * @example a 100 x 60 rectangle with radius 10 has 8 segments and length 240 + 20 pi = 302.83
 */
export function roundCorners(contour: Contour, radii: number | readonly number[]): Contour {
  const segments = segmentsOf(contour);
  const count = segments.length;
  const fillets = contour.map((vertex, i) => {
    const radius = typeof radii === 'number' ? radii : (radii[i] ?? 0);
    return filletAt(segmentAt(contour, i - 1), segmentAt(contour, i), radius, vertex, i);
  });
  const vertices: Vertex[] = [];
  segments.forEach((segment, i) => {
    const from = fillets[i]?.joins ?? 0;
    const fillet = fillets[(i + 1) % count];
    const to = fillet?.leaves ?? 1;
    const left = (to - from) * segmentLength(segment);
    if (left < -shortestSegment) {
      throw new GeometryError(
        `The fillets at both ends of segment ${i} overlap by ${(-left).toFixed(3)} mm; use smaller radii.`,
      );
    }
    if (left >= shortestSegment) {
      const bulge = segment.kind === 'arc' ? Math.tan((segment.sweep * (to - from)) / 4) : 0;
      vertices.push({ ...pointAlong(segment, from), bulge });
    }
    if (fillet !== undefined) vertices.push({ ...pointAlong(segment, to), bulge: fillet.bulge });
  });
  return makeContour(vertices);
}

function filletAt(
  before: Segment,
  after: Segment,
  radius: number,
  vertex: Point,
  index: number,
): Fillet | undefined {
  const turn = turnBetween(directionAlong(before, 1), directionAlong(after, 0));
  if (radius === 0 || Math.abs(turn) < leastTurn) return undefined;
  if (!(radius > 0)) {
    throw new GeometryError(`A fillet needs a radius of zero or more; vertex ${index} was given ${radius}.`);
  }
  // The centre is one radius from both sides, on the inside of the turn.
  const a = parallelSegment(before, -Math.sign(turn) * radius);
  const b = parallelSegment(after, -Math.sign(turn) * radius);
  let best: Fillet | undefined;
  let nearest = Infinity;
  for (const { point } of a === undefined || b === undefined ? [] : curveMeetings(a, b)) {
    const leaves = snapped(locate(before, point), before);
    const joins = snapped(locate(after, point), after);
    const away = norm(point.x - vertex.x, point.y - vertex.y);
    if (leaves < 0 || leaves > 1 || joins < 0 || joins > 1 || away >= nearest) continue;
    const sweep = turnBetween(directionAlong(before, leaves), directionAlong(after, joins));
    nearest = away;
    best = { leaves, joins, bulge: Math.tan(sweep / 4) };
  }
  if (best !== undefined) return best;
  throw new GeometryError(
    `A fillet of radius ${radius} does not fit at vertex ${index} (${vertex.x.toFixed(3)}, ${vertex.y.toFixed(3)}): ` +
      'a neighbouring segment is too short. Use a smaller radius.',
  );
}

/** A parameter within a hair of an end is that end. */
function snapped(parameter: number, segment: Segment): number {
  const hair = shortestSegment / segmentLength(segment);
  if (Math.abs(parameter) < hair) return 0;
  return Math.abs(parameter - 1) < hair ? 1 : parameter;
}

function turnBetween(u: Point, v: Point): number {
  return Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y);
}
