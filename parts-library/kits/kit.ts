// The contract of a kit: several parts from one set of numbers, so that a number they share is set in one place.
import type { z } from 'zod';
import type { Derived, Format, JsonObject, Staged } from '../model/index.js';
import { createReader, type About, type Field, type FieldKit, type ReadFields } from '../parts/index.js';
import type { Unit } from '../units/index.js';

/** One part of a kit: the part it plays, its family, and what the kit's numbers make of its parameters. */
export interface Member {
  /** Unique in the kit and kept from one expansion to the next: `brake-arm`, `left-standoff`. */
  readonly role: string;
  readonly family: string;
  readonly name: string;
  readonly quantity: number;
  /** What the family reads; everything left out is the family's own start. */
  readonly parameters: Readonly<Record<string, unknown>>;
}

/** Two members that are bolted to each other: features whose ids begin alike are the holes that meet. */
export interface Joint {
  readonly a: { readonly role: string; readonly holes: string };
  readonly b: { readonly role: string; readonly holes: string };
}

/** What expanding needs to know beyond the numbers: how to word lengths. */
export interface KitContext {
  readonly format: Format;
}

export interface KitDeclaration<S extends z.ZodObject> extends About {
  /** The numbers that the members share. */
  readonly numbers: (fields: FieldKit) => S;
  /** The members. Numbers that make no kit give a `stop` that names the number, and what members there are. */
  readonly expand: (numbers: z.output<S>, context: KitContext) => Staged<readonly Member[]>;
  /** What follows from the numbers together: the stack across the rails and what is left of it. */
  readonly derived: (numbers: z.output<S>, context: KitContext) => readonly Derived[];
  /** Which members are bolted to which. */
  readonly joints: (numbers: z.output<S>, members: readonly Member[]) => readonly Joint[];
}

/** Numbers that were read, and what the kit makes of them. */
export interface KitReading {
  /** Plain JSON; reading it again gives the same. */
  readonly numbers: JsonObject;
  readonly expand: (context: KitContext) => Staged<readonly Member[]>;
  readonly derived: (context: KitContext) => readonly Derived[];
  readonly joints: (members: readonly Member[]) => readonly Joint[];
}

/** A kit behind one face, whatever its numbers are. */
export interface Kit extends About {
  readonly fields: readonly Field[];
  readonly inputSchema: () => JsonObject;
  readonly schema: (unit: Unit) => z.ZodObject;
  readonly read: (input: unknown, unit: Unit) => ReadFields<KitReading>;
}

/** Turns a declaration into the face that the rest of the house uses. */
export function defineKit<S extends z.ZodObject>(declaration: KitDeclaration<S>): Kit {
  const { fields, inputSchema, schema, read } = createReader(declaration.numbers);
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
      const { parameters: numbers, json } = reading.value;
      return {
        ok: true,
        value: {
          numbers: json,
          expand: (context) => declaration.expand(numbers, context),
          derived: (context) => declaration.derived(numbers, context),
          joints: (members) => declaration.joints(numbers, members),
        },
      };
    },
  };
}
