// Entities of a DXF file as pieces of line, by the group codes of the DXF reference.
import type { Point } from '../../geometry/index.js';
import { IDENTITY } from './affine.js';
import { throughPoints } from './curves.js';
import type { EntityRecord } from './dxf-records.js';
import { need, numberOf, numbersOf, ownPlane, pointOf, pointsOf } from './dxf-values.js';
import { READ_LIMITS } from './limits.js';
import { movePiece, type Piece, type SegmentPiece } from './pieces.js';
import { DrawingProblem } from './problem.js';

/** One entity's line; undefined for what lies tilted in space or is a mesh. */
export interface EntityLine {
  readonly pieces: readonly Piece[];
  readonly closed: boolean;
  readonly note?: string;
}

const segment = (from: Point, to: Point, bulge = 0): SegmentPiece => ({ kind: 'segment', from, to, bulge });

const circle = (centre: Point, radius: number, start: number, sweep: number): Piece => ({
  kind: 'round',
  centre,
  u: { x: radius, y: 0 },
  v: { x: 0, y: radius },
  start,
  sweep,
});

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Sweep from one angle on to another, counter-clockwise, never nothing. */
function sweepBetween(start: number, end: number): number {
  const full = 2 * Math.PI;
  const sweep = (((end - start) % full) + full) % full;
  return sweep < 1e-12 ? full : sweep;
}

interface Corner extends Point {
  readonly bulge: number;
}

/** Pieces between corners; a bulge over a half circle is two. */
function alongCorners(corners: readonly Corner[], closed: boolean): readonly Piece[] {
  const count = closed ? corners.length : corners.length - 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) => {
    const from = corners[i] ?? { x: 0, y: 0, bulge: 0 };
    const to = corners[(i + 1) % corners.length] ?? from;
    return halves(from, to, from.bulge);
  }).flat();
}

function halves(from: Point, to: Point, bulge: number): readonly Piece[] {
  if (Math.abs(bulge) <= 1) return [segment(from, to, bulge)];
  const half = Math.tan(Math.atan(bulge) / 2);
  const crown = {
    x: (from.x + to.x + bulge * (to.y - from.y)) / 2,
    y: (from.y + to.y - bulge * (to.x - from.x)) / 2,
  };
  return [segment(from, crown, half), segment(crown, to, half)];
}

/** Corners of a light polyline: a bulge belongs to the corner before it. */
function lightCorners(record: EntityRecord): readonly Corner[] {
  const corners: { x: number; y: number; bulge: number }[] = [];
  for (const { code, value } of record.groups) {
    const last = corners.at(-1);
    if (typeof value !== 'number') continue;
    if (code === 10) corners.push({ x: value, y: Number.NaN, bulge: 0 });
    else if (code === 20 && last !== undefined) last.y = value;
    else if (code === 42 && last !== undefined) last.bulge = value;
  }
  if (corners.some(({ y }) => Number.isNaN(y)))
    throw new DrawingProblem(
      `LWPOLYLINE of line ${record.line} has a corner without y; the file is damaged.`,
    );
  return corners;
}

/** Flags of a polyline, group 70. */
const CLOSED = 1;
const SPACE = 8;
const MESH = 16 | 64;
/** Flag of a vertex that only steers a curve through the others. */
const STEERS = 16;

function polyline(record: EntityRecord): EntityLine | undefined {
  const flags = numberOf(record.groups, 70) ?? 0;
  if ((flags & MESH) !== 0) return undefined;
  const corners = record.vertices
    .filter((groups) => ((numberOf(groups, 70) ?? 0) & STEERS) === 0)
    .map((groups): Corner => {
      const [x, y] = [numberOf(groups, 10), numberOf(groups, 20)];
      if (x === undefined || y === undefined)
        throw new DrawingProblem(`POLYLINE of line ${record.line} has a corner without a place.`);
      return { x, y, bulge: (flags & SPACE) === 0 ? (numberOf(groups, 42) ?? 0) : 0 };
    });
  const closed = (flags & CLOSED) !== 0;
  const plane = (flags & SPACE) === 0 ? ownPlane(record.groups) : IDENTITY;
  if (plane === undefined) return undefined;
  return { pieces: alongCorners(corners, closed).map((piece) => movePiece(plane, piece)), closed };
}

function spline(record: EntityRecord): EntityLine {
  const { groups, line } = record;
  const controls = pointsOf(record, 10);
  const knots = numbersOf(groups, 40);
  const weights = numbersOf(groups, 41);
  const degree = numberOf(groups, 71) ?? 3;
  const refuse = (says: string): never => {
    throw new DrawingProblem(`SPLINE of line ${line}: ${says}`);
  };
  if (controls.length > READ_LIMITS.curvePoints)
    refuse(`${controls.length} control points; accepted are up to ${READ_LIMITS.curvePoints}.`);
  if (controls.length === 0) return throughFitPoints(record);
  if (!Number.isInteger(degree) || degree < 1 || degree > READ_LIMITS.degree)
    refuse(`its degree is ${degree}; accepted is 1 to ${READ_LIMITS.degree}.`);
  if (controls.length <= degree)
    refuse(`${controls.length} control points are too few for degree ${degree}.`);
  if (knots.length !== controls.length + degree + 1)
    refuse(
      `${knots.length} knots where ${controls.length} control points and degree ${degree} take ${controls.length + degree + 1}.`,
    );
  if (knots.some((knot, i) => i > 0 && knot < (knots[i - 1] ?? knot))) refuse('its knots fall.');
  if (!((knots[controls.length] ?? 0) > (knots[degree] ?? 0))) refuse('its knots span nothing.');
  if (weights.length > 0 && (weights.length !== controls.length || weights.some((weight) => !(weight > 0))))
    refuse('its weights are not one positive number for each control point.');
  return {
    pieces: [{ kind: 'spline', degree, knots, controls, ...(weights.length > 0 ? { weights } : {}) }],
    closed: false,
  };
}

function throughFitPoints(record: EntityRecord): EntityLine {
  const points = pointsOf(record, 11).filter((p, i, all) => {
    const before = all[i - 1];
    return before === undefined || Math.hypot(p.x - before.x, p.y - before.y) > 1e-9;
  });
  if (points.length < 2 || points.length > READ_LIMITS.curvePoints)
    throw new DrawingProblem(
      `SPLINE of line ${record.line} has ${points.length} points to run through; accepted are 2 to ${READ_LIMITS.curvePoints}.`,
    );
  const direction = (code: number): Point | undefined => {
    const [x, y] = [numberOf(record.groups, code), numberOf(record.groups, code + 10)];
    return x === undefined || y === undefined ? undefined : { x, y };
  };
  return {
    pieces: throughPoints(points, { start: direction(12), end: direction(13) }).map((four) => ({
      kind: 'bezier',
      points: four,
    })),
    closed: false,
    note: 'A spline is given by the points it runs through only; between them it was drawn as the smooth cubic, which another program may bend a little otherwise.',
  };
}

function ellipse(record: EntityRecord): EntityLine | undefined {
  const { groups, line } = record;
  const plane = ownPlane(groups);
  if (plane === undefined) return undefined;
  const centre = pointOf(record, 10, 'centre');
  const u = pointOf(record, 11, 'axis');
  const ratio = need(record, 40, 'ratio of its axes');
  if (!(ratio > 0 && ratio <= 1 + 1e-9) || Math.hypot(u.x, u.y) === 0)
    throw new DrawingProblem(
      `ELLIPSE of line ${line} has axes in the ratio ${ratio}; accepted is more than 0, up to 1, and a long axis.`,
    );
  // Centre and axis are the drawing's own; only the way round follows the plane.
  const way = plane.a;
  const v = { x: -u.y * ratio * way, y: u.x * ratio * way };
  const start = numberOf(groups, 41) ?? 0;
  const sweep = sweepBetween(start, numberOf(groups, 42) ?? 2 * Math.PI);
  return {
    pieces: [{ kind: 'round', centre, u, v, start, sweep }],
    closed: sweep >= 2 * Math.PI - 1e-9,
  };
}

/** An entity's line in the drawing's plane; undefined for what this reader leaves out. */
export function lineOfEntity(record: EntityRecord): EntityLine | undefined {
  const { type, groups } = record;
  if (type === 'LINE')
    return { pieces: [segment(pointOf(record, 10, 'start'), pointOf(record, 11, 'end'))], closed: false };
  if (type === 'ELLIPSE') return ellipse(record);
  if (type === 'SPLINE') return spline(record);
  if (type === 'POLYLINE') return polyline(record);
  const plane = ownPlane(groups);
  if (plane === undefined) return undefined;
  if (type === 'LWPOLYLINE') {
    const closed = ((numberOf(groups, 70) ?? 0) & CLOSED) !== 0;
    return {
      pieces: alongCorners(lightCorners(record), closed).map((piece) => movePiece(plane, piece)),
      closed,
    };
  }
  const centre = pointOf(record, 10, 'centre');
  const radius = need(record, 40, 'radius');
  if (!(radius > 0))
    throw new DrawingProblem(
      `${type} of line ${record.line} has a radius of ${radius}; accepted is more than 0.`,
    );
  const start = type === 'CIRCLE' ? 0 : radians(need(record, 50, 'start angle'));
  const sweep = type === 'CIRCLE' ? 2 * Math.PI : sweepBetween(start, radians(need(record, 51, 'end angle')));
  return {
    pieces: [movePiece(plane, circle(centre, radius, start, sweep))],
    closed: sweep >= 2 * Math.PI - 1e-12,
  };
}

/** Where a POINT stands: in the drawing's own coordinates, whatever its plane. */
export const placeOfPoint = (record: EntityRecord): Point => pointOf(record, 10, 'place');
