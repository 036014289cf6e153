// Kits in a job: rows that follow one set of numbers, and what a person has set by hand on one of them.
import { createPatch } from 'rfc6902';
import { findKit, type Joint, type KitReading, type Member } from '../kits/index.js';
import type { Derived, Finding, Json, JsonObject } from '../model/index.js';
import { findFamily, type FieldProblem } from '../parts/index.js';
import type { Unit } from '../units/index.js';
import { canonicalJson } from './canonical.js';
import type { Change } from './change.js';
import { createFormat } from './format.js';
import { freshJson, isObject } from './json-guard.js';
import type { Job, KitUse, Row } from './types.js';

/** A kit worked out: its members, and what follows from the numbers. */
export interface ExpandedKit {
  /** As read, ready to store. */
  readonly numbers: JsonObject;
  readonly members: readonly Member[];
  readonly joints: readonly Joint[];
  readonly derived: readonly Derived[];
  readonly findings: readonly Finding[];
}

export type KitAnswer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly FieldProblem[] };

/** A kit's numbers read and worked out, or the numbers that stand in the way. */
export function expandKit(kitId: string, numbers: unknown, unit: Unit): KitAnswer<ExpandedKit> {
  const kit = findKit(kitId);
  if (kit === undefined) return refuse('kit', `There is no kit "${kitId}".`);
  const reading = kit.read(numbers, unit);
  return reading.ok ? { ok: true, value: expandReading(reading.value, unit) } : reading;
}

const refuse = (
  field: string,
  says: string,
): { readonly ok: false; readonly problems: readonly FieldProblem[] } => ({
  ok: false,
  problems: [{ field, says }],
});

function expandReading(reading: KitReading, unit: Unit): ExpandedKit {
  const context = { format: createFormat(unit) };
  const { value: members, findings } = reading.expand(context);
  return {
    numbers: reading.numbers,
    members,
    joints: reading.joints(members),
    derived: reading.derived(context),
    findings,
  };
}

const plain = (value: unknown): JsonObject => {
  const json = freshJson(value);
  return isObject(json) ? json : {};
};

/** A member's parameters with what was set by hand over them; `null` by hand leaves a parameter out. */
function withOverrides(member: Member, overrides: JsonObject | undefined): JsonObject {
  const merged: JsonObject = { ...plain(member.parameters), ...overrides };
  return Object.fromEntries(Object.entries(merged).filter(([, value]) => value !== null));
}

/** Rows of a kit after its numbers changed: rows keep their names, roles that are gone go, new ones stand last. */
function rowsFor(job: Job, use: KitUse, members: readonly Member[]): readonly Row[] {
  const mine = job.rows.filter(({ kitId }) => kitId === use.id);
  const last = job.rows.findLastIndex(({ kitId }) => kitId === use.id);
  const made = members
    .filter(({ role }) => !mine.some((row) => row.role === role))
    .map((member): Row => ({
      id: `${use.id}.${member.role}`,
      family: member.family,
      name: member.name,
      quantity: member.quantity,
      parameters: plain(member.parameters),
      kitId: use.id,
      role: member.role,
    }));
  const followed = (row: Row): readonly Row[] => {
    if (row.kitId !== use.id) return [row];
    const member = members.find(({ role }) => role === row.role);
    if (member === undefined) return [];
    return [
      {
        ...row,
        family: member.family,
        quantity: member.quantity,
        parameters: withOverrides(member, row.overrides),
      },
    ];
  };
  if (last < 0) return [...job.rows, ...made];
  return job.rows.flatMap((row, index) => (index === last ? [...followed(row), ...made] : followed(row)));
}

/** The change from a job to the same with other kits and rows. */
const changeTo = (job: Job, says: string, kits: readonly KitUse[], rows: readonly Row[]): Change => ({
  says: says.slice(0, 200),
  patch: createPatch({ kits: job.kits, rows: job.rows }, freshJson({ kits, rows })),
});

/**
 * Adds a kit and its rows.
 * @param use id unique in the job; `numbers` as typed or as stored
 */
export function addKit(
  job: Job,
  use: Omit<KitUse, 'numbers'> & { readonly numbers: unknown },
): KitAnswer<Change> {
  if (job.kits.some(({ id }) => id === use.id)) return refuse('kit', `There is a kit "${use.id}" already.`);
  const expanded = expandKit(use.kit, use.numbers, job.unit);
  if (!expanded.ok) return expanded;
  const added: KitUse = { ...use, numbers: expanded.value.numbers };
  const rows = rowsFor(job, added, expanded.value.members);
  return { ok: true, value: changeTo(job, `Add ${use.name}`, [...job.kits, added], rows) };
}

/** Sets a kit's numbers: every row follows, except where something was set by hand. */
export function setKitNumbers(job: Job, kitId: string, numbers: unknown): KitAnswer<Change> {
  const use = job.kits.find(({ id }) => id === kitId);
  if (use === undefined) return refuse('kit', `There is no kit "${kitId}" in this job.`);
  const expanded = expandKit(use.kit, numbers, job.unit);
  if (!expanded.ok) return expanded;
  const next: KitUse = { ...use, numbers: expanded.value.numbers };
  const kits = job.kits.map((one) => (one.id === kitId ? next : one));
  return {
    ok: true,
    value: changeTo(job, `Set the numbers of ${use.name}`, kits, rowsFor(job, next, expanded.value.members)),
  };
}

/** Takes a kit out with all its rows. */
export function removeKit(job: Job, kitId: string): Change {
  const name = job.kits.find(({ id }) => id === kitId)?.name ?? kitId;
  return changeTo(
    job,
    `Remove ${name}`,
    job.kits.filter(({ id }) => id !== kitId),
    job.rows.filter((row) => row.kitId !== kitId),
  );
}

/** What the kit of a row makes of its parameters, or undefined for a row of its own. */
function memberOf(job: Job, row: Row): Member | undefined {
  const use = job.kits.find(({ id }) => id === row.kitId);
  if (use === undefined) return undefined;
  const expanded = expandKit(use.kit, use.numbers, job.unit);
  return expanded.ok ? expanded.value.members.find(({ role }) => role === row.role) : undefined;
}

/** Parameters as the family understands them: two ways of typing one value are the same. */
function understood(family: string, parameters: unknown, unit: Unit): JsonObject {
  const reading = findFamily(family)?.read(parameters, unit);
  return reading?.ok === true ? reading.value.parameters : plain(parameters);
}

/** A value without how it was typed: 6 and 6 mm say the same. */
function bare(value: Json | undefined): Json {
  if (Array.isArray(value)) return value.map(bare);
  if (!isObject(value)) return value ?? null;
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, inner]) =>
      name === 'typed' ? [] : [[name, bare(inner)] as const],
    ),
  );
}

/**
 * What on a row of a kit differs from what the kit gives: set by hand, and no longer following. Undefined for a row
 * of its own.
 */
export function overridesOf(job: Job, row: Row, next: JsonObject): JsonObject | undefined {
  const member = memberOf(job, row);
  if (member === undefined) return undefined;
  const given = understood(member.family, member.parameters, job.unit);
  const now = understood(member.family, next, job.unit);
  const names = new Set([...Object.keys(given), ...Object.keys(now)]);
  return Object.fromEntries(
    [...names].flatMap((name) =>
      canonicalJson(bare(given[name])) === canonicalJson(bare(now[name]))
        ? []
        : [[name, next[name] ?? null] as const],
    ),
  );
}

/** Lets a parameter that was set by hand follow the kit again. */
export function followKit(job: Job, rowId: string, parameter: string): KitAnswer<Change> {
  const row = job.rows.find(({ id }) => id === rowId);
  const member = row === undefined ? undefined : memberOf(job, row);
  if (row === undefined || member === undefined) return refuse(parameter, 'This part follows no kit.');
  const overrides = Object.fromEntries(
    Object.entries(row.overrides ?? {}).filter(([name]) => name !== parameter),
  );
  const next: Row = { ...row, overrides, parameters: withOverrides(member, overrides) };
  const rows = job.rows.map((one) => (one.id === rowId ? next : one));
  return {
    ok: true,
    value: changeTo(job, `${row.name}: ${parameter} follows the kit again`, job.kits, rows),
  };
}
