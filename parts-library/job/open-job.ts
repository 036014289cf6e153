// Opening and making jobs: a document from anywhere becomes a job, or a list of what is wrong with it.
import type { z } from 'zod';
import type { Json } from '../model/index.js';
import type { Unit } from '../units/index.js';
import { guardJson, isObject } from './json-guard.js';
import { migrate } from './migrate.js';
import { pointerTo } from './pointer.js';
import { jobSchema } from './schema.js';
import { JOB_FORMAT, JOB_VERSION, type ComputedWith, type Job, type JobProblem } from './types.js';

export type OpenedJob =
  | { readonly ok: true; readonly job: Job; readonly migratedFrom?: number }
  | { readonly ok: false; readonly problems: readonly JobProblem[] };

/** How many problems are worth reading at once. */
const MOST_PROBLEMS = 20;

/**
 * Opens a job document of this version or an older one.
 * @param json the parsed JSON, from a file, a store or the network; nothing is believed of it
 * @returns the job as a fresh value, with the version it was migrated from if it was older; or problems, each with
 * its place, what stands there and what is accepted
 * @example openJob({ format: 'fishplate-job', version: 99 }) // refused: made by a newer program
 */
export function openJob(json: unknown): OpenedJob {
  const guarded = guardJson(json);
  if (!guarded.ok) return { ok: false, problems: [guarded.problem] };
  const document = guarded.value;
  if (!isObject(document) || document['format'] !== JOB_FORMAT) {
    return {
      ok: false,
      problems: [
        { path: '/format', says: `This is no job; accepted is an object with "format": "${JOB_FORMAT}".` },
      ],
    };
  }
  const migrated = migrate(document);
  if (!migrated.ok) return { ok: false, problems: [migrated.problem] };
  const checked = checkJob(migrated.document);
  if (!checked.ok || migrated.from === JOB_VERSION) return checked;
  return { ok: true, job: checked.job, migratedFrom: migrated.from };
}

/** Checks a document of this version that is known to be plain JSON. */
export function checkJob(document: Json): OpenedJob {
  const parsed = jobSchema.safeParse(document);
  if (parsed.success) return { ok: true, job: parsed.data };
  return {
    ok: false,
    problems: parsed.error.issues.slice(0, MOST_PROBLEMS).map((issue) => wordIssue(issue, document)),
  };
}

const isList = (value: Json): value is readonly Json[] => Array.isArray(value);

function wordIssue(issue: z.core.$ZodIssue, document: Json): JobProblem {
  const tokens = issue.path.map(String);
  const path = pointerTo(tokens);
  if (issue.code === 'unrecognized_keys') {
    return {
      path,
      says: `There is no "${issue.keys.join('", "')}" here; accepted are the names of a version ${JOB_VERSION} job.`,
    };
  }
  return {
    path,
    says: `${path === '' ? 'The job' : path} is ${show(valueAt(document, tokens))}: ${issue.message}.`,
  };
}

function valueAt(document: Json, tokens: readonly string[]): Json | undefined {
  let value: Json | undefined = document;
  for (const token of tokens) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = isList(value) ? value[Number(token)] : value[token];
  }
  return value;
}

/** A value short enough to stand in a sentence. */
function show(value: Json | undefined): string {
  if (value === undefined) return 'missing';
  const text = JSON.stringify(value);
  return text.length <= 60 ? text : `${text.slice(0, 57)}...`;
}

/**
 * An empty job.
 * @param options the id, a name, the unit, and what results will be computed with
 * @example createJob({ id: 'cart', name: 'Orchard cart', unit: 'mm', computedWith }).rows.length // 0
 */
export function createJob(options: {
  readonly id: string;
  readonly name: string;
  readonly unit: Unit;
  readonly computedWith: ComputedWith;
}): Job {
  return {
    format: JOB_FORMAT,
    version: JOB_VERSION,
    id: options.id,
    name: options.name,
    revision: 0,
    unit: options.unit,
    rows: [],
    kits: [],
    plates: [],
    nests: [],
    choices: { process: [] },
    overrides: [],
    computedWith: options.computedWith,
  };
}
