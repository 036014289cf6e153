// Reading a drive: each field by itself, then what the fields say about each other.
import type { JsonObject } from '../model/index.js';
import type { FieldProblem, ReadFields } from '../parts/index.js';
import { readCount, type Unit } from '../units/index.js';
import { driveReader, type Drive } from './parameters.js';
import { TEETH } from './sprocket-fields.js';

/** Most tooth counts in a list: every pair of two such lists is worked out. */
const MOST_OTHERS = 8;

export interface OtherTeeth {
  readonly motor: readonly number[];
  readonly wheel: readonly number[];
}

type List =
  { readonly ok: true; readonly teeth: readonly number[] } | { readonly ok: false; readonly says: string };

/** Tooth counts out of a list such as `10, 11 13`. */
function readTeeth(title: string, text: string | undefined): List {
  const words = (text ?? '').split(/[\s,;/]+/).filter((word) => word !== '');
  const accepted = `accepted is up to ${MOST_OTHERS} whole numbers, ${TEETH.least} to ${TEETH.most}, such as 10, 11, 13.`;
  const readings = words.map((word) => readCount(word, TEETH));
  const wrong = readings.findIndex(({ ok }) => !ok);
  if (wrong >= 0) return { ok: false, says: `${title} holds "${words[wrong]}"; ${accepted}` };
  if (words.length > MOST_OTHERS)
    return { ok: false, says: `${title} holds ${words.length} counts; ${accepted}` };
  const teeth = readings.flatMap((reading) => (reading.ok ? [reading.value] : []));
  return { ok: true, teeth: [...new Set(teeth)] };
}

/** Tooth counts that were asked for beside the drive's own; a list that cannot be read counts as empty. */
export function otherTeeth(p: Drive): OtherTeeth {
  const list = (text: string | undefined): readonly number[] => {
    const reading = readTeeth('', text);
    return reading.ok ? reading.teeth : [];
  };
  return { motor: list(p.motorOthers), wheel: list(p.wheelOthers) };
}

/** Fields that cannot both be so. */
function contradictions(p: Drive): readonly FieldProblem[] {
  const lists = [
    ['motorOthers', 'Other motor sprockets', p.motorOthers],
    ['wheelOthers', 'Other wheel sprockets', p.wheelOthers],
  ] as const;
  const problems: FieldProblem[] = lists.flatMap(([field, title, text]) => {
    const reading = readTeeth(title, text);
    return reading.ok ? [] : [{ field, says: reading.says }];
  });
  const { tyreDiameter, loadedRadius, mass, drivenMass, motorTorque, steadyTorque } = p;
  if (tyreDiameter !== undefined && loadedRadius !== undefined && loadedRadius.mm > tyreDiameter.mm / 2) {
    problems.push({
      field: 'loadedRadius',
      says: `Loaded radius is ${loadedRadius.mm} mm, more than half of the tyre's ${tyreDiameter.mm} mm; accepted is up to ${tyreDiameter.mm / 2} mm: a load presses a tyre flatter.`,
    });
  }
  if (mass !== undefined && drivenMass !== undefined && drivenMass.value > mass.value) {
    problems.push({
      field: 'drivenMass',
      says: `Mass on the driven wheels is ${drivenMass.value} kg of ${mass.value} kg; accepted is up to the whole mass.`,
    });
  }
  if (motorTorque !== undefined && steadyTorque !== undefined && steadyTorque.value > motorTorque.value) {
    problems.push({
      field: 'steadyTorque',
      says: `Steady motor torque is ${steadyTorque.value} N·m, the greatest ${motorTorque.value} N·m; accepted is up to the greatest.`,
    });
  }
  return problems;
}

/** A drive as read, and the same as plain JSON: what was typed beside what it means, ready to be stored. */
export interface ReadDrive {
  readonly parameters: Drive;
  readonly json: JsonObject;
}

/** Reads a drive as typed. Every problem names its field, what was given and what is accepted. */
export function readDrive(input: unknown, unit: Unit): ReadFields<ReadDrive> {
  const reading = driveReader.read(input, unit);
  if (!reading.ok) return reading;
  const problems = contradictions(reading.value.parameters);
  return problems.length === 0 ? reading : { ok: false, problems };
}
