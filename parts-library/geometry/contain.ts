// Inside, outside or on the line: points in contours and contours in contours.
import { nearestWithin, packContours, packedContains } from './pack.js';
import { distanceBetweenContours } from './distance.js';
import { onContour } from './tolerances.js';
import type { Contour, Point } from './types.js';

export type Side = 'inside' | 'outside' | 'on';

/**
 * Where a point lies: 'on' within `tolerance` mm of the contour, else inside or outside the area it encloses,
 * whichever way it runs. For many points on one contour use `packContours` and `packedContains`.
 * @example containsPoint(circleContour({ x: 0, y: 0 }, 10, 'opening'), { x: 10, y: 0 }) is 'on'
 */
export function containsPoint(contour: Contour, p: Point, tolerance: number = onContour): Side {
  const packed = packContours([contour]);
  if (nearestWithin(packed, p.x, p.y, 2 * tolerance) <= tolerance) return 'on';
  return packedContains(packed, p.x, p.y) ? 'inside' : 'outside';
}

/**
 * True when `inner` lies wholly inside the area `outer` encloses, without touching its line. Direction does not matter.
 */
export function containsContour(outer: Contour, inner: Contour, tolerance: number = onContour): boolean {
  const start = inner[0];
  if (start === undefined || containsPoint(outer, start, tolerance) !== 'inside') return false;
  return distanceBetweenContours(outer, inner).distance > tolerance;
}
