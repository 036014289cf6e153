// A bar along a chain of circles: straight sides tangent to each pair, arcs round the outside of every turn.
import { GeometryError } from './errors.js';
import { makeContour } from './make.js';
import { norm } from './norm.js';
import type { Contour, Point, Vertex } from './types.js';
import type { Disc } from './hull.js';

export interface ChainOptions {
  /** Cut straight across at the last circle's tangent points instead of going round it. */
  readonly flatEnd?: boolean;
}

export interface TangentChain {
  /** Counter-clockwise. */
  readonly contour: Contour;
  /** Where two straight sides meet in an inside corner: indices of the contour's vertices. */
  readonly insideCorners: readonly number[];
}

/** One tangent side between two circles, in the direction of travel. */
interface Side {
  readonly from: Point;
  readonly to: Point;
  /** Angle of its normal, seen from both centres. */
  readonly normal: number;
}

/**
 * The tangent side of two circles on the right of the way from `a` to `b`.
 * The normal n satisfies n·(b − a) = r_a − r_b, so the side touches both circles at centre + radius·n.
 */
function rightSide(a: Disc, b: Disc, index: number): Side {
  const dx = b.centre.x - a.centre.x;
  const dy = b.centre.y - a.centre.y;
  const share = (a.radius - b.radius) / norm(dx, dy);
  if (!(Math.abs(share) < 1)) {
    throw new GeometryError(
      `Circle ${index + 1} of the chain lies inside its neighbour; they have no common side.`,
    );
  }
  const normal = Math.atan2(dy, dx) - Math.acos(share);
  const on = ({ centre, radius }: Disc): Point => ({
    x: centre.x + radius * Math.cos(normal),
    y: centre.y + radius * Math.sin(normal),
  });
  return { from: on(a), to: on(b), normal };
}

/** An angle turned into 0 … 2π. */
const turned = (angle: number): number => ((angle % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);

const bulgeOfTurn = (from: number, to: number): number => Math.tan(turned(to - from) / 4);

/** Where two lines cross, or undefined when that is beyond the end of either. */
function crossing(a: Side, b: Side): Point | undefined {
  const ux = a.to.x - a.from.x;
  const uy = a.to.y - a.from.y;
  const vx = b.to.x - b.from.x;
  const vy = b.to.y - b.from.y;
  const determinant = ux * vy - uy * vx;
  const wx = b.from.x - a.from.x;
  const wy = b.from.y - a.from.y;
  const onA = (wx * vy - wy * vx) / determinant;
  const onB = (wx * uy - wy * ux) / determinant;
  return onA > 0 && onA < 1 && onB > 0 && onB < 1
    ? { x: a.from.x + ux * onA, y: a.from.y + uy * onA }
    : undefined;
}

/** A turn smaller than this is none, radians. */
const STRAIGHT = 1e-9;

/** Vertices along one side of the chain, from its first straight side to its last, and which are inside corners. */
function walkSide(sides: readonly Side[]): {
  readonly vertices: readonly Vertex[];
  readonly corners: readonly number[];
} {
  const vertices: Vertex[] = [];
  const corners: number[] = [];
  sides.forEach((side, index) => {
    const before = sides[index - 1];
    if (before === undefined) {
      vertices.push({ ...side.from, bulge: 0 });
      return;
    }
    const turn = turned(side.normal - before.normal + Math.PI) - Math.PI;
    if (Math.abs(turn) < STRAIGHT) return;
    if (turn > 0) {
      vertices.push({ ...before.to, bulge: Math.tan(turn / 4) }, { ...side.from, bulge: 0 });
      return;
    }
    const corner = crossing(before, side);
    if (corner === undefined) {
      throw new GeometryError(
        `The sides of the chain do not meet inside the turn at circle ${index + 1}; a gentler turn, longer legs or smaller circles would do.`,
      );
    }
    corners.push(vertices.length);
    vertices.push({ ...corner, bulge: 0 });
  });
  return { vertices, corners };
}

/**
 * The outline of a bar that follows circles one after the other: what hulls of each two neighbours cover together,
 * inside corners left sharp.
 * @param discs at least two, each with a radius
 * @throws GeometryError when a circle lies inside its neighbour, or a turn is too sharp for its legs
 * @example two circles of radius 10, 50 apart: length 2 × 50 + 20 π
 */
export function tangentChain(discs: readonly Disc[], options: ChainOptions = {}): TangentChain {
  const pairs = discs.slice(1).map((disc, index) => [discs[index] ?? disc, disc] as const);
  const out = pairs.map(([a, b], index) => rightSide(a, b, index));
  const back = pairs.map(([a, b], index) => rightSide(b, a, index)).reverse();
  const right = walkSide(out);
  const left = walkSide(back);
  const lastOut = out.at(-1);
  const lastBack = back.at(-1);
  const firstOut = out[0];
  const firstBack = back[0];
  if (lastOut === undefined || lastBack === undefined || firstOut === undefined || firstBack === undefined) {
    throw new GeometryError('A chain needs at least two circles.');
  }
  const endBulge = options.flatEnd === true ? 0 : bulgeOfTurn(lastOut.normal, firstBack.normal);
  const vertices: readonly Vertex[] = [
    ...right.vertices,
    { ...lastOut.to, bulge: endBulge },
    ...left.vertices,
    { ...lastBack.to, bulge: bulgeOfTurn(lastBack.normal, firstOut.normal) },
  ];
  const contour = makeContour(vertices, { direction: 'outline' });
  // A long arc is split in two, which moves the places behind it: corners are found again by where they stand.
  const insideCorners = [
    ...right.corners.map((index) => right.vertices[index]),
    ...left.corners.map((index) => left.vertices[index]),
  ].flatMap((corner) => {
    const index = contour.findIndex((vertex) => vertex.x === corner?.x && vertex.y === corner.y);
    return index < 0 ? [] : [index];
  });
  return { contour, insideCorners };
}
