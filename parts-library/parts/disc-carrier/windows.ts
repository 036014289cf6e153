// A window between two spokes: an arc about the hub, an arc under the hollow, two sides that keep a spoke's width.
import {
  GeometryError,
  makeContour,
  reverseContour,
  roundCorners,
  type Contour,
  type Point,
  type Vertex,
} from '../../geometry/index.js';

export interface WindowShape {
  /** Radii of the inner and the outer arc about the middle, mm. */
  readonly inner: number;
  readonly outer: number;
  /** Width of the spokes beside it, mm. */
  readonly spoke: number;
  readonly corner: number;
}

const RADIANS = Math.PI / 180;

/**
 * The window between spokes whose middle lines run at `from` and, counter-clockwise, at `to` degrees. Its sides are
 * parallel to the spokes' middle lines, so that a spoke has one width from end to end.
 *
 * @returns undefined when the spokes leave no window that takes its corner radius
 */
export function windowBetween(
  from: number,
  to: number,
  { inner, outer, spoke, corner }: WindowShape,
): Contour | undefined {
  const half = spoke / 2;
  if (half >= inner || outer - inner <= 2 * corner) return undefined;
  const at = (degrees: number, side: 1 | -1, radius: number): Point => {
    const radians = degrees * RADIANS + side * Math.asin(half / radius);
    return { x: radius * Math.cos(radians), y: radius * Math.sin(radians) };
  };
  const turn = ((((to - from) % 360) + 360) % 360 || 360) * RADIANS;
  const sweep = (radius: number): number => turn - 2 * Math.asin(half / radius);
  if (sweep(inner) * inner <= 2 * corner) return undefined;
  const vertices: readonly Vertex[] = [
    { ...at(from, 1, inner), bulge: 0 },
    { ...at(from, 1, outer), bulge: Math.tan(sweep(outer) / 4) },
    { ...at(to, -1, outer), bulge: 0 },
    { ...at(to, -1, inner), bulge: -Math.tan(sweep(inner) / 4) },
  ];
  try {
    const sharp = makeContour(vertices);
    // Arcs over half a circle were split there; only the four corners are rounded, tangent joints stay as they are.
    return reverseContour(roundCorners(sharp, corner));
  } catch (error) {
    // A corner too large for its sides: no window, which the drawing says.
    if (error instanceof GeometryError) return undefined;
    throw error;
  }
}
