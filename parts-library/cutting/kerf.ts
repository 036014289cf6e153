// Kerf: the torch's path beside a finished edge, half a kerf into the scrap, and what the kerf cannot reach.
import {
  areaOf,
  isCircle,
  nearestWithin,
  offsetContour,
  packContours,
  pointAlong,
  segmentLength,
  segmentsOf,
} from '../geometry/index.js';
import type { Contour, OffsetResult, Point } from '../geometry/index.js';
import { largestHoleByMethod } from '../process/index.js';
import type { CutFeature, EdgeRole } from '../model/index.js';
import type { CutSettings } from './types.js';

/** One torch path beside a finished edge, metal on its left, in the part's coordinates. */
export interface KerfPath {
  readonly contour: Contour;
  readonly exact: boolean;
  /** Per segment: the finished edge's role beside it, both neighbours' at a corner. */
  readonly roles: readonly (readonly EdgeRole[])[];
  /** Per segment: true where the path goes round a sharp corner of the metal. */
  readonly corners: readonly boolean[];
  /** An outline whose pocket closed leaves the pocket as an opening of its own. */
  readonly purpose: 'outline' | 'opening';
}

export interface Compensated {
  /** Smallest first; none when the opening vanished. */
  readonly paths: readonly KerfPath[];
  /** The kerf that was used, mm. */
  readonly kerf: number;
  /** Where the finished edge stays uncut and by how much, when that is more than half a kerf. */
  readonly uncut?: { readonly at: Point; readonly distance: number };
}

/** Diameter of a small round hole, which has a kerf and a speed of its own; undefined for everything else. */
export function smallHole(feature: CutFeature): number | undefined {
  const diameter = holeDiameter(feature);
  return diameter !== undefined && diameter <= largestHoleByMethod ? diameter : undefined;
}

/** Diameter of a round opening, mm; undefined for an outline or an opening of another shape. */
export function holeDiameter({ purpose, contour }: CutFeature): number | undefined {
  const circle = purpose === 'opening' ? isCircle(contour) : undefined;
  return circle === undefined ? undefined : 2 * circle.radius;
}

/** Offsets worked out: an outline that an edit leaves as it was keeps its path. */
const moved = new WeakMap<Contour, { readonly distance: number; readonly result: OffsetResult }>();

function movedContour(contour: Contour, distance: number): OffsetResult {
  const before = moved.get(contour);
  if (before?.distance === distance) return before.result;
  const result = offsetContour(contour, distance);
  moved.set(contour, { distance, result });
  return result;
}

/** The torch's paths for a feature: outline grown, opening shrunk by half a kerf, arcs true. */
export function compensate(feature: CutFeature, settings: CutSettings): Compensated {
  const kerf = smallHole(feature) === undefined ? settings.kerf : settings.holeKerf;
  const { pieces } = movedContour(feature.contour, kerf / 2);
  const rolesOf = new Map<number, EdgeRole>();
  for (const { segment, role } of feature.edges ?? []) rolesOf.set(segment, role);
  const paths = pieces
    .map(({ contour, exact, sources }): KerfPath => {
      const role = (index: number): readonly EdgeRole[] => {
        const found = rolesOf.get(sources[index] ?? -1);
        return found === undefined ? [] : [found];
      };
      const count = contour.length;
      return {
        contour,
        exact,
        roles: sources.map((source, index) =>
          source >= 0 ? role(index) : [...role((index + count - 1) % count), ...role((index + 1) % count)],
        ),
        corners: sources.map((source) => source < 0),
        purpose: areaOf(contour) > 0 ? 'outline' : 'opening',
      };
    })
    .sort((a, b) => Math.abs(areaOf(a.contour)) - Math.abs(areaOf(b.contour)));
  const uncut = farthestUncut(feature.contour, paths, kerf);
  return { paths, kerf, ...(uncut === undefined ? {} : { uncut }) };
}

/**
 * Longest step between the places at which the finished edge is looked at, mm. Every segment is looked at in its
 * ends and its middle at least, so no pocket that matters here (deeper than half a kerf) slips between.
 */
const LOOK_STEP = 2;

/** Lengths that differ by less are equal, mm: the resolution of the files. */
const RESOLUTION = 1e-6;

/**
 * The place of the finished edge that the cut misses by most. An inside corner of 60 degrees is missed by half a kerf
 * beyond the torch's own radius (k/2 / sin 30 = k from the path); a pocket narrower than the kerf by its depth. Less
 * than that belongs to every inside corner and is not mentioned.
 */
function farthestUncut(
  finished: Contour,
  paths: readonly KerfPath[],
  kerf: number,
): { readonly at: Point; readonly distance: number } | undefined {
  // A round edge has no pocket and no corner: the torch reaches all of it.
  if (paths.length === 0 || isCircle(finished) !== undefined) return undefined;
  const packed = packContours(paths.map(({ contour }) => contour));
  let worst: { at: Point; distance: number } | undefined;
  for (const segment of segmentsOf(finished)) {
    const steps = Math.max(2, Math.ceil(segmentLength(segment) / LOOK_STEP));
    for (let step = 0; step < steps; step++) {
      const at = pointAlong(segment, step / steps);
      // Nearly every place is half a kerf from the path; only the others are worth the long search.
      if (nearestWithin(packed, at.x, at.y, kerf + RESOLUTION) < kerf + RESOLUTION) continue;
      const distance = nearestWithin(packed, at.x, at.y, Infinity) - kerf / 2;
      if (distance > (worst?.distance ?? 0)) worst = { at, distance };
    }
  }
  return worst;
}
