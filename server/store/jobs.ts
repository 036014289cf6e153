// Jobs as stored: read, created, stepped from one revision to the next, deleted. Nothing is saved over a newer revision.
import {
  changeSchema,
  openJob,
  type HistoryEntry,
  type Job,
  type Step,
} from '../../parts-library/job/index.js';
import type { Change } from '../../parts-library/job/index.js';
import { StoreProblem, type Database } from './database.js';

export interface JobHead {
  readonly id: string;
  readonly name: string;
  readonly revision: number;
  readonly createdAt: string;
  readonly updatedAt: string;
}

/** What became of a step: taken, refused by the job itself, met by a newer revision, or there is no such job. */
export type StepResult =
  | { readonly outcome: 'saved'; readonly job: Job; readonly history: readonly HistoryEntry[] }
  | { readonly outcome: 'refused'; readonly problem: { readonly path: string; readonly says: string } }
  | { readonly outcome: 'conflict'; readonly current: Job }
  | { readonly outcome: 'missing' };

export interface JobStore {
  readonly list: () => Promise<readonly JobHead[]>;
  readonly find: (id: string) => Promise<Job | undefined>;
  readonly history: (id: string) => Promise<readonly HistoryEntry[]>;
  /** False when a job of that id is there already. */
  readonly create: (job: Job) => Promise<boolean>;
  /** Takes a step from a revision; the step is worked out from the job and history that are stored. */
  readonly step: (
    id: string,
    revision: number,
    take: (job: Job, history: readonly HistoryEntry[]) => Step,
  ) => Promise<StepResult>;
  readonly remove: (
    id: string,
    revision: number,
  ) => Promise<
    | { readonly outcome: 'removed' }
    | { readonly outcome: 'missing' }
    | { readonly outcome: 'conflict'; readonly current: Job }
  >;
}

/** Longest history that undo walks back; older entries are kept, but not read. */
const REACH = 500;

/** @param now the time as ISO 8601 text */
export function createJobStore(database: Database, now: () => string): JobStore {
  const find = async (id: string, from: Database = database): Promise<Job | undefined> => {
    const row = await from.selectFrom('job').select('document').where('id', '=', id).executeTakeFirst();
    return row === undefined ? undefined : readJob(id, row.document);
  };

  const history = async (id: string, from: Database = database): Promise<readonly HistoryEntry[]> => {
    const rows = await from
      .selectFrom('job_change')
      .select(['revision', 'kind', 'change', 'inverse'])
      .where('job_id', '=', id)
      .orderBy('revision', 'desc')
      .limit(REACH)
      .execute();
    return rows.toReversed().map(({ revision, kind, change, inverse }) => ({
      revision,
      kind,
      change: readChange(id, change),
      inverse: readChange(id, inverse),
    }));
  };

  return {
    find: (id) => find(id),
    history: (id) => history(id),

    list: async () => {
      const rows = await database
        .selectFrom('job')
        .select(['id', 'name', 'revision', 'created_at', 'updated_at'])
        .orderBy('updated_at', 'desc')
        .orderBy('id')
        .execute();
      return rows.map(({ id, name, revision, created_at, updated_at }) => ({
        id,
        name,
        revision,
        createdAt: created_at,
        updatedAt: updated_at,
      }));
    },

    create: async (job) => {
      const at = now();
      const { numInsertedOrUpdatedRows } = await database
        .insertInto('job')
        .values({
          id: job.id,
          revision: job.revision,
          name: job.name,
          document: JSON.stringify(job),
          created_at: at,
          updated_at: at,
        })
        .onConflict((conflict) => conflict.column('id').doNothing())
        .executeTakeFirst();
      return numInsertedOrUpdatedRows === 1n;
    },

    step: (id, revision, take) =>
      database.transaction().execute(async (transaction): Promise<StepResult> => {
        const current = await find(id, transaction);
        if (current === undefined) return { outcome: 'missing' };
        if (current.revision !== revision) return { outcome: 'conflict', current };
        const past = await history(id, transaction);
        const step = take(current, past);
        if (!step.ok) return { outcome: 'refused', problem: step.problem };
        const { job, entry } = step;
        await transaction
          .updateTable('job')
          .set({ revision: job.revision, name: job.name, document: JSON.stringify(job), updated_at: now() })
          .where('id', '=', id)
          .execute();
        await transaction
          .insertInto('job_change')
          .values({
            job_id: id,
            revision: entry.revision,
            kind: entry.kind,
            change: JSON.stringify(entry.change),
            inverse: JSON.stringify(entry.inverse),
            made_at: now(),
          })
          .execute();
        return { outcome: 'saved', job, history: [...past, entry] };
      }),

    remove: (id, revision) =>
      database.transaction().execute(async (transaction) => {
        const current = await find(id, transaction);
        if (current === undefined) return { outcome: 'missing' } as const;
        if (current.revision !== revision) return { outcome: 'conflict', current } as const;
        await transaction.deleteFrom('job').where('id', '=', id).execute();
        return { outcome: 'removed' } as const;
      }),
  };
}

/** A stored job is opened like any other: an older version is migrated, a spoilt one is named. */
function readJob(id: string, document: string): Job {
  const opened = openJob(JSON.parse(document));
  if (opened.ok) return opened.job;
  const [first] = opened.problems;
  throw new StoreProblem(`The stored job "${id}" cannot be read: ${first?.path ?? ''} ${first?.says ?? ''}`);
}

function readChange(id: string, text: string): Change {
  const parsed = changeSchema.safeParse(JSON.parse(text));
  if (parsed.success) return parsed.data;
  throw new StoreProblem(`The history of job "${id}" cannot be read: ${parsed.error.message}`);
}
