// Shapes in the file's unit, rounded to the file's decimals once, so that every format says the same numbers.
import type { Point, Vertex } from '../geometry/index.js';
import { BULGE_PLACES, INCH_PLACES, MM_PLACES, rounded } from './decimals.js';
import { layerOf } from './layers.js';
import type { Layer } from './layers.js';
import type { Shape, Sheet } from './sheet.js';

/** Exact by definition (international yard and pound agreement, 1959). */
const MM_PER_INCH = 25.4;

/** The number of decimals of a coordinate in this unit. */
export const placesIn = (unit: 'mm' | 'in'): number => (unit === 'mm' ? MM_PLACES : INCH_PLACES);

/**
 * A shape in the file's unit, rounded. Neighbouring vertices that fall on one place become one, since a segment
 * without length stops some machines; a shape that loses all its length that way is refused.
 *
 * @throws RangeError when a closed shape keeps fewer than two vertices.
 */
export function shapeInUnit(shape: Shape, unit: 'mm' | 'in'): Shape {
  const places = placesIn(unit);
  const scale = unit === 'mm' ? 1 : 1 / MM_PER_INCH;
  const length = (mm: number): number => rounded(mm * scale, places);
  const point = ({ x, y }: Point): Point => ({ x: length(x), y: length(y) });
  const vertex = ({ x, y, bulge }: Vertex): Vertex => ({
    x: length(x),
    y: length(y),
    bulge: rounded(bulge, BULGE_PLACES),
  });
  if (shape.kind === 'circle')
    return { kind: 'circle', centre: point(shape.centre), radius: length(shape.radius) };
  if (shape.kind === 'point') return { kind: 'point', at: point(shape.at) };
  const closed = shape.kind === 'closed';
  return { kind: shape.kind, vertices: withoutRepeats(shape.vertices.map(vertex), closed) };
}

/** Drops a vertex whose segment leads nowhere: its successor stands on the same place. */
function withoutRepeats(vertices: readonly Vertex[], closed: boolean): readonly Vertex[] {
  const kept = vertices.filter((vertex, index) => {
    const next = vertices[index + 1] ?? (closed ? vertices[0] : undefined);
    return next === undefined || next.x !== vertex.x || next.y !== vertex.y;
  });
  if (kept.length < 2) {
    const at = vertices[0];
    throw new RangeError(
      `The shape at ${at?.x ?? 0}, ${at?.y ?? 0} is smaller than the resolution of the file; leave it out.`,
    );
  }
  return kept;
}

/** An item as it is written: on its layer, in the file's unit. */
export interface DrawnItem {
  readonly id: string;
  readonly layer: Layer;
  readonly shape: Shape;
}

/** All items of a sheet in the file's unit, in their order. */
export const drawnItems = (sheet: Sheet, unit: 'mm' | 'in'): readonly DrawnItem[] =>
  sheet.items.map(({ id, operation, shape }) => ({
    id,
    layer: layerOf(sheet.kind, operation),
    shape: shapeInUnit(shape, unit),
  }));
