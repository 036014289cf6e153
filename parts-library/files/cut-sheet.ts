// A cut plan as a sheet: every contour one open run from its pierce along the lead-in and once round.
//
// Why one open run and not a closed contour with its lead beside it: a program that joins lines into runs takes a
// closed contour as a run of its own and pierces it where it closes, on the finished edge, after having cut the lead
// for nothing. An open polyline leaves no choice: torch on at its first vertex, along it in the direction in which it
// is written, torch off at its last. Why no CIRCLE: it has neither a start nor a direction, so the lead-in would
// meet it anywhere; a round hole is written as arcs from the end of its lead. The last vertex repeats the vertex where
// the lead-in ends, digit for digit, so that the contour closes exactly.
import type { CutContour, CutPlan } from '../cutting/index.js';
import type { Vertex } from '../geometry/index.js';
import { cutHeading } from './heading.js';
import type { Sheet, SheetItem } from './sheet.js';
import type { CutFileInfo } from './types.js';

/** Pierce, lead-in, contour, back to where the lead-in ended. */
export function runOf({ leadIn, path }: CutContour): readonly Vertex[] {
  const beforeStart = leadIn.path.vertices.slice(0, -1);
  const closing = path.slice(0, 1).map(({ x, y }) => ({ x, y, bulge: 0 }));
  return [...beforeStart, ...path, ...closing];
}

/** Everything of a plan in cut order. Ids are the features'; with several parts, the placement stands in front. */
export function cutSheet(plan: CutPlan, info: CutFileInfo, unit: 'mm' | 'in'): Sheet {
  const items: SheetItem[] = [
    ...plan.lines.map(({ placementId, featureId, purpose, path }) => ({
      placementId,
      featureId,
      operation: purpose,
      shape: { kind: 'open' as const, vertices: path.vertices },
    })),
    ...plan.marks.map(({ placementId, featureId, at }) => ({
      placementId,
      featureId,
      operation: 'mark' as const,
      shape: { kind: 'point' as const, at },
    })),
    ...plan.contours.map((contour) => ({
      placementId: contour.placementId,
      featureId: contour.featureId,
      operation: contour.purpose,
      shape: { kind: 'open' as const, vertices: runOf(contour) },
    })),
  ].map(withId(plan));
  return {
    kind: 'cut',
    title: `${info.name}: cut path, kerf already in`,
    heading: cutHeading(plan, info, unit),
    items,
  };
}

interface Unnamed extends Omit<SheetItem, 'id'> {
  readonly placementId: string;
  readonly featureId: string;
}

/** Names each item; an opening that came apart under the kerf gives its second piece `.2`, its third `.3`. */
function withId(plan: CutPlan): (item: Unnamed) => SheetItem {
  const placements = new Set(
    [...plan.contours, ...plan.lines, ...plan.marks].map(({ placementId }) => placementId),
  );
  const seen = new Map<string, number>();
  return ({ placementId, featureId, operation, shape }) => {
    const base = placements.size > 1 ? `${placementId}.${featureId}` : featureId;
    const count = (seen.get(base) ?? 0) + 1;
    seen.set(base, count);
    return { id: count === 1 ? base : `${base}.${count}`, operation, shape };
  };
}
