// The numbers of a drive from what was sent or typed: the one flow of the command line and the HTTP interface.
import { driveNumbers, driveReader, readDrive, type DriveNumbers } from '../parts-library/drive/index.js';
import { createFormat, guardJson, wordProblems } from '../parts-library/job/index.js';
import type { JsonObject } from '../parts-library/model/index.js';
import type { ReadFields } from '../parts-library/parts/index.js';
import type { Unit } from '../parts-library/units/index.js';

export interface DriveRun extends DriveNumbers {
  readonly unit: Unit;
  /** As understood: what was typed beside what it means. Reading it again gives the same. */
  readonly parameters: JsonObject;
}

/**
 * Runs a drive. Nothing typed throws.
 * @param parameters by name, as typed or as stored
 * @param unit of a number in a text that has none, and of the words that come back
 * @returns the numbers, or every field that cannot be used with what is accepted
 */
export function runDrive(parameters: unknown, unit: Unit): ReadFields<DriveRun> {
  const guarded = guardJson(parameters);
  if (!guarded.ok)
    return { ok: false, problems: [{ field: guarded.problem.path, says: guarded.problem.says }] };
  const reading = readDrive(guarded.value, unit);
  if (!reading.ok) return { ok: false, problems: wordProblems(reading.problems, driveReader, parameters) };
  const { parameters: drive, json } = reading.value;
  return { ok: true, value: { unit, parameters: json, ...driveNumbers(drive, createFormat(unit)) } };
}
