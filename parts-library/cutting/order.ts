// The order in which a part is cut: openings while the plate holds it, smallest first, the outline last.
import { areaOf } from '../geometry/index.js';
import type { CutFeature } from '../model/index.js';

/** Areas that differ by less are equal, mm2: six like holes must keep the order of their ids, not of their rounding. */
const SAME_AREA = 1e-6;

/**
 * Openings before the outline (common practice: a freed part moves, so nothing may be left to cut in it), smallest
 * first while the plate is cold and flat, equal ones by id.
 */
export function cutOrder(features: readonly CutFeature[]): readonly CutFeature[] {
  return features
    .map((feature) => ({ feature, area: Math.round(Math.abs(areaOf(feature.contour)) / SAME_AREA) }))
    .sort(
      (a, b) =>
        Number(a.feature.purpose === 'outline') - Number(b.feature.purpose === 'outline') ||
        a.area - b.area ||
        compareIds(a.feature.id, b.feature.id),
    )
    .map(({ feature }) => feature);
}

/** Order of two ids with their numbers read as numbers: `hole.2` before `hole.10`. */
export function compareIds(a: string, b: string): number {
  const [left, right] = [pieces(a), pieces(b)];
  for (let i = 0; i < Math.min(left.length, right.length); i++) {
    const [one = '', other = ''] = [left[i], right[i]];
    if (one === other) continue;
    const difference = Number(one) - Number(other);
    if (Number.isFinite(difference) && difference !== 0) return difference;
    return one < other ? -1 : 1;
  }
  return left.length - right.length;
}

const pieces = (id: string): readonly string[] => id.match(/\d+|\D+/g) ?? [];
