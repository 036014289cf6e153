// Where the etched label goes: the first place of a few where the lettering lies on clear metal.
import { containsPoint, type Contour, type Point } from '../../geometry/index.js';
import { isCut, isMark, type Feature } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import type { AdapterPlate } from './parameters.js';
import type { Resolved } from './resolve.js';
import { weldLegOf } from './weld.js';

/** Room round the lettering, mm. */
const CLEAR = 2;
/** Distance of the sampled points on the lettering's box, mm: below any hole that the torch cuts. */
const SAMPLE = 2;

/** Points on the border of a box round `centre`. */
function boxPoints(centre: Point, width: number, height: number): readonly Point[] {
  const [w, h] = [width / 2 + CLEAR, height / 2 + CLEAR];
  const along = (length: number): readonly number[] => {
    const steps = Math.max(1, Math.ceil((2 * length) / SAMPLE));
    return Array.from({ length: steps + 1 }, (_, step) => -length + (2 * length * step) / steps);
  };
  return [
    ...along(w).flatMap((x) => [-h, h].map((y) => ({ x: centre.x + x, y: centre.y + y }))),
    ...along(h).flatMap((y) => [-w, w].map((x) => ({ x: centre.x + x, y: centre.y + y }))),
  ];
}

function isClear(
  points: readonly Point[],
  outline: Contour,
  openings: readonly Contour[],
  circles: readonly { readonly at: Point; readonly radius: number }[],
): boolean {
  return points.every(
    (point) =>
      containsPoint(outline, point) === 'inside' &&
      openings.every((opening) => containsPoint(opening, point) === 'outside') &&
      circles.every(({ at, radius }) => Math.hypot(at.x - point.x, at.y - point.y) > radius),
  );
}

/** The label's strokes as etch features; none without a label. */
export function drawLabel(p: AdapterPlate, r: Resolved, plain: readonly Feature[]): readonly Feature[] {
  if (p.label === undefined || p.label === '') return [];
  const { width } = letterText(p.label, { x: 0, y: 0 }, p.labelHeight.mm);
  const outline = r.outside.contour;
  const cuts = plain.filter(isCut);
  const openings = cuts.filter(({ purpose }) => purpose === 'opening').map(({ contour }) => contour);
  const hub = r.centre === undefined ? 0 : (r.centre.hub?.diameter ?? r.centre.finished) / 2;
  const inner = hub + (r.centre?.welded === true ? weldLegOf(p) : 0);
  const circles = [
    { at: { x: 0, y: 0 }, radius: inner },
    ...plain.filter(isMark).map(({ at, hole }) => ({ at, radius: (hole?.size ?? 0) / 2 })),
  ];
  const directions = [
    270,
    90,
    180,
    0,
    ...r.patterns.flatMap(({ pattern }) =>
      pattern.holes.map(({ at }) => (Math.atan2(at.y, at.x) * 180) / Math.PI + 180 / pattern.count),
    ),
  ];
  const candidates = directions.flatMap((degrees) => {
    const towards = { x: Math.cos((degrees * Math.PI) / 180), y: Math.sin((degrees * Math.PI) / 180) };
    return [0.5, 0.35, 0.65, 0.8].map((share) => {
      const reach = inner + share * (r.outside.reach - inner);
      return { x: reach * towards.x, y: reach * towards.y };
    });
  });
  const clear = candidates.find((centre) =>
    isClear(boxPoints(centre, width, p.labelHeight.mm), outline, openings, circles),
  );
  // Nowhere clear: draw it under the middle all the same, and the check says what it runs into.
  const centre = clear ?? candidates[0] ?? { x: 0, y: 0 };
  return letterText(p.label, centre, p.labelHeight.mm).strokes.map((path, index) => ({
    id: `label.${index + 1}`,
    name: 'label',
    purpose: 'etch',
    path,
  }));
}
