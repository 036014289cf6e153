// How a drive's numbers are worded, in the unit of the job.
import { WALL } from '../handbook/index.js';
import type { Format } from '../model/index.js';
import { FOOT, writeDecimal, writeLength, writeMass } from '../units/index.js';

/** Watts in a mechanical horsepower: 550 ft·lbf/s, NIST SP 811 appendix B.8. */
const HORSEPOWER = 745.6999;
/** Metres in a statute mile: 5280 ft. */
const MILE = (5280 * FOOT) / 1000;

export interface Words extends Format {
  /** A length as a person sets it by eye or rule: `12.6 mm`, `0.5 in`. */
  readonly rough: (mm: number) => string;
  /** The same without its unit. */
  readonly roughBare: (mm: number) => string;
  /** `14.3 km/h` or `8.9 mph`. */
  readonly roadSpeed: (kilometresPerHour: number) => string;
  /** `1.9 m/s` or `374 ft/min`. */
  readonly chainSpeed: (metresPerSecond: number) => string;
  readonly mass: (kilograms: number) => string;
  readonly power: (watts: number) => string;
  /** A share as percent: `18 %`, with one decimal below ten. */
  readonly share: (share: number) => string;
}

/** A share as percent, one decimal below ten. */
export function shareText(share: number): string {
  if (share >= WALL) return 'any slope';
  return `${writeDecimal(share * 100, Math.abs(share) < 0.0995 ? 1 : 0)} %`;
}

/** The wording for one unit. */
export function createWords(format: Format): Words {
  const metric = format.unit === 'mm';
  const rough = (value: number): string =>
    writeLength(value, { unit: format.unit, decimals: metric ? 1 : 2 });
  return {
    ...format,
    rough,
    roughBare: (value) => rough(value).slice(0, -(format.unit.length + 1)),
    roadSpeed: (kmh) =>
      metric ? `${writeDecimal(kmh, 1)} km/h` : `${writeDecimal((kmh * 1000) / MILE, 1)} mph`,
    chainSpeed: (ms) =>
      metric ? `${writeDecimal(ms, 2)} m/s` : `${writeDecimal((ms * 60_000) / FOOT, 0)} ft/min`,
    mass: (kilograms) => writeMass(kilograms, { unit: format.unit, decimals: 0 }),
    power: (watts) => (metric ? `${writeDecimal(watts, 0)} W` : `${writeDecimal(watts / HORSEPOWER, 2)} hp`),
    share: shareText,
  };
}

/** A length as bare mm for a formula, whatever the job's unit: formulas count in mm. */
export const mm = (value: number, decimals = 2): string => writeDecimal(value, decimals);
