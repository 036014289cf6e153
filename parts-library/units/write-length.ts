// Writes lengths: decimal in either unit, both units side by side, and shop fractions of an inch.
import { INCH } from './constants.js';
import { writeDecimal } from './decimals.js';
import type { Unit } from './types.js';

// A thousandth of a millimetre and a tenth of a thou: finer than a caliper reads.
const DECIMALS: Readonly<Record<Unit, number>> = { mm: 3, in: 4 };

const FINEST = 64;

/**
 * Writes a length in one unit.
 * @param mm the length in mm
 * @param options the unit, and how many decimals at most (3 for mm, 4 for inches)
 * @throws RangeError if the length is not finite
 * @example writeLength(34.925, { unit: 'in' }) // '1.375 in'
 */
export function writeLength(
  mm: number,
  options: { readonly unit: Unit; readonly decimals?: number },
): string {
  const { unit, decimals = DECIMALS[unit] } = options;
  return `${writeDecimal(unit === 'mm' ? mm : mm / INCH, decimals)} ${unit}`;
}

/**
 * Writes a length in both units, to echo what was understood.
 * @throws RangeError if the length is not finite
 * @example echoLength(35) // '35 mm · 1.378 in'
 */
export function echoLength(mm: number): string {
  return `${writeLength(mm, { unit: 'mm' })} · ${writeLength(mm, { unit: 'in' })}`;
}

/** A shop fraction: its text, and how far it is from the true length in mm (fraction less true; 0 when exact). */
export interface Fraction {
  readonly text: string;
  readonly errorMm: number;
}

/**
 * Writes a length as the nearest sixty-fourth of an inch, in lowest terms.
 * @param mm the length in mm
 * @returns the fraction, which `readLength` reads back, and its error in mm
 * @throws RangeError if the length is not finite
 * @example writeFraction(34.925) // { text: '1-3/8"', errorMm: 0 }
 * @example writeFraction(35) // { text: '1-3/8"', errorMm: -0.075 }
 */
export function writeFraction(mm: number): Fraction {
  if (!Number.isFinite(mm)) throw new RangeError(`writeFraction: ${mm} is not a finite length`);
  const parts = Math.round((Math.abs(mm) / INCH) * FINEST);
  const sign = mm < 0 && parts > 0 ? '-' : '';
  const error = Math.sign(mm) * ((parts / FINEST) * INCH) - mm;
  return {
    text: `${sign}${mixedNumber(parts)}"`,
    // A billionth of a millimetre is rounding in the arithmetic, not an error of the fraction.
    errorMm: Math.abs(error) < 1e-9 ? 0 : error,
  };
}

function mixedNumber(parts: number): string {
  const whole = Math.floor(parts / FINEST);
  let above = parts % FINEST;
  let below = FINEST;
  if (above === 0) return String(whole);
  while (above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  return whole === 0 ? `${above}/${below}` : `${whole}-${above}/${below}`;
}
