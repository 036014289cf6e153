// One RFC 6902 operation on a draft, strictly: own members and exact indices only, with the operations that undo it.
import type { Json, PatchOperation } from '../model/index.js';
import { canonicalJson } from './canonical.js';
import { freshJson, guardJson, isForbiddenName, type FreshJson, type FreshObject } from './json-guard.js';
import { tokensOf } from './pointer.js';

/** Why an operation cannot be done, in one sentence. */
export class OperationProblem extends Error {
  override readonly name = 'OperationProblem';
}

export interface Done {
  /** A `test` of what the operation took away, to stand before it in a history. */
  readonly guard: readonly PatchOperation[];
  /** Puts back what was there, with a `test` of what it takes away in turn. */
  readonly inverse: readonly PatchOperation[];
}

/**
 * Does one operation on the draft.
 * @param draft a JSON object that nobody else holds; it is written to
 * @throws OperationProblem when the place does not exist or a test fails; the draft may then be half done
 */
export function applyOperation(draft: FreshObject, operation: PatchOperation): Done {
  if ('from' in operation) {
    const { op, from, path } = operation;
    if (op === 'move') return move(draft, from, path);
    const copied = guardJson(valueAt(draft, from));
    if (!copied.ok) throw new OperationProblem(`The copy would be too large: ${copied.problem.says}`);
    return { guard: [], inverse: place(draft, path, copied.value) };
  }
  if (operation.op === 'remove') {
    const before = take(draft, operation.path);
    return {
      guard: [tested(operation.path, before)],
      inverse: [{ op: 'add', path: operation.path, value: before }],
    };
  }
  const { op, path, value } = operation;
  if (op === 'test') {
    testAt(draft, path, value);
    return { guard: [], inverse: [] };
  }
  if (op === 'add') return { guard: [], inverse: place(draft, path, freshJson(value)) };
  const before = take(draft, path);
  place(draft, path, freshJson(value));
  return {
    guard: [tested(path, before)],
    inverse: [tested(path, value), { op: 'replace', path, value: before }],
  };
}

/** RFC 6902 §4.4: a removal and then an addition, so `path` is looked up after the removal. */
function move(draft: FreshObject, from: string, path: string): Done {
  if (path.startsWith(`${from}/`)) throw new OperationProblem(`${from} cannot be moved into itself.`);
  const value = take(draft, from);
  const unplaced = place(draft, path, value);
  return { guard: [], inverse: [...unplaced, { op: 'add', path: from, value: freshJson(value) }] };
}

const tested = (path: string, value: Json): PatchOperation => ({ op: 'test', path, value });

const nothingAt = (path: string): OperationProblem => new OperationProblem(`There is nothing at ${path}.`);

function tokensIn(path: string): readonly string[] {
  const tokens = tokensOf(path);
  if (tokens === undefined) {
    throw new OperationProblem(`"${path}" is no pointer; accepted is one such as /rows/0/name.`);
  }
  if (tokens.some(isForbiddenName)) throw new OperationProblem(`"${path}" is not accepted.`);
  return tokens;
}

/** RFC 6901 §4 allows digits only, without leading zeros. */
const isIndex = (token: string): boolean => /^(0|[1-9]\d{0,8})$/.test(token);

function memberOf(value: FreshJson, token: string, path: string): FreshJson {
  let member: FreshJson | undefined;
  if (Array.isArray(value)) member = isIndex(token) ? value[Number(token)] : undefined;
  else if (typeof value === 'object' && value !== null && Object.hasOwn(value, token)) member = value[token];
  if (member === undefined) throw nothingAt(path);
  return member;
}

function valueAt(draft: FreshObject, path: string): FreshJson {
  return tokensIn(path).reduce<FreshJson>((value, token) => memberOf(value, token, path), draft);
}

/** The list or object that holds the last name of a path, and that name. */
function holderOf(
  draft: FreshObject,
  path: string,
): { readonly holder: FreshJson[] | FreshObject; readonly key: string } {
  const tokens = tokensIn(path);
  const key = tokens.at(-1);
  if (key === undefined) throw new OperationProblem('The whole job is not replaced by a change.');
  const holder = tokens.slice(0, -1).reduce<FreshJson>((value, token) => memberOf(value, token, path), draft);
  if (typeof holder !== 'object' || holder === null) throw nothingAt(path);
  return { holder, key };
}

function testAt(draft: FreshObject, path: string, wanted: Json): void {
  const stands = canonicalJson(valueAt(draft, path));
  const expected = canonicalJson(wanted);
  if (stands === expected) return;
  throw new OperationProblem(
    `${path} was expected to be ${expected.slice(0, 80)}, but it is ${stands.slice(0, 80)}: it was changed meanwhile.`,
  );
}

/** Takes a value out and returns it. */
function take(draft: FreshObject, path: string): FreshJson {
  const { holder, key } = holderOf(draft, path);
  const value = memberOf(holder, key, path);
  if (Array.isArray(holder)) holder.splice(Number(key), 1);
  else delete holder[key];
  return value;
}

/** Inserts into a list, or sets a member of an object; returns how to undo it. */
function place(draft: FreshObject, path: string, value: FreshJson): readonly PatchOperation[] {
  const { holder, key } = holderOf(draft, path);
  const placed = freshJson(value);
  if (Array.isArray(holder)) {
    const index = key === '-' ? holder.length : isIndex(key) ? Number(key) : Number.NaN;
    if (!(index <= holder.length)) throw nothingAt(path);
    holder.splice(index, 0, value);
    const at = key === '-' ? `${path.slice(0, -1)}${index}` : path;
    return [tested(at, placed), { op: 'remove', path: at }];
  }
  const before = Object.hasOwn(holder, key) ? holder[key] : undefined;
  holder[key] = value;
  return before === undefined
    ? [tested(path, placed), { op: 'remove', path }]
    : [tested(path, placed), { op: 'replace', path, value: before }];
}
