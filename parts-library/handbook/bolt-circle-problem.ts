// What a measured pattern comes to when it cannot be: the field to mend and what would do.

export interface BoltCircleProblem {
  /** The field to mend: `count`, `readings`, `readings.0.step` … */
  readonly field: string;
  /** What is wrong and what would do. */
  readonly says: string;
}

export type Outcome<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: BoltCircleProblem };

/** Refuse a reading, naming its field. */
export const refuse = (
  field: string,
  says: string,
): { readonly ok: false; readonly problem: BoltCircleProblem } => ({
  ok: false,
  problem: { field, says },
});

/** A length as a sentence says it, mm to 0.001. */
export const to = (value: number): string => `${Math.round(value * 1000) / 1000}`;
