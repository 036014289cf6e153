// How findings and prints word their numbers in a job's unit.
import type { Format } from '../model/index.js';
import { writeDecimal, writeForce, writeLength, writeTorque, type Unit } from '../units/index.js';

/** A caliper reads hundredths of a millimetre and half thousandths of an inch; more digits would only look exact. */
const DECIMALS: Readonly<Record<Unit, number>> = { mm: 2, in: 3 };

/** MPa in one ksi: 1000 lbf/in², NIST SP 811 appendix B.8. */
const KSI_MEGAPASCALS = 6.894757;

/**
 * The wording for one unit.
 * @example createFormat('in').lengthWithin(35, 0.1) // '1.378 in ±0.004'
 */
export function createFormat(unit: Unit): Format {
  const decimals = DECIMALS[unit];
  const length = (mm: number): string => writeLength(mm, { unit, decimals });
  const bare = (mm: number): string => length(mm).slice(0, -(unit.length + 1));
  return {
    unit,
    length,
    bare,
    fine: (mm) => writeLength(mm, { unit, decimals: decimals + 1 }),
    lengthWithin: (mm, plusMinus) => `${length(mm)} ±${bare(plusMinus)}`,
    force: (newtons) => writeForce(newtons, { unit, decimals: 0 }),
    torque: (newtonMetres) => writeTorque(newtonMetres, { unit, decimals: 1 }),
    stress: (megapascals) =>
      unit === 'mm'
        ? `${writeDecimal(megapascals, 1)} MPa`
        : `${writeDecimal(megapascals / KSI_MEGAPASCALS, 1)} ksi`,
  };
}
