// Joining: ends that meet, or nearly, become one point, until contours close; gaps are counted and the largest is told.
import Flatbush from 'flatbush';
import type { Point, Vertex } from '../../geometry/index.js';
import { DrawingProblem } from './problem.js';
import { apart, reachOf, reversed, SAME_POINT, withoutSpecks, type Run } from './runs.js';

/** A gap smaller than this is rounding, not worth a word, mm. */
const WORTH_TELLING = 1e-3;

export interface Joined {
  readonly runs: readonly Run[];
  /** Gaps that were closed, and the widest of them, mm. */
  readonly gaps: number;
  readonly widest: number;
  /** By layer, the narrowest gap left between ends of open runs, mm: what a larger tolerance would have to span. */
  readonly nextGaps: ReadonlyMap<string, number>;
}

/** One end of an open run. */
interface End {
  readonly run: number;
  readonly side: 'start' | 'end';
  readonly at: Point;
}

interface Pair {
  readonly a: number;
  readonly b: number;
  readonly distance: number;
  /** How far apart the two stand in the file: what was drawn in one go belongs together. */
  readonly order: number;
}

const endsOf = (runs: readonly Run[]): readonly End[] =>
  runs.flatMap(({ vertices }, run): readonly End[] => {
    const [first] = vertices;
    const last = vertices.at(-1);
    if (first === undefined || last === undefined) return [];
    return [
      { run, side: 'start', at: first },
      { run, side: 'end', at: last },
    ];
  });

/** Most pairs of ends that may lie within the gap of each other: five at every end of a large drawing. */
const MOST_PAIRS = 100_000;

function pairsWithin(ends: readonly End[], runs: readonly Run[], gap: number): readonly Pair[] {
  if (ends.length === 0) return [];
  const tree = new Flatbush(ends.length);
  for (const { at } of ends) tree.add(at.x, at.y, at.x, at.y);
  tree.finish();
  const pairs: Pair[] = [];
  ends.forEach((end, a) => {
    const { x, y } = end.at;
    tree.search(x - gap, y - gap, x + gap, y + gap, (b) => {
      const other = ends[b];
      if (b <= a || other === undefined) return false;
      const distance = apart(end.at, other.at);
      if (distance > gap || runs[end.run]?.layer !== runs[other.run]?.layer) return false;
      // A run shorter than the tolerance would close upon itself and vanish.
      if (end.run === other.run && reachOf(runs[end.run]?.vertices ?? []) <= 2 * gap) return false;
      if (pairs.length >= MOST_PAIRS)
        throw new DrawingProblem(
          `Thousands of line ends lie within ${gap} mm of one another, near (${x.toFixed(1)}, ${y.toFixed(1)}); a smaller gap tolerance, or leaving out hatching, would do.`,
          'gap',
        );
      pairs.push({ a, b, distance, order: Math.abs(end.run - other.run) });
      return false;
    });
  });
  const rounded = (distance: number): number => Math.round(distance / SAME_POINT);
  return pairs.toSorted(
    (p, q) => rounded(p.distance) - rounded(q.distance) || p.order - q.order || p.a - q.a || p.b - q.b,
  );
}

/** Partner of each end, nearest pairs first; an end has one. */
function partnersOf(pairs: readonly Pair[]): ReadonlyMap<number, number> {
  const partners = new Map<number, number>();
  for (const { a, b } of pairs) {
    if (partners.has(a) || partners.has(b)) continue;
    partners.set(a, b);
    partners.set(b, a);
  }
  return partners;
}

const middleOf = (a: Point, b: Point): Point =>
  apart(a, b) <= SAME_POINT ? a : { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };

/** Vertices of one run put behind those of another, whose last place becomes the common one. */
function append(chain: Vertex[], next: readonly Vertex[]): void {
  const last = chain.at(-1);
  const [first, ...rest] = next;
  if (last === undefined || first === undefined) {
    chain.push(...next);
    return;
  }
  chain[chain.length - 1] = { ...middleOf(last, first), bulge: first.bulge };
  chain.push(...rest);
}

/** Follows partners from a free end, or round from any, and puts the runs together. */
function chainFrom(
  start: number,
  ends: readonly End[],
  runs: readonly Run[],
  partners: ReadonlyMap<number, number>,
  used: Set<number>,
): { readonly vertices: readonly Vertex[]; readonly closed: boolean } {
  const chain: Vertex[] = [];
  let at = start;
  for (;;) {
    const end = ends[at];
    if (end === undefined) break;
    used.add(end.run);
    const own = runs[end.run]?.vertices ?? [];
    append(chain, end.side === 'start' ? own : reversed(own));
    // Ends stand in pairs, start before end.
    const far = at % 2 === 0 ? at + 1 : at - 1;
    const next = partners.get(far);
    if (next === undefined) return { vertices: chain, closed: false };
    if (used.has(ends[next]?.run ?? -1)) {
      const last = chain.pop();
      const [first] = chain;
      if (last !== undefined && first !== undefined)
        chain[0] = { ...middleOf(first, last), bulge: first.bulge };
      return { vertices: chain, closed: next === start };
    }
    at = next;
  }
  return { vertices: chain, closed: false };
}

/**
 * Joins open runs of one layer whose ends lie within `gap` mm of each other.
 * Closed runs are passed on as they are.
 */
export function joinRuns(runs: readonly Run[], gap: number): Joined {
  const open = runs.filter(({ closed }) => !closed);
  const ends = endsOf(open);
  const partners = partnersOf(pairsWithin(ends, open, gap));
  const used = new Set<number>();
  const joined: Run[] = runs.filter(({ closed }) => closed);
  const free = ends.flatMap((_, at) => (partners.has(at) ? [] : [at]));
  const starts = [...free, ...ends.map((_, at) => at)];
  for (const start of starts) {
    const run = ends[start]?.run;
    if (run === undefined || used.has(run)) continue;
    const { vertices, closed } = chainFrom(start, ends, open, partners, used);
    joined.push({
      layer: open[run]?.layer ?? '',
      vertices: withoutSpecks(vertices, closed),
      closed,
    });
  }
  const closedGaps = [...partners]
    .filter(([a, b]) => a < b)
    .map(([a, b]) => apart(ends[a]?.at ?? { x: 0, y: 0 }, ends[b]?.at ?? { x: 0, y: 0 }))
    .filter((distance) => distance > WORTH_TELLING);
  return {
    runs: joined,
    gaps: closedGaps.length,
    widest: closedGaps.reduce((a, b) => Math.max(a, b), 0),
    nextGaps: narrowestLeft(joined),
  };
}

/** The narrowest gap between ends of runs that stayed open, a run's own two ends included, by layer. */
function narrowestLeft(runs: readonly Run[]): ReadonlyMap<string, number> {
  const open = runs.filter(({ closed }) => !closed);
  const ends = endsOf(open);
  const narrowest = new Map<string, number>();
  if (ends.length < 2) return narrowest;
  const tree = new Flatbush(ends.length);
  for (const { at } of ends) tree.add(at.x, at.y, at.x, at.y);
  tree.finish();
  ends.forEach(({ at, run }, a) => {
    for (const b of tree.neighbors(at.x, at.y, 4)) {
      const other = ends[b];
      if (b === a || other === undefined || open[other.run]?.layer !== open[run]?.layer) continue;
      const layer = open[run]?.layer ?? '';
      narrowest.set(layer, Math.min(narrowest.get(layer) ?? Infinity, apart(at, other.at)));
    }
  });
  return narrowest;
}
