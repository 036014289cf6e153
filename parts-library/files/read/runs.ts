// Runs: lines and arcs end to end on one layer, after curves have become arcs; turned round, tidied, measured.
import { arcFromBulge, type Point, type Vertex } from '../../geometry/index.js';

/** Vertices in order; a closed one joins its last to its first without repeating it. */
export interface Run {
  readonly layer: string;
  readonly vertices: readonly Vertex[];
  readonly closed: boolean;
}

/** Ends closer than this are one point, mm: what ten digits of a file leave of one. */
export const SAME_POINT = 1e-6;

/** Shorter lines are left out and their ends made one, mm: no torch and no caliper can tell. */
export const SHORTEST_LINE = 1e-3;

export const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

/** The same run from its other end. */
export function reversed(vertices: readonly Vertex[]): readonly Vertex[] {
  return vertices
    .map((vertex, i): Vertex => {
      const before = vertices[i - 1];
      return {
        x: vertex.x,
        y: vertex.y,
        bulge: before === undefined || before.bulge === 0 ? 0 : -before.bulge,
      };
    })
    .reverse();
}

/** Length of each segment's chord added up, mm: enough to tell a speck from a line. */
export const reachOf = (vertices: readonly Vertex[]): number =>
  vertices.slice(1).reduce((sum, vertex, i) => sum + apart(vertex, vertices[i] ?? vertex), 0);

/** Leaves out segments too short to be anything, keeping the first and, of an open run, the last place. */
export function withoutSpecks(vertices: readonly Vertex[], closed: boolean): readonly Vertex[] {
  const kept: Vertex[] = [];
  for (const vertex of vertices) {
    const last = kept.at(-1);
    if (last !== undefined && apart(last, vertex) < SHORTEST_LINE)
      kept[kept.length - 1] = { ...last, bulge: vertex.bulge };
    else kept.push(vertex);
  }
  const [first] = kept;
  const last = kept.at(-1);
  if (
    closed &&
    kept.length > 1 &&
    first !== undefined &&
    last !== undefined &&
    apart(first, last) < SHORTEST_LINE
  )
    kept.pop();
  return kept;
}

/** Neighbours whose middles of a circle, radii or directions agree this well are one, mm and radians. */
const ONE_CARRIER = 2e-4;
const ONE_DIRECTION = 1e-6;

/** The bulge of two neighbours as one segment; undefined where they are not on one line or circle. */
function asOne(a: Vertex, b: Vertex, c: Point): number | undefined {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y];
  if (a.bulge === 0 && b.bulge === 0) {
    const lengths = Math.hypot(ux, uy) * Math.hypot(vx, vy);
    const straight = ux * vx + uy * vy > 0 && Math.abs(ux * vy - uy * vx) <= ONE_DIRECTION * lengths;
    return straight ? 0 : undefined;
  }
  if (a.bulge * b.bulge <= 0) return undefined;
  const quarter = Math.atan(a.bulge) + Math.atan(b.bulge);
  // Half a circle is as much as one segment may be.
  if (Math.abs(quarter) > Math.PI / 4 + 1e-12) return undefined;
  const [one, two] = [arcFromBulge(a, b, a.bulge), arcFromBulge(b, c, b.bulge)];
  const alike =
    apart(one.centre, two.centre) <= ONE_CARRIER && Math.abs(one.radius - two.radius) <= ONE_CARRIER;
  return alike ? Math.tan(quarter) : undefined;
}

/** The same line with neighbours that lie on one straight line or one circle made one segment. */
export function withoutNeedlessCorners(vertices: readonly Vertex[], closed: boolean): readonly Vertex[] {
  const kept: Vertex[] = [];
  for (const [i, vertex] of vertices.entries()) {
    kept.push(vertex);
    const next = vertices[i + 1] ?? (closed ? kept[0] : undefined);
    const before = kept.at(-2);
    if (before === undefined || next === undefined || kept.length < (i === vertices.length - 1 ? 3 : 2))
      continue;
    const bulge = asOne(before, vertex, next);
    if (bulge === undefined) continue;
    kept.pop();
    kept[kept.length - 1] = { ...before, bulge };
  }
  return kept;
}
