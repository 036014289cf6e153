// How far metal reaches from a point in one direction: a ray to the first line or arc that it meets.
import { norm } from './norm.js';
import { intersectSegments } from './intersect.js';
import { segmentsOf } from './segments.js';
import { farthestCoordinate } from './tolerances.js';
import type { Contour, Line, Point } from './types.js';

/**
 * Distance from a point to a contour along a direction, mm; Infinity where the ray meets nothing.
 *
 * @param direction of any length but zero
 * @example from the middle of a circle of radius 20, every direction reaches 20
 */
export function reachAlong(contour: Contour, from: Point, direction: Point): number {
  const length = norm(direction.x, direction.y);
  const far = (2 * farthestCoordinate) / length;
  const ray: Line = {
    kind: 'line',
    from,
    to: { x: from.x + direction.x * far, y: from.y + direction.y * far },
  };
  let least = Infinity;
  for (const segment of segmentsOf(contour)) {
    for (const meeting of intersectSegments(ray, segment)) {
      const { x, y } = meeting.kind === 'point' ? meeting.point : meeting.from;
      least = Math.min(least, norm(x - from.x, y - from.y));
    }
  }
  return least;
}
