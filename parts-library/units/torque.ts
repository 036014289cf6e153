// Reads and writes torques, in newton metres or pound-force feet.
import { readPlain } from './amount.js';
import type { Quantity } from './amount.js';
import { KILOGRAM_FORCE_NEWTONS, POUND_FOOT_NEWTON_METRES, POUND_INCH_NEWTON_METRES } from './constants.js';
import { writeDecimal } from './decimals.js';
import { compileSpellings } from './tokens.js';
import type { UnitRecord } from './tokens.js';
import type { Reading, Unit } from './types.js';

const NEWTON_METRE: UnitRecord = {
  name: 'N·m',
  factor: 1,
  spelled: ['N·m', 'newton·metre', 'newton·metres', 'newton·meter', 'newton·meters'],
};

const POUND_FOOT: UnitRecord = {
  name: 'lbf·ft',
  factor: POUND_FOOT_NEWTON_METRES,
  spelled: [
    'lbf·ft',
    'lb·ft',
    'lbs·ft',
    'ft·lbf',
    'ft·lb',
    'ft·lbs',
    'foot·pound',
    'foot·pounds',
    'pound·feet',
  ],
};

const POUND_INCH: UnitRecord = {
  name: 'lbf·in',
  factor: POUND_INCH_NEWTON_METRES,
  spelled: [
    'lbf·in',
    'lb·in',
    'lbs·in',
    'in·lbf',
    'in·lb',
    'in·lbs',
    'inch·pound',
    'inch·pounds',
    'pound·inches',
  ],
};

const TORQUE: Quantity = {
  what: 'torque',
  spellings: compileSpellings([
    NEWTON_METRE,
    POUND_FOOT,
    POUND_INCH,
    { name: 'kN·m', factor: 1000, spelled: ['kN·m'] },
    { name: 'N·mm', factor: 0.001, spelled: ['N·mm'] },
    { name: 'N·cm', factor: 0.01, spelled: ['N·cm'] },
    // Older service manuals print kg-m and kg-cm and mean the force.
    { name: 'kgf·m', factor: KILOGRAM_FORCE_NEWTONS, spelled: ['kgf·m', 'kg·m', 'm·kgf', 'm·kg'] },
    { name: 'kgf·cm', factor: KILOGRAM_FORCE_NEWTONS / 100, spelled: ['kgf·cm', 'kg·cm', 'cm·kgf', 'cm·kg'] },
  ]),
  most: 1e7,
  mostSaid: '10 000 kN·m',
  accepts: '180 N·m, 180 Nm, 133 lbf·ft, 133 ft-lb, 1200 in-lb or 18 kgf·m',
};

/**
 * Reads a torque as typed; a bare number is in newton metres in a mm job, pound-force feet in an inch job.
 * @param input the text, or a number of newton metres
 * @returns newton metres, or the problem: not understood, negative, over 10 000 kN·m
 * @example readTorque('133 ft-lb', { unit: 'mm' }) // 180.32…
 */
export function readTorque(input: string | number, options: { readonly unit: Unit }): Reading<number> {
  return readPlain(input, TORQUE, options.unit === 'mm' ? NEWTON_METRE : POUND_FOOT, false);
}

/**
 * Writes a torque in newton metres (mm jobs) or pound-force feet (inch jobs), to two decimals unless told otherwise.
 * @throws RangeError if it is not finite
 * @example writeTorque(180, { unit: 'in' }) // '132.76 lbf·ft'
 */
export function writeTorque(
  newtonMetres: number,
  options: { readonly unit: Unit; readonly decimals?: number },
): string {
  const { unit, decimals = 2 } = options;
  return unit === 'mm'
    ? `${writeDecimal(newtonMetres, decimals)} N·m`
    : `${writeDecimal(newtonMetres / POUND_FOOT_NEWTON_METRES, decimals)} lbf·ft`;
}

/**
 * Writes a torque in both units.
 * @throws RangeError if it is not finite
 * @example echoTorque(180) // '180 N·m · 132.76 lbf·ft'
 */
export function echoTorque(newtonMetres: number): string {
  return `${writeTorque(newtonMetres, { unit: 'mm' })} · ${writeTorque(newtonMetres, { unit: 'in' })}`;
}
