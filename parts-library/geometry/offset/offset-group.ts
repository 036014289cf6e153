// Offsetting contours together by one distance: the polygon engine settles which curves survive, algebra gives their
// coordinates, and the result is verified; what cannot be proved is tried again with finer chords, then handed out as
// chords on the scrap side.
import { GeometryError } from '../errors.js';
import { findFaults } from '../faults.js';
import { areaOf, boundsOf, isOutline, signedAreaOf } from '../measure.js';
import { packContours, type PackedContours } from '../pack.js';
import { inexactOffset, mitreLimit, topologyChord } from '../tolerances.js';
import { trustedContour } from '../trust.js';
import type { Contour, OffsetPiece, Vertex } from '../types.js';
import { buildRawOffset, type Join, type RawOffset } from './carriers.js';
import { inflate, type WholePolygon } from './inflate.js';
import { rebuildBoundary } from './rebuild.js';
import { createTracer } from './trace.js';
import { isComplete, keepsDistance } from './verify.js';

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
  const renumber = renumbering(contours, kept);
  for (const part of refinements) {
    const raw = buildRawOffset(kept, {
      distance,
      join,
      mitreLimit: limit,
      chordError: chordError * part,
    });
    const pieces = exactPieces(raw, source, { solid, distance, join, limit, renumber });
    if (pieces !== undefined) return { pieces, lostArcs: raw.lostArcs };
  }
  return { pieces: chordPieces(kept, distance, { join, limit, solid }), lostArcs: 0 };
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

interface GroupContext {
  readonly solid: boolean;
  readonly distance: number;
  readonly join: Join;
  readonly limit: number;
  readonly renumber: readonly number[];
}

/** The exact pieces, or undefined when anything about them could not be verified. */
function exactPieces(
  raw: RawOffset,
  source: PackedContours,
  context: GroupContext,
): OffsetPiece[] | undefined {
  const { distance, renumber } = context;
  const polygons = inflate(raw.loops, context.solid ? 'positive' : 'negative');
  const trace = createTracer(raw);
  const unit = 1 / raw.frame.scale;
  const pieces: OffsetPiece[] = [];
  const used = new Set<number>();
  for (const polygon of polygons) {
    const { runs, area, perimeter } = trace(polygon);
    if (Math.abs(area) <= perimeter * 2 * unit) continue;
    const built = rebuildBoundary(raw.carriers, runs, 20 * raw.chordError);
    const sources = built?.sources.map((s) => (s === -1 ? -1 : (renumber[s] ?? -1))) ?? [];
    const sound =
      built !== undefined &&
      Math.abs(signedAreaOf(built.vertices) - area) <= perimeter * (raw.chordError + 2 * unit) &&
      keepsDistance(source, built.vertices, sources, distance) &&
      findFaults(built.vertices).length === 0;
    if (!sound) {
      // A film thinner than the chords may be their artefact; whether it is one, the completeness check decides.
      if (Math.abs(area) <= perimeter * raw.chordError) continue;
      return undefined;
    }
    for (const carrier of built.carriers) used.add(carrier);
    pieces.push(orderly(built.vertices, sources));
  }
  const contours = pieces.map((piece) => piece.contour);
  const mitreReach = Math.abs(distance) * (context.join === 'mitre' ? context.limit : 1);
  const grown = context.solid === distance > 0;
  const complete = isComplete(source, raw.carriers, used, contours, { distance, mitreReach, grown });
  return complete ? pieces : undefined;
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
function chordPieces(
  contours: readonly Contour[],
  distance: number,
  context: { readonly join: Join; readonly limit: number; readonly solid: boolean },
): OffsetPiece[] {
  for (const part of chordPlacements) {
    const error = inexactOffset * part;
    const raw = buildRawOffset(contours, {
      distance: distance + error,
      join: context.join,
      mitreLimit: context.limit,
      chordError: error * 0.9,
    });
    const polygons = inflate(raw.loops, context.solid ? 'positive' : 'negative');
    const pieces: OffsetPiece[] = [];
    let sound = true;
    for (const polygon of polygons) {
      const { vertices, sources } = chordContour(raw, polygon);
      if (vertices.length < 3) continue;
      const faults = findFaults(vertices);
      if (faults.length > 0) {
        const film = Math.abs(signedAreaOf(vertices)) <= error * vertices.length;
        if (film) continue;
        sound = false;
        break;
      }
      pieces.push({ contour: trustedContour(vertices), exact: false, sources });
    }
    if (sound) return pieces;
  }
  throw new GeometryError(
    `An offset by ${distance} mm could not be made, not even in chords: two edges lie almost exactly ` +
      `${2 * Math.abs(distance)} mm apart. Change the distance by a hundredth of a millimetre.`,
  );
}

function chordContour(raw: RawOffset, polygon: WholePolygon): { vertices: Vertex[]; sources: number[] } {
  const vertices: Vertex[] = [];
  const { originX, originY, scale } = raw.frame;
  for (let i = 0; i + 1 < polygon.length; i += 2) {
    vertices.push({
      x: originX + Number(polygon[i]) / scale,
      y: originY + Number(polygon[i + 1]) / scale,
      bulge: 0,
    });
  }
  return { vertices, sources: vertices.map(() => -1) };
}
