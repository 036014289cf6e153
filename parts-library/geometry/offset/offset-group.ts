// Offsetting contours together by one distance: the polygon engine settles which curves survive, algebra gives their
// coordinates, and the result is verified; what cannot be proved is tried again with finer chords, then handed out as
// chords on the scrap side.
import { norm } from '../norm.js';
import { GeometryError } from '../errors.js';
import { findFaults } from '../faults.js';
import { areaOf, boundsOf, isOutline, signedAreaOf } from '../measure.js';
import { packContours, type PackedContours } from '../pack.js';
import { exactOffset, inexactOffset, mitreLimit, topologyChord } from '../tolerances.js';
import { trustedContour } from '../trust.js';
import type { Contour, OffsetPiece, Vertex } from '../types.js';
import { buildRawOffset, type Join, type RawOffset } from './carriers.js';
import { inflate, type WholePolygon } from './inflate.js';
import { rebuildBoundary, type Rebuilt } from './rebuild.js';
import { createTracer, type Run } from './trace.js';
import { untangle } from './untangle.js';
import { chordProbe, exactProbe, isComplete, keepsDistance, staysBeside } from './verify.js';

export interface OffsetOptions {
  /** How corners that open are closed: 'round' (default, as a torch does) or 'mitre'. */
  readonly join?: Join;
  /** A mitre reaches at most this many times the distance; a sharper corner is rounded. */
  readonly mitreLimit?: number;
  /** Chord error of the polygons that settle topology, mm. */
  readonly chordError?: number;
}

/** The pieces of a group; `sources` index the segments of all contours laid end to end. */
export interface GroupResult {
  readonly pieces: readonly OffsetPiece[];
  /** Arcs that the offset left without radius. */
  readonly lostArcs: number;
}

/** Finer chords tried after a failed verification, as parts of the first. */
const refinements = [1, 1 / 4, 1 / 16];

/**
 * Contours moved together to the right of their travel. They must not cross each other. All outlines and openings of
 * one region, or openings alone.
 */
export function offsetGroup(
  contours: readonly Contour[],
  distance: number,
  options: OffsetOptions = {},
): GroupResult {
  const kept = contours.filter((contour) => !vanishes(contour, distance));
  // The outermost contour says whether the group bounds metal or, all being in one hole of it, scrap.
  const solid = isOutline(largest(contours));
  if (!kept.some((contour) => isOutline(contour) === solid)) return { pieces: [], lostArcs: 0 };
  const join = options.join ?? 'round';
  const limit = Math.max(1, options.mitreLimit ?? mitreLimit);
  const chordError = firstChordError(distance, options.chordError ?? topologyChord);
  const source = packContours(contours);
  const numbers = renumbering(contours, kept);
  const context: GroupContext = { contours: kept, numbers, source, solid, distance, join, limit };
  for (const part of refinements) {
    const raw = rawOf(context, distance, chordError * part);
    const pieces = exactPieces(raw, context);
    if (pieces !== undefined) return { pieces, lostArcs: raw.lostArcs };
  }
  return { pieces: chordPieces(context), lostArcs: 0 };
}

interface GroupContext {
  readonly contours: readonly Contour[];
  /** For each segment of these contours, its number in the source. */
  readonly numbers: readonly number[];
  readonly source: PackedContours;
  readonly solid: boolean;
  readonly distance: number;
  readonly join: Join;
  readonly limit: number;
}

function rawOf(context: GroupContext, distance: number, chordError: number): RawOffset {
  const { contours, join, limit } = context;
  return buildRawOffset(contours, { distance, join, mitreLimit: limit, chordError });
}

/** The farthest a corner may reach from the source, mm. */
function mitreReachOf(context: GroupContext): number {
  return Math.abs(context.distance) * (context.join === 'mitre' ? context.limit : 1);
}

function largest(contours: readonly Contour[]): Contour {
  return contours.reduce((best, c) => (Math.abs(areaOf(c)) > Math.abs(areaOf(best)) ? c : best));
}

/** True when a contour is too narrow to survive an offset towards its inside. */
function vanishes(contour: Contour, distance: number): boolean {
  if (isOutline(contour) === distance > 0) return false;
  const box = boundsOf(contour);
  return Math.min(box.maxX - box.minX, box.maxY - box.minY) <= 2 * Math.abs(distance);
}

/** Chords no coarser than a twentieth of the distance, so that a small offset is not lost in them. */
function firstChordError(distance: number, wanted: number): number {
  return Math.min(wanted, Math.max(1e-4, Math.abs(distance) / 20));
}

/** From segment numbers of the kept contours to those of all contours. */
function renumbering(contours: readonly Contour[], kept: readonly Contour[]): number[] {
  const numbers: number[] = [];
  let base = 0;
  for (const contour of contours) {
    if (kept.includes(contour)) contour.forEach((_, i) => numbers.push(base + i));
    base += contour.length;
  }
  return numbers;
}

/** The exact pieces, or undefined when anything about them could not be verified. */
function exactPieces(raw: RawOffset, context: GroupContext): OffsetPiece[] | undefined {
  const { source, distance, solid } = context;
  const polygons = inflate(raw.loops, solid ? 'positive' : 'negative');
  const trace = createTracer(raw);
  const unit = 1 / raw.frame.scale;
  const pieces: OffsetPiece[] = [];
  const used = new Set<number>();
  for (const polygon of polygons) {
    const { runs, area, perimeter } = trace(polygon);
    if (Math.abs(area) <= perimeter * 2 * unit) continue;
    const loops = exactLoops(raw, context, runs);
    const total = loops?.reduce((sum, loop) => sum + signedAreaOf(loop.vertices), 0) ?? 0;
    if (loops === undefined || Math.abs(total - area) > perimeter * (raw.chordError + 2 * unit)) {
      // A film thinner than the chords may be their artefact; whether it is one, the completeness check decides.
      if (Math.abs(area) <= perimeter * raw.chordError) continue;
      return undefined;
    }
    for (const loop of loops) {
      for (const carrier of loop.carriers) used.add(carrier);
      pieces.push(orderly(loop.vertices, loop.sources));
    }
  }
  const contours = pieces.map((piece) => piece.contour);
  const complete = isComplete(source, raw.carriers, used, contours, {
    distance,
    mitreReach: mitreReachOf(context),
    grown: solid === distance > 0,
    probe: exactProbe,
  });
  return complete ? pieces : undefined;
}

/** The sound contours that one boundary of the polygon engine stands for, or undefined when they cannot be verified. */
function exactLoops(raw: RawOffset, context: GroupContext, runs: readonly Run[]): Rebuilt[] | undefined {
  const built = rebuildBoundary(raw.carriers, runs, 20 * raw.chordError);
  if (built === undefined) return undefined;
  const sound = (loop: Rebuilt): boolean =>
    findFaults(loop.vertices).length === 0 &&
    keepsDistance(context.source, loop.vertices, loop.sources, context.distance);
  const loops = [
    { ...built, sources: built.sources.map((s) => (s === -1 ? -1 : (context.numbers[s] ?? -1))) },
  ];
  if (loops.every(sound)) return loops;
  const parted = loops.flatMap(untangle).filter((loop) => !isFilm(loop.vertices, exactOffset));
  return parted.every(sound) ? parted : undefined;
}

/** The piece started at its lowest source segment, so that a small change of the source does not move the start. */
function orderly(vertices: readonly Vertex[], sources: readonly number[]): OffsetPiece {
  let start = 0;
  let lowest = Infinity;
  sources.forEach((source, i) => {
    if (source >= 0 && source < lowest) {
      lowest = source;
      start = i;
    }
  });
  const turned = <T>(list: readonly T[]): T[] => [...list.slice(start), ...list.slice(0, start)];
  return { contour: trustedContour(turned(vertices)), exact: true, sources: turned(sources) };
}

/** Where chord pieces are laid beyond the ideal, and with what chords, as parts of the error allowed. */
const chordPlacements = [0.4, 0.3, 0.45, 0.2];

/**
 * The offset as chord polygons between the ideal and `inexactOffset` beyond it, on the scrap side: chords of error e
 * about a curve moved e further stay within 2 e of it and never on its near side.
 */
function chordPieces(context: GroupContext): OffsetPiece[] {
  const { distance, source, solid } = context;
  const mitreReach = mitreReachOf(context);
  const { carriers } = rawOf(context, distance, topologyChord);
  const question = { distance, mitreReach, grown: solid === distance > 0, probe: chordProbe };
  for (const part of chordPlacements) {
    const error = inexactOffset * part;
    const raw = rawOf(context, distance + error, error * 0.9);
    const polygons = inflate(raw.loops, solid ? 'positive' : 'negative')
      .map((polygon) => toVertices(raw, polygon))
      .filter((vertices) => !isFilm(vertices, error));
    const sound = polygons.every(
      (vertices) => findFaults(vertices).length === 0 && staysBeside(source, vertices, distance, mitreReach),
    );
    if (!sound) continue;
    const contours = polygons.map(trustedContour);
    if (!isComplete(source, carriers, new Set(), contours, question)) continue;
    return contours.map((contour) => ({ contour, exact: false, sources: contour.map(() => -1) }));
  }
  throw new GeometryError(
    `An offset by ${distance} mm could not be verified, not even in chords; most likely two edges lie almost exactly ` +
      `${2 * Math.abs(distance)} mm apart. Change the distance by a hundredth of a millimetre.`,
  );
}

/** A loop so thin that it is no more than the error of its chords. */
function isFilm(vertices: readonly Vertex[], error: number): boolean {
  return Math.abs(signedAreaOf(vertices)) <= error * perimeterOf(vertices);
}

function perimeterOf(vertices: readonly Vertex[]): number {
  return vertices.reduce((sum, a, i) => {
    const b = vertices[(i + 1) % vertices.length] ?? a;
    return sum + norm(b.x - a.x, b.y - a.y);
  }, 0);
}

function toVertices(raw: RawOffset, polygon: WholePolygon): Vertex[] {
  const vertices: Vertex[] = [];
  const { originX, originY, scale } = raw.frame;
  for (let i = 0; i + 1 < polygon.length; i += 2) {
    vertices.push({
      x: originX + Number(polygon[i]) / scale,
      y: originY + Number(polygon[i + 1]) / scale,
      bulge: 0,
    });
  }
  return vertices;
}
