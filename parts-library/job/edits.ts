// The edits that a face offers, each as a change ready for `applyChange`.
import { createPatch } from 'rfc6902';
import type { Json, JsonObject, PatchOperation } from '../model/index.js';
import type { Unit } from '../units/index.js';
import { applyOperation, OperationProblem } from './apply-operation.js';
import type { Change } from './change.js';
import { freshJson, isObject } from './json-guard.js';
import { overridesOf } from './kits.js';
import { pointerTo } from './pointer.js';
import type { Job, Row } from './types.js';

/** Thrown when an edit names a row that the job does not have: a slip of the caller, not of the person. */
export class NoSuchRow extends Error {
  override readonly name = 'NoSuchRow';
}

/** The row of that id, and where it stands. */
function rowAt(job: Job, rowId: string): { readonly row: Row; readonly index: number } {
  const index = job.rows.findIndex((row) => row.id === rowId);
  const row = job.rows[index];
  if (row === undefined) {
    throw new NoSuchRow(
      `Job "${job.name}" has no row "${rowId}"; it has ${job.rows.map(({ id }) => id).join(', ') || 'none'}.`,
    );
  }
  return { row, index };
}

const test = (path: string, value: Json): PatchOperation => ({ op: 'test', path, value });

/** Every edit of a row first makes sure that the row still stands where it is addressed. */
const onRow = (index: number, row: Row): PatchOperation => test(pointerTo(['rows', index, 'id']), row.id);

/**
 * Sets one parameter of a row; `undefined` takes it away, so that the family's default counts.
 * @param path dotted, for example `pattern2.boltCircle`; a group that is missing is made
 * @throws NoSuchRow
 * @example setParameter(job, 'adapter', 'boltCircle', 'adjacent 55.84 ±0.1')
 */
export function setParameter(job: Job, rowId: string, path: string, value: Json | undefined): Change {
  const { row } = rowAt(job, rowId);
  const next = withMember(row.parameters, path.split('.'), value);
  return { ...replaceParameters(job, rowId, next), says: `Set ${path} of ${row.name}` };
}

/**
 * Gives a row a new set of parameters, changing only what differs.
 * @throws NoSuchRow
 */
export function replaceParameters(job: Job, rowId: string, parameters: JsonObject): Change {
  const { row, index } = rowAt(job, rowId);
  const base = pointerTo(['rows', index, 'parameters']);
  const differences = createPatch(row.parameters, parameters);
  return {
    says: `Set the parameters of ${row.name}`,
    patch: [
      onRow(index, row),
      ...differences.map((operation) => rebase(operation, base)),
      ...noteOverrides(job, row, index, parameters),
    ],
  };
}

/** On a row of a kit, what now differs from what the kit gives is set by hand, and is kept when the kit changes. */
function noteOverrides(job: Job, row: Row, index: number, next: JsonObject): readonly PatchOperation[] {
  const overrides = overridesOf(job, row, next);
  if (overrides === undefined) return [];
  return [{ op: 'add', path: pointerTo(['rows', index, 'overrides']), value: overrides }];
}

/**
 * A finding's remedy as a change of the job: its paths, relative to the row's parameters, are given their row.
 * @throws NoSuchRow
 */
export function applyRemedy(
  job: Job,
  rowId: string,
  remedy: { readonly says: string; readonly change: readonly PatchOperation[] },
): Change {
  const { row, index } = rowAt(job, rowId);
  const base = pointerTo(['rows', index, 'parameters']);
  return {
    says: remedy.says,
    patch: [
      onRow(index, row),
      ...remedy.change.map((operation) => rebase(operation, base)),
      ...remedyOverrides(job, row, index, remedy.change),
    ],
  };
}

/** A remedy sets by hand what it changes; one that cannot be applied is refused with the rest of its patch. */
function remedyOverrides(
  job: Job,
  row: Row,
  index: number,
  change: readonly PatchOperation[],
): readonly PatchOperation[] {
  if (row.kitId === undefined) return [];
  const next = freshJson(row.parameters);
  if (!isObject(next)) return [];
  try {
    for (const operation of change) applyOperation(next, operation);
  } catch (error) {
    if (error instanceof OperationProblem) return [];
    throw error;
  }
  return noteOverrides(job, row, index, next);
}

const rebase = (operation: PatchOperation, base: string): PatchOperation =>
  'from' in operation
    ? { ...operation, from: base + operation.from, path: base + operation.path }
    : { ...operation, path: base + operation.path };

function withMember(object: JsonObject, names: readonly string[], value: Json | undefined): JsonObject {
  const [name, ...rest] = names;
  if (name === undefined) return object;
  const before = object[name];
  const inner = rest.length === 0 ? value : withMember(isObject(before) ? before : {}, rest, value);
  const others = Object.fromEntries(Object.entries(object).filter(([other]) => other !== name));
  return inner === undefined ? others : { ...others, [name]: inner };
}

/** Appends a row. */
export function addRow(row: Row): Change {
  return { says: `Add ${row.name}`, patch: [{ op: 'add', path: '/rows/-', value: freshJson(row) }] };
}

/**
 * Takes a row out.
 * @throws NoSuchRow
 */
export function removeRow(job: Job, rowId: string): Change {
  const { row, index } = rowAt(job, rowId);
  return {
    says: `Remove ${row.name}`,
    patch: [onRow(index, row), { op: 'remove', path: pointerTo(['rows', index]) }],
  };
}

/**
 * A copy of a row right below it, under a new id and name.
 * @throws NoSuchRow
 */
export function duplicateRow(
  job: Job,
  rowId: string,
  as: { readonly id: string; readonly name: string },
): Change {
  const { row, index } = rowAt(job, rowId);
  return {
    says: `Duplicate ${row.name}`,
    patch: [
      onRow(index, row),
      { op: 'add', path: pointerTo(['rows', index + 1]), value: freshJson({ ...row, ...as }) },
    ],
  };
}

/**
 * Moves a row to another place in the cut list (0 is the top).
 * @throws NoSuchRow
 */
export function moveRow(job: Job, rowId: string, to: number): Change {
  const { row, index } = rowAt(job, rowId);
  return {
    says: `Move ${row.name}`,
    patch: [
      onRow(index, row),
      { op: 'move', from: pointerTo(['rows', index]), path: pointerTo(['rows', to]) },
    ],
  };
}

/** @throws NoSuchRow */
export function renameRow(job: Job, rowId: string, name: string): Change {
  return setRowMember(job, rowId, 'name', name, `Rename ${rowAt(job, rowId).row.name} to ${name}`);
}

/** @throws NoSuchRow */
export function setQuantity(job: Job, rowId: string, quantity: number): Change {
  return setRowMember(job, rowId, 'quantity', quantity, `Make ${quantity} of ${rowAt(job, rowId).row.name}`);
}

function setRowMember(
  job: Job,
  rowId: string,
  member: 'name' | 'quantity',
  value: Json,
  says: string,
): Change {
  const { row, index } = rowAt(job, rowId);
  const path = pointerTo(['rows', index, member]);
  return {
    says: says.slice(0, 200),
    patch: [onRow(index, row), test(path, row[member]), { op: 'replace', path, value }],
  };
}

export function renameJob(job: Job, name: string): Change {
  return {
    says: `Rename the job to ${name}`.slice(0, 200),
    patch: [test('/name', job.name), { op: 'replace', path: '/name', value: name }],
  };
}

/** The unit decides what a bare number means from now on; stored entries keep their metric values. */
export function setUnit(job: Job, unit: Unit): Change {
  return {
    says: `Use ${unit === 'mm' ? 'millimetres' : 'inches'}`,
    patch: [test('/unit', job.unit), { op: 'replace', path: '/unit', value: unit }],
  };
}

/**
 * Gives the job's drive a new set of entries, changing only what differs.
 * @example setDrive(job, { motorTeeth: 11 })
 */
export function setDrive(job: Job, drive: JsonObject): Change {
  const patch: readonly PatchOperation[] =
    job.drive === undefined
      ? [{ op: 'add', path: '/drive', value: freshJson(drive) }]
      : createPatch(job.drive, drive).map((operation) => rebase(operation, '/drive'));
  return { says: 'Set the drive', patch };
}

/**
 * The job as it is to be, changing only what differs. Format, version, id and revision stay.
 * @example replaceJob(job, { ...job, name: 'Cart' }).patch // test and replace of /name
 */
export function replaceJob(job: Job, next: Job): Change {
  const fixed = { format: job.format, version: job.version, id: job.id, revision: job.revision };
  return { says: 'Replace the job', patch: createPatch(freshJson(job), freshJson({ ...next, ...fixed })) };
}
