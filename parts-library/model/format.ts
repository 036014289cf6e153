// How lengths and quantities are worded in findings and on prints, in the unit the job uses.

/** Bound to a job's unit; every number comes with its unit. Arguments are mm, N, N·m, MPa. */
export interface Format {
  readonly unit: 'mm' | 'in';
  /** `35 mm` or `1.378 in`. */
  readonly length: (mm: number) => string;
  /** The same to a thousandth of a millimetre or a ten-thousandth of an inch, for machined fits. */
  readonly fine: (mm: number) => string;
  /** The same without its unit, for a drawing whose title block states the unit. */
  readonly bare: (mm: number) => string;
  /** `35 mm ±0.1`. */
  readonly lengthWithin: (mm: number, plusMinus: number) => string;
  readonly force: (newtons: number) => string;
  readonly torque: (newtonMetres: number) => string;
  readonly stress: (megapascals: number) => string;
}
