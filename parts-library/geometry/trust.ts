// The one door through which vertices become a contour without a full inspection: results sound by construction.
import { GeometryError } from './errors.js';
import type { Contour, Vertex } from './types.js';

function mayBeContour(vertices: readonly Vertex[]): vertices is Contour {
  return vertices.length >= 2;
}

/**
 * Vertices that are already known to be sound (inspected, or moved, turned or split from a sound contour) as a contour.
 * @throws GeometryError for fewer than two vertices
 */
export function trustedContour(vertices: readonly Vertex[]): Contour {
  if (mayBeContour(vertices)) return vertices;
  throw new GeometryError('A contour needs at least two vertices.');
}
