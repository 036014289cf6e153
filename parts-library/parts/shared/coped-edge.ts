// An edge that sits on a tube: straight along it, or coped to its outside with one true arc.
import {
  makeContour,
  GeometryError,
  type Contour,
  type Direction,
  type Vertex,
} from '../../geometry/index.js';

export interface CopedEdge {
  /** How far its corners lie below the tube's crest, mm. */
  readonly drop: number;
  /** Bulge of the edge when it is travelled with the metal on the left: negative, it is hollow. */
  readonly bulge: number;
  /** Along the edge, mm. */
  readonly length: number;
  /** Half of the angle that the edge spans about the tube's middle, degrees. */
  readonly halfDegrees: number;
}

/**
 * The edge of a plate that stands square across a tube: an arc of the tube's outside, `width` wide.
 *
 * @param width corner to corner, mm
 * @param tube outside diameter, mm; left out for a straight edge along a tube or on a flat
 * @returns undefined when the edge is as wide as the tube or wider
 * @example 30 on a tube of 50: drop 25 − √(25² − 15²) = 5, length 2 × 25 × asin(0.6) = 32.18
 */
export function copedEdge(width: number, tube?: number): CopedEdge | undefined {
  if (tube === undefined) return { drop: 0, bulge: 0, length: width, halfDegrees: 0 };
  const radius = tube / 2;
  if (width >= tube) return undefined;
  const half = Math.asin(width / tube);
  return {
    drop: radius * (1 - Math.cos(half)),
    bulge: -Math.tan(half / 2),
    length: tube * half,
    halfDegrees: (half * 180) / Math.PI,
  };
}

/** A contour where the vertices make one, else undefined: an outline that runs into itself is a sentence, not an error. */
export function contourOf(vertices: readonly Vertex[], direction: Direction): Contour | undefined {
  try {
    return makeContour(vertices, { direction });
  } catch (error) {
    if (error instanceof GeometryError) return undefined;
    throw error;
  }
}
