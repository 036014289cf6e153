// Where the etched label of an adapter plate may stand: between hub and outside, off the weld.
import type { Point } from '../../geometry/index.js';
import type { Feature } from '../../model/index.js';
import type { Unit } from '../../units/index.js';
import { etchLabel } from '../shared/label.js';
import type { AdapterPlate } from './parameters.js';
import type { Resolved } from './resolve.js';
import { weldLegOf } from './weld.js';

/** Under, over, beside the middle, then between the bolts; nearer and farther out on each. */
function candidatePlaces(r: Resolved, inner: number): readonly Point[] {
  const between = r.patterns.flatMap(({ pattern }) =>
    pattern.holes.map(({ at }) => Math.atan2(at.y, at.x) + Math.PI / pattern.count),
  );
  return [-Math.PI / 2, Math.PI / 2, Math.PI, 0, ...between].flatMap((radians) =>
    [0.5, 0.35, 0.65, 0.8].map((share) => {
      const reach = inner + share * (r.outside.reach - inner);
      return { x: reach * Math.cos(radians), y: reach * Math.sin(radians) };
    }),
  );
}

/** The label's strokes as etch features; none without a label, undefined when there is no clear place for it. */
export function drawLabel(
  p: AdapterPlate,
  r: Resolved,
  plain: readonly Feature[],
  unit: Unit,
): readonly Feature[] | undefined {
  const hub = r.centre === undefined ? 0 : (r.centre.hub?.diameter ?? r.centre.finished) / 2;
  const inner = hub + (r.centre?.welded === true ? weldLegOf(p, unit) : 0);
  return etchLabel(
    p.label,
    p.labelHeight.mm,
    plain,
    candidatePlaces(r, inner),
    ({ x, y }) => Math.hypot(x, y) >= inner,
  );
}
