// Reading what was typed by a schema of fields: the same for a part family and for anything else with parameters.
import { z } from 'zod';
import type { JsonObject } from '../model/index.js';
import type { Unit } from '../units/index.js';
import type { Field, FieldInfo } from './fields/field-info.js';
import { createFieldKit, type FieldKit } from './fields/field-kit.js';

/** What is wrong with one field, worded for a person. */
export interface FieldProblem {
  /** Dotted path, for example `pattern2.bolts`; empty for the whole. */
  readonly field: string;
  readonly says: string;
}

/** Parameters as read, or what stands in the way. */
export type ReadFields<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly FieldProblem[] };

/** Parameters as read, and the same as plain JSON to store; reading that again gives the same. */
export interface Read<S extends z.ZodObject> {
  readonly parameters: z.output<S>;
  readonly json: JsonObject;
}

/** A schema behind one face: its fields for a list, its JSON Schema for an API, and reading. */
export interface Reader<S extends z.ZodObject> {
  readonly fields: readonly Field[];
  /** JSON Schema (draft 2020-12) of what `read` accepts. */
  readonly inputSchema: () => JsonObject;
  readonly schema: (unit: Unit) => S;
  readonly read: (input: unknown, unit: Unit) => ReadFields<Read<S>>;
}

/** Thrown only for a mistake in a declaration, never for what a person typed. */
export class FamilyError extends Error {
  override readonly name = 'FamilyError';
}

function fieldInfoOf(schema: z.ZodType, path: string): FieldInfo {
  const info = schema.meta()?.['field'];
  if (info === undefined) throw new FamilyError(`Parameter "${path}" was not made with the field kit.`);
  return info as FieldInfo;
}

function unwrap(schema: z.ZodType): z.ZodType {
  return schema instanceof z.ZodOptional || schema instanceof z.ZodPrefault
    ? unwrap(schema.unwrap() as z.ZodType)
    : schema;
}

function listFields(schema: z.ZodObject, prefix: string): readonly Field[] {
  return Object.entries(schema.shape).flatMap(([key, value]): readonly Field[] => {
    const path = prefix + key;
    const info = fieldInfoOf(value as z.ZodType, path);
    const inner = unwrap(value as z.ZodType);
    const field: Field = { ...info, path };
    if (!(inner instanceof z.ZodObject)) return [field];
    // A group that is always there is no choice of its own: only what it holds is listed.
    return [...(info.optional ? [field] : []), ...listFields(inner, `${path}.`)];
  });
}

/** One zod issue as field problems; an unknown name is reported by that name. */
function wordProblem(issue: z.core.$ZodIssue): readonly FieldProblem[] {
  const path = issue.path.map(String).join('.');
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      field: path === '' ? key : `${path}.${key}`,
      says: `There is no parameter "${key}" here; see the family's parameters for those there are.`,
    }));
  }
  return [{ field: path, says: issue.message }];
}

/** A reader of parameters declared with the field kit. Schemas are built once per unit. */
export function createReader<S extends z.ZodObject>(parameters: (fields: FieldKit) => S): Reader<S> {
  const built = new Map<Unit, S>();
  const schema = (unit: Unit): S => {
    const existing = built.get(unit);
    if (existing !== undefined) return existing;
    const made = parameters(createFieldKit(unit));
    built.set(unit, made);
    return made;
  };
  return {
    fields: listFields(schema('mm'), ''),
    inputSchema: () => z.toJSONSchema(schema('mm'), { io: 'input' }) as JsonObject,
    schema,
    read: (input, unit) => {
      const parsed = schema(unit).safeParse(input);
      return parsed.success
        ? { ok: true, value: { parameters: parsed.data, json: parsed.data as JsonObject } }
        : { ok: false, problems: parsed.error.issues.flatMap(wordProblem) };
    },
  };
}
