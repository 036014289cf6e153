// The smallest box round everything in a file, leads and marks included.
import { boundsOf } from '../geometry/index.js';
import type { Bounds } from '../geometry/index.js';
import type { Shape } from './sheet.js';

function boundsOfShape(shape: Shape): Bounds {
  switch (shape.kind) {
    case 'circle': {
      const { centre, radius } = shape;
      return {
        minX: centre.x - radius,
        minY: centre.y - radius,
        maxX: centre.x + radius,
        maxY: centre.y + radius,
      };
    }
    case 'point':
      return { minX: shape.at.x, minY: shape.at.y, maxX: shape.at.x, maxY: shape.at.y };
    case 'open':
      return boundsOf({ vertices: shape.vertices });
    case 'closed':
      return boundsOf({ vertices: [...shape.vertices, ...shape.vertices.slice(0, 1)] });
  }
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
