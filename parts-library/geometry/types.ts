// The words of plane geometry: points, vertices with bulge, contours, open paths, segments, boxes.
// Lengths are millimetres; x to the right, y up; angles in radians inside, counter-clockwise positive.

/** A place on the plate, mm. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * A vertex and the segment that leaves it. `bulge` is the tangent of a quarter of the arc's sweep, as DXF
 * defines it: 0 is a straight line, 1 a half circle turning left (counter-clockwise), negative turns right.
 * A segment never sweeps more than half a circle (|bulge| <= 1).
 */
export interface Vertex extends Point {
  readonly bulge: number;
}

declare const validated: unique symbol;

/**
 * A closed contour, already validated by `makeContour`: at least two vertices, the last joins the first without
 * being repeated, no zero-length segment, nothing crosses or touches itself. Metal lies on the left of travel,
 * so an outline runs counter-clockwise and an opening clockwise.
 */
export type Contour = readonly Vertex[] & { readonly [validated]: 'closed' };

/** A path that does not close: a score line, an etched stroke, a lead-in. The last vertex's bulge is unused (0). */
export interface OpenPath {
  readonly vertices: readonly Vertex[];
}

export interface Line {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

/** A circular arc. `start` is the angle at `from` seen from the centre, `sweep` signed (positive turns left). */
export interface Arc {
  readonly kind: 'arc';
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
}

export type Segment = Line | Arc;

/** An axis-parallel box, mm. */
export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** What is wrong with a contour, and where. */
export type FaultKind =
  | 'too-few-vertices'
  | 'not-a-number'
  | 'out-of-range'
  | 'zero-segment'
  | 'bulge-too-large'
  | 'crosses-itself'
  | 'touches-itself'
  | 'no-area';

export interface Fault {
  readonly kind: FaultKind;
  readonly at: Point;
  /** Indices of the segments concerned. */
  readonly segments: readonly number[];
  /** One sentence: what, where, what would do. */
  readonly says: string;
}

/** One contour that came out of an offset. */
export interface OffsetPiece {
  readonly contour: Contour;
  /** True: every coordinate within 1e-6 mm of the ideal. False: a chord polyline within 10 µm, on the scrap side. */
  readonly exact: boolean;
  /** For each segment of `contour`, the index of the source segment it follows, or -1 for a rounded corner. */
  readonly sources: readonly number[];
}

export interface OffsetResult {
  /** None when the contour vanished (an opening narrower than the kerf), several when it came apart. */
  readonly pieces: readonly OffsetPiece[];
  /** All pieces exact. */
  readonly exact: boolean;
  /** How many pieces are chord polylines. */
  readonly inexactCount: number;
  /** Sentences worth showing: a pocket narrower than the kerf was closed, a fillet shrank away. */
  readonly notes: readonly string[];
}
