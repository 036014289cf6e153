// Corner reliefs: a round bite at an inside corner, so that a square part seats against both sides.
import { GeometryError } from './errors.js';
import { norm } from './norm.js';
import { shortestSegment } from './tolerances.js';
import type { Point, Vertex } from './types.js';

/**
 * Straight sides with a relief at chosen corners: a circle that passes through the corner, its middle on the bisector
 * on the open side. A square corner becomes a half circle that reaches 0.293 of its radius past both sides.
 *
 * @param points corners in order of travel
 * @param radiusAt radius of the relief at a corner, mm; 0 leaves it sharp
 * @returns vertices of the closed contour, in the same order
 * @throws GeometryError when two reliefs use up the side between them
 * @example a 40 × 20 slot with reliefs of 2: every side is 2 × 2 √2 = 5.66 shorter
 */
export function relieveCorners(
  points: readonly Point[],
  radiusAt: (index: number) => number,
): readonly Vertex[] {
  const count = points.length;
  const at = (index: number): Point => points[((index % count) + count) % count] ?? { x: 0, y: 0 };
  const along = (index: number): { readonly x: number; readonly y: number; readonly length: number } => {
    const [from, to] = [at(index), at(index + 1)];
    const length = norm(to.x - from.x, to.y - from.y);
    return { x: (to.x - from.x) / length, y: (to.y - from.y) / length, length };
  };
  const bites = points.map((_, index) => {
    const radius = radiusAt(index);
    const [before, after] = [along(index - 1), along(index)];
    const turn = Math.atan2(before.x * after.y - before.y * after.x, before.x * after.x + before.y * after.y);
    // Half the open angle is (π − |turn|) / 2; the circle meets a side 2 ρ cos of it from the corner.
    return radius === 0
      ? { back: 0, bulge: 0 }
      : { back: 2 * radius * Math.sin(Math.abs(turn) / 2), bulge: Math.tan(turn / 2) };
  });
  return points.flatMap((point, index): readonly Vertex[] => {
    const { back, bulge } = bites[index] ?? { back: 0, bulge: 0 };
    const { length, ...onward } = along(index);
    const next = bites[(index + 1) % count]?.back ?? 0;
    if (back + next > length - shortestSegment) {
      throw new GeometryError(
        `Corner reliefs use up a side of ${length.toFixed(3)} mm; ${(back + next).toFixed(3)} mm is needed.`,
      );
    }
    if (back === 0) return [{ ...point, bulge: 0 }];
    const before = along(index - 1);
    return [
      { x: point.x - back * before.x, y: point.y - back * before.y, bulge },
      { x: point.x + back * onward.x, y: point.y + back * onward.y, bulge: 0 },
    ];
  });
}
