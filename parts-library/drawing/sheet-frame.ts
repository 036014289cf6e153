// The paper round a drawing: border, notes column, title block.
import type { DisplayItem } from './display-list.js';
import type { PrintInput } from './print-input.js';
import type { Extent } from './scene.js';

/** The room for the drawing itself. */
export function drawingAreaOf({ size }: PrintInput): Extent {
  return { minX: 0, minY: 0, maxX: size.width, maxY: size.height };
}

export function drawSheet(_input: PrintInput, _scale: string): readonly DisplayItem[] {
  return [];
}
