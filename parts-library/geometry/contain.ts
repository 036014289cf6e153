// Inside, outside or on the line: points in contours and contours in contours.
import { nearestWithin, packContours, packedContains, type PackedContours } from './pack.js';
import { distanceBetweenSegments } from './distance.js';
import { segmentBounds } from './measure.js';
import { segmentsOf } from './segments.js';
import { onContour } from './tolerances.js';
import type { Contour, Point } from './types.js';

/** Contours already laid flat; a contour never changes. */
const laidFlat = new WeakMap<Contour, PackedContours>();

function packed(contour: Contour): PackedContours {
  const before = laidFlat.get(contour);
  if (before !== undefined) return before;
  const flat = packContours([contour]);
  laidFlat.set(contour, flat);
  return flat;
}

/**
 * Distance from a point to a contour's line, mm, looking no farther than `within`, which is what comes back when
 * nothing is nearer. For many questions of one contour.
 */
export const distanceWithin = (contour: Contour, p: Point, within: number): number =>
  nearestWithin(packed(contour), p.x, p.y, within);

export type Side = 'inside' | 'outside' | 'on';

/**
 * Where a point lies: 'on' within `tolerance` mm of the contour, else inside or outside the area it encloses,
 * whichever way it runs.
 * @example containsPoint(circleContour({ x: 0, y: 0 }, 10, 'opening'), { x: 10, y: 0 }) is 'on'
 */
export function containsPoint(contour: Contour, p: Point, tolerance: number = onContour): Side {
  const flat = packed(contour);
  if (nearestWithin(flat, p.x, p.y, 2 * tolerance) <= tolerance) return 'on';
  return packedContains(flat, p.x, p.y) ? 'inside' : 'outside';
}

/**
 * True when `inner` lies wholly inside the area `outer` encloses, without touching its line. Direction does not matter.
 */
export function containsContour(outer: Contour, inner: Contour, tolerance: number = onContour): boolean {
  const start = inner[0];
  if (start === undefined || containsPoint(outer, start, tolerance) !== 'inside') return false;
  return !comesWithin(packed(outer), inner, tolerance);
}

/** Whether any part of a contour is as near to the others as `reach`; only what lies that near is looked at. */
function comesWithin(others: PackedContours, contour: Contour, reach: number): boolean {
  return segmentsOf(contour).some((segment) => {
    const { minX, minY, maxX, maxY } = segmentBounds(segment);
    let isNear = false;
    others.tree.search(minX - reach, minY - reach, maxX + reach, maxY + reach, (j) => {
      const other = others.segments[j];
      isNear ||= other !== undefined && distanceBetweenSegments(segment, other).distance <= reach;
      return false;
    });
    return isNear;
  });
}
