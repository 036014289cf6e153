// Lightening windows of a disc: pieces of a ring between parallel-sided spokes, corners filleted.
import {
  GeometryError,
  makeContour,
  roundCorners,
  transformContour,
  type Contour,
  type Vertex,
} from '../../geometry/index.js';

export interface RingWindows {
  /** Diameters between which the windows lie, mm. */
  readonly inner: number;
  readonly outer: number;
  /** Windows, and as many spokes; 3 or more. */
  readonly count: number;
  /** Breadth of a spoke, mm. */
  readonly spoke: number;
  /** Fillet in each corner, mm. */
  readonly corner: number;
  /** Angle of the middle of the first spoke, degrees. */
  readonly spokeAt: number;
}

/** Where a side of the window along a spoke meets a circle: its angle from the window's middle, radians. */
const sideAngle = ({ count, spoke }: RingWindows, diameter: number): number =>
  Math.PI / count - Math.asin(Math.min(1, spoke / diameter));

/** Straight width of a window at its inner edge, mm; 0 or less where the spokes run together. */
export function innerWidth(windows: RingWindows): number {
  const half = sideAngle(windows, windows.inner);
  return half <= 0 ? 0 : windows.inner * Math.sin(Math.min(half, Math.PI / 2));
}

/**
 * The windows as openings, each with its middle half a step on from its spoke.
 *
 * @returns the openings, or in a sentence why there are none
 * @example ringWindows({ inner: 140, outer: 200, count: 6, spoke: 15, corner: 6, spokeAt: 90 }) gives 6 openings
 */
export function ringWindows(windows: RingWindows): readonly Contour[] | string {
  const { inner, outer, count, spoke, corner, spokeAt } = windows;
  const innerHalf = sideAngle(windows, inner);
  const outerHalf = sideAngle(windows, outer);
  if (innerHalf <= 0) return `${count} spokes of ${spoke} mm run together on ⌀${inner.toFixed(1)} mm.`;
  const at = (diameter: number, angle: number, bulge: number): Vertex => ({
    x: (diameter / 2) * Math.cos(angle),
    y: (diameter / 2) * Math.sin(angle),
    bulge,
  });
  try {
    const sharp = makeContour(
      [
        at(outer, outerHalf, 0),
        at(inner, innerHalf, -Math.tan(innerHalf / 2)),
        at(inner, -innerHalf, 0),
        at(outer, -outerHalf, Math.tan(outerHalf / 2)),
      ],
      { direction: 'opening' },
    );
    const window = roundCorners(sharp, corner);
    const step = 360 / count;
    return Array.from({ length: count }, (_, index) =>
      transformContour(window, { rotateDegrees: spokeAt + (index + 0.5) * step }),
    );
  } catch (error) {
    if (error instanceof GeometryError) {
      return `Corners of R${corner} mm do not fit in windows from ⌀${inner.toFixed(1)} to ⌀${outer.toFixed(1)} mm between spokes of ${spoke} mm.`;
    }
    throw error;
  }
}
