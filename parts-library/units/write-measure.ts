// Writes a measured pattern in the grammar that `readMeasure` reads.
import { INCH } from './constants.js';
import { writeDecimal } from './decimals.js';
import type { Measure, Size, Tagged } from './measure-types.js';
import type { Unit } from './types.js';

// Enough to give back every measure to a millionth of a millimetre.
const DECIMALS: Readonly<Record<Unit, number>> = { mm: 6, in: 8 };

/**
 * Writes a measure so that `readMeasure` gives the same readings back, whatever unit the reader's job has.
 * @param measure the readings in mm
 * @param unit the unit to write in
 * @param decimals how many at most; by default enough for a round trip within 1e-6 mm
 * @throws RangeError if a length is not finite
 * @example writeMeasure({ typed: '', readings: [{ way: 'steps', step: 2, distance: 90.35 }] }, 'mm')
 * // 'every-2nd 90.35 mm'
 */
export function writeMeasure(measure: Measure, unit: Unit, decimals = DECIMALS[unit]): string {
  const number = (mm: number): string => writeDecimal(unit === 'mm' ? mm : mm / INCH, decimals);
  const size = ({ mm, plusMinus }: Size): string =>
    plusMinus === undefined ? `${number(mm)} ${unit}` : `${number(mm)}±${number(plusMinus)} ${unit}`;
  return measure.readings.map((reading) => writeReading(reading, number, size, unit)).join('; ');
}

function writeReading(
  reading: Tagged,
  number: (mm: number) => string,
  size: (of: Size) => string,
  unit: Unit,
): string {
  if (reading.way === 'centres') {
    const points = reading.centres.map(({ x, y }) => `(${number(x)}, ${number(y)})`).join(' ');
    const tolerance = reading.plusMinus === undefined ? '' : `±${number(reading.plusMinus)} `;
    return `centres ${points} ${tolerance}${unit}`;
  }
  const distance = reading.way === 'circle' ? reading.diameter : reading.distance;
  const measured = size(
    reading.plusMinus === undefined ? { mm: distance } : { mm: distance, plusMinus: reading.plusMinus },
  );
  switch (reading.way) {
    case 'circle':
      return `circle ${measured}`;
    case 'steps':
      return `${reading.step === 1 ? 'adjacent' : `every-${ordinal(reading.step)}`} ${measured}`;
    case 'edges':
      return `${reading.side}-edges ${measured}${hole(reading.hole, size)}${reading.step === 1 ? '' : ` step ${reading.step}`}`;
    case 'across':
      return `across ${reading.side === 'centres' ? '' : `${reading.side}-edges `}${measured}${hole(reading.hole, size)}`;
    default:
      return `from-bore ${measured} bore ${size(reading.bore)} hole ${size(reading.hole)}`;
  }
}

function hole(of: Size | undefined, size: (of: Size) => string): string {
  return of === undefined ? '' : ` hole ${size(of)}`;
}

function ordinal(n: number): string {
  const tens = n % 100;
  const ending = tens > 10 && tens < 14 ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th');
  return `${n}${ending}`;
}
