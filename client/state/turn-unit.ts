// Changing the job's unit without changing any size: texts that were stored bare are stored as what they meant.
import {
  replaceParameters,
  setDrive,
  setUnit,
  type Change,
  type Job,
  type Row,
} from '../../parts-library/job/index.js';
import type { Json, JsonObject } from '../../parts-library/model/index.js';
import { findFamily } from '../../parts-library/parts/index.js';
import type { Unit } from '../../parts-library/units/index.js';
import { isObject } from './values.js';

/** What was entered, each value as it was understood; nothing is added that was not entered. */
export function understoodOf(entered: JsonObject, understood: JsonObject): JsonObject {
  return Object.fromEntries(
    Object.entries(entered).map(([name, value]): [string, Json] => {
      const meant = understood[name];
      if (meant === undefined) return [name, value];
      // A group is entered field by field; an entry that was read already is its own meaning.
      return [
        name,
        isObject(value) && isObject(meant) && !('typed' in meant) ? understoodOf(value, meant) : meant,
      ];
    }),
  );
}

function keepSizes(job: Job, row: Row): Change['patch'] {
  const reading = findFamily(row.family)?.read(row.parameters, job.unit);
  if (reading?.ok !== true) return [];
  return replaceParameters(job, row.id, understoodOf(row.parameters, reading.value.parameters)).patch;
}

/** True when a text of the drive is a number without its unit, so that another unit of the job would change it. */
export const hasBareNumbers = (drive: JsonObject = {}): boolean =>
  Object.values(drive).some((value) => typeof value === 'string' && /^[\d\s.,/*+()±-]+$/.test(value));

/** Reads a drive; the drive's code is fetched only where it is needed. */
type ReadDrive = (
  drive: JsonObject,
  unit: Unit,
) => { readonly ok: true; readonly value: { readonly json: JsonObject } } | { readonly ok: false };

function keepDrive(job: Job, read: ReadDrive): Change['patch'] {
  const { drive } = job;
  if (drive === undefined) return [];
  const reading = read(drive, job.unit);
  return reading.ok ? setDrive(job, understoodOf(drive, reading.value.json)).patch : [];
}

/** The change to another unit, sizes kept. */
export function turnUnit(job: Job, unit: Unit, readDrive?: ReadDrive): Change {
  const turned = setUnit(job, unit);
  return {
    ...turned,
    patch: [
      ...job.rows.flatMap((row) => keepSizes(job, row)),
      ...(readDrive === undefined ? [] : keepDrive(job, readDrive)),
      ...turned.patch,
    ],
  };
}
