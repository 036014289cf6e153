// Where a cut may start: the places round a torch path, best first.
import {
  directionAlong,
  isCircle,
  nearestOnContour,
  pointAlong,
  segmentLength,
  segmentsOf,
} from '../geometry/index.js';
import type { Point, Segment } from '../geometry/index.js';
import type { EdgeRole } from '../model/index.js';
import type { KerfPath } from './kerf.js';

/** A place on a torch path at which the lead-in may meet it. */
export interface Start {
  readonly point: Point;
  /** Unit vector along the path with the metal on its left. */
  readonly along: Point;
  /** A role that a start would spoil; used only when nothing else will do. */
  readonly spoils?: EdgeRole;
}

/** Edges that a start must stay off: a notch starts a crack in a bend, and a nub keeps two faces apart. */
const KEPT_CLEAN: readonly EdgeRole[] = ['bend', 'bearing', 'mating'];

/** A corner turns by at least this, radians: 30 degrees. A flatter one is hardly felt and hides no start. */
const CORNER_TURN = Math.PI / 6;

/** A start keeps this many kerfs from the ends of its stretch, so that it never stands in an inside corner. */
const KERFS_FROM_END = 1;

/** Steps between the starts tried round a circle, degrees. */
const CIRCLE_STEP = 15;

/** Added to the rank of a start that would spoil an edge: after everything else. */
const LAST_RESORT = 100;

interface Ranked extends Start {
  readonly rank: number;
  /** Within a rank, longest stretch or largest radius first; 0 where that does not matter. */
  readonly size: number;
}

/**
 * Starts of a path, best first. Equal ones are taken front left first (lowest, then leftmost as the part lies), where
 * the person at the table sees them.
 *
 * A circle starts at 6 o'clock, then every 15 degrees either way. An outline starts at a sharp convex corner, which the
 * torch rounds anyway; then in the middle of a stretch to be welded; then of its longest straight; then of an arc. An
 * opening starts in the middle of its longest straight, then of its largest arc. Starts on a bend, bearing or mating
 * edge come last.
 */
export function startsOf(path: KerfPath, kerf: number): Iterable<Start> {
  const circle = isCircle(path.contour);
  if (circle !== undefined) return circleStarts(circle.centre, circle.radius, path);
  return segmentsOf(path.contour)
    .flatMap((segment, index) => onSegment(segment, path, index, kerf))
    .sort(
      (a, b) =>
        a.rank - b.rank ||
        compare(b.size, a.size) ||
        compare(a.point.y, b.point.y) ||
        compare(a.point.x, b.point.x),
    );
}

/** Difference of two lengths, nought when they are equal but for rounding. */
const compare = (a: number, b: number): number => (Math.abs(a - b) < 1e-6 ? 0 : a - b);

function onSegment(segment: Segment, path: KerfPath, index: number, kerf: number): readonly Ranked[] {
  const spoils = path.roles[index]?.find((role) => KEPT_CLEAN.includes(role));
  const weld = path.roles[index]?.includes('weld') === true;
  const length = segmentLength(segment);
  const turns = segment.kind === 'arc' ? segment.sweep : 0;
  const corner = path.corners[index] === true;
  const at = (parameter: number, rank: number, size: number): Ranked => ({
    point: pointAlong(segment, parameter),
    along: directionAlong(segment, parameter),
    rank: rank + (spoils === undefined ? 0 : LAST_RESORT),
    size,
    ...(spoils === undefined ? {} : { spoils }),
  });
  if (corner) {
    const sharp = Math.abs(turns) >= CORNER_TURN;
    return [at(0.5, path.purpose === 'outline' && sharp ? RANK.corner : RANK.rest, 0)];
  }
  if (length < 2 * KERFS_FROM_END * kerf) return [at(0.5, RANK.rest, length)];
  const quarters =
    length < 4 * KERFS_FROM_END * kerf ? [] : [at(0.25, RANK.quarter, 0), at(0.75, RANK.quarter, 0)];
  if (segment.kind === 'line') return [at(0.5, weld ? RANK.weld : RANK.straight, length), ...quarters];
  // Gentle, seen from the scrap: an outline that bulges out, an opening that is hollow.
  const gentle = path.purpose === 'outline' ? turns > 0 : turns < 0;
  return [at(0.5, gentle ? RANK.gentleArc : RANK.otherArc, segment.radius), ...quarters];
}

const RANK = { corner: 0, weld: 1, straight: 2, gentleArc: 3, quarter: 4, otherArc: 5, rest: 6 } as const;

/** One after the other, since the first is nearly always taken; all of them, sorted, where an edge is kept clean. */
function circleStarts(centre: Point, radius: number, path: KerfPath): Iterable<Start> {
  const isKept = path.roles.some((roles) => roles.some((role) => KEPT_CLEAN.includes(role)));
  const starts = roundStarts(centre, radius, path);
  return isKept
    ? [...starts].sort((a, b) => Number(a.spoils !== undefined) - Number(b.spoils !== undefined))
    : starts;
}

function* roundStarts(centre: Point, radius: number, path: KerfPath): Generator<Start> {
  const turn = path.purpose === 'outline' ? 1 : -1;
  const half = 180 / CIRCLE_STEP;
  for (let step = 0; step < 2 * half; step++) {
    // 0, +1, -1, +2, -2 ... steps from 6 o'clock.
    const steps = step % 2 === 0 ? -step / 2 : (step + 1) / 2;
    const angle = ((steps * CIRCLE_STEP - 90) * Math.PI) / 180;
    const [cosine, sine] = step === 0 ? [0, -1] : [Math.cos(angle), Math.sin(angle)];
    const point = { x: centre.x + radius * cosine, y: centre.y + radius * sine };
    const roles = path.roles[nearestOnContour(path.contour, point).segment];
    const spoils = roles?.find((role) => KEPT_CLEAN.includes(role));
    yield {
      point,
      along: { x: -turn * sine, y: turn * cosine },
      ...(spoils === undefined ? {} : { spoils }),
    };
  }
}
