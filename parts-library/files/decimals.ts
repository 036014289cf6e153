// Numbers as files hold them: a decimal point, no exponent, no trailing zeros, never minus nought.

/** Decimals of a coordinate in millimetres: 1e-6 mm, the resolution that files promise. */
export const MM_PLACES = 6;

/** Decimals of a coordinate in inches: 1e-8 in is 2.5e-7 mm, so that an inch file is as true as a metric one. */
export const INCH_PLACES = 8;

/** Decimals of a bulge: half a unit of the ninth moves the crown of an arc on a 4 m chord by 1e-6 mm. */
export const BULGE_PLACES = 9;

/** Rounds to a number of decimals; minus nought becomes nought. */
export function rounded(value: number, places: number): number {
  return Number(value.toFixed(places)) + 0;
}

/**
 * Writes a number with at most `places` decimals.
 * @throws RangeError when the number is not finite or too large to be written without an exponent.
 * @example decimals(-0.0000004, 6) // '0'
 */
export function decimals(value: number, places: number): string {
  if (!(Math.abs(value) < 1e15)) throw new RangeError(`${value} cannot stand in a file as a coordinate.`);
  const text = value.toFixed(places);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short;
}
