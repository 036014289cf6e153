// Untangling: a boundary that touches itself, because two edges of the source lie exactly twice the offset apart or
// three curves pass through one point, is parted at the touches into contours that do not touch themselves.
// Before: one closed list of exact curves that never crosses itself. After: closed lists that meet each other in points
// at most; stretches travelled both ways are gone.
import { norm } from '../norm.js';
import { intersectSegments } from '../intersect.js';
import { segmentBounds } from '../measure.js';
import { pointAlong, segmentLength, segmentsAlong } from '../segments.js';
import { negligible } from '../tolerances.js';
import type { Bounds, Point, Segment, Vertex } from '../types.js';
import type { Rebuilt } from './rebuild.js';

/** Places nearer than this are one place, mm: together with the joints' own slack within the exactness. */
const sameplace = 2 * negligible;

/** A stretch of the boundary between two places. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  /** The segment of the boundary it is part of, and the parameters along it. */
  readonly segment: number;
  readonly start: number;
  readonly end: number;
}

/** The boundary parted at its touches. Slivers without area are left out. */
export function untangle(built: Rebuilt): Rebuilt[] {
  const segments = segmentsAlong(built.vertices, true);
  const places: Point[] = [];
  const stretches = cancelOpposites(cutAtTouches(segments, places), segments);
  return traceLoops(stretches, segments)
    .flatMap(partAtRepeats)
    .map((loop) => joinSplits(loop))
    .filter((loop) => loop.length > 1)
    .map((loop) => toRebuilt(loop, segments, places, built));
}

function placeOf(places: Point[], p: Point): number {
  const known = places.findIndex((q) => norm(q.x - p.x, q.y - p.y) <= sameplace);
  if (known !== -1) return known;
  places.push({ x: p.x, y: p.y });
  return places.length - 1;
}

function cutAtTouches(segments: readonly Segment[], places: Point[]): Stretch[] {
  const cuts = segments.map(() => [0, 1]);
  const boxes = segments.map(segmentBounds);
  segments.forEach((a, i) => {
    for (let j = i + 1; j < segments.length; j++) {
      const b = segments[j];
      if (b === undefined || !boxesTouch(boxes[i], boxes[j])) continue;
      for (const found of intersectSegments(a, b, sameplace)) {
        cuts[i]?.push(...(found.kind === 'point' ? [found.a] : found.a));
        cuts[j]?.push(...(found.kind === 'point' ? [found.b] : found.b));
      }
    }
  });
  for (const segment of segments) placeOf(places, segment.from);
  return segments.flatMap((segment, i) => {
    const stretches: Stretch[] = [];
    let start = 0;
    let from = placeOf(places, segment.from);
    for (const end of (cuts[i] ?? []).toSorted((p, q) => p - q)) {
      const to = placeOf(places, pointAlong(segment, end));
      if (to === from) continue;
      stretches.push({ from, to, segment: i, start, end });
      start = end;
      from = to;
    }
    return stretches;
  });
}

function boxesTouch(a: Bounds | undefined, b: Bounds | undefined): boolean {
  if (a === undefined || b === undefined) return false;
  return (
    a.minX <= b.maxX + sameplace &&
    b.minX <= a.maxX + sameplace &&
    a.minY <= b.maxY + sameplace &&
    b.minY <= a.maxY + sameplace
  );
}

/** Without the pairs of stretches that are one line travelled both ways. */
function cancelOpposites(stretches: readonly Stretch[], segments: readonly Segment[]): Stretch[] {
  const left: Stretch[] = [];
  for (const stretch of stretches) {
    const opposite = left.findIndex(
      (other) =>
        other.from === stretch.to &&
        other.to === stretch.from &&
        near(middleOf(other, segments), middleOf(stretch, segments)),
    );
    if (opposite === -1) left.push(stretch);
    else left.splice(opposite, 1);
  }
  return left;
}

function middleOf(stretch: Stretch, segments: readonly Segment[]): Point | undefined {
  const segment = segments[stretch.segment];
  return segment && pointAlong(segment, (stretch.start + stretch.end) / 2);
}

function near(p: Point | undefined, q: Point | undefined): boolean {
  return p !== undefined && q !== undefined && norm(p.x - q.x, p.y - q.y) <= 2 * sameplace;
}

/** Closed walks that use every stretch once, turning as far left as they can at each place, so that none cross. */
function traceLoops(stretches: readonly Stretch[], segments: readonly Segment[]): Stretch[][] {
  const unused = new Set(stretches);
  const loops: Stretch[][] = [];
  for (const first of stretches) {
    if (!unused.delete(first)) continue;
    const loop = [first];
    let last = first;
    while (last.to !== first.from) {
      let best: Stretch | undefined;
      let sharpest = -Infinity;
      for (const candidate of unused) {
        if (candidate.from !== last.to) continue;
        const turn = turnBetween(last, candidate, segments);
        if (turn > sharpest) {
          sharpest = turn;
          best = candidate;
        }
      }
      // A walk that cannot go on is no boundary; what is wrong with it shows in the verification.
      if (best === undefined) break;
      unused.delete(best);
      loop.push(best);
      last = best;
    }
    if (last.to === first.from) loops.push(loop);
  }
  return loops;
}

/** How far from a place the turn is measured, mm: far enough for arcs that leave it side by side to part. */
const sight = 0.05;

function turnBetween(before: Stretch, after: Stretch, segments: readonly Segment[]): number {
  const a = segments[before.segment];
  const b = segments[after.segment];
  if (a === undefined || b === undefined) return 0;
  const back = Math.min((before.end - before.start) / 2, sight / segmentLength(a));
  const ahead = Math.min((after.end - after.start) / 2, sight / segmentLength(b));
  const p = pointAlong(a, before.end - back);
  const v = pointAlong(a, before.end);
  const w = pointAlong(b, after.start);
  const q = pointAlong(b, after.start + ahead);
  const ux = v.x - p.x;
  const uy = v.y - p.y;
  const vx = q.x - w.x;
  const vy = q.y - w.y;
  return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
}

/** A closed walk parted wherever it comes back to a place: none of the parts meets itself. */
function partAtRepeats(walk: readonly Stretch[]): Stretch[][] {
  const parts: Stretch[][] = [];
  const path: Stretch[] = [];
  for (const stretch of walk) {
    path.push(stretch);
    const back = path.findIndex((earlier) => earlier.from === stretch.to);
    if (back !== -1) parts.push(path.splice(back));
  }
  return parts;
}

/** Stretches of one segment that follow each other made one again. */
function joinSplits(loop: readonly Stretch[]): Stretch[] {
  const joined: Stretch[] = [];
  for (const stretch of loop) {
    const last = joined.at(-1);
    if (last !== undefined && last.segment === stretch.segment && last.end === stretch.start) {
      joined[joined.length - 1] = { ...last, to: stretch.to, end: stretch.end };
    } else joined.push(stretch);
  }
  const first = joined[0];
  const last = joined.at(-1);
  if (joined.length > 2 && first !== undefined && last !== undefined) {
    if (first.segment === last.segment && last.end === first.start) {
      joined[0] = { ...first, from: last.from, start: last.start };
      joined.pop();
    }
  }
  return joined;
}

function toRebuilt(
  loop: readonly Stretch[],
  segments: readonly Segment[],
  places: readonly Point[],
  built: Rebuilt,
): Rebuilt {
  const vertices: Vertex[] = [];
  const sources: number[] = [];
  const carriers: number[] = [];
  for (const { from, segment, start, end } of loop) {
    const { x, y } = places[from] ?? { x: Number.NaN, y: Number.NaN };
    const curve = segments[segment];
    const sweep = curve?.kind === 'arc' ? curve.sweep * (end - start) : 0;
    const bulge = start === 0 && end === 1 ? (built.vertices[segment]?.bulge ?? 0) : Math.tan(sweep / 4);
    vertices.push({ x, y, bulge });
    sources.push(built.sources[segment] ?? -1);
    carriers.push(built.carriers[segment] ?? -1);
  }
  return { vertices, sources, carriers };
}
