// Long work waiting its turn: enqueued, claimed for a time, reported on, finished or failed. A lost worker's task expires.
import { randomUUID } from 'node:crypto';
import type { Json } from '../../parts-library/model/index.js';
import type { Database } from './database.js';
import type { QueueTable } from './tables.js';

export interface Task {
  readonly id: string;
  readonly kind: string;
  readonly payload: Json;
  readonly state: 'queued' | 'running' | 'finished' | 'failed';
  readonly attempts: number;
  readonly progress?: Json;
  readonly result?: Json;
  readonly error?: string;
}

/**
 * Many machines could share this; only the calls are known outside, not what keeps them. A claim is a lease: whoever
 * does not report before it ends has lost the task, and its later reports are refused (false).
 */
export interface Queue {
  readonly enqueue: (
    kind: string,
    payload: Json,
    options?: { readonly mostAttempts?: number },
  ) => Promise<string>;
  /** The oldest task that waits or whose lease has ended. */
  readonly claim: (
    kinds: readonly string[],
    worker: string,
    leaseMilliseconds: number,
  ) => Promise<Task | undefined>;
  /** Reports how far it is, and renews the lease. */
  readonly progress: (
    id: string,
    worker: string,
    progress: Json,
    leaseMilliseconds: number,
  ) => Promise<boolean>;
  readonly finish: (id: string, worker: string, result: Json) => Promise<boolean>;
  /** Puts it back for another attempt, or gives it up after the last. */
  readonly fail: (id: string, worker: string, error: string) => Promise<boolean>;
  readonly find: (id: string) => Promise<Task | undefined>;
}

const ATTEMPTS = 3;

/** @param clock milliseconds since 1970 */
export function createQueue(database: Database, clock: () => number): Queue {
  const held = (id: string, worker: string) =>
    database
      .updateTable('queue')
      .where('id', '=', id)
      .where('worker', '=', worker)
      .where('state', '=', 'running')
      .where('lease_until', '>', clock());
  const wasHeld = ({ numUpdatedRows }: { readonly numUpdatedRows: bigint }): boolean => numUpdatedRows === 1n;

  return {
    enqueue: async (kind, payload, options = {}) => {
      const id = randomUUID();
      await database
        .insertInto('queue')
        .values({
          id,
          kind,
          payload: JSON.stringify(payload),
          state: 'queued',
          attempts: 0,
          most_attempts: options.mostAttempts ?? ATTEMPTS,
          worker: null,
          lease_until: null,
          progress: null,
          result: null,
          error: null,
          enqueued_at: clock(),
        })
        .execute();
      return id;
    },

    claim: (kinds, worker, leaseMilliseconds) =>
      database.transaction().execute(async (transaction) => {
        const now = clock();
        // A task that was lost on its last attempt is given up.
        await transaction
          .updateTable('queue')
          .set({
            state: 'failed',
            error: 'The worker was lost on the last attempt.',
            worker: null,
            lease_until: null,
          })
          .where('state', '=', 'running')
          .where('lease_until', '<=', now)
          .whereRef('attempts', '>=', 'most_attempts')
          .execute();
        const next = await transaction
          .selectFrom('queue')
          .selectAll()
          .where('kind', 'in', [...kinds])
          .where((where) =>
            where.or([
              where('state', '=', 'queued'),
              where.and([where('state', '=', 'running'), where('lease_until', '<=', now)]),
            ]),
          )
          .orderBy('enqueued_at')
          .orderBy('id')
          .executeTakeFirst();
        if (next === undefined) return undefined;
        const claimed = {
          state: 'running',
          worker,
          attempts: next.attempts + 1,
          lease_until: now + leaseMilliseconds,
        } as const;
        await transaction.updateTable('queue').set(claimed).where('id', '=', next.id).execute();
        return toTask({ ...next, ...claimed });
      }),

    progress: async (id, worker, progress, leaseMilliseconds) =>
      wasHeld(
        await held(id, worker)
          .set({ progress: JSON.stringify(progress), lease_until: clock() + leaseMilliseconds })
          .executeTakeFirst(),
      ),

    finish: async (id, worker, result) =>
      wasHeld(
        await held(id, worker)
          .set({ state: 'finished', result: JSON.stringify(result), worker: null, lease_until: null })
          .executeTakeFirst(),
      ),

    fail: async (id, worker, error) =>
      wasHeld(
        await held(id, worker)
          .set((expression) => ({
            state: expression
              .case()
              .when('attempts', '>=', expression.ref('most_attempts'))
              .then('failed' as const)
              .else('queued' as const)
              .end(),
            error,
            worker: null,
            lease_until: null,
          }))
          .executeTakeFirst(),
      ),

    find: async (id) => {
      const row = await database.selectFrom('queue').selectAll().where('id', '=', id).executeTakeFirst();
      return row === undefined ? undefined : toTask(row);
    },
  };
}

function toTask(row: QueueTable): Task {
  const { id, kind, payload, state, attempts, progress, result, error } = row;
  return {
    id,
    kind,
    payload: JSON.parse(payload),
    state,
    attempts,
    ...(progress === null ? {} : { progress: JSON.parse(progress) }),
    ...(result === null ? {} : { result: JSON.parse(result) }),
    ...(error === null ? {} : { error }),
  };
}
