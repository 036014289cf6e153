// Tracing: which exact curve each edge of a boundary polygon stands for.
// Corners that survived the engine are known by their coordinates; an edge between two crossings is found by place.
import { norm } from '../norm.js';
import Flatbush from 'flatbush';
import { locate } from '../intersect.js';
import { segmentBounds } from '../measure.js';
import { directionAlong } from '../segments.js';
import type { Point } from '../types.js';
import type { Carrier, RawOffset } from './carriers.js';
import type { WholePolygon } from './inflate.js';

/** A stretch of a boundary polygon on one carrier (-1: on none), beginning near `start`. */
export interface Run {
  readonly carrier: number;
  readonly start: Point;
  readonly length: number;
}

/** Answers the runs of a boundary polygon in order of travel, and the polygon's signed area, mm2, and perimeter, mm. */
export interface Traced {
  readonly runs: readonly Run[];
  readonly area: number;
  readonly perimeter: number;
}

/** Half the span of whole coordinates, 2^25: two of them make one exact key. */
const half = 33_554_432;

function keyOf(x: number, y: number): number {
  return (x + half) * 2 * half + (y + half);
}

/** Prepares the tracing of any number of boundary polygons of one raw offset. */
export function createTracer(raw: RawOffset): (polygon: WholePolygon) => Traced {
  const { frame, carriers, arriving, following, chordError } = raw;
  const unit = 1 / frame.scale;
  const firstAt = new Map<number, number>();
  const nextAt = new Int32Array(arriving.length).fill(-1);
  let index = 0;
  for (const loop of raw.loops) {
    for (let i = 0; i + 1 < loop.length; i += 2, index++) {
      const key = keyOf(Number(loop[i]), Number(loop[i + 1]));
      const other = firstAt.get(key);
      if (other !== undefined) nextAt[index] = other;
      firstAt.set(key, index);
    }
  }
  let tree: Flatbush | undefined;

  /** How far an edge strays from a carrier, in parts of what chords and rounding explain; over 1 it is not on it. */
  const misfit = (carrier: Carrier, from: Point, to: Point): number => {
    const { curve } = carrier;
    const slack = (curve.kind === 'arc' ? chordError : 0) + 3 * unit;
    let worst = 0;
    for (const p of [from, to]) {
      const t = locate(curve, p);
      const beyond = Math.max(0, -t, t - 1) * carrier.length;
      const aside =
        curve.kind === 'arc'
          ? Math.abs(norm(p.x - curve.centre.x, p.y - curve.centre.y) - curve.radius)
          : offLine(curve.from, curve.to, p);
      worst = Math.max(worst, aside / slack, beyond / (slack * 4));
    }
    const at = middle(from, to);
    if (curve.kind === 'arc') {
      // Both ends of a diameter are on the circle too: a chord must also be near it in its middle.
      worst = Math.max(worst, (curve.radius - norm(at.x - curve.centre.x, at.y - curve.centre.y)) / slack);
    }
    const heading = directionAlong(curve, clamp(locate(curve, at)));
    const forward = heading.x * (to.x - from.x) + heading.y * (to.y - from.y);
    return forward > 0 ? worst : Infinity;
  };

  const findByPlace = (from: Point, to: Point, favourite: number): number => {
    if (tree === undefined) {
      tree = new Flatbush(Math.max(1, carriers.length));
      for (const { curve } of carriers) {
        const box = segmentBounds(curve);
        tree.add(box.minX, box.minY, box.maxX, box.maxY);
      }
      if (carriers.length === 0) tree.add(Infinity, Infinity, -Infinity, -Infinity);
      tree.finish();
    }
    const at = middle(from, to);
    const reach = chordError + 4 * unit;
    let best = -1;
    let bestFit = 1;
    tree.search(at.x - reach, at.y - reach, at.x + reach, at.y + reach, (candidate) => {
      const carrier = carriers[candidate];
      if (carrier === undefined) return false;
      // Between two curves that fit alike, stay on the one the boundary was on.
      const fit = misfit(carrier, from, to) - (candidate === favourite ? 0.1 : 0);
      if (fit < bestFit) {
        bestFit = fit;
        best = candidate;
      }
      return false;
    });
    return best;
  };

  const label = (a: number, b: number, from: Point, to: Point, favourite: number): number => {
    let byStart = -1;
    for (let i = a; i !== -1; i = Number(nextAt[i])) {
      const after = Number(following[i]);
      const leaving = Number(arriving[after]);
      for (let j = b; j !== -1; j = Number(nextAt[j])) {
        if (after === j || (leaving !== -1 && leaving === arriving[j])) return leaving;
      }
      if (leaving !== -1 && fits(leaving, from, to)) byStart = leaving;
    }
    if (byStart !== -1) return byStart;
    for (let j = b; j !== -1; j = Number(nextAt[j])) {
      const entering = Number(arriving[j]);
      if (entering !== -1 && fits(entering, from, to)) return entering;
    }
    return findByPlace(from, to, favourite);
  };

  const fits = (candidate: number, from: Point, to: Point): boolean => {
    const carrier = carriers[candidate];
    return carrier !== undefined && misfit(carrier, from, to) <= 1;
  };

  return (polygon) => {
    const count = polygon.length / 2;
    const runs: { carrier: number; start: Point; length: number }[] = [];
    let area = 0;
    let perimeter = 0;
    let favourite = -1;
    let fromX = Number(polygon[0]);
    let fromY = Number(polygon[1]);
    let fromRaw = firstAt.get(keyOf(fromX, fromY)) ?? -1;
    for (let i = 0; i < count; i++) {
      const j = ((i + 1) % count) * 2;
      const toX = Number(polygon[j]);
      const toY = Number(polygon[j + 1]);
      const toRaw = firstAt.get(keyOf(toX, toY)) ?? -1;
      const from = { x: frame.originX + fromX * unit, y: frame.originY + fromY * unit };
      const to = { x: frame.originX + toX * unit, y: frame.originY + toY * unit };
      const carrier = label(fromRaw, toRaw, from, to, favourite);
      const length = norm(toX - fromX, toY - fromY) * unit;
      const last = runs.at(-1);
      if (last !== undefined && last.carrier === carrier) last.length += length;
      else runs.push({ carrier, start: from, length });
      area += (fromX * toY - toX * fromY) / 2;
      perimeter += length;
      favourite = carrier;
      fromX = toX;
      fromY = toY;
      fromRaw = toRaw;
    }
    const first = runs[0];
    const last = runs.at(-1);
    if (runs.length > 1 && first !== undefined && last !== undefined && first.carrier === last.carrier) {
      runs[0] = { carrier: last.carrier, start: last.start, length: first.length + last.length };
      runs.pop();
    }
    return { runs, area: area * unit * unit, perimeter };
  };
}

function clamp(parameter: number): number {
  return Math.min(1, Math.max(0, parameter));
}

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

function offLine(from: Point, to: Point, p: Point): number {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  return Math.abs(dx * (p.y - from.y) - dy * (p.x - from.x)) / norm(dx, dy);
}
