// Reads and writes cutting and travel speeds, in millimetres or inches a minute.
import { readPlain } from './amount.js';
import type { Quantity } from './amount.js';
import { FOOT, INCH } from './constants.js';
import { writeDecimal } from './decimals.js';
import { compileSpellings } from './tokens.js';
import type { UnitRecord } from './tokens.js';
import type { Reading, Unit } from './types.js';

const MILLIMETRES_PER_MINUTE: UnitRecord = { name: 'mm/min', factor: 1, spelled: ['mm/min'] };

const INCHES_PER_MINUTE: UnitRecord = {
  name: 'in/min',
  factor: INCH,
  spelled: ['in/min', 'inch/min', 'inches/min', '"/min', 'ipm'],
};

const SPEED: Quantity = {
  what: 'speed',
  spellings: compileSpellings([
    MILLIMETRES_PER_MINUTE,
    INCHES_PER_MINUTE,
    { name: 'm/min', factor: 1000, spelled: ['m/min'] },
    { name: 'mm/s', factor: 60, spelled: ['mm/s', 'mm/sec'] },
    { name: 'in/s', factor: 60 * INCH, spelled: ['in/s', 'in/sec', 'ips'] },
    { name: 'ft/min', factor: FOOT, spelled: ['ft/min', 'fpm'] },
  ]),
  most: 1e6,
  mostSaid: '1000 m/min',
  accepts: '2500 mm/min, 2.5 m/min, 100 in/min or 100 ipm',
};

/**
 * Reads a speed as typed; a bare number is in mm/min in a mm job, in/min in an inch job.
 * @param input the text, or a number of mm/min
 * @returns mm/min, or the problem: not understood, negative, over 1000 m/min
 * @example readSpeed('100 ipm', { unit: 'mm' }) // 2540
 */
export function readSpeed(input: string | number, options: { readonly unit: Unit }): Reading<number> {
  return readPlain(input, SPEED, options.unit === 'mm' ? MILLIMETRES_PER_MINUTE : INCHES_PER_MINUTE, false);
}

/**
 * Writes a speed given in mm/min, in mm/min (one decimal) or in/min (two), unless told otherwise.
 * @throws RangeError if it is not finite
 * @example writeSpeed(2500, { unit: 'in' }) // '98.43 in/min'
 */
export function writeSpeed(
  mmPerMinute: number,
  options: { readonly unit: Unit; readonly decimals?: number },
): string {
  const { unit, decimals = unit === 'mm' ? 1 : 2 } = options;
  return unit === 'mm'
    ? `${writeDecimal(mmPerMinute, decimals)} mm/min`
    : `${writeDecimal(mmPerMinute / INCH, decimals)} in/min`;
}

/**
 * Writes a speed in both units.
 * @throws RangeError if it is not finite
 * @example echoSpeed(2540) // '2540 mm/min · 100 in/min'
 */
export function echoSpeed(mmPerMinute: number): string {
  return `${writeSpeed(mmPerMinute, { unit: 'mm' })} · ${writeSpeed(mmPerMinute, { unit: 'in' })}`;
}
