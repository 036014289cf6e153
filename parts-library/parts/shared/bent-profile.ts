// An ear on a square bent foot, seen from its edge.
import { polygonContour, roundCorners, type Contour, type Point } from '../../geometry/index.js';

export interface BentProfile {
  readonly thickness: number;
  /** Outside length of the foot, mm. */
  readonly footDepth: number;
  readonly radius: number;
  /** The ear's left face, what it stands on, its upper end, mm. */
  readonly left: number;
  readonly ground: number;
  readonly top: number;
}

/** The profile with its foot to the left; mirrored about `axis` for the other one of a pair. */
export function bentProfile(profile: BentProfile, axis?: number): Contour {
  const { thickness, footDepth, radius, left, ground, top } = profile;
  const right = left + thickness;
  const end = right - footDepth;
  const points: readonly Point[] = [
    { x: end, y: ground },
    { x: right, y: ground },
    { x: right, y: top },
    { x: left, y: top },
    { x: left, y: ground + thickness },
    { x: end, y: ground + thickness },
  ];
  const flipped = axis === undefined ? points : points.map(({ x, y }) => ({ x: 2 * axis - x, y }));
  return roundCorners(polygonContour(flipped), [0, radius + thickness, 0, 0, radius, 0]);
}
