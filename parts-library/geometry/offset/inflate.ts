// The polygon engine behind one function: which parts of a tangle of offset polygons bound the result.
// Nothing else in the project knows which engine it is; it only settles topology and its coordinates are never kept.
import type ClipperLib from 'clipper-lib';
import { GeometryError } from '../errors.js';
import { polygonEngine } from './engine.js';

/** Whole-number coordinates x0, y0, x1, y1, ... of a closed polygon. */
export type WholePolygon = Float64Array;

/** Largest coordinate that keeps the engine in its fast arithmetic and fits two to a hash key: 2^25. */
export const largestWhole = 33_000_000;

/**
 * The boundary of the area that the loops wind round at least once in the stated sense. Boundary loops run like the
 * given ones: with that area on their left for 'positive', on their right for 'negative'.
 * Corners that survive keep their exact coordinates; new ones are rounded crossings.
 */
export function inflate(loops: readonly WholePolygon[], sense: 'positive' | 'negative'): WholePolygon[] {
  const engine = polygonEngine();
  if (engine === undefined) {
    throw new GeometryError(
      'The kerf cannot be worked out yet: its engine is still being fetched. Try again.',
    );
  }
  const clipper = new engine.Clipper();
  clipper.PreserveCollinear = true;
  clipper.ReverseSolution = sense === 'negative';
  for (const loop of loops) {
    const path: ClipperLib.IntPoint[] = [];
    for (let i = 0; i + 1 < loop.length; i += 2) path.push({ X: Number(loop[i]), Y: Number(loop[i + 1]) });
    clipper.AddPath(path, engine.PolyType.ptSubject, true);
  }
  const fill = sense === 'positive' ? engine.PolyFillType.pftPositive : engine.PolyFillType.pftNegative;
  const solution: ClipperLib.Paths = [];
  clipper.Execute(engine.ClipType.ctUnion, solution, fill, fill);
  return solution.map((path) => {
    const polygon = new Float64Array(path.length * 2);
    path.forEach((point, i) => {
      polygon[2 * i] = point.X;
      polygon[2 * i + 1] = point.Y;
    });
    return polygon;
  });
}
