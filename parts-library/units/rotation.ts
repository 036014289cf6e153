// Reads and writes speeds of turning, in turns a minute.
import { readPlain } from './amount.js';
import type { Quantity } from './amount.js';
import { writeDecimal } from './decimals.js';
import { compileSpellings } from './tokens.js';
import type { UnitRecord } from './tokens.js';
import type { Reading } from './types.js';

const TURNS_PER_MINUTE: UnitRecord = {
  name: 'rpm',
  factor: 1,
  spelled: ['rpm', 'rev/min', 'r/min', 'turns/min', '1/min'],
};

const ROTATION: Quantity = {
  what: 'speed of turning',
  spellings: compileSpellings([
    TURNS_PER_MINUTE,
    { name: 'rev/s', factor: 60, spelled: ['rev/s', 'r/s', 'turns/s', '1/s'] },
    // One radian is 1/(2π) of a turn (NIST SP 811, B.8).
    { name: 'rad/s', factor: 60 / (2 * Math.PI), spelled: ['rad/s'] },
  ]),
  most: 1e6,
  mostSaid: '1 000 000 rpm',
  accepts: '1500 rpm, 25 rev/s or 157 rad/s',
};

/**
 * Reads a speed of turning as typed; a bare number is in turns a minute, whatever the job's unit is.
 * @param input the text, or a number of rpm
 * @returns rpm, or the problem: not understood, negative, over 1 000 000 rpm
 * @example readRotation('25 rev/s') // 1500
 */
export function readRotation(input: string | number): Reading<number> {
  return readPlain(input, ROTATION, TURNS_PER_MINUTE, false);
}

/**
 * Writes a speed of turning in rpm, to one decimal unless told otherwise.
 * @throws RangeError if it is not finite
 * @example writeRotation(375) // '375 rpm'
 */
export function writeRotation(rpm: number, decimals = 1): string {
  return `${writeDecimal(rpm, decimals)} rpm`;
}
