// What both formats come to before lines are joined: strokes and points by layer, in the file's unit.
import type { Point } from '../../geometry/index.js';
import type { Stroke } from './pieces.js';

export interface DrawnPoint {
  readonly layer: string;
  readonly at: Point;
}

export interface Sketch {
  readonly strokes: readonly Stroke[];
  readonly points: readonly DrawnPoint[];
  /** What the file says one unit of it is, mm; undefined when it does not say. */
  readonly unit: { readonly name: string; readonly millimetres: number } | undefined;
  /** Layers that the file does not show. */
  readonly hiddenLayers: ReadonlySet<string>;
  /** What there was besides, and how many of each. */
  readonly passedOver: ReadonlyMap<string, number>;
  /** What had to be assumed, a sentence each. */
  readonly notes: readonly string[];
}
