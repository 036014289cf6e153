// A drive read and worked out, for the tests: a drive that cannot be read fails the test with its problems.
import { driveNumbers, readDrive, type DriveNumbers } from '../../parts-library/drive/index.js';
import { createFormat } from '../../parts-library/job/index.js';
import type { Finding } from '../../parts-library/model/index.js';
import type { Unit } from '../../parts-library/units/index.js';

export function numbersOf(drive: object, unit: Unit = 'mm'): DriveNumbers {
  const reading = readDrive(drive, unit);
  if (!reading.ok) throw new Error(reading.problems.map(({ field, says }) => `${field}: ${says}`).join(' '));
  return driveNumbers(reading.value.parameters, createFormat(unit));
}

/** What was refused, by field. */
export function refused(drive: object): Readonly<Record<string, string>> {
  const reading = readDrive(drive, 'mm');
  return reading.ok ? {} : Object.fromEntries(reading.problems.map(({ field, says }) => [field, says]));
}

/** A figure's amount in its unit. */
export function figure({ figures }: DriveNumbers, id: string): number {
  const found = figures.find((one) => one.id === id);
  if (found === undefined)
    throw new Error(`No figure ${id}; there are ${figures.map((one) => one.id).join(', ')}.`);
  return found.value.amount;
}

export function finding({ findings }: DriveNumbers, code: string): Finding {
  const found = findings.find((one) => one.code === code);
  if (found === undefined)
    throw new Error(`No finding ${code}; there are ${findings.map((one) => one.code).join(', ')}.`);
  return found;
}

/** The orchard's haul cart, in words that a person types. */
export const cart = {
  motorTeeth: 12,
  wheelTeeth: 48,
  chain: '08B',
  innerWidth: '7.8 ±0.05',
  roller: '8.5 ±0.02',
  twelvePitches: '153.1 ±0.1',
  centres: '420',
  takeUp: '14',
  motorSpeed: '1400 rpm',
  motorTorque: '38 N·m',
  steadyTorque: '16 N·m',
  tyreDiameter: '406',
  loadedRadius: '191',
  mass: '310 kg',
  grade: '18 %',
  ground: 'earth',
  drivenMass: '190 kg',
  wheelbase: '1100',
  massHeight: '520',
} as const;
