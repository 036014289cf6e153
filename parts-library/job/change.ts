// Changes: the one way in which a job is edited, as guarded RFC 6902 patches that carry their own undo.
import { z } from 'zod';
import type { PatchOperation } from '../model/index.js';
import { applyOperation, OperationProblem } from './apply-operation.js';
import { freshJson, guardJson, isObject } from './json-guard.js';
import { checkJob } from './open-job.js';
import { pointerTo, tokensOf } from './pointer.js';
import type { Job, JobProblem } from './types.js';

/** One edit. */
export interface Change {
  /** What was done, for the undo button and the history: `Set bolt circle of Adapter`. */
  readonly says: string;
  readonly patch: readonly PatchOperation[];
  /** True for what happened in the shop (a plate was cut, a run was logged): it cannot be undone. */
  readonly fact?: boolean;
}

export type Applied =
  | {
      readonly ok: true;
      readonly job: Job;
      /** The change with a `test` before each operation that takes something away; this is what a history keeps. */
      readonly change: Change;
      /** Applied to `job`, gives the job before (but the revision grows on). */
      readonly inverse: Change;
    }
  | { readonly ok: false; readonly problem: JobProblem };

/** Most operations in one change. */
const MOST_OPERATIONS = 1000;

/** Most copies in one change: each can double what is there. */
const MOST_COPIES = 16;

/** These name the document itself; no edit reaches them. */
const FIXED_MEMBERS: ReadonlySet<string> = new Set(['format', 'version', 'id', 'revision']);

const operationSchema = z.discriminatedUnion('op', [
  z.strictObject({ op: z.enum(['add', 'replace', 'test']), path: z.string(), value: z.json() }),
  z.strictObject({ op: z.literal('remove'), path: z.string() }),
  z.strictObject({ op: z.enum(['move', 'copy']), from: z.string(), path: z.string() }),
]);

/** The schema of a change as it comes over the network. */
export const changeSchema: z.ZodType<Change> = z.strictObject({
  says: z.string().min(1).max(200),
  patch: z
    .array(operationSchema)
    .max(MOST_OPERATIONS)
    .refine((patch) => patch.filter(({ op }) => op === 'copy').length <= MOST_COPIES, {
      error: `at most ${MOST_COPIES} copies are accepted in one change`,
    }),
  fact: z.boolean().exactOptional(),
});

/**
 * Applies a change to a job, or nothing of it.
 * @param job the job before; it is not touched
 * @param change what to do; it may come from anywhere, nothing is believed of it
 * @returns the job with its revision one higher, the change with its guards, and the inverse; or the first problem,
 * with the path of the operation (`/patch/0`) or of the place in the job that it would have broken
 * @example applyChange(job, { says: 'Rename', patch: [{ op: 'replace', path: '/name', value: 'Cart' }] })
 */
export function applyChange(job: Job, change: unknown): Applied {
  const guarded = guardJson(change);
  if (!guarded.ok) return guarded;
  const parsed = changeSchema.safeParse(guarded.value);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    return refuse(
      pointerTo((issue?.path ?? []).map(String)),
      `This is no change: ${issue?.message ?? 'not readable'}.`,
    );
  }
  const { patch, ...named } = parsed.data;
  const draft = freshJson(job);
  if (!isObject(draft)) return refuse('', 'This is no job.');
  const guardedPatch: PatchOperation[] = [];
  const undo: PatchOperation[] = [];
  for (const [index, operation] of patch.entries()) {
    try {
      keepOffFixedMembers(operation);
      const done = applyOperation(draft, operation);
      guardedPatch.push(...done.guard, operation);
      undo.unshift(...done.inverse);
    } catch (error) {
      if (error instanceof OperationProblem) return refuse(`/patch/${index}`, error.message);
      throw error;
    }
  }
  draft['revision'] = job.revision + 1;
  // A patch of many small copies can nest or grow what each of them alone may not.
  const bounded = guardJson(draft);
  if (!bounded.ok) return bounded;
  const checked = checkJob(bounded.value);
  if (!checked.ok)
    return { ok: false, problem: checked.problems[0] ?? { path: '', says: 'The result is no job.' } };
  return {
    ok: true,
    job: checked.job,
    change: { ...named, patch: guardedPatch },
    inverse: { ...named, patch: undo },
  };
}

const refuse = (path: string, says: string): Applied => ({ ok: false, problem: { path, says } });

function keepOffFixedMembers(operation: PatchOperation): void {
  if (operation.op === 'test') return;
  for (const path of operation.op === 'move' ? [operation.path, operation.from] : [operation.path]) {
    const first = tokensOf(path)?.[0];
    if (first !== undefined && FIXED_MEMBERS.has(first)) {
      throw new OperationProblem(`"${first}" belongs to the document and is not edited.`);
    }
  }
}
