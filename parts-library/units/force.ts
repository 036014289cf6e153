// Reads and writes forces, in newtons or pounds-force.
import { readPlain } from './amount.js';
import type { Quantity } from './amount.js';
import { KILOGRAM_FORCE_NEWTONS, POUND_FORCE_NEWTONS } from './constants.js';
import { writeDecimal } from './decimals.js';
import { compileSpellings } from './tokens.js';
import type { UnitRecord } from './tokens.js';
import type { Reading, Unit } from './types.js';

const NEWTON: UnitRecord = { name: 'N', factor: 1, spelled: ['N', 'newton', 'newtons'] };

// A force given in pounds is pounds-force: there is nothing else it could be.
const POUND_FORCE: UnitRecord = {
  name: 'lbf',
  factor: POUND_FORCE_NEWTONS,
  spelled: ['lbf', 'lb', 'lbs', 'pound', 'pounds', 'pound-force', 'pounds-force'],
};

const FORCE: Quantity = {
  what: 'force',
  spellings: compileSpellings([
    NEWTON,
    POUND_FORCE,
    { name: 'kN', factor: 1000, spelled: ['kN', 'kilonewton', 'kilonewtons'] },
    { name: 'kgf', factor: KILOGRAM_FORCE_NEWTONS, spelled: ['kgf'] },
  ]),
  most: 1e8,
  mostSaid: '100 000 kN',
  accepts: '1200 N, 1.2 kN, 250 lbf or 30 kgf',
};

/**
 * Reads a force as typed; a bare number is in newtons in a mm job, pounds-force in an inch job.
 * @param input the text, or a number of newtons
 * @returns newtons, or the problem: not understood, negative, over 100 000 kN
 * @example readForce('250 lbf', { unit: 'mm' }) // 1112.055…
 */
export function readForce(input: string | number, options: { readonly unit: Unit }): Reading<number> {
  return readPlain(input, FORCE, options.unit === 'mm' ? NEWTON : POUND_FORCE, false);
}

/**
 * Writes a force in newtons (mm jobs) or pounds-force (inch jobs), to one decimal unless told otherwise.
 * @throws RangeError if it is not finite
 * @example writeForce(1200, { unit: 'in' }) // '269.8 lbf'
 */
export function writeForce(
  newtons: number,
  options: { readonly unit: Unit; readonly decimals?: number },
): string {
  const { unit, decimals = 1 } = options;
  return unit === 'mm'
    ? `${writeDecimal(newtons, decimals)} N`
    : `${writeDecimal(newtons / POUND_FORCE_NEWTONS, decimals)} lbf`;
}

/**
 * Writes a force in both units.
 * @throws RangeError if it is not finite
 * @example echoForce(1200) // '1200 N · 269.8 lbf'
 */
export function echoForce(newtons: number): string {
  return `${writeForce(newtons, { unit: 'mm' })} · ${writeForce(newtons, { unit: 'in' })}`;
}
