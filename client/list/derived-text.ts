// What follows from a reading, worded for the list: the size in both units, then the family's own words.
import type { Derived, Quantity } from '../../parts-library/model/index.js';
import { writeLength, type Unit } from '../../parts-library/units/index.js';

/** As many decimals as a caliper reads. */
const DECIMALS = { mm: 2, in: 3 } as const;

function inUnit({ amount, plusMinus }: Quantity, unit: Unit): string {
  const size = writeLength(amount, { unit, decimals: DECIMALS[unit] });
  if (plusMinus === undefined) return size;
  const range = writeLength(plusMinus, { unit, decimals: DECIMALS[unit] }).slice(0, -unit.length - 1);
  return `${size} ±${range}`;
}

/**
 * One or two lines: the size in both units when it is a length, and what the family says about it.
 *
 * @example writeDerived(circle95) // ['gives bolt circle 95 mm = 3.74 in', '⌀95 mm; 5 holes ⌀9 mm for M8']
 */
export function writeDerived({ title, value, text }: Derived): readonly string[] {
  if (value.unit !== 'mm') return [`gives ${title} ${text}`];
  return [`gives ${title} ${inUnit(value, 'mm')} = ${inUnit(value, 'in')}`, text];
}
