// Short ways to say what was read, for the tables of claims in this folder.
import { readLength, readMeasure } from '../../parts-library/units/index.js';
import type { LengthOptions, Reading, ReadProblem, Tagged, Unit } from '../../parts-library/units/index.js';

/** The value that was read; fails the test with the problem's sentence when there is none. */
export function valueOf<T>(reading: Reading<T>): T {
  if (reading.ok) return reading.value;
  throw new Error(`expected a value, but: ${reading.problem.says}`);
}

/** The problem; fails the test when a value was read. */
export function problemOf(reading: Reading<unknown>): ReadProblem {
  if (!reading.ok) return reading.problem;
  throw new Error(`expected a problem, but read ${JSON.stringify(reading.value)}`);
}

/** The mm of a length typed in a mm job, or in another. */
export function mm(text: string, options: LengthOptions = { unit: 'mm' }): number {
  return valueOf(readLength(text, options)).mm;
}

/** The readings of a measure typed in a mm job, or in another. */
export function readings(text: string, unit: Unit = 'mm'): readonly Tagged[] {
  return valueOf(readMeasure(text, { unit })).readings;
}
