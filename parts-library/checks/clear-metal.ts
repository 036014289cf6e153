// Clear metal: places on a part that keep their distance from edges, openings and holes to be drilled.
import { nearestWithin, packContours, packedContains, type Point } from '../geometry/index.js';
import { isCut, isMark, type Feature } from '../model/index.js';

/**
 * Asks of many points whether they lie on metal with at least `room` mm to every edge and every hole that will be
 * drilled from a mark.
 *
 * @param features outline, openings and marks of one part
 * @param room mm
 */
export function clearMetal(features: readonly Feature[], room: number): (point: Point) => boolean {
  const packed = packContours(features.filter(isCut).map(({ contour }) => contour));
  const drilled = features
    .filter(isMark)
    .map(({ at, hole }) => ({ at, reach: (hole?.size ?? 0) / 2 + room }));
  return ({ x, y }) =>
    drilled.every(({ at, reach }) => Math.hypot(at.x - x, at.y - y) >= reach) &&
    nearestWithin(packed, x, y, room) >= room &&
    packedContains(packed, x, y);
}
