// The gate for JSON from outside: depth, size, finite numbers and names that a job can hold, before anything reads it.
import { pointerTo } from './pointer.js';
import type { JobProblem } from './types.js';

/** JSON that nobody else holds, so that it may be written to. */
export type FreshJson = string | number | boolean | null | FreshJson[] | FreshObject;
export interface FreshObject {
  [name: string]: FreshJson;
}

/** Deepest nesting of objects and lists; a job of this version needs about eight. */
export const DEEPEST = 32;
/** Most values in one document; a long cut list has a few thousand. */
export const MOST_VALUES = 200_000;
/** Longest single text, UTF-16 units. */
export const LONGEST_STRING = 100_000;

/** Names that would reach an object's prototype when a value is copied by name. */
const FORBIDDEN_NAMES: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/** True when a member of this name could reach an object's prototype. */
export const isForbiddenName = (name: string): boolean => FORBIDDEN_NAMES.has(name);

export type Guarded =
  { readonly ok: true; readonly value: FreshJson } | { readonly ok: false; readonly problem: JobProblem };

class Refusal extends Error {
  constructor(
    readonly tokens: readonly string[],
    message: string,
  ) {
    super(message);
  }
}

/**
 * Copies a value, accepting JSON only: finite numbers, texts, booleans, null, lists and plain objects within bounds.
 * @param input anything
 * @returns a fresh copy that shares nothing with the input, or the first problem with its place
 * @example guardJson({ a: [1, Number.NaN] }) // problem at /a/1
 */
export function guardJson(input: unknown): Guarded {
  let count = 0;
  const copy = (value: unknown, tokens: readonly string[]): FreshJson => {
    count += 1;
    if (count > MOST_VALUES) throw new Refusal(tokens, `More than ${MOST_VALUES} values; that is no job.`);
    if (tokens.length > DEEPEST) throw new Refusal(tokens, `Nested deeper than ${DEEPEST} levels.`);
    if (value === null || typeof value === 'boolean') return value;
    if (typeof value === 'number') {
      if (Number.isFinite(value)) return value;
      throw new Refusal(tokens, `${value} is not a finite number; accepted is a number such as 12.5.`);
    }
    if (typeof value === 'string') {
      if (value.length <= LONGEST_STRING) return value;
      throw new Refusal(
        tokens,
        `A text of ${value.length} characters; accepted are up to ${LONGEST_STRING}.`,
      );
    }
    if (Array.isArray(value))
      return Array.from(value, (item, index) => copy(item, [...tokens, String(index)]));
    if (typeof value === 'object') return copyObject(value, tokens);
    throw new Refusal(tokens, `A value of type ${typeof value} cannot be stored; accepted is JSON.`);
  };
  const copyObject = (value: object, tokens: readonly string[]): FreshObject => {
    const prototype: unknown = Object.getPrototypeOf(value);
    if (prototype !== null && prototype !== Object.prototype) {
      throw new Refusal(tokens, 'An object with behaviour cannot be stored; accepted is plain JSON.');
    }
    const result: FreshObject = {};
    for (const [name, member] of Object.entries(value)) {
      if (isForbiddenName(name)) throw new Refusal([...tokens, name], `The name "${name}" is not accepted.`);
      // A member that is absent and one that is undefined are the same in JSON.
      if (member !== undefined) result[name] = copy(member, [...tokens, name]);
    }
    return result;
  };
  try {
    return { ok: true, value: copy(input, []) };
  } catch (error) {
    if (error instanceof Refusal) {
      return { ok: false, problem: { path: pointerTo(error.tokens), says: error.message } };
    }
    // A getter that throws is not JSON either.
    return { ok: false, problem: { path: '', says: 'The value cannot be read as JSON.' } };
  }
}

/**
 * A fresh copy of a value that is plain JSON already, with members that are undefined left out.
 * @throws TypeError when it is not JSON: a slip of the caller
 */
export function freshJson(value: unknown): FreshJson {
  const guarded = guardJson(value);
  if (guarded.ok) return guarded.value;
  throw new TypeError(`Not plain JSON at "${guarded.problem.path}": ${guarded.problem.says}`);
}

/** True for an object, false for a list and everything else. */
export const isObject = <T>(value: T): value is Exclude<Extract<T, object>, readonly unknown[]> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
