// What stands in a field's input, and what is echoed beside it: values as text, by the kind of field.
import type { Field } from '../../parts-library/parts/index.js';
import type { Json } from '../../parts-library/model/index.js';
import {
  echoAngle,
  echoForce,
  echoLength,
  echoMass,
  echoSpeed,
  echoTorque,
  readForce,
  readLength,
  readLengths,
  readMass,
  readMeasure,
  readSpeed,
  readTorque,
  writeForce,
  writeLength,
  writeLengths,
  writeMass,
  writeMeasure,
  writeRotation,
  writeSpeed,
  writeTorque,
  type Reading,
  type Unit,
} from '../../parts-library/units/index.js';
import { isObject, plainText } from '../state/values.js';

/** Readings closer than this are the same: a millionth of a millimetre, or of the quantity's unit. */
const SAME = 1e-6;

const textOf = (value: Json | undefined): string => (typeof value === 'string' ? value : '');
const numberOf = (value: Json | undefined): number => (typeof value === 'number' ? value : Number.NaN);

/** What was typed, when it still means the same in the job's unit; otherwise the value written out. */
function stillMeans(typed: string, reading: Reading<number>, value: number, written: string): string {
  return reading.ok && Math.abs(reading.value - value) < SAME ? typed : written;
}

function lengthText(value: Json, unit: Unit): string {
  if (!isObject(value)) return plainText(value);
  const typed = textOf(value['typed']);
  const mm = numberOf(value['mm']);
  const plusMinus = value['plusMinus'];
  const reading = readLength(typed, { unit, allowNegative: true });
  const bare = writeLength(mm, { unit });
  const written =
    typeof plusMinus === 'number'
      ? `${bare.slice(0, -unit.length - 1)}±${writeLength(plusMinus, { unit })}`
      : bare;
  return stillMeans(typed, reading.ok ? { ok: true, value: reading.value.mm } : reading, mm, written);
}

function measureText(value: Json, unit: Unit): string {
  if (!isObject(value)) return plainText(value);
  const typed = textOf(value['typed']);
  const metric = textOf(value['metric']);
  const now = readMeasure(typed, { unit });
  if (now.ok && writeMeasure(now.value, 'mm') === metric) return typed;
  const stored = readMeasure(metric, { unit: 'mm' });
  return stored.ok ? writeMeasure(stored.value, unit, unit === 'mm' ? 3 : 4) : typed;
}

function lengthsText(value: Json, unit: Unit): string {
  if (!isObject(value)) return plainText(value);
  const typed = textOf(value['typed']);
  const metric = textOf(value['metric']);
  const now = readLengths(typed, { unit });
  if (now.ok && writeLengths(now.value, 'mm') === metric) return typed;
  const stored = readLengths(metric, { unit: 'mm' });
  return stored.ok ? writeLengths(stored.value, unit, unit === 'mm' ? 3 : 4) : typed;
}

function amountText(value: Json, unit: Unit, kind: Field['kind']): string {
  if (!isObject(value)) return plainText(value);
  const typed = textOf(value['typed']);
  const amount = numberOf(value['value']);
  if (kind === 'torque')
    return stillMeans(typed, readTorque(typed, { unit }), amount, writeTorque(amount, { unit }));
  if (kind === 'force')
    return stillMeans(typed, readForce(typed, { unit }), amount, writeForce(amount, { unit }));
  if (kind === 'mass')
    return stillMeans(typed, readMass(typed, { unit }), amount, writeMass(amount, { unit }));
  if (kind === 'speed')
    return stillMeans(typed, readSpeed(typed, { unit }), amount, writeSpeed(amount, { unit }));
  return typed.trim();
}

function holesText(value: Json, unit: Unit): string {
  if (!isObject(value)) return plainText(value);
  const diameter = value['diameter'];
  return diameter === undefined ? textOf(value['kind']) : lengthText(diameter, unit);
}

/**
 * The text that stands in a field's input: what was typed, or the same size written in the job's unit when the unit
 * has changed since. Empty when there is no value.
 *
 * @example fieldText(hub, { typed: '35', mm: 35 }, 'in') // '1.378 in'
 */
export function fieldText(field: Field, value: Json | undefined, unit: Unit): string {
  if (value === undefined || value === null) return '';
  switch (field.kind) {
    case 'length':
      return lengthText(value, unit);
    case 'lengths':
      return lengthsText(value, unit);
    case 'measure':
      return measureText(value, unit);
    case 'holes':
      return holesText(value, unit);
    case 'angle':
    case 'torque':
    case 'force':
    case 'mass':
    case 'speed':
    case 'time':
    case 'rotation':
    case 'percent':
    case 'factor':
      return amountText(value, unit, field.kind);
    default:
      return plainText(value);
  }
}

const within = (value: Json, key: string): string => {
  const plusMinus = isObject(value) ? value[key] : undefined;
  return typeof plusMinus === 'number' ? `±${echoLength(plusMinus)}` : '';
};

/**
 * What was understood, in both units where there are two; one string per unit, empty when the text says it all.
 *
 * @example fieldEcho(hub, { typed: '35', mm: 35 }) // ['35 mm', '1.378 in']
 */
export function fieldEcho(field: Field, value: Json | undefined): readonly string[] {
  if (value === undefined || value === null) return [];
  const split = (echo: string): readonly string[] => echo.split(' · ');
  if (!isObject(value)) return [];
  const amount = numberOf(value['value']);
  switch (field.kind) {
    case 'length': {
      const tolerance = within(value, 'plusMinus').split(' · ');
      return split(echoLength(numberOf(value['mm']))).map((line, index) => {
        const extra = tolerance[index];
        return extra === undefined || extra === '' ? line : `${line} ±${extra.replace('±', '')}`;
      });
    }
    case 'lengths': {
      const stored = readLengths(textOf(value['metric']), { unit: 'mm' });
      return stored.ok ? [writeLengths(stored.value, 'mm', 3), writeLengths(stored.value, 'in', 4)] : [];
    }
    case 'measure': {
      const stored = readMeasure(textOf(value['metric']), { unit: 'mm' });
      return stored.ok ? [writeMeasure(stored.value, 'mm', 3), writeMeasure(stored.value, 'in', 4)] : [];
    }
    case 'holes': {
      const diameter = value['diameter'];
      return isObject(diameter) ? split(echoLength(numberOf(diameter['mm']))) : [];
    }
    case 'torque':
      return split(echoTorque(amount));
    case 'force':
      return split(echoForce(amount));
    case 'mass':
      return split(echoMass(amount));
    case 'speed':
      return split(echoSpeed(amount));
    case 'angle':
      return split(echoAngle(amount)).slice(0, 1);
    case 'rotation':
      return [writeRotation(amount)];
    case 'percent':
      return [`${amount} %`];
    default:
      return [];
  }
}
