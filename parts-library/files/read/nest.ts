// Nesting: which contour lies in which, what is outline and what is opening, and which of several parts is meant.
import {
  boundsOf,
  containsContour,
  containsPoint,
  areaOf,
  type Bounds,
  type Contour,
  type Point,
} from '../../geometry/index.js';

/** Outlines lie at depth 0, openings at 1, what is left standing in an opening at 2. */
export interface Nested {
  readonly contour: Contour;
  readonly bounds: Bounds;
  readonly area: number;
  readonly depth: number;
  /** Index of the contour that it lies in directly. */
  readonly parent: number | undefined;
}

const within = (inner: Bounds, outer: Bounds): boolean =>
  inner.minX >= outer.minX &&
  inner.minY >= outer.minY &&
  inner.maxX <= outer.maxX &&
  inner.maxY <= outer.maxY;

/** How each contour lies in the others. Two that cross lie beside each other. */
export function nestContours(contours: readonly Contour[]): readonly Nested[] {
  const plain = contours.map((contour, index) => ({
    contour,
    index,
    bounds: boundsOf(contour),
    area: Math.abs(areaOf(contour)),
  }));
  const bySize = plain.toSorted((a, b) => b.area - a.area || a.index - b.index);
  const depths = new Map<number, { depth: number; parent: number | undefined }>();
  bySize.forEach((one, place) => {
    // The smallest that holds it is its parent: the list behind it, from the end.
    const holder = bySize
      .slice(0, place)
      .findLast((other) => within(one.bounds, other.bounds) && containsContour(other.contour, one.contour));
    const above = holder === undefined ? -1 : (depths.get(holder.index)?.depth ?? -1);
    depths.set(one.index, { depth: above + 1, parent: holder?.index });
  });
  return plain.map(({ contour, index, bounds, area }) => ({
    contour,
    bounds,
    area,
    depth: depths.get(index)?.depth ?? 0,
    parent: depths.get(index)?.parent,
  }));
}

/** Places of a line that must lie on the part for the line to belong to it. */
export const liesOn = (outline: Contour, places: readonly Point[]): boolean =>
  places.some((place) => containsPoint(outline, place) !== 'outside');
