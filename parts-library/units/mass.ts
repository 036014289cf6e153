// Reads and writes masses, in kilograms or pounds.
import { readPlain } from './amount.js';
import type { Quantity } from './amount.js';
import { OUNCE_KILOGRAMS, POUND_KILOGRAMS } from './constants.js';
import { writeDecimal } from './decimals.js';
import { compileSpellings } from './tokens.js';
import type { UnitRecord } from './tokens.js';
import type { Reading, Unit } from './types.js';

const KILOGRAM: UnitRecord = {
  name: 'kg',
  factor: 1,
  spelled: ['kg', 'kgs', 'kilogram', 'kilograms', 'kilo', 'kilos'],
};

const OUNCE: UnitRecord = { name: 'oz', factor: OUNCE_KILOGRAMS, spelled: ['oz', 'ounce', 'ounces'] };

const POUND: UnitRecord = {
  name: 'lb',
  factor: POUND_KILOGRAMS,
  spelled: ['lb', 'lbs', 'pound', 'pounds'],
  followedBy: { unit: OUNCE, below: 16 },
};

const MASS: Quantity = {
  what: 'mass',
  spellings: compileSpellings([
    KILOGRAM,
    POUND,
    OUNCE,
    { name: 'g', factor: 0.001, spelled: ['g', 'gram', 'grams'] },
    { name: 't', factor: 1000, spelled: ['t', 'tonne', 'tonnes'] },
  ]),
  most: 1e6,
  mostSaid: '1000 t',
  accepts: '250 kg, 850 g, 550 lb or 2 lb 6 oz',
};

/**
 * Reads a mass as typed; a bare number is in kilograms in a mm job, pounds in an inch job.
 * @param input the text, or a number of kilograms
 * @returns kilograms, or the problem: not understood, negative, over 1000 t
 * @example readMass('550 lb', { unit: 'mm' }) // 249.4758035
 */
export function readMass(input: string | number, options: { readonly unit: Unit }): Reading<number> {
  return readPlain(input, MASS, options.unit === 'mm' ? KILOGRAM : POUND, false);
}

/**
 * Writes a mass in kilograms (mm jobs) or pounds (inch jobs), to three decimals unless told otherwise.
 * @throws RangeError if it is not finite
 * @example writeMass(250, { unit: 'in' }) // '551.156 lb'
 */
export function writeMass(
  kilograms: number,
  options: { readonly unit: Unit; readonly decimals?: number },
): string {
  const { unit, decimals = 3 } = options;
  return unit === 'mm'
    ? `${writeDecimal(kilograms, decimals)} kg`
    : `${writeDecimal(kilograms / POUND_KILOGRAMS, decimals)} lb`;
}

/**
 * Writes a mass in both units.
 * @throws RangeError if it is not finite
 * @example echoMass(250) // '250 kg · 551.156 lb'
 */
export function echoMass(kilograms: number): string {
  return `${writeMass(kilograms, { unit: 'mm' })} · ${writeMass(kilograms, { unit: 'in' })}`;
}
