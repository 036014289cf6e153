// The contract of a part family: one declaration gives drawing, checks, dimensions, flags, API and print.
import { z } from 'zod';
import type { Facts } from '../checks/index.js';
import type {
  Derived,
  Dimension,
  Finding,
  Format,
  Ghost,
  HardwareItem,
  JsonObject,
  Part,
  ShopStep,
  Staged,
} from '../model/index.js';
import type { Unit } from '../units/index.js';
import type { About } from './about.js';
import type { Field, FieldInfo } from './fields/field-info.js';
import { createFieldKit, type FieldKit } from './fields/field-kit.js';

/** What drawing needs to know beyond the parameters: how to word lengths. */
export interface DrawContext {
  readonly format: Format;
}

export interface FamilyDeclaration<S extends z.ZodObject> extends About {
  /** One schema for everything that can be set. Called once per unit. */
  readonly parameters: (fields: FieldKit) => S;
  /** Parameters to a part, finished sizes. A part that cannot exist is a `stop` finding with the field named and no value. */
  readonly draw: (parameters: z.output<S>, context: DrawContext) => Staged<Part | undefined>;
  /** The rules, in the order in which they should be read. */
  readonly check: (part: Part, parameters: z.output<S>, facts: Facts) => readonly Finding[];
  readonly dimensions: (part: Part, parameters: z.output<S>, context: DrawContext) => readonly Dimension[];
  readonly ghosts: (part: Part, parameters: z.output<S>, facts: Facts) => readonly Ghost[];
  /** What follows from what was typed, worth showing beside it. */
  readonly derived: (part: Part, parameters: z.output<S>, context: DrawContext) => readonly Derived[];
  /** What is done by hand after the torch, in order. */
  readonly steps: (part: Part, parameters: z.output<S>, facts: Facts) => readonly ShopStep[];
  /** What is bought or sawn to go with it; nothing unless the family says so. */
  readonly hardware?: (part: Part, parameters: z.output<S>, facts: Facts) => readonly HardwareItem[];
}

/** What is wrong with one field, worded for a person. */
export interface FieldProblem {
  /** Dotted path, for example `pattern2.bolts`; empty for the whole. */
  readonly field: string;
  readonly says: string;
}

export type ReadParameters =
  | { readonly ok: true; readonly value: ReadValue }
  | { readonly ok: false; readonly problems: readonly FieldProblem[] };

/**
 * A part family behind one face, whatever its parameters are. `read` gives parameters (plain JSON, storable) bound
 * to the other four, so nothing outside switches on a family's id or knows its parameter type.
 */
export interface Family extends About {
  readonly fields: readonly Field[];
  /** JSON Schema (draft 2020-12) of what `read` accepts. */
  readonly inputSchema: () => JsonObject;
  /** The zod schema itself, for an API description. */
  readonly schema: (unit: Unit) => z.ZodObject;
  readonly read: (input: unknown, unit: Unit) => ReadParameters;
}

/** Parameters that were read, and what the family makes of them. */
export interface ReadValue {
  /** Plain JSON; reading it again gives the same. */
  readonly parameters: JsonObject;
  readonly draw: (context: DrawContext) => Staged<Part | undefined>;
  readonly check: (part: Part, facts: Facts) => readonly Finding[];
  readonly dimensions: (part: Part, context: DrawContext) => readonly Dimension[];
  readonly ghosts: (part: Part, facts: Facts) => readonly Ghost[];
  readonly derived: (part: Part, context: DrawContext) => readonly Derived[];
  readonly steps: (part: Part, facts: Facts) => readonly ShopStep[];
  readonly hardware: (part: Part, facts: Facts) => readonly HardwareItem[];
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
  return schema instanceof z.ZodOptional ? unwrap(schema.unwrap() as z.ZodType) : schema;
}

function listFields(schema: z.ZodObject, prefix: string): readonly Field[] {
  return Object.entries(schema.shape).flatMap(([key, value]): readonly Field[] => {
    const path = prefix + key;
    const info = fieldInfoOf(value as z.ZodType, path);
    const inner = unwrap(value as z.ZodType);
    const field: Field = { ...info, path };
    return inner instanceof z.ZodObject ? [field, ...listFields(inner, `${path}.`)] : [field];
  });
}

/** Turns a declaration into the face that the rest of the house uses. Schemas are built once per unit. */
export function defineFamily<S extends z.ZodObject>(declaration: FamilyDeclaration<S>): Family {
  const built = new Map<Unit, S>();
  const schema = (unit: Unit): S => {
    const existing = built.get(unit);
    if (existing !== undefined) return existing;
    const made = declaration.parameters(createFieldKit(unit));
    built.set(unit, made);
    return made;
  };
  return {
    id: declaration.id,
    title: declaration.title,
    summary: declaration.summary,
    fields: listFields(schema('mm'), ''),
    inputSchema: () => z.toJSONSchema(schema('mm'), { io: 'input' }) as JsonObject,
    schema,
    read: (input, unit) => {
      const parsed = schema(unit).safeParse(input);
      if (!parsed.success) return { ok: false, problems: parsed.error.issues.flatMap(wordProblem) };
      const p = parsed.data;
      return {
        ok: true,
        value: {
          parameters: p as JsonObject,
          draw: (context) => declaration.draw(p, context),
          check: (part, facts) => declaration.check(part, p, facts),
          dimensions: (part, context) => declaration.dimensions(part, p, context),
          ghosts: (part, facts) => declaration.ghosts(part, p, facts),
          derived: (part, context) => declaration.derived(part, p, context),
          steps: (part, facts) => declaration.steps(part, p, facts),
          hardware: (part, facts) => declaration.hardware?.(part, p, facts) ?? [],
        },
      };
    },
  };
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
