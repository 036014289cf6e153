// Reads and writes angles in degrees, degrees and minutes, or radians.
import { readPlain } from './amount.js';
import type { Quantity } from './amount.js';
import { RADIAN_DEGREES } from './constants.js';
import { writeDecimal } from './decimals.js';
import { compileSpellings } from './tokens.js';
import type { UnitRecord } from './tokens.js';
import type { Reading } from './types.js';

const MINUTES_IN_DEGREE = 60;
const SECONDS_IN_DEGREE = 3600;

const SECOND: UnitRecord = {
  name: 'seconds',
  factor: 1 / SECONDS_IN_DEGREE,
  spelled: ['"', '″', '”', "''", '′′', '’’', 'arcsec', 'sec'],
};

const MINUTE: UnitRecord = {
  name: 'minutes',
  factor: 1 / MINUTES_IN_DEGREE,
  spelled: ["'", '′', '’', 'arcmin', 'min'],
  followedBy: { unit: SECOND, below: 60 },
};

const DEGREE: UnitRecord = {
  name: 'degrees',
  factor: 1,
  spelled: ['°', 'º', 'deg', 'degree', 'degrees'],
  followedBy: { unit: MINUTE, below: 60 },
};

const RADIAN: UnitRecord = { name: 'rad', factor: RADIAN_DEGREES, spelled: ['rad', 'radian', 'radians'] };

const ANGLE: Quantity = {
  what: 'angle',
  spellings: compileSpellings([DEGREE, MINUTE, SECOND, RADIAN]),
  most: 3600,
  mostSaid: 'ten turns',
  accepts: "30, 30°, 30 deg, 360/7, 30° 15' or 0.5 rad",
};

/**
 * Reads an angle as typed; a bare number is in degrees, and a negative one turns clockwise.
 * @param input the text, or a number of degrees
 * @param options whether a negative angle makes sense (by default it does)
 * @returns degrees, or the problem: not understood, over ten turns, negative where it may not be
 * @example readAngle("30° 15'") // 30.25
 */
export function readAngle(
  input: string | number,
  options: { readonly allowNegative?: boolean } = {},
): Reading<number> {
  return readPlain(input, ANGLE, DEGREE, options.allowNegative ?? true);
}

/**
 * Writes an angle in decimal degrees, to three decimals unless told otherwise.
 * @throws RangeError if it is not finite
 * @example writeAngle(30.25) // '30.25°'
 */
export function writeAngle(degrees: number, options: { readonly decimals?: number } = {}): string {
  return `${writeDecimal(degrees, options.decimals ?? 3)}°`;
}

/**
 * Writes an angle in degrees, minutes and seconds, to the nearest second.
 * @throws RangeError if it is not finite
 * @example writeAngleMinutes(30.25) // `30° 15'`
 */
export function writeAngleMinutes(degrees: number): string {
  if (!Number.isFinite(degrees)) throw new RangeError(`writeAngleMinutes: ${degrees} is not a finite angle`);
  const all = Math.round(Math.abs(degrees) * SECONDS_IN_DEGREE);
  const whole = Math.floor(all / SECONDS_IN_DEGREE);
  const minutes = Math.floor((all % SECONDS_IN_DEGREE) / 60);
  const seconds = all % 60;
  const sign = degrees < 0 && all > 0 ? '-' : '';
  const fine = seconds > 0 ? ` ${minutes}' ${seconds}"` : minutes > 0 ? ` ${minutes}'` : '';
  return `${sign}${whole}°${fine}`;
}

/**
 * Writes an angle both ways, to echo what was understood.
 * @throws RangeError if it is not finite
 * @example echoAngle(30.25) // `30.25° · 30° 15'`
 */
export function echoAngle(degrees: number): string {
  return `${writeAngle(degrees)} · ${writeAngleMinutes(degrees)}`;
}
