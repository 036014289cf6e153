// Random parameters of any family, drawn from its own schema: about the defaults, within the bounds, every option used.
import fc from 'fast-check';
import type { Family, Field } from '../../parts-library/parts/index.js';

/** How far from its default a size is drawn, as factors. */
const LEAST = 0.85;
const MOST = 1.2;

const THREADS = ['M4', 'M5', 'M6', 'M8', 'M10', 'M12', '1/4-20', '5/16-18', '3/8-16'];
const MATERIALS = ['S235', 'S275', 'S355', 'A36', '304', '6061-T6'];
const CHAINS = ['35', '40', '08B', '428', '50'];

/** The number that a default begins with, and the rest of it. */
function splitNumber(text: string): { readonly value: number; readonly rest: string } | undefined {
  const found = /^(-?\d+(?:\.\d+)?)(.*)$/.exec(text.trim());
  return found === null ? undefined : { value: Number(found[1]), rest: found[2] ?? '' };
}

const shown = (value: number): string => String(Number(value.toFixed(3)));

/** Sizes about the default; without one from what is usual. Undefined where the schema says of neither. */
function numberOf({ default: start, usual, min, max, kind }: Field): fc.Arbitrary<string> | undefined {
  const first = start === undefined ? undefined : splitNumber(String(start));
  const least = min ?? -Infinity;
  const most = max ?? Infinity;
  const between = (from: number, to: number, rest: string): fc.Arbitrary<string> =>
    fc
      .integer({ min: 0, max: 1000 })
      .map((step) => `${shown(Math.min(most, Math.max(least, from + ((to - from) * step) / 1000)))}${rest}`);
  if (usual !== undefined) return between(usual[0], usual[1], '');
  if (first === undefined) return undefined;
  if (kind === 'angle') return between(first.value - 10, first.value + 10, first.rest);
  // A default in inches or another unit keeps its unit; the bounds are metric, so it only varies where they are wide.
  const isMetric = first.rest.trim() === '' || first.rest.trim() === 'mm';
  const from = first.value * LEAST;
  const to = first.value * MOST;
  if (isMetric) return between(from, to, first.rest);
  return fc
    .integer({ min: 0, max: 1000 })
    .map((step) => `${shown(from + ((to - from) * step) / 1000)}${first.rest}`);
}

const scaled = (text: string, factor: number): string =>
  text.replaceAll(/\d+(?:\.\d+)?/g, (digits) => shown(Number(digits) * factor));

/** Values of one field; undefined where only its start is known. */
function valuesOf(field: Field): fc.Arbitrary<string | number> | undefined {
  const { kind, choices, suggestions, default: start, min, max } = field;
  switch (kind) {
    case 'choice':
      return fc.constantFrom(...(choices ?? []).map(({ value }) => value));
    case 'count': {
      const middle = Number(start ?? field.usual?.[0] ?? min ?? 0);
      const from = field.usual?.[0] ?? Math.max(min ?? 0, middle - 2);
      const to = field.usual?.[1] ?? Math.min(max ?? middle + 2, middle + 2);
      return fc.integer({ min: from, max: to });
    }
    case 'thread': {
      const near = THREADS.indexOf(String(start ?? 'M8').split('x')[0] ?? '');
      const names = near < 0 ? [String(start)] : THREADS.slice(Math.max(0, near - 1), near + 2);
      return fc.constantFrom(...names);
    }
    case 'material':
      return fc.constantFrom(...MATERIALS);
    case 'chain':
      return start === undefined
        ? fc.constantFrom(...CHAINS)
        : fc.constantFrom(String(start), ...CHAINS.slice(0, 3));
    case 'holes':
      return fc.constantFrom('clearance', 'tapped', 'drill');
    case 'text':
      // A text with a start has a grammar of its own, which only its family knows.
      return start === undefined ? fc.constantFrom('CART 4', 'H2') : undefined;
    case 'measure':
      return start === undefined
        ? undefined
        : fc.integer({ min: 950, max: 1080 }).map((step) => scaled(String(start), step / 1000));
    case 'group':
      return undefined;
    default: {
      const drawn = numberOf(field);
      if (drawn !== undefined) return drawn;
      return suggestions === undefined || suggestions.length === 0
        ? undefined
        : fc.constantFrom(...suggestions);
    }
  }
}

type Values = Readonly<Record<string, string | number>>;

/** A parameter set, and values for what it leaves out, should they be asked for. */
export interface Drawn {
  readonly given: Values;
  readonly spare: Values;
}

/** Optional fields are given this often, percent. */
const GIVEN = 40;
/** A choice that may be left out has several values to come up, and is given more often. */
const outOf = ({ kind }: Field): number => (kind === 'choice' ? 64 : 99);

/**
 * Parameter sets of a family. A field that may be left out is given in four of ten; choices are drawn evenly, sizes
 * about their start. Groups and texts with a grammar keep their start.
 */
export function parametersOf({ fields }: Family): fc.Arbitrary<Drawn> {
  const values: Record<string, fc.Arbitrary<string | number>> = {};
  const lots: Record<string, fc.Arbitrary<number>> = {};
  for (const field of fields) {
    const drawn = field.path.includes('.') ? undefined : valuesOf(field);
    if (drawn === undefined) continue;
    values[field.path] = drawn;
    lots[field.path] = field.optional ? fc.integer({ min: 0, max: outOf(field) }) : fc.constant(0);
  }
  return fc.tuple(fc.record(values), fc.record(lots)).map(([all, lot]) => {
    const isGiven = ([name]: readonly [string, unknown]): boolean => (lot[name] ?? 0) < GIVEN;
    const entries = Object.entries(all);
    return {
      given: Object.fromEntries(entries.filter(isGiven)),
      spare: Object.fromEntries(entries.filter((entry) => !isGiven(entry))),
    };
  });
}

/** What is counted as used: each value of each choice, and each optional field that random trials can give. */
export function optionsOf({ fields }: Family): readonly string[] {
  return fields.flatMap((field): readonly string[] => {
    if (field.path.includes('.')) return [];
    if (field.kind === 'choice') return (field.choices ?? []).map(({ value }) => `${field.path}=${value}`);
    return field.optional && valuesOf(field) !== undefined ? [field.path] : [];
  });
}

/** The options that one parameter set uses. */
export const usedIn = (parameters: Readonly<Record<string, string | number>>): readonly string[] =>
  Object.entries(parameters).flatMap(([name, value]) => [name, `${name}=${value}`]);
