// From the file's unit to millimetres, near the origin: the extent is looked at before anything is drawn.
import type { Point } from '../../geometry/index.js';
import { DRAWING_LIMITS } from '../../model/index.js';
import { after, movePoint, shift, stretch } from './affine.js';
import { DRAWING_UNITS } from './options.js';
import { hullOf, movePiece } from './pieces.js';
import { DrawingProblem } from './problem.js';
import type { Sketch } from './sketch.js';
import { short } from './words.js';

export interface Scaled extends Pick<Sketch, 'strokes' | 'points'> {
  readonly unit: string;
  /** What the file says itself, when something else was told. */
  readonly otherwise: string | undefined;
}

interface Extent {
  readonly minX: number;
  readonly minY: number;
  readonly width: number;
  readonly height: number;
}

function extentOf({ strokes, points }: Sketch): Extent {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  const take = ({ x, y }: Point): void => {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  };
  for (const { pieces } of strokes) for (const piece of pieces) hullOf(piece).forEach(take);
  for (const { at } of points) take(at);
  if (!Number.isFinite(minX + minY + maxX + maxY))
    throw new DrawingProblem('The drawing holds a number without end; the file is damaged.');
  return { minX, minY, width: maxX - minX, height: maxY - minY };
}

/**
 * The sketch in millimetres, its lower left corner at the origin.
 * @throws DrawingProblem for a drawing without lines, without a unit, or larger than any plate
 */
export function toMillimetres(sketch: Sketch, told: string | undefined): Scaled {
  if (sketch.strokes.length === 0 && sketch.points.length === 0) {
    const besides = [...sketch.passedOver.keys()].slice(0, 6).join(', ');
    throw new DrawingProblem(
      `The drawing has no lines to read${besides === '' ? '' : `; what is in it is ${besides}`}. Turn text and hatching into plain lines before saving.`,
    );
  }
  const { minX, minY, width, height } = extentOf(sketch);
  const given = told === undefined ? undefined : DRAWING_UNITS.get(told);
  const size = `${short(width)} × ${short(height)}`;
  if (given === undefined && sketch.unit === undefined) {
    const inches = `${short(width * 25.4)} × ${short(height * 25.4)} mm`;
    throw new DrawingProblem(
      `The file does not say its unit, and its numbers span ${size}. Say mm (${size} mm), or in (${inches}), or another of ${[...DRAWING_UNITS.keys()].join(', ')}.`,
      'unit',
    );
  }
  const scale = given ?? sketch.unit?.millimetres ?? 1;
  const unit = told ?? sketch.unit?.name ?? 'mm';
  if (Math.max(width, height) * scale > DRAWING_LIMITS.reach)
    throw new DrawingProblem(
      `The drawing spans ${short(width * scale)} × ${short(height * scale)} mm (taken as ${unit}); accepted are up to ${DRAWING_LIMITS.reach} mm. Is the unit right, or is something far outside the part?`,
      'unit',
    );
  const move = after(stretch(scale, scale), shift(-minX, -minY));
  const differs =
    given !== undefined &&
    sketch.unit !== undefined &&
    Math.abs(given - sketch.unit.millimetres) > 1e-6 * given;
  return {
    strokes: sketch.strokes.map((stroke) => ({
      ...stroke,
      pieces: stroke.pieces.map((piece) => movePiece(move, piece)),
    })),
    points: sketch.points.map(({ layer, at }) => ({ layer, at: movePoint(move, at) })),
    unit,
    otherwise: differs ? sketch.unit?.name : undefined,
  };
}
