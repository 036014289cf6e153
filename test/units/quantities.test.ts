// Angles, forces, torques, masses, speeds, times and counts: read, written, and back.
import * as fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  echoAngle,
  echoForce,
  echoMass,
  echoSpeed,
  echoTime,
  echoTorque,
  readAngle,
  readCount,
  readForce,
  readMass,
  readSpeed,
  readTime,
  readTorque,
  writeAngle,
  writeAngleMinutes,
  writeClock,
  writeForce,
  writeMass,
  writeSpeed,
  writeTime,
  writeTorque,
} from '../../parts-library/units/index.js';
import type { Reading, Unit } from '../../parts-library/units/index.js';
import { problemOf, valueOf } from './units.js';

// Expected values from NIST SP 811 (2008), Appendix B.8, exact factors multiplied out by hand.

describe('an angle in degrees', () => {
  test.each([
    ['30', 30],
    ['30°', 30],
    ['30deg', 30],
    ['30 degrees', 30],
    ['0.5rad', 28.64788975654116],
    [`30° 15'`, 30.25],
    ['30°15′', 30.25],
    [`30° 15' 36"`, 30.26],
    [`-30° 15'`, -30.25],
    [`15'`, 0.25],
    ['360/7', 51.42857142857143],
    ['30° - 1/2', 29.5],
  ])('%s is %d', (text, expected) => {
    expect(valueOf(readAngle(text))).toBeCloseTo(expected, 10);
  });
  test.each([
    ['30 grad', 2, 'not a unit of angle'],
    [`30° 75'`, 3, 'after degrees the minutes must be below 60'],
    ['4000', 4, 'more than ten turns'],
    ['30 ± 1', 2, 'a ± has no place here'],
  ])('%s is read to %i: %s', (text, readTo, why) => {
    const problem = problemOf(readAngle(text));
    expect([problem.readTo, problem.says]).toEqual([readTo, expect.stringContaining(why)]);
  });
  it('may be kept from turning backwards', () => {
    expect(readAngle('-5', { allowNegative: false }).ok).toBe(false);
  });
  it('is written in decimals, in minutes, or both', () => {
    expect(writeAngle(30.25)).toBe('30.25°');
    expect(writeAngleMinutes(30.25)).toBe(`30° 15'`);
    expect(writeAngleMinutes(-0.5)).toBe(`-0° 30'`);
    expect(writeAngleMinutes(29.99999)).toBe('30°');
    expect(writeAngleMinutes(10.01)).toBe(`10° 0' 36"`);
    expect(echoAngle(30.25)).toBe(`30.25° · 30° 15'`);
  });
  it('written in minutes reads back within half a second', () => {
    fc.assert(
      fc.property(fc.double({ min: -3599, max: 3599, noNaN: true }), (degrees) => {
        const read = valueOf(readAngle(writeAngleMinutes(degrees)));
        expect(Math.abs(read - degrees)).toBeLessThanOrEqual(0.5 / 3600 + 1e-9);
      }),
      { numRuns: 500, seed: 5 },
    );
  });
});

describe('a force in newtons', () => {
  test.each([
    ['1200 N', 'mm', 1200],
    ['1.2kN', 'in', 1200],
    ['1200', 'mm', 1200],
    ['250', 'in', 1112.055403815125],
    ['250 lbf', 'mm', 1112.055403815125],
    ['250 lb', 'mm', 1112.055403815125],
    ['30 kgf', 'mm', 294.1995],
    ['2*600 N', 'in', 1200],
  ] as const)('%s in a job in %s is %d', (text, unit, expected) => {
    expect(valueOf(readForce(text, { unit }))).toBeCloseTo(expected, 9);
  });
  it('is not a mass: 30 kg stops after the number', () => {
    const problem = problemOf(readForce('30 kg', { unit: 'mm' }));
    expect([problem.readTo, problem.says]).toEqual([
      2,
      "Read 30, then stopped at 'kg': not a unit of force.",
    ]);
  });
  it('is written in both units', () => {
    expect(echoForce(1200)).toBe('1200 N · 269.8 lbf');
  });
});

describe('a torque in newton metres', () => {
  test.each([
    ['180 N·m', 'in', 180],
    ['180Nm', 'mm', 180],
    ['180 N-m', 'mm', 180],
    ['180 N m', 'mm', 180],
    ['180 N*m', 'mm', 180],
    ['180 newton-metres', 'mm', 180],
    ['180', 'mm', 180],
    ['1800 N·cm', 'mm', 18],
    ['180000 N·mm', 'mm', 180],
    ['0.18 kN·m', 'mm', 180],
    ['100 lbf·ft', 'mm', 135.58179483314],
    ['100 ft-lb', 'mm', 135.58179483314],
    ['100 ft lbs', 'mm', 135.58179483314],
    ['100 lb-ft', 'mm', 135.58179483314],
    ['100', 'in', 135.58179483314],
    ['1200 in-lb', 'mm', 135.58179483314],
    ['1200 lbf·in', 'mm', 135.58179483314],
    ['18 kgf·m', 'mm', 176.5197],
    ['180 kgf·cm', 'mm', 17.65197],
  ] as const)('%s in a job in %s is %d', (text, unit, expected) => {
    expect(valueOf(readTorque(text, { unit }))).toBeCloseTo(expected, 9);
  });
  it('is not a force: 180 N stops after the number', () => {
    const problem = problemOf(readTorque('180 N', { unit: 'mm' }));
    expect([problem.readTo, problem.says]).toEqual([
      3,
      "Read 180, then stopped at 'N': not a unit of torque.",
    ]);
  });
  it('is written in both units', () => {
    expect(echoTorque(180)).toBe('180 N·m · 132.76 lbf·ft');
  });
});

describe('a mass in kilograms', () => {
  test.each([
    ['250 kg', 'in', 250],
    ['250', 'mm', 250],
    ['550 lb', 'mm', 249.4758035],
    ['550', 'in', 249.4758035],
    ['850 g', 'mm', 0.85],
    ['1.2 t', 'mm', 1200],
    ['2 lb 8 oz', 'mm', 1.133980925],
  ] as const)('%s in a job in %s is %d', (text, unit, expected) => {
    expect(valueOf(readMass(text, { unit }))).toBeCloseTo(expected, 9);
  });
  it('is written in both units', () => {
    expect(echoMass(250)).toBe('250 kg · 551.156 lb');
  });
});

describe('a speed in mm/min', () => {
  test.each([
    ['2500 mm/min', 'in', 2500],
    ['2500 mm / min', 'mm', 2500],
    ['2500', 'mm', 2500],
    ['100 in/min', 'mm', 2540],
    ['100 ipm', 'mm', 2540],
    ['100', 'in', 2540],
    ['2.5 m/min', 'mm', 2500],
    ['10 mm/s', 'mm', 600],
    ['1 ft/min', 'mm', 304.8],
  ] as const)('%s in a job in %s is %d', (text, unit, expected) => {
    expect(valueOf(readSpeed(text, { unit }))).toBeCloseTo(expected, 9);
  });
  it('is not a length: 2500 mm stops after the number', () => {
    expect(problemOf(readSpeed('2500 mm', { unit: 'mm' })).readTo).toBe(4);
  });
  it('is written in both units', () => {
    expect(echoSpeed(2540)).toBe('2540 mm/min · 100 in/min');
  });
});

describe('a time in seconds', () => {
  test.each([
    ['0.5 s', 0.5],
    ['0.5', 0.5],
    ['500 ms', 0.5],
    ['1:30', 90],
    [' 0:05 ', 5],
    ['90:00', 5400],
    ['1:02:30', 3750],
    ['1:30.5', 90.5],
    ['1:30,25', 90.25],
    ['2 min', 120],
    ['1 min 30 s', 90],
    ['1 h 20 min 5 s', 4805],
  ])('%s is %d', (text, expected) => {
    expect(valueOf(readTime(text))).toBeCloseTo(expected, 10);
  });
  test.each([
    ['1:75', 2, 'from 00 to 59'],
    ['1:5', 2, 'from 00 to 59'],
    ['1:75:00', 2, 'from 00 to 59'],
    ['1:00:75', 5, 'from 00 to 59'],
    ['1:', 1, 'not part of a time'],
    ['10001:00:00', 11, 'more than 10 000 h'],
    ['-5', 2, 'a negative time has no meaning here'],
  ])('%s is read to %i: %s', (text, readTo, why) => {
    const problem = problemOf(readTime(text));
    expect([problem.readTo, problem.says]).toEqual([readTo, expect.stringContaining(why)]);
  });
  it('is written in seconds and as a clock shows it', () => {
    expect(writeTime(0.5)).toBe('0.5 s');
    expect(writeClock(90)).toBe('1:30');
    expect(writeClock(59.7)).toBe('1:00');
    expect(writeClock(3750)).toBe('1:02:30');
    expect(writeClock(-90)).toBe('-1:30');
    expect(echoTime(90)).toBe('90 s · 1:30');
  });
  it('written as a clock reads back within half a second', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 35_000_000, noNaN: true }), (seconds) => {
        expect(Math.abs(valueOf(readTime(writeClock(seconds))) - seconds)).toBeLessThanOrEqual(0.5 + 1e-6);
      }),
      { numRuns: 500, seed: 6 },
    );
  });
});

describe('a count', () => {
  test.each([
    ['6', 6],
    ['2*8', 16],
    ['6.0', 6],
    ['0.1*30', 3],
    ['0', 0],
  ])('%s is %d', (text, expected) => {
    expect(valueOf(readCount(text))).toBe(expected);
  });
  test.each([
    ['', 0, 'no count was typed'],
    ['5 1/2', 5, 'a whole number was expected'],
    ['6 holes', 1, 'not a unit of count'],
    ['-1', 2, 'fewer than 0'],
    ['10001', 5, 'more than 10000'],
  ])('%j is read to %i: %s', (text, readTo, why) => {
    const problem = problemOf(readCount(text));
    expect([problem.readTo, problem.says]).toEqual([readTo, expect.stringContaining(why)]);
  });
  it('has the bounds it is given', () => {
    expect(readCount('2', { least: 3 }).ok).toBe(false);
    expect(readCount('13', { most: 12 }).ok).toBe(false);
    expect(valueOf(readCount(12, { least: 3, most: 12 }))).toBe(12);
  });
});

describe('a quantity as a number', () => {
  it('is metric whatever the unit of the job', () => {
    expect(valueOf(readForce(1200, { unit: 'in' }))).toBe(1200);
    expect(valueOf(readTorque(180, { unit: 'in' }))).toBe(180);
    expect(valueOf(readMass(250, { unit: 'in' }))).toBe(250);
    expect(valueOf(readSpeed(2500, { unit: 'in' }))).toBe(2500);
    expect(valueOf(readAngle(30))).toBe(30);
    expect(valueOf(readTime(90))).toBe(90);
  });
  it('is refused when it is not finite', () => {
    expect(readForce(Number.NaN, { unit: 'mm' }).ok).toBe(false);
    expect(readTime(Number.POSITIVE_INFINITY).ok).toBe(false);
    expect(readCount(Number.NaN).ok).toBe(false);
  });
});

/** How a quantity is written and read back, and what one unit of its last printed place is. */
interface RoundTrip {
  readonly name: string;
  readonly most: number;
  readonly write: (n: number, unit: Unit, decimals: number) => string;
  readonly read: (text: string) => Reading<number>;
  /** How much of the metric unit one inch-job unit is, to five figures or more. */
  readonly inchUnit: number;
}

const ROUND_TRIPS: readonly RoundTrip[] = [
  {
    name: 'force',
    most: 1e6,
    write: (n, unit, decimals) => writeForce(n, { unit, decimals }),
    read: (text) => readForce(text, { unit: 'mm' }),
    inchUnit: 4.44823,
  },
  {
    name: 'torque',
    most: 1e6,
    write: (n, unit, decimals) => writeTorque(n, { unit, decimals }),
    read: (text) => readTorque(text, { unit: 'mm' }),
    inchUnit: 1.35582,
  },
  {
    name: 'mass',
    most: 1e5,
    write: (n, unit, decimals) => writeMass(n, { unit, decimals }),
    read: (text) => readMass(text, { unit: 'in' }),
    inchUnit: 0.453593,
  },
  {
    name: 'speed',
    most: 1e5,
    write: (n, unit, decimals) => writeSpeed(n, { unit, decimals }),
    read: (text) => readSpeed(text, { unit: 'in' }),
    inchUnit: 25.4,
  },
  {
    name: 'angle',
    most: 3600,
    write: (n, _unit, decimals) => writeAngle(n, { decimals }),
    read: (text) => readAngle(text),
    inchUnit: 1,
  },
  {
    name: 'time',
    most: 1e6,
    write: (n, _unit, decimals) => writeTime(n, { decimals }),
    read: (text) => readTime(text),
    inchUnit: 1,
  },
];

describe('a written quantity reads back within the last decimal printed', () => {
  test.each(ROUND_TRIPS)('$name', ({ most, write, read, inchUnit }) => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: most, noNaN: true }),
        fc.constantFrom('mm' as const, 'in' as const),
        fc.integer({ min: 0, max: 7 }),
        (n, unit, decimals) => {
          const half = (0.5 * (unit === 'mm' ? 1 : inchUnit)) / 10 ** decimals;
          const back = valueOf(read(write(n, unit, decimals)));
          expect(Math.abs(back - n)).toBeLessThanOrEqual(half + 1e-9 * most);
        },
      ),
      { numRuns: 500, seed: 7 },
    );
  });
});
