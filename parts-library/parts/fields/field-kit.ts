// Builders of parameter schemas: one zod schema per family gives types, plain list, flags, API and validation.
import { z } from 'zod';
import { findChain, findMaterial, findThread, type Lookup } from '../../handbook/index.js';
import {
  readAngle,
  readCount,
  readForce,
  readLength,
  readLengths,
  readMass,
  readMeasure,
  readRotation,
  readSpeed,
  readTime,
  readTorque,
  writeLengths,
  writeMeasure,
  type Reading,
  type Unit,
} from '../../units/index.js';
import type { Drawing } from '../../model/index.js';
import { drawnInput, readDrawn } from './drawing-field.js';
import type { Choice, FieldInfo } from './field-info.js';
import type { Entry, HoleWay, LengthsEntry, MeasureEntry, NumberEntry } from './values.js';

/** Longest text that a field takes; readers bound their own nesting beside it. */
const LONGEST_TEXT = 400;

type Info = Omit<FieldInfo, 'kind' | 'optional' | 'default' | 'choices'>;

const typedText = z.union([z.number(), z.string().max(LONGEST_TEXT)]);

/** Says what was wrong with a field in one sentence, and what would do. */
function refuse(ctx: z.RefinementCtx, input: unknown, says: string): never {
  ctx.addIssue({ code: 'custom', message: says, input });
  return z.NEVER;
}

/**
 * A reader that knows its last text again: a keystroke changes one field, and the others need no second reading.
 * What was refused is read anew, so that it is refused anew.
 */
function knowing<I, V>(read: (input: I, ctx: z.RefinementCtx) => V): (input: I, ctx: z.RefinementCtx) => V {
  let last: { readonly input: I; readonly value: V } | undefined;
  return (input, ctx) => {
    if (last !== undefined && last.input === input) return last.value;
    const issues = ctx.issues.length;
    const value = read(input, ctx);
    // An object may be changed by who holds it.
    if (ctx.issues.length === issues && typeof input !== 'object') last = { input, value };
    return value;
  };
}

/** Control characters would break a comment line of a cut file. */
const hasControlCharacter = (text: string): boolean => /\p{Cc}/u.test(text);

const within = (value: number, min: number | undefined, max: number | undefined): boolean =>
  value >= (min ?? -Infinity) - 1e-9 && value <= (max ?? Infinity) + 1e-9;

const rangeWords = (info: Info, unitWord: string): string =>
  `${info.min ?? 'no lower limit'} to ${info.max ?? 'no upper limit'}${unitWord === '' ? '' : ` ${unitWord}`}`;

/**
 * Field builders for parameters typed in `unit`: a bare number that is a string takes that unit, a JSON number is
 * always metric, and a stored entry keeps its metric value.
 */
export function createFieldKit(unit: Unit) {
  const annotate = <S extends z.ZodType>(schema: S, field: FieldInfo): S =>
    schema.meta({ title: field.title, description: field.help, field });

  const fromReading = <T, V>(
    ctx: z.RefinementCtx,
    input: unknown,
    reading: Reading<T>,
    accept: (value: T) => V,
  ): V => {
    if (reading.ok) return accept(reading.value);
    return refuse(ctx, input, `${reading.problem.says} Accepted: ${reading.problem.accepts}`);
  };

  const lengthOf = (info: Info) =>
    z
      .union([
        typedText,
        z.strictObject({
          typed: z.string().max(LONGEST_TEXT),
          mm: z.number(),
          plusMinus: z.number().nonnegative().optional(),
        }),
      ])
      .transform(
        knowing((input, ctx): Entry => {
          const bounded = (entry: Entry): Entry => {
            if (!within(entry.mm, info.min, info.max)) {
              return refuse(
                ctx,
                input,
                `${info.title} is ${entry.mm} mm ("${entry.typed}"); accepted is ${rangeWords(info, 'mm')}.`,
              );
            }
            // No size can measure less than nothing; a place or an allowance may be 0 ± something.
            if ((info.min ?? 0) > 0 && (entry.plusMinus ?? 0) > entry.mm) {
              return refuse(
                ctx,
                input,
                `${info.title} is "${entry.typed}"; accepted is a ± of no more than the length itself.`,
              );
            }
            return entry;
          };
          if (typeof input === 'object') return bounded(input);
          if (typeof input === 'number') return bounded({ typed: `${input} mm`, mm: input });
          return fromReading(
            ctx,
            input,
            readLength(input, { unit, allowNegative: (info.min ?? 0) < 0 }),
            bounded,
          );
        }),
      );

  const numberOf = (info: Info, unitWord: string, read: (text: string) => Reading<number>) => {
    const worded = (value: number): string => `${value} ${unitWord}`.trim();
    return z
      .union([typedText, z.strictObject({ typed: z.string().max(LONGEST_TEXT), value: z.number() })])
      .transform(
        knowing((input, ctx): NumberEntry => {
          const bounded = (entry: NumberEntry): NumberEntry =>
            within(entry.value, info.min, info.max)
              ? entry
              : refuse(
                  ctx,
                  input,
                  `${info.title} is ${worded(entry.value)} ("${entry.typed}"); accepted is ${rangeWords(info, unitWord)}.`,
                );
          if (typeof input === 'object') return bounded(input);
          if (typeof input === 'number') return bounded({ typed: worded(input), value: input });
          return fromReading(ctx, input, read(input), (value) => bounded({ typed: input, value }));
        }),
      );
  };

  const plainNumber =
    (info: Info, unitWord: string) =>
    (text: string): Reading<number> => {
      const written = text.trim().replace(/\s*%$/, '');
      return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(written)
        ? { ok: true, value: Number(written) }
        : {
            ok: false,
            problem: {
              typed: text,
              readTo: 0,
              says: `${info.title} is "${text}", which is not a number.`,
              accepts: `a decimal number, ${rangeWords(info, unitWord)}.`,
            },
          };
    };

  const required = <S extends z.ZodType>(schema: S, info: FieldInfo) =>
    annotate(schema.prefault(info.default as z.input<S>), info);
  const optional = <S extends z.ZodType>(schema: S, info: FieldInfo) => annotate(schema.optional(), info);

  const both = <S extends z.ZodType>(kind: FieldInfo['kind'], build: (info: Info) => S) => ({
    /** With a default, so that it is always there. */
    given: (info: Info & { readonly default: string | number }) =>
      required(build(info), { ...info, kind, optional: false }),
    /** May be left out. */
    maybe: (info: Info) => optional(build(info), { ...info, kind, optional: true }),
  });

  const length = both('length', lengthOf);
  const angle = both('angle', (info) => numberOf(info, 'degrees', readAngle));
  const torque = both('torque', (info) => numberOf(info, 'N·m', (text) => readTorque(text, { unit })));
  const force = both('force', (info) => numberOf(info, 'N', (text) => readForce(text, { unit })));
  const mass = both('mass', (info) => numberOf(info, 'kg', (text) => readMass(text, { unit })));
  const rotation = both('rotation', (info) => numberOf(info, 'rpm', readRotation));
  const speed = both('speed', (info) => numberOf(info, 'mm/min', (text) => readSpeed(text, { unit })));
  const time = both('time', (info) => numberOf(info, 's', readTime));
  const percent = both('percent', (info) => numberOf(info, '%', plainNumber(info, '%')));
  const factor = both('factor', (info) => numberOf(info, '', plainNumber(info, '')));

  const count = both('count', (info) =>
    typedText.transform((input, ctx): number => {
      const reading = readCount(input, { least: info.min ?? 0, most: info.max ?? Infinity });
      return reading.ok
        ? reading.value
        : refuse(
            ctx,
            input,
            `${info.title} is "${input}"; accepted is a whole number, ${rangeWords(info, '')}.`,
          );
    }),
  );

  const measure = both('measure', () =>
    z
      .union([
        typedText,
        z.object({ typed: z.string().max(LONGEST_TEXT), metric: z.string().max(LONGEST_TEXT) }),
      ])
      .transform(
        knowing((input, ctx): MeasureEntry => {
          const typed = typeof input === 'object' ? input.typed : String(input);
          const reading =
            typeof input === 'object'
              ? readMeasure(input.metric, { unit: 'mm' })
              : readMeasure(input, { unit: typeof input === 'number' ? 'mm' : unit });
          return fromReading(ctx, input, reading, (value) => ({
            typed,
            metric: writeMeasure(value, 'mm'),
            // The words as typed, so that reading it back changes nothing.
            measure: { ...value, typed },
          }));
        }),
      ),
  );

  /** Bounds hold for each length of the list. */
  const lengths = both('lengths', (info) =>
    z
      .union([
        typedText,
        z.object({ typed: z.string().max(LONGEST_TEXT), metric: z.string().max(LONGEST_TEXT) }),
      ])
      .transform(
        knowing((input, ctx): LengthsEntry => {
          const typed = typeof input === 'object' ? input.typed : String(input);
          const reading =
            typeof input === 'object'
              ? readLengths(input.metric, { unit: 'mm' })
              : readLengths(typed, { unit: typeof input === 'number' ? 'mm' : unit });
          return fromReading(ctx, input, reading, (list) => {
            const outside = list.find(({ mm }) => !within(mm, info.min, info.max));
            if (outside !== undefined) {
              return refuse(
                ctx,
                input,
                `${info.title} has ${outside.mm} mm in "${typed}"; accepted is ${rangeWords(info, 'mm')}.`,
              );
            }
            const metric = writeLengths(list, 'mm');
            const back = readLengths(metric, { unit: 'mm' });
            // The lengths as they will be read back, so that storing them changes nothing.
            return { typed, metric, lengths: back.ok ? back.value : list };
          });
        }),
      ),
  );

  /** A name that the handbook knows, kept as the handbook writes it. */
  const named = (
    kind: 'thread' | 'material' | 'chain',
    find: (written: string) => Lookup<{ readonly name: string }>,
  ) =>
    both(kind, (info) =>
      z.union([z.string().max(40), z.number()]).transform(
        knowing((input, ctx): string => {
          const answer = find(String(input));
          return answer.found ? answer.row.name : refuse(ctx, input, `${info.title}: ${answer.says}`);
        }),
      ),
    );

  const thread = named('thread', findThread);
  const material = named('material', findMaterial);
  const chain = named('chain', findChain);

  const text = both('text', (info) =>
    z
      .string()
      .max(60)
      .transform((input, ctx): string =>
        hasControlCharacter(input)
          ? refuse(
              ctx,
              input,
              `${info.title} holds a control character; accepted is plain text of up to 60 characters.`,
            )
          : input.trim(),
      ),
  );

  const holes = both('holes', (info) =>
    z
      .union([
        typedText,
        z.strictObject({ kind: z.enum(['clearance', 'tapped', 'drill']) }),
        z.strictObject({ kind: z.literal('plain'), diameter: lengthOf(info) }),
      ])
      .transform((input, ctx): HoleWay => {
        if (typeof input === 'object') return input;
        if (input === 'clearance' || input === 'tapped' || input === 'drill') return { kind: input };
        const diameter = lengthOf(info).safeParse(input);
        return diameter.success
          ? { kind: 'plain', diameter: diameter.data }
          : refuse(
              ctx,
              input,
              `${info.title} is "${input}"; accepted is clearance, tapped, drill (a centre mark to drill from) or a diameter, ${rangeWords(info, 'mm')}.`,
            );
      }),
  );

  /** A drawing that was brought in; `start` is what counts before one is. */
  const drawing = (info: Info, start: Drawing) =>
    annotate(
      drawnInput
        .transform((input, ctx): Drawing => {
          const read = readDrawn(input);
          return read.ok ? read.drawing : refuse(ctx, input, `${info.title}: ${read.says}`);
        })
        .prefault(start),
      { ...info, kind: 'drawing', default: start.source.name, optional: false },
    );

  const choice = <const C extends readonly Choice[]>(
    info: Info & { readonly choices: C; readonly default: C[number]['value'] },
  ) => {
    const values = info.choices.map((one) => one.value) as [C[number]['value'], ...C[number]['value'][]];
    const schema = z.enum(values, {
      error: (issue) => `${info.title} is ${JSON.stringify(issue.input)}; accepted is ${values.join(', ')}.`,
    });
    return annotate(schema.prefault(info.default), { ...info, kind: 'choice', optional: false });
  };

  const maybeChoice = <const C extends readonly Choice[]>(info: Info & { readonly choices: C }) => {
    const values = info.choices.map((one) => one.value) as [C[number]['value'], ...C[number]['value'][]];
    const schema = z.enum(values, {
      error: (issue) => `${info.title} is ${JSON.stringify(issue.input)}; accepted is ${values.join(', ')}.`,
    });
    return annotate(schema.optional(), { ...info, kind: 'choice', optional: true });
  };

  /** Several fields under one name that are always there, each with its own default. */
  const group = <S extends z.ZodObject>(schema: S, info: Info) =>
    annotate(schema.prefault({} as z.input<S>), { ...info, kind: 'group', optional: false });

  /** Several fields under one name; left out as a whole when not given. */
  const maybeGroup = <S extends z.ZodObject>(schema: S, info: Info) =>
    annotate(schema.optional(), { ...info, kind: 'group', optional: true });

  return {
    unit,
    length,
    lengths,
    angle,
    torque,
    force,
    mass,
    speed,
    time,
    rotation,
    percent,
    factor,
    count,
    measure,
    thread,
    material,
    chain,
    text,
    holes,
    drawing,
    choice,
    maybeChoice,
    group,
    maybeGroup,
  };
}

export type FieldKit = ReturnType<typeof createFieldKit>;
