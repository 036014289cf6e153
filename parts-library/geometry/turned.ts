// A contour that repeats itself round the origin: one sector, turned. The sector is inspected, the turned ones need not be.
import { norm } from './norm.js';
import { GeometryError } from './errors.js';
import { findFaults } from './faults.js';
import { signedAreaOf } from './measure.js';
import { directionAlong, segmentsAlong } from './segments.js';
import { coincidentPoints } from './tolerances.js';
import { trustedContour } from './trust.js';
import type { Contour, Point, Segment, Vertex } from './types.js';

/** Fewer sectors than this have straight or hollow wedges, which the proof below does not cover. */
const fewestSectors = 3;

/** The farthest that a segment gets from the origin, mm. */
function reachOf(segment: Segment): number {
  const ends = Math.max(norm(segment.from.x, segment.from.y), norm(segment.to.x, segment.to.y));
  if (segment.kind === 'line') return ends;
  const { centre, radius } = segment;
  const away = norm(centre.x, centre.y);
  if (away < coincidentPoints) return ends;
  const top: Point = { x: centre.x * (1 + radius / away), y: centre.y * (1 + radius / away) };
  // The point of the circle farthest from the origin is on the arc when it lies on the arc's side of the chord.
  const u = directionAlong(segment, 0);
  const v = { x: top.x - segment.from.x, y: top.y - segment.from.y };
  const turn = Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y);
  const half = segment.sweep / 2;
  const onArc = half > 0 ? turn >= 0 && turn <= half : turn <= 0 && turn >= half;
  return onArc ? away + radius : ends;
}

/**
 * The outline that one sector makes when it is turned round the origin `count` times, counter-clockwise, each turn
 * beginning where the one before ends.
 *
 * Only the sector is inspected: together with the two radii to its ends it has to be a sound contour, and nothing of
 * it may lie farther out than its first vertex. Then it stays in its own wedge, so no two of them can meet but at
 * their ends.
 *
 * @param sector vertices of one sector, without the vertex at which the next one begins
 * @param count how many sectors go round, 3 or more
 * @throws GeometryError when the sector crosses or touches itself or leaves its wedge
 * @example turnedContour([{ x: 10, y: 0, bulge: 0 }], 4) is a square of side 14.142
 */
export function turnedContour(sector: readonly Vertex[], count: number): Contour {
  const first = sector[0];
  if (first === undefined || !Number.isInteger(count) || count < fewestSectors) {
    throw new GeometryError(
      `A turned contour needs a sector and a whole number of turns from ${fewestSectors}; ${count} was given.`,
    );
  }
  const turned = (index: number): readonly Vertex[] => {
    const angle = (2 * Math.PI * index) / count;
    const cosine = Math.cos(angle);
    const sine = Math.sin(angle);
    return sector.map(({ x, y, bulge }) => ({
      x: x * cosine - y * sine,
      y: x * sine + y * cosine,
      bulge,
    }));
  };
  const [next = first] = turned(1);
  const slice = [...sector, { ...next, bulge: 0 }, { x: 0, y: 0, bulge: 0 }];
  const [fault] = findFaults(slice);
  if (fault !== undefined) throw new GeometryError(`One sector of a turned contour: ${fault.says}`);
  if (signedAreaOf(slice) < 0) {
    throw new GeometryError('One sector of a turned contour runs clockwise; draw it the other way.');
  }
  const limit = norm(first.x, first.y) + coincidentPoints;
  if (segmentsAlong(slice.slice(0, -1), false).some((segment) => reachOf(segment) > limit)) {
    throw new GeometryError('One sector of a turned contour reaches farther out than its first vertex.');
  }
  return trustedContour([...sector, ...Array.from({ length: count - 1 }, (_, i) => turned(i + 1)).flat()]);
}
