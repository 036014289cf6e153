// Round holes and marks of one size together, as a drawing calls them out.
import { isCircle, type Point } from '../../geometry/index.js';
import { isMark, isOpening, type Feature } from '../../model/index.js';

export interface HoleGroup {
  /** Diameter, mm. */
  readonly size: number;
  readonly made: 'cut' | 'drill';
  readonly places: readonly Point[];
  readonly featureIds: readonly string[];
}

/** Holes whose sizes differ by less are one size, mm. */
const SAME_SIZE = 0.005;

/** Groups by size and way of making, the most numerous first; points without a size are no holes. */
export function holeGroups(features: readonly Feature[]): readonly HoleGroup[] {
  const groups = new Map<string, HoleGroup & { readonly places: Point[]; readonly featureIds: string[] }>();
  for (const feature of features) {
    const circle = isOpening(feature) ? isCircle(feature.contour) : undefined;
    const drilled = isMark(feature) && feature.hole !== undefined ? feature : undefined;
    const size = circle === undefined ? drilled?.hole?.size : 2 * circle.radius;
    const at = circle?.centre ?? drilled?.at;
    if (size === undefined || at === undefined) continue;
    const made = drilled === undefined ? 'cut' : 'drill';
    const key = `${made} ${Math.round(size / SAME_SIZE)}`;
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { size, made, places: [at], featureIds: [feature.id] });
    else {
      known.places.push(at);
      known.featureIds.push(feature.id);
    }
  }
  return [...groups.values()].toSorted((a, b) => b.places.length - a.places.length || a.size - b.size);
}
