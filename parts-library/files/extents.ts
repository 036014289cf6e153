// The smallest box round everything in a file, leads and marks included.
import { boundsOf } from '../geometry/index.js';
import type { Bounds } from '../geometry/index.js';
import type { Shape } from './sheet.js';

function boundsOfShape(shape: Shape): Bounds {
  if (shape.kind === 'open') return boundsOf({ vertices: shape.vertices });
  if (shape.kind === 'closed')
    return boundsOf({ vertices: [...shape.vertices, ...shape.vertices.slice(0, 1)] });
  const [{ x, y }, radius] = shape.kind === 'circle' ? [shape.centre, shape.radius] : [shape.at, 0];
  return { minX: x - radius, minY: y - radius, maxX: x + radius, maxY: y + radius };
}

/** Extents of all shapes in their own unit; all nought when there is nothing. */
export function extentsOf(shapes: readonly Shape[]): Bounds {
  const boxes = shapes.map(boundsOfShape);
  if (boxes.length === 0) return { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  return {
    minX: Math.min(...boxes.map(({ minX }) => minX)),
    minY: Math.min(...boxes.map(({ minY }) => minY)),
    maxX: Math.max(...boxes.map(({ maxX }) => maxX)),
    maxY: Math.max(...boxes.map(({ maxY }) => maxY)),
  };
}
