// Pieces of line as drawings have them, moved exactly and turned into lines and true arcs at the very end.
import { fitArcs, type Curve, type Point, type Vertex } from '../../geometry/index.js';
import { determinant, keepsCircles, movePoint, moveVector, type Affine } from './affine.js';
import { bezierCurve, splineCurve } from './curves.js';

/** A line, or an arc of at most half a circle with its bulge. */
export interface SegmentPiece {
  readonly kind: 'segment';
  readonly from: Point;
  readonly to: Point;
  readonly bulge: number;
}

/** centre + u cos t + v sin t from `start` over `sweep`, radians: circles, ellipses, and what moves make of them. */
export interface RoundPiece {
  readonly kind: 'round';
  readonly centre: Point;
  readonly u: Point;
  readonly v: Point;
  readonly start: number;
  readonly sweep: number;
}

/** A Bézier curve of two to four points. */
export interface BezierPiece {
  readonly kind: 'bezier';
  readonly points: readonly Point[];
}

/** A B-spline, rational where it has weights. */
export interface SplinePiece {
  readonly kind: 'spline';
  readonly degree: number;
  readonly knots: readonly number[];
  readonly controls: readonly Point[];
  readonly weights?: readonly number[];
}

export type Piece = SegmentPiece | RoundPiece | BezierPiece | SplinePiece;

/** Pieces end to end, from one thing of the file. */
export interface Stroke {
  readonly layer: string;
  readonly pieces: readonly Piece[];
  readonly closed: boolean;
}

const cross = (u: Point, v: Point): number => u.x * v.y - u.y * v.x;

/** The circle that a bulge stands for, as a round piece: only needed where it becomes an ellipse. */
function roundOfBulge({ from, to, bulge }: SegmentPiece): RoundPiece {
  const aside = (1 - bulge * bulge) / (4 * bulge);
  const centre = {
    x: (from.x + to.x) / 2 - (to.y - from.y) * aside,
    y: (from.y + to.y) / 2 + (to.x - from.x) * aside,
  };
  const u = { x: from.x - centre.x, y: from.y - centre.y };
  return { kind: 'round', centre, u, v: { x: -u.y, y: u.x }, start: 0, sweep: 4 * Math.atan(bulge) };
}

/** A piece moved; an arc that no longer is a circle's becomes an ellipse's. */
export function movePiece(move: Affine, piece: Piece): Piece {
  switch (piece.kind) {
    case 'segment':
      if (piece.bulge !== 0 && !keepsCircles(move)) return movePiece(move, roundOfBulge(piece));
      return {
        kind: 'segment',
        from: movePoint(move, piece.from),
        to: movePoint(move, piece.to),
        bulge: determinant(move) < 0 ? -piece.bulge : piece.bulge,
      };
    case 'round':
      return {
        ...piece,
        centre: movePoint(move, piece.centre),
        u: moveVector(move, piece.u),
        v: moveVector(move, piece.v),
      };
    case 'bezier':
      return { ...piece, points: piece.points.map((p) => movePoint(move, p)) };
    default:
      return { ...piece, controls: piece.controls.map((p) => movePoint(move, p)) };
  }
}

const pointOnRound = ({ centre, u, v }: RoundPiece, t: number): Point => ({
  x: centre.x + u.x * Math.cos(t) + v.x * Math.sin(t),
  y: centre.y + u.y * Math.cos(t) + v.y * Math.sin(t),
});

/** Two axes this alike, as a share, are a circle's: what a file with ten digits leaves of one. */
const ALIKE = 1e-7;

function isCircular({ u, v }: RoundPiece): boolean {
  const size = u.x * u.x + u.y * u.y;
  return (
    Math.abs(v.x * v.x + v.y * v.y - size) <= ALIKE * size && Math.abs(u.x * v.x + u.y * v.y) <= ALIKE * size
  );
}

/** Where each quarter turn of the sweep ends: an ellipse bends most evenly between its axes. */
function quarterTurns(start: number, sweep: number): readonly number[] {
  const [low, high] = [Math.min(start, start + sweep), Math.max(start, start + sweep)];
  const turns: number[] = [];
  const quarter = Math.PI / 2;
  for (let k = Math.floor(low / quarter) + 1; k * quarter < high - 1e-9; k++) {
    if (k * quarter > low + 1e-9) turns.push(k * quarter);
  }
  return sweep < 0 ? turns.reverse() : turns;
}

function curveOf(piece: RoundPiece | BezierPiece | SplinePiece): Curve {
  if (piece.kind === 'bezier') return bezierCurve(piece.points);
  if (piece.kind === 'spline') return splineCurve(piece);
  const { u, v, start, sweep } = piece;
  return {
    from: start,
    to: start + sweep,
    breaks: quarterTurns(start, sweep),
    at: (t) => pointOnRound(piece, t),
    along: (t) => {
      const way = Math.sign(sweep);
      return {
        x: way * (v.x * Math.cos(t) - u.x * Math.sin(t)),
        y: way * (v.y * Math.cos(t) - u.y * Math.sin(t)),
      };
    },
  };
}

/** What became of a piece: vertices from its start to its end, and how far they lie from it, mm. */
export interface Drawn {
  readonly vertices: readonly Vertex[];
  readonly deviation: number;
  /** True when arcs stand for something that is no circle. */
  readonly fitted: boolean;
}

/**
 * A piece as lines and arcs, none farther than `tolerance` mm from it; lines and circles exactly.
 * @throws GeometryError when it takes more than `most` arcs
 */
export function drawPiece(piece: Piece, tolerance: number, most: number): Drawn {
  if (piece.kind === 'segment') {
    const { from, to, bulge } = piece;
    return {
      vertices: [
        { ...from, bulge },
        { ...to, bulge: 0 },
      ],
      deviation: 0,
      fitted: false,
    };
  }
  if (piece.kind === 'round' && isCircular(piece)) {
    const { start, sweep, u, v } = piece;
    const count = Math.max(1, Math.ceil(Math.abs(sweep) / Math.PI - 1e-9));
    const bulge = Math.tan(((cross(u, v) < 0 ? -sweep : sweep) / count) * 0.25);
    const vertices = Array.from({ length: count + 1 }, (_, i) => ({
      ...pointOnRound(piece, start + (sweep * i) / count),
      bulge: i === count ? 0 : bulge,
    }));
    return { vertices, deviation: 0, fitted: false };
  }
  const fit = fitArcs(curveOf(piece), tolerance, most);
  return { ...fit, fitted: true };
}

/** Points that a piece lies within the hull of, to know its extent before it is drawn. */
export function hullOf(piece: Piece): readonly Point[] {
  switch (piece.kind) {
    case 'segment':
      return [piece.from, piece.to];
    case 'bezier':
      return piece.points;
    case 'spline':
      return piece.controls;
    default: {
      const { centre, u, v } = piece;
      const [wide, high] = [Math.hypot(u.x, v.x), Math.hypot(u.y, v.y)];
      return [
        { x: centre.x - wide, y: centre.y - high },
        { x: centre.x + wide, y: centre.y + high },
      ];
    }
  }
}
