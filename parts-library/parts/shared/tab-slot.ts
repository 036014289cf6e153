// A slot that a plate stands in: square ends with relieved corners and, where it is narrow, an eye to pierce in.
import { relieveCorners, type Vertex } from '../../geometry/index.js';

export interface TabSlot {
  /** Along x and across, mm. */
  readonly length: number;
  readonly width: number;
  /** Radius of the bites at its corners, mm; 0 for none. */
  readonly relief: number;
  /** Diameter of a round eye in its middle, mm; nothing when it is no wider than the slot. */
  readonly eye?: number | undefined;
}

/** Vertices of one long side with half an eye in its middle; `side` −1 is the lower one, run to the right. */
function eyeOn(side: 1 | -1, half: number, radius: number): readonly Vertex[] {
  const reach = Math.sqrt(radius * radius - half * half);
  return [
    { x: side * reach, y: side * half, bulge: Math.tan(Math.asin(reach / radius) / 2) },
    { x: -side * reach, y: side * half, bulge: 0 },
  ];
}

/**
 * The slot about the origin, long along x, counter-clockwise.
 * @throws GeometryError when the bites use up a side
 * @example 30 × 6.6, relief 0: four corners; with relief 1.5 eight vertices, with an eye four more
 */
export function tabSlot({ length, width, relief, eye = 0 }: TabSlot): readonly Vertex[] {
  const [w, h] = [length / 2, width / 2];
  const corners = [
    { x: -w, y: -h },
    { x: w, y: -h },
    { x: w, y: h },
    { x: -w, y: h },
  ];
  const relieved = relieveCorners(corners, () => relief);
  if (eye / 2 <= h) return relieved;
  // Each corner gives one vertex, or two with a relief; the long sides leave the first and the third corner.
  const each = relieved.length / 4;
  return [
    ...relieved.slice(0, each),
    ...eyeOn(-1, h, eye / 2),
    ...relieved.slice(each, 3 * each),
    ...eyeOn(1, h, eye / 2),
    ...relieved.slice(3 * each),
  ];
}

/** Largest bite at the corners of a slot of a width, mm: two of them share each end. */
export const largestRelief = (width: number): number => (width - 0.01) / 2 / Math.SQRT2;
