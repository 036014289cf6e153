// Doubled lines: a contour drawn twice, a line over another, stretches that two lines share.
import Flatbush from 'flatbush';
import {
  arcFromBulge,
  bulgeOf,
  intersectSegments,
  pointAlong,
  segmentBounds,
  type Point,
  type Segment,
} from '../../geometry/index.js';
import { apart, reachOf, type Run } from './runs.js';

/** Lines no farther apart than this lie on one another, mm: a file with three decimals draws them so. */
const ON_ANOTHER = 0.002;

/** A shared stretch shorter than this is a crossing at a small angle, mm. */
const LEAST_SHARED = 0.05;

/** Most pairs of lines that are compared: hatching crosses itself without end, and is not cut. */
const MOST_PAIRS = 1_000_000;

export interface Undoubled {
  readonly runs: readonly Run[];
  /** Lines and contours left out or shortened. */
  readonly removed: number;
  /** False when there were too many lines across each other to look at all of them. */
  readonly complete: boolean;
}

function segmentsOfRun({ vertices, closed }: Run): readonly Segment[] {
  const ring = closed && vertices[0] !== undefined ? [...vertices, vertices[0]] : vertices;
  return ring.slice(1).flatMap((to, i): readonly Segment[] => {
    const from = ring[i] ?? { ...to, bulge: 0 };
    if (apart(from, to) === 0) return [];
    return [from.bulge === 0 ? { kind: 'line', from, to } : arcFromBulge(from, to, from.bulge)];
  });
}

/** Middles of a contour's segments, in order: they tell it apart from any other with the same corners. */
const middlesOf = (run: Run): readonly Point[] =>
  segmentsOfRun(run).map((segment) => pointAlong(segment, 0.5));

/** The same closed contour, wherever it begins and whichever way it runs. */
function isSame(mine: readonly Point[], theirs: readonly Point[]): boolean {
  const { length } = mine;
  if (length !== theirs.length) return false;
  const near = (i: number, k: number): boolean => {
    const [a, b] = [mine[i], theirs[((k % length) + length) % length]];
    return a !== undefined && b !== undefined && apart(a, b) <= ON_ANOTHER;
  };
  return theirs.some(
    (_, shift) =>
      near(0, shift) && [1, -1].some((way) => mine.every((_point, i) => near(i, shift + way * i))),
  );
}

/** Numbers that twins share, each to a square of the grid. */
function marksOf({ vertices }: Run): readonly number[] {
  const ring = [...vertices, ...vertices.slice(0, 1)];
  const grid = 8 * ON_ANOTHER;
  const mean = (pick: (point: Point) => number): number =>
    vertices.reduce((sum, vertex) => sum + pick(vertex), 0) / vertices.length;
  return [mean(({ x }) => x), mean(({ y }) => y), reachOf(ring) / vertices.length].map((value) =>
    Math.round(value / grid),
  );
}

/** Leaves out closed contours that are drawn a second time on the same layer. */
function withoutTwins(runs: readonly Run[]): { readonly runs: readonly Run[]; readonly removed: number } {
  const seen = new Map<string, (readonly Point[])[]>();
  const near = [-1, 0, 1];
  const kept = runs.filter((run) => {
    if (!run.closed) return true;
    const [x = 0, y = 0, reach = 0] = marksOf(run);
    const key = (i: number, k: number, m: number): string =>
      `${run.vertices.length} ${x + i} ${y + k} ${reach + m} ${run.layer}`;
    const middles = middlesOf(run);
    // Twins may fall on either side of the grid's lines.
    const isTwin = near.some((i) =>
      near.some((k) =>
        near.some((m) => seen.get(key(i, k, m))?.some((other) => isSame(middles, other)) === true),
      ),
    );
    if (isTwin) return false;
    const own = key(0, 0, 0);
    seen.set(own, [...(seen.get(own) ?? []), middles]);
    return true;
  });
  return { runs: kept, removed: runs.length - kept.length };
}

interface Piece {
  readonly run: number;
  readonly layer: string;
  readonly segment: Segment;
  readonly ofClosed: boolean;
}

/** What is left of `segment` when the stretch between two parameters is taken out of it. */
function outside(segment: Segment, low: number, high: number): readonly Segment[] {
  const part = (from: number, to: number): readonly Segment[] => {
    const [a, b] = [pointAlong(segment, from), pointAlong(segment, to)];
    if (apart(a, b) < LEAST_SHARED) return [];
    if (segment.kind === 'line') return [{ kind: 'line', from: a, to: b }];
    return [arcFromBulge(a, b, Math.tan((segment.sweep * (to - from)) / 4))];
  };
  return [...part(0, low), ...part(high, 1)];
}

/** Whether two segments could share a stretch: on nearly one line, or on one circle. */
function mayShare(a: Segment, b: Segment): boolean {
  if (a.kind === 'arc')
    return (
      b.kind === 'arc' &&
      apart(a.centre, b.centre) <= ON_ANOTHER &&
      Math.abs(a.radius - b.radius) <= ON_ANOTHER
    );
  if (b.kind === 'arc') return false;
  const u = { x: a.to.x - a.from.x, y: a.to.y - a.from.y };
  const off = (p: Point): number =>
    Math.abs(u.x * (p.y - a.from.y) - u.y * (p.x - a.from.x)) / Math.hypot(u.x, u.y);
  // Parallel within what a short line can be told from.
  const v = { x: b.to.x - b.from.x, y: b.to.y - b.from.y };
  const sine = Math.abs(u.x * v.y - u.y * v.x) / (Math.hypot(u.x, u.y) * Math.hypot(v.x, v.y));
  return sine * LEAST_SHARED <= 2 * ON_ANOTHER && Math.min(off(b.from), off(b.to)) <= Math.hypot(v.x, v.y);
}

function lessOverlap(segment: Segment, over: Segment): readonly Segment[] {
  if (!mayShare(segment, over)) return [segment];
  const shared = intersectSegments(segment, over, ON_ANOTHER).find((meeting) => meeting.kind === 'overlap');
  if (shared === undefined || apart(shared.from, shared.to) < LEAST_SHARED) return [segment];
  return outside(segment, Math.min(...shared.a), Math.max(...shared.a));
}

const round = (value: number): number => Math.round(value / ON_ANOTHER);

/** The same for a segment drawn either way. */
function keyOf({ layer, segment }: Piece): string {
  const ends = [segment.from, segment.to].map(({ x, y }) => `${round(x)} ${round(y)}`).sort();
  const middle = pointAlong(segment, 0.5);
  return `${layer} ${ends.join(' ')} ${round(middle.x)} ${round(middle.y)}`;
}

/**
 * Of each segment of an open run, what lies on an earlier one or on a closed contour of the same layer.
 * @returns what is left of those that something was taken from, by index
 */
function cutsOf(pieces: readonly Piece[]): {
  readonly cuts: ReadonlyMap<number, readonly Segment[]>;
  readonly complete: boolean;
} {
  const cuts = new Map<number, readonly Segment[]>();
  const first = new Map<string, number>();
  pieces.forEach((piece, index) => {
    const key = keyOf(piece);
    if (!piece.ofClosed && first.has(key)) cuts.set(index, []);
    else if (!first.has(key)) first.set(key, index);
  });
  const left = pieces.flatMap((_, index) => (cuts.has(index) ? [] : [index]));
  if (left.length === 0) return { cuts, complete: true };
  const tree = new Flatbush(left.length);
  for (const index of left) {
    const { minX, minY, maxX, maxY } = segmentBounds(pieces[index]?.segment ?? POINT);
    tree.add(minX, minY, maxX, maxY);
  }
  tree.finish();
  let compared = 0;
  for (const index of left) {
    const piece = pieces[index];
    if (piece === undefined || piece.ofClosed) continue;
    if (compared > MOST_PAIRS) return { cuts, complete: false };
    const { minX, minY, maxX, maxY } = segmentBounds(piece.segment);
    let rest: readonly Segment[] = [piece.segment];
    tree.search(minX - ON_ANOTHER, minY - ON_ANOTHER, maxX + ON_ANOTHER, maxY + ON_ANOTHER, (at) => {
      compared += 1;
      const other = left[at] ?? index;
      const against = pieces[other];
      const isEarlier = other < index || against?.ofClosed === true;
      if (other === index || !isEarlier || against?.layer !== piece.layer) return false;
      for (const over of cuts.get(other) ?? [against.segment])
        rest = rest.flatMap((one) => lessOverlap(one, over));
      return false;
    });
    if (rest.length !== 1 || rest[0] !== piece.segment) cuts.set(index, rest);
  }
  return { cuts, complete: true };
}

/** Stands in where there is none; never met. */
const POINT: Segment = { kind: 'line', from: { x: 0, y: 0 }, to: { x: 0, y: 0 } };

const runOf = (layer: string, segment: Segment): Run => ({
  layer,
  closed: false,
  vertices: [
    { x: segment.from.x, y: segment.from.y, bulge: bulgeOf(segment) },
    { x: segment.to.x, y: segment.to.y, bulge: 0 },
  ],
});

/** The runs without what is drawn twice; two layers may each have a line in the same place. */
export function withoutDoubles(given: readonly Run[]): Undoubled {
  const { runs, removed } = withoutTwins(given);
  const pieces = runs.flatMap((run, index): readonly Piece[] =>
    segmentsOfRun(run).map((segment) => ({ run: index, layer: run.layer, segment, ofClosed: run.closed })),
  );
  const { cuts, complete } = cutsOf(pieces);
  if (cuts.size === 0) return { runs, removed, complete };
  const left = new Map<number, Segment[]>();
  const touched = new Set<number>();
  pieces.forEach((piece, index) => {
    if (cuts.has(index)) touched.add(piece.run);
    const own = left.get(piece.run) ?? [];
    own.push(...(cuts.get(index) ?? [piece.segment]));
    left.set(piece.run, own);
  });
  // A run that lost something comes apart into what is left; joining puts it together again.
  const rebuilt = runs.flatMap((run, index) =>
    touched.has(index) ? (left.get(index) ?? []).map((segment) => runOf(run.layer, segment)) : [run],
  );
  return { runs: rebuilt, removed: removed + cuts.size, complete };
}
