// A part's features and torch paths where the part lies on the plate.
import { transformContour } from '../geometry/index.js';
import type { Transform } from '../geometry/index.js';
import type { Placement } from '../plate/index.js';
import type { KerfPath } from './kerf.js';

/** The move of a placement: mirrored, then turned, then moved. */
export const transformOf = ({ at, turnDegrees, mirrored }: Placement): Transform => ({
  mirror: mirrored,
  rotateDegrees: turnDegrees,
  dx: at.x,
  dy: at.y,
});

/** A torch path on the plate. Mirrored, it is travelled the other way, so its segments change order. */
export function placePath(path: KerfPath, placement: Placement): KerfPath {
  const { mirrored } = placement;
  return {
    ...path,
    contour: transformContour(path.contour, transformOf(placement)),
    roles: mirrored ? path.roles.toReversed() : path.roles,
    corners: mirrored ? path.corners.toReversed() : path.corners,
  };
}
