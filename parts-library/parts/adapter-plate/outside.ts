// The outer edge: round by diameter or edge distance, or lobed.
import { circleContour, makeContour, type Contour } from '../../geometry/index.js';
import type { Centre } from '../shared/centre.js';
import { drawLobes } from '../shared/lobes.js';
import type { AdapterPlate } from './parameters.js';
import type { ResolvedPattern } from '../shared/pattern.js';

export interface Outside {
  readonly contour: Contour;
  /** Greatest distance from the middle, mm. */
  readonly reach: number;
  /** From the centres of the outermost bolts to the edge, mm. */
  readonly edge: number;
  /** Least distance from the middle to a hollow, mm; lobed only. */
  readonly floor?: number;
  readonly scallop?: number;
}

export type OutsideResult =
  | { readonly ok: true; readonly value: Outside }
  | { readonly ok: false; readonly field: string; readonly says: string };

/** Web between scallop and centre opening when none is given, in plate thicknesses. */
const USUAL_WEB = 2.5;
/** Edge distance when none is given, in bolt diameters: the upper end of the shop rule of 1.5 to 2. */
const USUAL_EDGE = 2;

/** Metal beside a bolt hole when no edge distance is given, in plate thicknesses: the plasma design guideline. */
const USUAL_HOLE_WEB = 1.5;

/** How far from the middle the metal must reach everywhere: past the centre opening and the holes of an inner pattern. */
function leastReach(p: AdapterPlate, inner: readonly ResolvedPattern[], centre: Centre | undefined): number {
  const web = p.web?.mm ?? USUAL_WEB * p.thickness.mm;
  const holes = inner.map(
    ({ circle, pattern }) => circle.diameter / 2 + pattern.holeDiameter / 2 + USUAL_HOLE_WEB * p.thickness.mm,
  );
  return Math.max((centre?.finished ?? 0) / 2 + web, ...holes);
}

const outermost = (patterns: readonly ResolvedPattern[]): ResolvedPattern | undefined =>
  patterns.toSorted((a, b) => b.circle.diameter - a.circle.diameter)[0];

/** Draws the outside round the outermost pattern. */
export function drawOutside(
  p: AdapterPlate,
  patterns: readonly ResolvedPattern[],
  centre: Centre | undefined,
): OutsideResult {
  const outer = outermost(patterns);
  if (outer === undefined)
    return { ok: false, field: 'bolts', says: 'A plate needs at least one bolt pattern.' };
  const circle = outer.circle.diameter / 2;
  if (p.shape === 'round' && p.outside !== undefined) {
    const reach = p.outside.mm / 2;
    return {
      ok: true,
      value: { contour: circleContour({ x: 0, y: 0 }, reach, 'outline'), reach, edge: reach - circle },
    };
  }
  const edge =
    p.edge?.mm ??
    Math.max(
      USUAL_EDGE * outer.pattern.thread.diameter,
      USUAL_HOLE_WEB * p.thickness.mm + outer.pattern.holeDiameter / 2,
    );
  if (p.shape === 'round') {
    const reach = circle + edge;
    return { ok: true, value: { contour: circleContour({ x: 0, y: 0 }, reach, 'outline'), reach, edge } };
  }
  const floor = leastReach(
    p,
    patterns.filter((one) => one !== outer),
    centre,
  );
  const lobes = outer.pattern.holes.map(({ at }) => ({
    degrees: (Math.atan2(at.y, at.x) * 180) / Math.PI,
    reach: circle,
  }));
  const drawn = drawLobes(lobes, edge, { scallop: p.scallop?.mm, floor });
  if (!drawn.ok) return drawn;
  return {
    ok: true,
    value: {
      contour: makeContour(drawn.value.vertices, { direction: 'outline' }),
      reach: circle + edge,
      edge,
      floor: drawn.value.leastReach,
      scallop: Math.min(...drawn.value.scallops),
    },
  };
}
