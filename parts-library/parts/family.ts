// The contract of a part family: one declaration gives drawing, checks, dimensions, flags, API and print.
import type { z } from 'zod';
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
import type { Field } from './fields/field-info.js';
import type { FieldKit } from './fields/field-kit.js';
import { createReader, type ReadFields } from './reading.js';

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

export type ReadParameters = ReadFields<ReadValue>;

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

/** Turns a declaration into the face that the rest of the house uses. */
export function defineFamily<S extends z.ZodObject>(declaration: FamilyDeclaration<S>): Family {
  const { fields, inputSchema, schema, read } = createReader(declaration.parameters);
  return {
    id: declaration.id,
    title: declaration.title,
    summary: declaration.summary,
    fields,
    inputSchema,
    schema,
    read: (input, unit) => {
      const reading = read(input, unit);
      if (!reading.ok) return reading;
      const { parameters: p, json } = reading.value;
      return {
        ok: true,
        value: {
          parameters: json,
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
