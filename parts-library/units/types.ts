// The words of the units room: a job's unit, what a reading gives, and what is said when it cannot be read.

/** The unit a job is drawn in; it decides what a bare number means. */
export type Unit = 'mm' | 'in';

/** Why a text could not be read: how far it was understood, where it stopped and what would do. */
export interface ReadProblem {
  /** The text as it was typed. */
  readonly typed: string;
  /** Characters understood (UTF-16 units from the start, blanks at the end left out). */
  readonly readTo: number;
  /** One sentence: what was read, where it stopped and why. */
  readonly says: string;
  /** Examples of what is accepted. */
  readonly accepts: string;
}

/** What every reader returns: the value, or a problem. Readers never throw on what was typed. */
export type Reading<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: ReadProblem };

/** A length as typed and in mm; `plusMinus` (mm) is there only when a ± was typed. */
export interface Length {
  readonly typed: string;
  readonly mm: number;
  readonly plusMinus?: number;
}
