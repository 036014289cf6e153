// Arcs along a curve: a smooth curve as a chain of tangent arcs (biarcs) within a stated distance of it.
import { distanceToSegment } from './distance.js';
import { GeometryError } from './errors.js';
import { norm } from './norm.js';
import { pointAlong, segmentBetween } from './segments.js';
import { flattestRise } from './tolerances.js';
import type { Point, Segment, Vertex } from './types.js';

/** A plane curve by its parameter. */
export interface Curve {
  readonly from: number;
  readonly to: number;
  readonly at: (t: number) => Point;
  /** Its derivative, of any length; it may vanish at single places. */
  readonly along: (t: number) => Point;
  /** Parameters strictly between the ends where its direction or bend may jump, rising. */
  readonly breaks?: readonly number[];
}

export interface FittedCurve {
  /** From the curve's start to its end; the last vertex has no bulge. */
  readonly vertices: readonly Vertex[];
  /** Largest distance of a sampled point of the curve from the arcs, mm. */
  readonly deviation: number;
}

interface Sample {
  readonly t: number;
  readonly at: Point;
  /** Direction of travel, of length 1. */
  readonly heading: Point;
}

/** One or two segments between two samples, as vertices without the last point. */
interface Fit {
  readonly vertices: readonly Vertex[];
  readonly deviation: number;
}

/** First and largest number of steps on a stretch; doubled until neighbours' chords follow the curve. */
const FEWEST_STEPS = 8;
const MOST_STEPS = 1024;

/** A run of fewer samples than this is looked at between them too. */
const FEW_SAMPLES = 16;

/** How often a step too coarse for two arcs is halved before it is taken as a line: 2^-40 of a stretch is nothing. */
const MOST_HALVINGS = 40;

/**
 * A curve as tangent arcs and lines, none farther than `tolerance` mm from it. Each pair of arcs keeps the curve's
 * ends and directions there, so that the chain has no corner where the curve has none.
 *
 * @param most how many arcs it may take
 * @throws GeometryError when it takes more
 * @example an ellipse 60 x 30 within 0.02 mm takes about two dozen arcs
 */
export function fitArcs(curve: Curve, tolerance: number, most: number = Infinity): FittedCurve {
  const marks = [curve.from, ...(curve.breaks ?? []), curve.to];
  const vertices: Vertex[] = [];
  let deviation = 0;
  for (const [index, from] of marks.slice(0, -1).entries()) {
    const to = marks[index + 1] ?? from;
    const fit = fitStretch(curve, from, to, tolerance, most - vertices.length);
    vertices.push(...fit.vertices);
    deviation = Math.max(deviation, fit.deviation);
  }
  vertices.push({ ...curve.at(curve.to), bulge: 0 });
  return { vertices, deviation };
}

/** Takes the longest run of samples that two arcs follow, again and again. */
function fitStretch(curve: Curve, from: number, to: number, tolerance: number, most: number): Fit {
  const samples = sampleStretch(curve, from, to, tolerance);
  const vertices: Vertex[] = [];
  let deviation = 0;
  let start = 0;
  let stride = samples.length - 1;
  while (start < samples.length - 1) {
    let good: { readonly end: number; readonly fit: Fit } | undefined;
    let low = start;
    let high = samples.length;
    let end = Math.min(start + stride, samples.length - 1);
    while (end > low) {
      const fit = fitBetween(curve, samples.slice(start, end + 1), tolerance);
      if (fit === undefined) high = end;
      else {
        good = { end, fit };
        low = end;
      }
      end = high === samples.length ? Math.min(2 * end - start, samples.length - 1) : (low + high) >> 1;
    }
    if (good === undefined) {
      const [a, b] = [samples[start], samples[start + 1]];
      if (a === undefined || b === undefined) break;
      const fit = fitStep(curve, a, b, tolerance, MOST_HALVINGS);
      good = { end: start + 1, fit };
    }
    vertices.push(...good.fit.vertices);
    if (vertices.length > most)
      throw new GeometryError('A curve takes more arcs than are allowed; a larger tolerance would do.');
    deviation = Math.max(deviation, good.fit.deviation);
    stride = good.end - start;
    start = good.end;
  }
  return { vertices, deviation };
}

/** A single step that two arcs do not follow: its halves, down to a line where the curve has a point. */
function fitStep(curve: Curve, a: Sample, b: Sample, tolerance: number, halvings: number): Fit {
  const middle = sampleAt(curve, (a.t + b.t) / 2, a.t, b.t);
  const fit = fitBetween(curve, [a, middle, b], tolerance);
  if (fit !== undefined) return fit;
  if (halvings === 0 || norm(b.at.x - a.at.x, b.at.y - a.at.y) <= tolerance / 4) {
    return { vertices: [{ ...a.at, bulge: 0 }], deviation: distanceToChord(a.at, b.at, middle.at) };
  }
  const first = fitStep(curve, a, middle, tolerance, halvings - 1);
  const second = fitStep(curve, middle, b, tolerance, halvings - 1);
  return {
    vertices: [...first.vertices, ...second.vertices],
    deviation: Math.max(first.deviation, second.deviation),
  };
}

const distanceToChord = (from: Point, to: Point, p: Point): number =>
  norm(to.x - from.x, to.y - from.y) === 0
    ? norm(p.x - from.x, p.y - from.y)
    : distanceToSegment({ kind: 'line', from, to }, p);

/** Samples close enough together that the curve cannot stray between two of them unseen. */
function sampleStretch(curve: Curve, from: number, to: number, tolerance: number): readonly Sample[] {
  let steps = FEWEST_STEPS;
  for (;;) {
    const count = steps;
    const samples = Array.from({ length: count + 1 }, (_, i) =>
      sampleAt(curve, i === count ? to : from + ((to - from) * i) / count, from, to),
    );
    const coarse = samples.some((sample, i) => {
      const next = samples[i + 1];
      if (next === undefined) return false;
      const turn = sample.heading.x * next.heading.x + sample.heading.y * next.heading.y;
      const chord = norm(next.at.x - sample.at.x, next.at.y - sample.at.y);
      // A quarter of the chord times the sine of the turn is about the height of the arc over it.
      return (chord * Math.sqrt(Math.max(0, 1 - turn * turn))) / 4 > 4 * tolerance || turn < 0.5;
    });
    if (!coarse || steps >= MOST_STEPS) return samples;
    steps *= 2;
  }
}

function sampleAt(curve: Curve, t: number, from: number, to: number): Sample {
  return { t, at: curve.at(t), heading: headingAt(curve, t, from, to) };
}

/** The direction at `t`; where the derivative vanishes, the direction towards or from a place close by. */
function headingAt(curve: Curve, t: number, from: number, to: number): Point {
  // At a break the direction wanted is that of this stretch, not of the next.
  const hair = (to - from) * 1e-9;
  const inside = t === from && t !== curve.from ? t + hair : t === to && t !== curve.to ? t - hair : t;
  const { x, y } = curve.along(inside);
  const speed = norm(x, y);
  const here = curve.at(t);
  const scale = Math.max(Math.abs(here.x), Math.abs(here.y), 1);
  if (speed * Math.abs(to - from) > 1e-9 * scale) return { x: x / speed, y: y / speed };
  for (const share of [1e-4, 1e-3, 1e-2, 1e-1]) {
    const step = (to - from) * share;
    const ahead = t + step <= Math.max(from, to) ? curve.at(t + step) : here;
    const back = ahead === here ? curve.at(t - step) : here;
    const length = norm(ahead.x - back.x, ahead.y - back.y);
    if (length > 1e-9 * scale) return { x: (ahead.x - back.x) / length, y: (ahead.y - back.y) / length };
  }
  return { x: 1, y: 0 };
}

/** Two arcs (or a line) between the first and last sample, if every sample lies within the tolerance of them. */
function fitBetween(curve: Curve, samples: readonly Sample[], tolerance: number): Fit | undefined {
  const first = samples[0];
  const last = samples.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const vertices = biarc(first.at, first.heading, last.at, last.heading);
  if (vertices === undefined) return undefined;
  const segments = vertices.map((vertex, i): Segment => segmentBetween(vertex, vertices[i + 1] ?? last.at));
  const offs = segments.map(distanceFrom);
  const off = (p: Point): number => offs.reduce((least, one) => Math.min(least, one(p)), Infinity);
  // Most attempts are too long, and show it in their middle.
  for (const share of [0.5, 0.25, 0.75]) {
    const sample = samples[Math.round((samples.length - 1) * share)];
    if (sample !== undefined && off(sample.at) > tolerance) return undefined;
  }
  let deviation = 0;
  for (const at of placesBetween(curve, samples)) {
    deviation = Math.max(deviation, off(at));
    if (deviation > tolerance) return undefined;
  }
  // The other way round: no arc may wander off between the samples.
  const strays = segments.some((segment) =>
    [0.25, 0.5, 0.75].some((share) => {
      const place = pointAlong(segment, share);
      return !samples.some(
        ({ at }, i) => i > 0 && distanceToChord(samples[i - 1]?.at ?? at, at, place) <= 8 * tolerance,
      );
    }),
  );
  return strays ? undefined : { vertices, deviation };
}

/**
 * Two arcs that leave `from` and reach `to` in the given directions and meet tangent between, their tangents equally
 * long; one line where all lies straight.
 * @returns their vertices without `to`, or undefined when one would sweep more than half a circle
 */
export function biarc(
  from: Point,
  leaving: Point,
  to: Point,
  arriving: Point,
): readonly [Vertex] | readonly [Vertex, Vertex] | undefined {
  const chord = { x: to.x - from.x, y: to.y - from.y };
  const length = norm(chord.x, chord.y);
  if (length === 0) return undefined;
  // The joint lies half way between the tangents' ends, d long each: |chord|^2 - 2 d chord.(u + v) - 2 d^2 (1 - u.v) = 0.
  const spread = 1 - (leaving.x * arriving.x + leaving.y * arriving.y);
  const reach = chord.x * (leaving.x + arriving.x) + chord.y * (leaving.y + arriving.y);
  const root = Math.sqrt(reach * reach + 2 * spread * length * length);
  // The stable form of the quadratic's positive root.
  const d = (length * length) / (reach + root);
  if (!(reach + root > 1e-12 * length) || !Number.isFinite(d)) return undefined;
  const joint = {
    x: (from.x + to.x + d * (leaving.x - arriving.x)) / 2,
    y: (from.y + to.y + d * (leaving.y - arriving.y)) / 2,
  };
  const first = norm(joint.x - from.x, joint.y - from.y);
  const second = norm(to.x - joint.x, to.y - joint.y);
  if (first === 0 || second === 0) return undefined;
  // Half the sweep is the angle between tangent and chord.
  const one = Math.tan(turn(leaving, { x: joint.x - from.x, y: joint.y - from.y }) / 2);
  const two = Math.tan(turn({ x: to.x - joint.x, y: to.y - joint.y }, arriving) / 2);
  if (!(Math.abs(one) <= 1 && Math.abs(two) <= 1)) return undefined;
  const isFlat = (Math.abs(one) * first) / 2 < flattestRise && (Math.abs(two) * second) / 2 < flattestRise;
  if (isFlat && Math.abs(turn(leaving, chord)) * length < flattestRise) return [{ ...from, bulge: 0 }];
  return [
    { ...from, bulge: one },
    { ...joint, bulge: two },
  ];
}

/** Asks of many points how far they lie from one segment of at most half a circle. */
function distanceFrom(segment: Segment): (p: Point) => number {
  if (segment.kind === 'line') return (p) => distanceToSegment(segment, p);
  const { centre, radius, from, to, sweep } = segment;
  const way = Math.sign(sweep);
  const u = { x: from.x - centre.x, y: from.y - centre.y };
  const v = { x: to.x - centre.x, y: to.y - centre.y };
  return ({ x, y }) => {
    const [dx, dy] = [x - centre.x, y - centre.y];
    const isBeside = way * (u.x * dy - u.y * dx) >= 0 && way * (dx * v.y - dy * v.x) >= 0;
    if (isBeside) return Math.abs(norm(dx, dy) - radius);
    return Math.min(norm(x - from.x, y - from.y), norm(x - to.x, y - to.y));
  };
}

/** The samples' places, and three more in each gap where there are few of them. */
function placesBetween(curve: Curve, samples: readonly Sample[]): readonly Point[] {
  const places = samples.map(({ at }) => at);
  if (samples.length >= FEW_SAMPLES) return places;
  const between = samples.slice(1).flatMap((b, i) => {
    const a = samples[i] ?? b;
    return [0.25, 0.5, 0.75].map((share) => curve.at(a.t + (b.t - a.t) * share));
  });
  return [...places, ...between];
}

const turn = (u: Point, v: Point): number => Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y);
