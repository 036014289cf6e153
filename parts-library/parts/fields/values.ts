// Values of parameters after reading: what was typed is kept for echo, the metric value is the authority.
// All are plain JSON, and reading one back gives the same value, whatever the job's unit is by then.
import type { ListedLength, Measure } from '../../units/index.js';

/** A length as typed and as understood. */
export interface Entry {
  readonly typed: string;
  readonly mm: number;
  /** Half width of the reading's uncertainty, mm. */
  readonly plusMinus?: number | undefined;
}

/** A quantity other than a length: degrees, N·m, N, kg, as the field says. */
export interface NumberEntry {
  readonly typed: string;
  readonly value: number;
}

/** A pattern's circle in the way it was measured. */
export interface MeasureEntry {
  readonly typed: string;
  /** The same written in millimetres, the form that is read back. */
  readonly metric: string;
  readonly measure: Measure;
}

/** A list of lengths, such as the plates on hand. */
export interface LengthsEntry {
  readonly typed: string;
  /** The same written in millimetres, the form that is read back. */
  readonly metric: string;
  readonly lengths: readonly ListedLength[];
}

/** How the holes of a pattern are made. */
export type HoleWay =
  | { readonly kind: 'clearance' }
  | { readonly kind: 'tapped' }
  | { readonly kind: 'drill' }
  | { readonly kind: 'plain'; readonly diameter: Entry };
