// The lead-in: from a pierce in scrap to the torch path, proved clear of everything that stays.
import type { Contour, Line, Point } from '../geometry/index.js';
import { isCircle, makeContour, reverseContour, startContourAt, vertexAt, norm } from '../geometry/index.js';
import { edgesNear, edgeToSegment, isMetal, kerfToPoint, kerfToSegment } from './ground.js';
import type { EarlierKerf, Ground } from './ground.js';
import type { KerfPath } from './kerf.js';
import { startsOf } from './lead-candidates.js';
import type { Start } from './lead-candidates.js';
import { leadInFloor, leadInLength, pierceClearance, pierceRadius } from '../process/index.js';
import type { CutSettings, LeadIn } from './types.js';

/**
 * Angle between an outline's lead-in and the first movement along the path, degrees. Coming in slanted, the torch keeps
 * moving over the join instead of stopping on it, which would widen the kerf into a notch; at a square corner the
 * lead-in runs straight into the edge it goes on to cut.
 */
export const OUTLINE_LEAD_DEGREES = 45;

/** An opening is entered square: the shortest way leaves most metal at the finish and most room for the pierce. */
export const OPENING_LEAD_DEGREES = 90;

/** Step by which a lead-in is shortened where the wanted one does not fit, mm. */
const SHORTER_BY = 0.5;

/** Two lengths this close are equal, mm: the resolution of the files. */
const EQUAL = 1e-6;

/**
 * From a pierce to any finished edge of its own part at the very least, mm: the crater's radius and half a kerf. A round
 * hole pierced in its middle needs a radius of that, so that the smallest hole is four kerfs.
 */
const leastClear = (kerf: number): number => pierceRadius(kerf) + kerf / 2;

export interface LeadRequest {
  readonly path: KerfPath;
  /** Kerf of this contour, mm. */
  readonly kerf: number;
  /** A small round hole is pierced in its middle. */
  readonly fromCentre: boolean;
  readonly placementId: string;
}

/** A lead-in with the contour that starts where it ends, in the direction of travel. */
export interface Lead {
  readonly found: true;
  readonly leadIn: LeadIn;
  readonly path: Contour;
  readonly start: Start;
  /** How far from the finished edge the pierce was wanted and stands at least, mm. */
  readonly wanted: number;
  readonly standoff: number;
}

/** No place will do; `because` says what stood in the way of the shortest lead-in at the best place. */
export interface NoLead {
  readonly found: false;
  readonly because: string;
}

/**
 * The best lead-in that is proved clear: the first start with the wanted length, then shorter down to the least, then
 * the next start. Clear means that the pierce stands in scrap, far enough from every finished edge and from earlier
 * kerfs, and that the lead-in's own kerf touches neither; all by exact distances.
 *
 * @param earlier runs that are cut before this one
 */
export function findLead(
  request: LeadRequest,
  settings: CutSettings,
  ground: Ground,
  earlier: readonly EarlierKerf[],
): Lead | NoLead {
  const starts = startsOf(request.path, request.kerf);
  const wanted = leadInLength(settings.thickness, settings.kerf);
  let because: string | undefined;
  for (const start of starts) {
    let trouble: string | undefined;
    for (const { pierce, standoff, clear } of pierces(start, request, settings, wanted)) {
      trouble = troubleOf(pierce, clear, start, request, settings, ground, earlier);
      if (trouble === undefined) {
        const path = pathFrom(start, request.path, settings.squareSide);
        return { found: true, leadIn: leadTo(path, pierce), path, start, wanted, standoff };
      }
    }
    because ??= trouble;
  }
  return { found: false, because: because ?? 'the contour has no place to start at' };
}

interface PierceChoice {
  readonly pierce: Point;
  /** How far from the finished edge that is, on a straight stretch. */
  readonly standoff: number;
  /** What must be proved to every finished edge of the part. */
  readonly clear: number;
}

/** Pierce places for a start, best first. */
function pierces(
  start: Start,
  { path, kerf, fromCentre }: LeadRequest,
  settings: CutSettings,
  wanted: number,
): readonly PierceChoice[] {
  const circle = fromCentre ? isCircle(path.contour) : undefined;
  if (circle !== undefined)
    return [{ pierce: circle.centre, standoff: circle.radius + kerf / 2, clear: leastClear(settings.kerf) }];
  const least = Math.min(wanted, leadInFloor(settings.kerf));
  const steps = Math.ceil((wanted - least) / SHORTER_BY - EQUAL);
  const degrees = path.purpose === 'outline' ? OUTLINE_LEAD_DEGREES : OPENING_LEAD_DEGREES;
  const travel = settings.squareSide === 'right' ? -1 : 1;
  const radians = (degrees * Math.PI) / 180;
  return Array.from({ length: steps + 1 }, (_, step) => {
    const standoff = step === steps ? least : wanted - step * SHORTER_BY;
    // Slanted, the pierce stands exactly `standoff` from a straight finished edge; square, half a kerf more.
    const length = degrees === 90 ? standoff : (standoff - settings.kerf / 2) / Math.sin(radians);
    const back = length * travel * (degrees === 90 ? 0 : Math.cos(radians));
    const out = length * Math.sin(radians);
    // With the metal on the left of `along`, the scrap is on its right.
    return {
      standoff,
      clear: step === steps ? leastClear(settings.kerf) : standoff,
      pierce: {
        x: start.point.x - back * start.along.x + out * start.along.y,
        y: start.point.y - back * start.along.y - out * start.along.x,
      },
    };
  });
}

/** What speaks against a pierce and its lead-in, or undefined when nothing does. */
function troubleOf(
  pierce: Point,
  clear: number,
  start: Start,
  { kerf, placementId }: LeadRequest,
  settings: CutSettings,
  ground: Ground,
  earlier: readonly EarlierKerf[],
): string | undefined {
  if (isMetal(ground, pierce)) return 'the pierce would land in the metal of a part';
  const { neighbour, earlierKerf } = pierceClearance(settings.thickness, settings.kerf);
  const near = edgesNear(ground, pierce, placementId, Math.max(clear, neighbour));
  if (near.own < clear - EQUAL) return 'the pierce would come too near a finished edge of its own part';
  if (near.others < neighbour - EQUAL) return 'the pierce would come too near another part';
  const lead: Line = { kind: 'line', from: pierce, to: start.point };
  if (edgeToSegment(ground, lead, kerf) < kerf / 2 - EQUAL)
    return 'the lead-in would cut into a finished edge';
  if (kerfToPoint(earlier, pierce, 2 * earlierKerf) < earlierKerf - EQUAL)
    return 'the pierce would come too near an earlier cut';
  if (kerfToSegment(earlier, lead, 2 * kerf) < (kerf + settings.kerf) / 2 - EQUAL)
    return 'the lead-in would run into an earlier cut';
  return undefined;
}

/** The contour from where the lead-in meets it, in the direction of travel. */
function pathFrom(
  { point }: Start,
  { contour, purpose }: KerfPath,
  squareSide: CutSettings['squareSide'],
): Contour {
  const circle = isCircle(contour);
  const { x, y } = point;
  const bulge = purpose === 'outline' ? 1 : -1;
  const started =
    circle === undefined
      ? startContourAt(contour, point)
      : makeContour([
          { x, y, bulge },
          { x: 2 * circle.centre.x - x, y: 2 * circle.centre.y - y, bulge },
        ]);
  // As it is, the metal lies on the left; the good part must lie on the torch's square side.
  return squareSide === 'right' ? reverseContour(started) : started;
}

function leadTo(path: Contour, pierce: Point): LeadIn {
  const { x, y } = vertexAt(path, 0);
  return {
    kind: 'line',
    pierce,
    path: {
      vertices: [
        { x: pierce.x, y: pierce.y, bulge: 0 },
        { x, y, bulge: 0 },
      ],
    },
    length: norm(x - pierce.x, y - pierce.y),
  };
}
