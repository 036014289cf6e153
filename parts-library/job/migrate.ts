// Older job documents brought up to today's version, one step per version.
import type { Json, JsonObject } from '../model/index.js';
import { isObject } from './json-guard.js';
import { JOB_VERSION, type JobProblem } from './types.js';

/** Takes a document of one version to the next; what is wrong in it is left for the schema to say. */
type Migration = (document: JsonObject) => JsonObject;

/** A member under a new name, or nothing where the old one is absent. */
const moved = (from: JsonObject, oldName: string, newName: string): JsonObject => {
  const value = from[oldName];
  return value === undefined ? {} : { [newName]: value };
};

const without = (from: JsonObject, names: readonly string[]): JsonObject =>
  Object.fromEntries(Object.entries(from).filter(([name]) => !names.includes(name)));

/**
 * Version 0 kept only a cut list: `units` and `cutList` with a `count` per line. Version 1 names them `unit`, `rows`
 * and `quantity` and has room for kits, plates, nests, choices and overrides.
 */
const fromVersion0: Migration = (document) => {
  const cutList = document['cutList'];
  const rows = Array.isArray(cutList)
    ? cutList.map((line: Json): Json =>
        isObject(line) ? { ...without(line, ['count']), ...moved(line, 'count', 'quantity') } : line,
      )
    : cutList;
  return {
    ...without(document, ['units', 'cutList']),
    ...moved(document, 'units', 'unit'),
    ...(rows === undefined ? {} : { rows }),
    version: 1,
    kits: [],
    plates: [],
    nests: [],
    choices: { process: [] },
    overrides: [],
    computedWith: {
      library: 'unknown',
      chartVersion: 'unknown',
      shopRevision: 0,
      seed: 1,
      lanes: 1,
      iterations: 0,
    },
  };
};

/** Index is the version that a step starts from. */
const MIGRATIONS: readonly Migration[] = [fromVersion0];

export type Migrated =
  | { readonly ok: true; readonly document: JsonObject; readonly from: number }
  | { readonly ok: false; readonly problem: JobProblem };

/** Brings a document to this library's version; a newer one is refused untouched. */
export function migrate(document: JsonObject): Migrated {
  const version = document['version'];
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 0) {
    return refuse(
      `The version is ${JSON.stringify(version) ?? 'missing'}; accepted is a whole number from 0 to ${JOB_VERSION}.`,
    );
  }
  if (version > JOB_VERSION) {
    return refuse(
      `This job is version ${version}; this program reads up to version ${JOB_VERSION}. ` +
        'It was made by a newer program. Nothing was changed; open it with that program.',
    );
  }
  const migrated = MIGRATIONS.slice(version).reduce((current, step) => step(current), document);
  return { ok: true, document: migrated, from: version };
}

const refuse = (says: string): Migrated => ({ ok: false, problem: { path: '/version', says } });
