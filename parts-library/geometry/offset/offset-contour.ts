// The kerf offset of one contour: moved to the right of its travel, arcs kept as arcs, verified to 1e-6 mm.
import { GeometryError } from '../errors.js';
import { isCircle } from '../make.js';
import { isOutline } from '../measure.js';
import { negligible } from '../tolerances.js';
import { trustedContour } from '../trust.js';
import type { Contour, OffsetPiece, OffsetResult } from '../types.js';
import { offsetGroup, type OffsetOptions } from './offset-group.js';

/**
 * A contour moved `distance` mm to the right of its travel (negative: to the left). Metal lies on the left, so a
 * positive distance grows the metal: an outline moves outward, an opening shrinks into its hole. Corners that open are
 * rounded unless a mitre is asked for.
 * @returns no piece when the contour vanishes, several when it comes apart; a pocket closed by the offset becomes a
 *   piece of its own that runs the other way
 * @throws GeometryError for a distance that is not a number
 * @example a 100 x 60 rectangle moved by 1 becomes 4 lines and 4 quarter circles of radius 1, area 6323.14
 */
export function offsetContour(contour: Contour, distance: number, options: OffsetOptions = {}): OffsetResult {
  if (!Number.isFinite(distance)) {
    throw new GeometryError(`A contour can be offset by a finite distance only; ${distance} was given.`);
  }
  if (distance === 0) return resultOf(contour, [unmoved(contour)], 0);
  const circle = isCircle(contour);
  if (circle !== undefined) return offsetCircle(contour, circle.centre, circle.radius, distance);
  const { pieces, lostArcs } = offsetGroup([contour], distance, options);
  return resultOf(contour, pieces, lostArcs);
}

/** The result of an offset with its notes. */
function resultOf(contour: Contour, pieces: readonly OffsetPiece[], lostArcs: number): OffsetResult {
  const inexactCount = pieces.filter((piece) => !piece.exact).length;
  const outline = isOutline(contour);
  const same = pieces.filter((piece) => isOutline(piece.contour) === outline).length;
  const other = pieces.length - same;
  const notes: string[] = [];
  const kind = outline ? 'outline' : 'opening';
  if (pieces.length === 0) notes.push(`The ${kind} is narrower than the offset needs and vanished.`);
  if (same > 1) notes.push(`The ${kind} came apart into ${same} pieces.`);
  if (other > 0) {
    notes.push(
      outline
        ? `${other} pocket${other > 1 ? 's were' : ' was'} closed at the mouth, which is narrower than the offset needs.`
        : `${other} neck${other > 1 ? 's were' : ' was'} cut through, leaving metal loose inside the opening.`,
    );
  }
  if (pieces.length > 0 && lostArcs > 0) {
    notes.push(`${lostArcs} fillet${lostArcs > 1 ? 's' : ''} no larger than the offset became sharp.`);
  }
  notes.push(...chordNotes(inexactCount));
  return { pieces, exact: inexactCount === 0, inexactCount, notes };
}

/** What to say of pieces given in chords. */
export function chordNotes(inexactCount: number): string[] {
  if (inexactCount === 0) return [];
  return [`${inexactCount} piece${inexactCount > 1 ? 's are' : ' is'} given in chords within 0.01 mm.`];
}

function unmoved(contour: Contour): OffsetPiece {
  return { contour, exact: true, sources: contour.map((_, i) => i) };
}

function offsetCircle(
  contour: Contour,
  centre: { readonly x: number; readonly y: number },
  radius: number,
  distance: number,
): OffsetResult {
  const outline = isOutline(contour);
  const moved = radius + (outline ? distance : -distance);
  if (moved <= negligible) return resultOf(contour, [], 0);
  // Scaled about the centre, so that the circle still starts where its source does.
  const scale = moved / radius;
  const circle = contour.map((v) => ({
    x: centre.x + (v.x - centre.x) * scale,
    y: centre.y + (v.y - centre.y) * scale,
    bulge: v.bulge,
  }));
  return resultOf(contour, [{ contour: trustedContour(circle), exact: true, sources: [0, 1] }], 0);
}
