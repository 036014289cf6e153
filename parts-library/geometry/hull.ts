// The tight belt round circles: arcs of the outer ones and the straight lines that touch two of them.
import { GeometryError } from './errors.js';
import { circleContour, makeContour, type Direction } from './make.js';
import { norm } from './norm.js';
import { shortestSegment } from './tolerances.js';
import type { Contour, Point, Vertex } from './types.js';

/** A circle; radius 0 is a corner point, mm. */
export interface Disc {
  readonly centre: Point;
  readonly radius: number;
}

const TURN = 2 * Math.PI;

/** The disc that reaches farthest in a direction: the greatest of their support functions. */
function farthestOf(discs: readonly Disc[], angle: number): Disc | undefined {
  const [x, y] = [Math.cos(angle), Math.sin(angle)];
  let best: Disc | undefined;
  let most = -Infinity;
  for (const disc of discs) {
    const reach = disc.centre.x * x + disc.centre.y * y + disc.radius;
    if (reach > most) [best, most] = [disc, reach];
  }
  return best;
}

/** Directions in which two discs reach equally far; none when one lies inside the other. */
function evenDirections(a: Disc, b: Disc): readonly number[] {
  const dx = a.centre.x - b.centre.x;
  const dy = a.centre.y - b.centre.y;
  const apart = norm(dx, dy);
  const share = (b.radius - a.radius) / apart;
  if (!(Math.abs(share) < 1)) return [];
  const middle = Math.atan2(dy, dx);
  const half = Math.acos(share);
  return [middle - half, middle + half].map((angle) => ((angle % TURN) + TURN) % TURN);
}

/**
 * The hull of a few discs, tangent all round. The belt rides on the disc that reaches farthest in each direction, and
 * changes discs where two reach equally far.
 * @param discs at least one with a radius, or three points that span an area; meant for a dozen, not for hundreds
 * @throws GeometryError when there is nothing to go round
 * @example two discs of radius 10, 50 apart: length 2 × 50 + 20 π = 162.83
 */
export function hullContour(discs: readonly Disc[], direction: Direction): Contour {
  const changes = discs
    .flatMap((a, index) => discs.slice(index + 1).flatMap((b) => evenDirections(a, b)))
    .sort((a, b) => a - b);
  const first = changes[0];
  const lone = farthestOf(discs, 0);
  if (lone === undefined) throw new GeometryError('A hull needs at least one circle to go round.');
  if (first === undefined) return circleContour(lone.centre, lone.radius, direction);
  const stretches: { disc: Disc; from: number; to: number }[] = [];
  changes.forEach((from, index) => {
    const to = changes[index + 1] ?? first + TURN;
    if (to - from < 1e-12) return;
    const disc = farthestOf(discs, (from + to) / 2);
    if (disc === undefined) return;
    const last = stretches.at(-1);
    if (last?.disc === disc) last.to = to;
    else stretches.push({ disc, from, to });
  });
  const [head] = stretches;
  const tail = stretches.at(-1);
  if (head !== undefined && tail !== undefined && tail !== head && tail.disc === head.disc) {
    head.from = tail.from - TURN;
    stretches.pop();
  }
  if (head !== undefined && stretches.length === 1) {
    return circleContour(head.disc.centre, head.disc.radius, direction);
  }
  const on = ({ centre, radius }: Disc, angle: number): Point => ({
    x: centre.x + radius * Math.cos(angle),
    y: centre.y + radius * Math.sin(angle),
  });
  const vertices: Vertex[] = [];
  for (const { disc, from, to } of stretches) {
    const enters = on(disc, from);
    const leaves = on(disc, to);
    const isPoint = norm(leaves.x - enters.x, leaves.y - enters.y) < shortestSegment && to - from < Math.PI;
    if (!isPoint) vertices.push({ ...enters, bulge: Math.tan((to - from) / 4) });
    vertices.push({ ...leaves, bulge: 0 });
  }
  return makeContour(vertices, { direction });
}
