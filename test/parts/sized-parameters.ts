// A family's start made larger or smaller: as many of its lengths as still give a part, taken one after the other.
import { continueRun, resultOf, startingShop, startRun } from '../../parts-library/job/index.js';
import type { Family, Field } from '../../parts-library/parts/index.js';

export type Values = Readonly<Record<string, string | number>>;

/** Plate and lettering are what they are, whatever the part's size. */
const KEPT: ReadonlySet<string> = new Set(['thickness', 'labelHeight']);

/** A field at a multiple of its start; undefined where that means nothing or leaves its bounds. */
function sized({ kind, path, min, max, default: start }: Field, factor: number): string | number | undefined {
  if (start === undefined || path.includes('.') || KEPT.has(path)) return undefined;
  if (kind === 'count') {
    const count = Math.round(Number(start) * factor);
    return count === Number(start) ? undefined : Math.max(min ?? 0, Math.min(max ?? count, count));
  }
  if (kind !== 'length' && kind !== 'measure') return undefined;
  const multiplied = String(start).replaceAll(/\d+(?:\.\d+)?/g, (digits) =>
    String(Number((Number(digits) * factor).toFixed(2))),
  );
  const value = Number.parseFloat(multiplied);
  return kind === 'length' && (value > (max ?? Infinity) || value < (min ?? -Infinity))
    ? undefined
    : multiplied;
}

const gives = (family: Family, values: Values): boolean =>
  resultOf(continueRun(startRun({ family: family.id, parameters: values, unit: 'mm' }, startingShop)))
    .value !== undefined;

/**
 * Fields at a multiple of their start's size: all lengths at once where that gives something, else as many as do,
 * taken one after the other.
 * @param works whether a set of values gives something
 */
export function sizedFields(
  fields: readonly Field[],
  factor: number,
  works: (values: Values) => boolean,
): Values {
  const wanted = fields.flatMap((field) => {
    const value = sized(field, factor);
    return value === undefined ? [] : [[field.path, value] as const];
  });
  const all: Values = Object.fromEntries(wanted);
  if (works(all)) return all;
  return wanted.reduce<Values>((values, [path, value]) => {
    const tried = { ...values, [path]: value };
    return works(tried) ? tried : values;
  }, {});
}

/** Parameters of a family at a multiple of its start's size. */
export const sizedParameters = (family: Family, factor: number): Values =>
  sizedFields(family.fields, factor, (values) => gives(family, values));
