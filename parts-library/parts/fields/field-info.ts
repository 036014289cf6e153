// What a parameter says about itself: the plain list, the flags, the API description and the help all read this.

export type FieldKind =
  | 'length'
  | 'lengths'
  | 'measure'
  | 'count'
  | 'angle'
  | 'percent'
  | 'torque'
  | 'force'
  | 'mass'
  | 'speed'
  | 'time'
  | 'rotation'
  | 'thread'
  | 'material'
  | 'chain'
  | 'holes'
  | 'choice'
  | 'text'
  | 'factor'
  | 'drawing'
  | 'group';

export interface Choice {
  readonly value: string;
  readonly label: string;
}

/** Another field must have one of these values for this one to matter; it is still read and kept otherwise. */
export interface AppliesWhen {
  readonly field: string;
  readonly values: readonly string[];
}

export interface FieldInfo {
  readonly kind: FieldKind;
  /** What a drawing or a person calls it. */
  readonly title: string;
  /** One or two sentences: what it is for. */
  readonly help: string;
  /** Where to put the caliper, or how to find the value. */
  readonly measuring?: string;
  /** Heading in the plain list. */
  readonly group: string;
  /** Bounds of the value: mm for lengths, degrees, %, N·m, N, kg, mm/min, s, rpm. */
  readonly min?: number;
  readonly max?: number;
  /** What small vehicles usually have, within the bounds: typed values outside are as good, random trials stay inside. */
  readonly usual?: readonly [from: number, to: number];
  readonly choices?: readonly Choice[];
  /** Ready-made values to pick from; anything else may be typed. */
  readonly suggestions?: readonly string[];
  /** What is taken when nothing is given. */
  readonly default?: string | number;
  readonly optional: boolean;
  readonly appliesWhen?: AppliesWhen;
}

/** A field with its dotted path (`pattern2.bolts`). */
export interface Field extends FieldInfo {
  readonly path: string;
}
