// From flags and a parameter file to what the one-part flow is asked.
import { z } from 'zod';
import { guardJson, isObject, PROCESS_FIELDS, type UncheckedRequest } from '../../parts-library/job/index.js';
import type { Family, Field } from '../../parts-library/parts/index.js';
import type { JsonObject } from '../../parts-library/model/index.js';
import { flagName } from './flags.js';
import type { InputProblem } from './outcome.js';
import { settable } from './part-flags.js';

export type Flags = ReadonlyMap<string, string | true>;

export interface AskedPart {
  readonly request: UncheckedRequest;
  readonly dxf: 'r12' | 'r2000';
  readonly dxfUnit: 'mm' | 'in';
  /** Paper of the template, when one is asked for. */
  readonly template: 'a4' | 'letter' | undefined;
  readonly problems: readonly InputProblem[];
}

export const textOf = (flags: Flags, name: string): string | undefined => {
  const value = flags.get(name);
  return typeof value === 'string' ? value : undefined;
};

/**
 * What is asked, flags winning over the file.
 * @param file the parsed parameter file: parameters by name, or a whole request with `parameters`, `unit`, `process`
 */
export function askedPart(family: Family, flags: Flags, file: unknown): AskedPart {
  const problems: InputProblem[] = [];
  const whole = readFile(file, problems);
  const unit = oneOf(flags, 'unit', ['mm', 'in'] as const, problems) ?? whole.unit ?? 'mm';
  const parameters = typedOver(whole.parameters, family.fields, flags);
  const quantity = textOf(flags, 'quantity');
  if (quantity !== undefined && !/^\s*\d{1,9}\s*$/.test(quantity)) {
    problems.push({
      field: 'quantity',
      flag: '--quantity',
      says: `The quantity is "${quantity}"; accepted is a whole number.`,
    });
  }
  const count = quantity === undefined ? whole.quantity : Number(quantity);
  const name = textOf(flags, 'name') ?? whole.name;
  const given = PROCESS_FIELDS.flatMap((field) => {
    const value = textOf(flags, flagName(field.name));
    return value === undefined ? [] : [[field.name, value] as const];
  });
  const processClass = textOf(flags, 'process');
  const process: UncheckedRequest['process'] = {
    ...whole.process,
    ...Object.fromEntries(given),
    ...(processClass === undefined ? {} : { processClass }),
  };
  return {
    request: {
      family: family.id,
      parameters,
      unit,
      ...(name === undefined ? {} : { name }),
      ...(count === undefined || !Number.isFinite(count) ? {} : { quantity: count }),
      process,
    },
    dxf: oneOf(flags, 'dxf', ['r12', 'r2000'] as const, problems) ?? 'r12',
    dxfUnit: oneOf(flags, 'dxf-unit', ['mm', 'in'] as const, problems) ?? 'mm',
    template: oneOf(flags, 'template', ['a4', 'letter'] as const, problems),
    problems,
  };
}

/** What was typed in flags, over what a file or nothing gives. */
export function typedOver(given: JsonObject, fields: readonly Field[], flags: Flags): JsonObject {
  return settable(fields).reduce<JsonObject>((current, { path }) => {
    const value = textOf(flags, flagName(path));
    return value === undefined ? current : withValue(current, path.split('.'), value);
  }, given);
}

export function oneOf<const T extends string>(
  flags: Flags,
  name: string,
  accepted: readonly T[],
  problems: InputProblem[],
): T | undefined {
  const value = textOf(flags, name);
  if (value === undefined) return undefined;
  const found = accepted.find((one) => one === value);
  if (found === undefined) {
    problems.push({
      field: name,
      flag: `--${name}`,
      says: `is "${value}"; accepted is ${accepted.join(' or ')}.`,
    });
  }
  return found;
}

interface FileContents {
  readonly parameters: JsonObject;
  readonly unit?: 'mm' | 'in';
  readonly name?: string;
  readonly quantity?: number;
  readonly process?: JsonObject;
}

/** What a whole request holds beside its parameters. */
const besideParameters = z.strictObject({
  unit: z.enum(['mm', 'in']).exactOptional(),
  name: z.string().exactOptional(),
  quantity: z.number().exactOptional(),
  process: z.record(z.string(), z.json()).exactOptional(),
});

function readFile(file: unknown, problems: InputProblem[]): FileContents {
  const refuse = (says: string): FileContents => {
    problems.push({ field: 'params', flag: '--params', says });
    return { parameters: {} };
  };
  if (file === undefined) return { parameters: {} };
  const guarded = guardJson(file);
  if (!guarded.ok) return refuse(`${guarded.problem.path}: ${guarded.problem.says}`);
  if (!isObject(guarded.value))
    return refuse('The file holds no JSON object; accepted is one of parameters by name.');
  const { parameters, ...rest } = guarded.value;
  if (!isObject(parameters)) return { parameters: guarded.value };
  const beside = besideParameters.safeParse(rest);
  if (beside.success) return { parameters, ...beside.data };
  for (const issue of beside.error.issues) {
    const field = issue.code === 'unrecognized_keys' ? issue.keys.join(', ') : issue.path.join('.');
    problems.push({
      field,
      flag: '--params',
      says: `${field} beside the parameters is ${JSON.stringify(rest[field]) ?? 'not known'}; accepted are unit ("mm" or "in"), name (a text), quantity (a number) and process (an object).`,
    });
  }
  return { parameters };
}

/** Puts a value of a flag in its place; a group that is no group is left for the reader to name. */
function withValue(object: JsonObject, [name, ...rest]: readonly string[], value: string): JsonObject {
  if (name === undefined) return object;
  if (rest.length === 0) return { ...object, [name]: value };
  const group = object[name] ?? {};
  return isObject(group) ? { ...object, [name]: withValue(group, rest, value) } : object;
}
