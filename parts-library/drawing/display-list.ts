// The display list: a print as plain data, painted alike by the page, the SVG writer and later the PDF writer.
// Sheet coordinates: x to the right, y DOWN, in CSS pixels at 96 per inch for a window, in mm for paper.

/** ISO 128-2 line types by their standard descriptions (01, 02, 04, 05, 07). */
export type LineType =
  'continuous' | 'dashed' | 'long-dashed-dotted' | 'long-dashed-double-dotted' | 'dotted';

/** ISO 128: wide lines for visible edges, narrow for everything that explains them. */
export type LineWeight = 'wide' | 'narrow';

/** What a stroke or text is, so that a painter can style it and a test can tell what collides. */
export type Role =
  | 'metal'
  | 'outline'
  | 'opening'
  | 'mark'
  | 'score'
  | 'etch'
  | 'centre'
  | 'ghost'
  | 'weld'
  | 'dimension'
  | 'extension'
  | 'leader'
  | 'frame'
  | 'balloon'
  | 'note'
  | 'title'
  | 'scale-bar';

/** Path data; an arc carries its radius, large-arc and sweep flags as SVG defines them in y-down coordinates. */
export type PathCommand =
  | readonly ['M', number, number]
  | readonly ['L', number, number]
  | readonly ['A', number, 0 | 1, 0 | 1, number, number]
  | readonly ['Z'];

export type Fill = 'none' | 'metal' | 'paper' | 'ink' | 'weld';

export interface Stroke {
  readonly kind: 'stroke';
  readonly role: Role;
  readonly type: LineType;
  readonly weight: LineWeight;
  readonly path: readonly PathCommand[];
  readonly fill?: Fill;
  readonly featureId?: string;
  readonly dimensionId?: string;
  readonly ghostId?: string;
}

export interface SheetPoint {
  readonly x: number;
  readonly y: number;
}

export interface Text {
  readonly kind: 'text';
  readonly role: Role;
  /** Anchor on the baseline. */
  readonly at: SheetPoint;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Clockwise rotation about `at`, degrees (as SVG rotates). */
  readonly degrees: number;
  /** Font size in sheet units. */
  readonly size: number;
  readonly face: 'regular' | 'semi-bold' | 'condensed';
  readonly text: string;
  /** The four corners of its measured box, for the fitness test and for placing an editor over it. */
  readonly box: readonly [SheetPoint, SheetPoint, SheetPoint, SheetPoint];
  /** Dotted path of the parameter that it edits. */
  readonly field?: string;
  readonly dimensionId?: string;
}

export interface Balloon {
  readonly kind: 'balloon';
  readonly at: SheetPoint;
  readonly radius: number;
  /** Number of the note it belongs to, from 1. */
  readonly number: number;
  readonly level: 'stop' | 'caution' | 'note';
  readonly code: string;
}

export type DisplayItem = Stroke | Text | Balloon;

export interface DisplayList {
  readonly width: number;
  readonly height: number;
  /** Sheet units per millimetre of part. */
  readonly scale: number;
  /** Paint order. */
  readonly items: readonly DisplayItem[];
  /** Dotted paths of the editable dimensions shown, in the order in which a person measures. */
  readonly tabOrder: readonly string[];
}
