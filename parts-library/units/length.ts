// Reads a length as people type it, in millimetres or inches.
import { readAmount, takeAmount } from './amount.js';
import type { Quantity } from './amount.js';
import { FOOT, INCH } from './constants.js';
import { compileSpellings } from './tokens.js';
import type { UnitRecord } from './tokens.js';
import type { Length, Reading, Unit } from './types.js';

export interface LengthOptions {
  /** The job's unit, taken by a bare number. */
  readonly unit: Unit;
  /** Whether a negative length makes sense here (a coordinate); by default it does not. */
  readonly allowNegative?: boolean;
  /** Whether a ± may be typed; by default it may. */
  readonly plusMinus?: boolean;
}

const MILLIMETRE: UnitRecord = {
  name: 'mm',
  factor: 1,
  spelled: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  lends: 'either',
};

const INCHES: UnitRecord = {
  name: 'in',
  factor: INCH,
  spelled: ['in', 'in.', 'inch', 'inches', '"', '″', '”', "''", '′′', '’’'],
  lends: 'either',
};

const FEET: UnitRecord = {
  name: 'ft',
  factor: FOOT,
  spelled: ['ft', 'ft.', 'foot', 'feet', "'", '′', '’'],
  followedBy: { unit: INCHES, below: 12, joined: true },
  lends: 'nominal',
};

const LENGTH_UNITS: readonly UnitRecord[] = [
  MILLIMETRE,
  INCHES,
  FEET,
  {
    name: 'cm',
    factor: 10,
    spelled: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
    lends: 'nominal',
  },
  { name: 'm', factor: 1000, spelled: ['m', 'metre', 'metres', 'meter', 'meters'], lends: 'nominal' },
  { name: 'µm', factor: 0.001, spelled: ['µm', 'μm', 'um', 'micron', 'microns'] },
  { name: 'thou', factor: INCH / 1000, spelled: ['thou'] },
];

/** Lengths beyond 100 m are a slip of the keyboard on a cutting table. */
const LONGEST = 100_000;

/** How lengths are recognised and bounded, in mm. */
export const LENGTH: Quantity = {
  what: 'length',
  spellings: compileSpellings(LENGTH_UNITS),
  most: LONGEST,
  mostSaid: '100 m',
  accepts: '35, 35 mm, 3.5 cm, 1 3/8, 1-3/8", 1.375 in, 7/16, 2*17.5+3, (4+1/2)in or 57.1±0.1',
};

/** The unit record a bare number takes in a job of this unit. */
export function lengthUnit(unit: Unit): UnitRecord {
  return unit === 'mm' ? MILLIMETRE : INCHES;
}

/**
 * Reads a length as typed.
 *
 * A bare number takes the job's unit. `1-3/8` without blanks is the mixed number 1.375, with or without an inch
 * mark and in either kind of job; a fraction is subtracted with blanks, `1 - 3/8`. A decimal comma is read where
 * it cannot be a thousands mark: `57,1` and `0,125` are read, `1,234` is a problem. After `±` (or `+/-`, `+-`) a
 * bare number takes the unit of the nominal, and the other way about. The rules of sums and products are those
 * of `readExpression`.
 * @param input the text, or a number of mm
 * @returns the length in mm, ± in mm; or the problem: empty, not understood, ambiguous, divided by zero,
 * negative (unless allowed) or over 100 m
 * @example readLength('1-3/8"', { unit: 'mm' }) // mm: 34.925
 */
export function readLength(input: string | number, options: LengthOptions): Reading<Length> {
  const amountOptions = {
    bareUnit: lengthUnit(options.unit),
    allowNegative: options.allowNegative ?? false,
    plusMinus: options.plusMinus ?? true,
  };
  // A number is in mm whatever the job's unit, so what is kept as typed says so.
  const typed = typeof input === 'number' ? `${String(input)} mm` : input;
  const reading =
    typeof input === 'number'
      ? takeAmount(input, typed, LENGTH, amountOptions)
      : readAmount(typed, LENGTH, amountOptions);
  if (!reading.ok) return reading;
  const { n, plusMinus } = reading.value;
  return { ok: true, value: plusMinus === undefined ? { typed, mm: n } : { typed, mm: n, plusMinus } };
}
