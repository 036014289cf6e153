// Writes a number with a bounded count of decimals, and without noise.

/**
 * Writes a finite number rounded to so many decimals, without trailing zeros and never as `-0`.
 * @throws RangeError if the number is not finite: nothing true could be printed
 * @example writeDecimal(34.92500000000001, 3) // '34.925'
 */
export function writeDecimal(n: number, decimals: number): string {
  if (!Number.isFinite(n)) throw new RangeError(`writeDecimal: ${n} is not a finite number`);
  const fixed = n.toFixed(decimals);
  const trimmed = fixed.includes('.') && !fixed.includes('e') ? fixed.replace(/\.?0+$/u, '') : fixed;
  return trimmed === '-0' ? '0' : trimmed;
}
