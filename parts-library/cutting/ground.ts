// The plate as a lead-in sees it: the finished edges of every part, and the kerfs that are already cut.
import {
  boundsOf,
  distanceBetweenSegments,
  distanceToSegment,
  packContours,
  packedContains,
  packedDistance,
  segmentBounds,
  segmentsOf,
} from '../geometry/index.js';
import type { Bounds, Contour, OpenPath, PackedContours, Point, Segment } from '../geometry/index.js';

/** A finished edge and the placement it belongs to. */
export interface PlacedEdge {
  readonly placementId: string;
  readonly contour: Contour;
}

export interface Ground {
  /** All finished edges; metal is where an odd number of them lies round a point. */
  readonly edges: PackedContours;
  /** For each contour in `edges`, its placement. */
  readonly placements: readonly string[];
}

/** A run that is cut before the one being planned: its centre line. */
export interface EarlierKerf {
  readonly bounds: Bounds;
  readonly segments: readonly Segment[];
}

export const groundOf = (edges: readonly PlacedEdge[]): Ground => ({
  edges: packContours(edges.map(({ contour }) => contour)),
  placements: edges.map(({ placementId }) => placementId),
});

export const kerfOf = (shape: Contour | OpenPath): EarlierKerf => ({
  bounds: boundsOf(shape),
  segments: segmentsOf(shape),
});

/** True when there is finished metal at a point. */
export const isMetal = (ground: Ground, { x, y }: Point): boolean => packedContains(ground.edges, x, y);

/** Distance from a point to the nearest finished edge of one placement and of all others, mm; `within` when farther. */
export function edgesNear(
  ground: Ground,
  { x, y }: Point,
  placementId: string,
  within: number,
): { readonly own: number; readonly others: number } {
  let own = within;
  let others = within;
  const { edges, placements } = ground;
  edges.tree.search(x - within, y - within, x + within, y + within, (index) => {
    const distance = packedDistance(edges, index, x, y);
    if (placements[edges.owners[index] ?? -1] === placementId) own = Math.min(own, distance);
    else others = Math.min(others, distance);
    return false;
  });
  return { own, others };
}

/** Distance from a segment to the nearest finished edge of any part, mm; `within` when farther. Exact for arcs. */
export function edgeToSegment(ground: Ground, segment: Segment, within: number): number {
  let nearest = within;
  const { minX, minY, maxX, maxY } = segmentBounds(segment);
  const { tree, segments } = ground.edges;
  tree.search(minX - within, minY - within, maxX + within, maxY + within, (index) => {
    const other = segments[index];
    if (other !== undefined) nearest = Math.min(nearest, distanceBetweenSegments(segment, other).distance);
    return false;
  });
  return nearest;
}

/** Distance from a point to the nearest earlier kerf's centre line, mm; `within` when farther. */
export function kerfToPoint(earlier: readonly EarlierKerf[], point: Point, within: number): number {
  const box: Bounds = { minX: point.x, minY: point.y, maxX: point.x, maxY: point.y };
  let nearest = within;
  for (const { bounds, segments } of earlier) {
    if (apart(box, bounds) >= nearest) continue;
    for (const other of segments) nearest = Math.min(nearest, distanceToSegment(other, point));
  }
  return nearest;
}

/** Distance from a segment to the nearest earlier kerf's centre line, mm; `within` when farther. */
export function kerfToSegment(earlier: readonly EarlierKerf[], segment: Segment, within: number): number {
  const box = segmentBounds(segment);
  let nearest = within;
  for (const { bounds, segments } of earlier) {
    if (apart(box, bounds) >= nearest) continue;
    for (const other of segments)
      nearest = Math.min(nearest, distanceBetweenSegments(segment, other).distance);
  }
  return nearest;
}

/** Gap between two boxes along the axis in which they are farther apart, never more than their distance. */
const apart = (a: Bounds, b: Bounds): number =>
  Math.max(a.minX - b.maxX, b.minX - a.maxX, a.minY - b.maxY, b.minY - a.maxY);
