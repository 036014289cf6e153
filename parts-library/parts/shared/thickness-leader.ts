// The plate's thickness on the print: a leader to the lower edge.
import { boundsOf, nearestOnContour } from '../../geometry/index.js';
import { outlineOf, type Format, type Part } from '../../model/index.js';
import type { DimensionSpec } from './in-order.js';

/**
 * `t 6` at the outline, by default near its lower edge right of the middle.
 * @param share where along the width the leader goes, 0 left to 1 right
 */
export function thicknessLeader(part: Part, { bare }: Format, share = 2 / 3): DimensionSpec {
  const { contour } = outlineOf(part);
  const { minX, minY, maxX } = boundsOf(contour);
  return {
    id: 'thickness',
    kind: 'leader',
    at: nearestOnContour(contour, { x: minX + share * (maxX - minX), y: minY }).point,
    field: 'thickness',
    text: `t ${bare(part.thickness)}`,
  };
}
