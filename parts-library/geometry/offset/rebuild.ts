// Rebuilding: from the runs of a boundary polygon to vertices computed on the exact curves.
import { norm } from '../norm.js';
import { curveMeetings, locate } from '../intersect.js';
import { bulgeOf, directionAlong, pointAlong } from '../segments.js';
import { negligible } from '../tolerances.js';
import type { Point, Segment, Vertex } from '../types.js';
import type { Carrier } from './carriers.js';
import type { Run } from './trace.js';

/** Vertices of one boundary and, for each segment, its source segment (-1: a rounded corner). */
export interface Rebuilt {
  readonly vertices: Vertex[];
  readonly sources: number[];
  readonly carriers: number[];
}

interface Node {
  readonly carrier: number;
  /** Where the polygon enters this carrier, roughly. */
  readonly near: Point;
}

/** Corrections (a carrier too small for the polygon put back, one that turned out empty dropped) before giving up. */
const mostRounds = 12;

/**
 * The exact boundary that follows the runs, or undefined when they do not fit together: two carriers that should
 * meet but do not, or a long stretch on no carrier at all.
 * @param longestUnknown stretches on no carrier up to this length are bridged, mm
 */
export function rebuildBoundary(
  carriers: readonly Carrier[],
  runs: readonly Run[],
  longestUnknown: number,
): Rebuilt | undefined {
  if (runs.some((run) => run.carrier === -1 && run.length > longestUnknown)) return undefined;
  let nodes: Node[] = [];
  for (const run of runs) {
    if (run.carrier !== -1 && nodes.at(-1)?.carrier !== run.carrier) {
      nodes.push({ carrier: run.carrier, near: run.start });
    }
  }
  if (nodes.length > 1 && nodes[0]?.carrier === nodes.at(-1)?.carrier) nodes = nodes.slice(1);
  for (let round = 0; round < mostRounds; round++) {
    if (nodes.length < 2) return undefined;
    const joints = nodes.map((node, k) => jointBetween(carriers, nodes.at(k - 1), node));
    const corrected = correct(carriers, nodes, joints);
    if (corrected === undefined) return emit(carriers, nodes, joints);
    nodes = corrected;
  }
  return undefined;
}

/** The exact point where one carrier hands over to the next; undefined when they never meet. */
function jointBetween(carriers: readonly Carrier[], from: Node | undefined, to: Node): Point | undefined {
  const a = from === undefined ? undefined : carriers[from.carrier];
  const b = carriers[to.carrier];
  if (a === undefined || b === undefined || from === undefined) return undefined;
  // Joined carriers run into each other side by side: their common end is exact, an intersection would not be.
  if (a.next === to.carrier) return a.curve.to;
  if (coincide(a.curve, b.curve)) return pointAlong(a.curve, clamp(locate(a.curve, to.near)));
  let best: Point | undefined;
  let nearest = Infinity;
  for (const { point } of curveMeetings(a.curve, b.curve, negligible)) {
    const distance = norm(point.x - to.near.x, point.y - to.near.y);
    if (distance < nearest) {
      nearest = distance;
      best = point;
    }
  }
  const { to: end } = a.curve;
  const { from: start } = b.curve;
  if (norm(end.x - start.x, end.y - start.y) <= 2 * negligible) {
    if (best === undefined || norm(end.x - to.near.x, end.y - to.near.y) < nearest) best = end;
  }
  return best;
}

/**
 * True when two curves lie on one line or circle: walls exactly twice the offset apart. Where one hands over to the other
 * does not matter then, for the stretch between is travelled both ways.
 */
function coincide(a: Segment, b: Segment): boolean {
  if (a.kind === 'arc') {
    if (b.kind === 'line') return false;
    const between = norm(a.centre.x - b.centre.x, a.centre.y - b.centre.y);
    return between + Math.abs(a.radius - b.radius) <= 2 * negligible;
  }
  if (b.kind === 'arc') return false;
  const u = directionAlong(a, 0);
  return [b.from, b.to].every(
    (p) => Math.abs(u.x * (p.y - a.from.y) - u.y * (p.x - a.from.x)) <= 2 * negligible,
  );
}

function clamp(parameter: number): number {
  return Math.max(0, Math.min(1, parameter));
}

/** A better list of nodes, or undefined when every node runs forward within its carrier. */
function correct(
  carriers: readonly Carrier[],
  nodes: readonly Node[],
  joints: readonly (Point | undefined)[],
): Node[] | undefined {
  const result: Node[] = [];
  let changed = false;
  nodes.forEach((node, k) => {
    const carrier = carriers[node.carrier];
    const start = joints[k];
    const after = nodes[(k + 1) % nodes.length];
    const end = joints[(k + 1) % nodes.length];
    if (carrier === undefined || after === undefined) return;
    const { previous, next, length, curve } = carrier;
    const t0 = start === undefined ? 0 : locate(curve, start);
    const t1 = end === undefined ? 1 : locate(curve, end);
    const slack = negligible / length;
    // Reaching past its own start or end, or not meeting its neighbour: a carrier too small for the polygon is missing.
    const before = nodes.at(k - 1);
    if ((start === undefined || t0 < -slack) && previous !== -1 && before?.carrier !== previous) {
      const inserted = result.at(-1)?.carrier === previous;
      if (!inserted) result.push({ carrier: previous, near: curve.from });
      changed = true;
    }
    if (t1 - t0 > slack || nodes.length <= 2) result.push(node);
    else changed = true;
    if ((end === undefined || t1 > 1 + slack) && next !== -1 && after.carrier !== next) {
      result.push({ carrier: next, near: curve.to });
      changed = true;
    }
  });
  if (!changed) return undefined;
  if (result.length > 1 && result[0]?.carrier === result.at(-1)?.carrier) result.pop();
  return result;
}

function emit(
  carriers: readonly Carrier[],
  nodes: readonly Node[],
  joints: readonly (Point | undefined)[],
): Rebuilt | undefined {
  const vertices: Vertex[] = [];
  const sources: number[] = [];
  const used: number[] = [];
  for (const [k, node] of nodes.entries()) {
    const carrier = carriers[node.carrier];
    const start = joints[k];
    const end = joints[(k + 1) % nodes.length];
    if (carrier === undefined || start === undefined || end === undefined) return undefined;
    const { curve } = carrier;
    const t0 = locate(curve, start);
    const t1 = locate(curve, end);
    const slack = negligible / carrier.length;
    if (t0 < -slack || t1 > 1 + slack || t1 - t0 <= slack) return undefined;
    const whole = start === curve.from && end === curve.to;
    const part = curve.kind === 'arc' && !whole ? Math.tan((curve.sweep * (t1 - t0)) / 4) : bulgeOf(curve);
    vertices.push({ x: start.x, y: start.y, bulge: Math.max(-1, Math.min(1, part)) });
    sources.push(carrier.source);
    used.push(node.carrier);
  }
  return { vertices, sources, carriers: used };
}
