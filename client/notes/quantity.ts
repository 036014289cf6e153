// Numbers of findings worded with their units, lengths in the job's unit.
import type { Format, Quantity } from '../../parts-library/model/index.js';
import { writeDecimal } from '../../parts-library/units/index.js';

function amountText(amount: number, unit: Quantity['unit'], format: Format): string {
  switch (unit) {
    case 'mm':
      return format.length(amount);
    case 'mm2':
      return `${writeDecimal(amount, 1)} mm²`;
    case 'N':
      return format.force(amount);
    case 'N·m':
      return format.torque(amount);
    case 'MPa':
      return format.stress(amount);
    case 'degrees':
      return `${writeDecimal(amount, 2)}°`;
    case '1':
      return writeDecimal(amount, 3);
    default:
      return `${writeDecimal(amount, 2)} ${unit}`;
  }
}

/**
 * A finding's number with its unit and, where it is known, its ±.
 *
 * @example writeQuantity({ amount: 20, unit: 'mm' }, metric) // '20 mm'
 */
export function writeQuantity(quantity: Quantity, format: Format): string {
  const { amount, unit, plusMinus } = quantity;
  const text = amountText(amount, unit, format);
  if (plusMinus === undefined || plusMinus === 0) return text;
  return unit === 'mm'
    ? format.lengthWithin(amount, plusMinus)
    : `${text} ±${amountText(plusMinus, unit, format)}`;
}
