// Where the etched label goes: the first place of a few where the lettering lies on clear metal.
import { clearMetal } from '../../checks/index.js';
import type { Point } from '../../geometry/index.js';
import type { Feature } from '../../model/index.js';
import type { Unit } from '../../units/index.js';
import { letterText } from '../lettering/strokes.js';
import type { AdapterPlate } from './parameters.js';
import type { Resolved } from './resolve.js';
import { weldLegOf } from './weld.js';

/** Room round the lettering, mm. */
const CLEAR = 2;
/** Distance of the sampled points on the lettering's box, mm: with room round each nothing slips between. */
const SAMPLE = 3;

/** Points on the border and the middle line of a box round the origin, corners first: they are the likeliest to be in the way. */
function boxPoints(width: number, height: number): readonly Point[] {
  const along = (length: number): readonly number[] => {
    const steps = Math.max(1, Math.ceil(length / SAMPLE));
    return Array.from({ length: steps + 1 }, (_, step) => -length / 2 + (length * step) / steps);
  };
  const corners = [-width / 2, width / 2].flatMap((x) => [-height / 2, height / 2].map((y) => ({ x, y })));
  const rows = along(width).flatMap((x) => [-height / 2, 0, height / 2].map((y) => ({ x, y })));
  return [...corners, ...rows];
}

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
  if (p.label === undefined || p.label === '') return [];
  const height = p.labelHeight.mm;
  const { width } = letterText(p.label, { x: 0, y: 0 }, height);
  const hub = r.centre === undefined ? 0 : (r.centre.hub?.diameter ?? r.centre.finished) / 2;
  const inner = hub + (r.centre?.welded === true ? weldLegOf(p, unit) : 0);
  const isClear = clearMetal(plain, CLEAR);
  const box = boxPoints(width, height);
  const centre = candidatePlaces(r, inner).find((place) =>
    box.every(({ x, y }) => {
      const point = { x: place.x + x, y: place.y + y };
      return Math.hypot(point.x, point.y) >= inner && isClear(point);
    }),
  );
  // A mark struck off the metal fires the torch into air: better no label than one that runs over an edge.
  if (centre === undefined) return undefined;
  return letterText(p.label, centre, height).strokes.map((path, index) => ({
    id: `label.${index + 1}`,
    name: 'label',
    purpose: 'etch',
    path,
  }));
}
