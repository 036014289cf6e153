// A drawing that was brought in: its shapes in true arcs, what is done along each, and where it came from.
import type { Vertex } from '../geometry/index.js';

/** What is done along a shape of a drawing; `ignore` is kept to be seen and not made. */
export type DrawnOperation = 'outline' | 'opening' | 'score' | 'etch' | 'mark' | 'ignore';

/** One contour, line or point of a drawing, mm. */
export interface DrawnShape {
  /** Says what it is and its number in the drawing, for example `circle.3`. It keeps it whatever is done along it. */
  readonly id: string;
  /** The drawing's own layer, group or colour. */
  readonly layer: string;
  readonly operation: DrawnOperation;
  /** A closed one is a sound contour. */
  readonly closed: boolean;
  /** A point has one. */
  readonly vertices: readonly Vertex[];
}

/** The file that a drawing was read from. */
export interface DrawingSource {
  readonly name: string;
  readonly format: 'dxf' | 'svg';
  /** The unit that its numbers were taken to be in. */
  readonly unit: string;
  /** Which of its parts this is, the largest being 1. */
  readonly part: number;
  /** SHA-256 of its text, 64 hexadecimal digits. */
  readonly digest: string;
}

export interface Drawing {
  readonly source: DrawingSource;
  readonly shapes: readonly DrawnShape[];
  /** What was mended or assumed in reading, a sentence each. */
  readonly notes: readonly string[];
  /** What could not be used although it may be part of what is meant, a sentence each. */
  readonly faults: readonly string[];
}

/** Bounds of a drawing that a part holds: enough for a crest of leaves, little enough for a job that holds many. */
export const DRAWING_LIMITS = {
  /** Vertices of all shapes together. */
  vertices: 3000,
  shapes: 600,
  /** Sentences of each kind, and the length of one. */
  sentences: 12,
  sentenceLength: 300,
  /** Length of a name or a layer. */
  name: 80,
  /** Farthest coordinate from the origin, mm. */
  reach: 20_000,
} as const;
