// Undo and redo as changes of their own: which entry of a job's history is next, and why there may be none.
import { applyChange, type Applied, type Change } from './change.js';
import type { Job } from './types.js';

/** One step of a job's history, oldest first. */
export interface HistoryEntry {
  /** The job's revision after it. */
  readonly revision: number;
  readonly kind: 'edit' | 'undo' | 'redo';
  readonly change: Change;
  readonly inverse: Change;
}

export type Step =
  | {
      readonly ok: true;
      readonly job: Job;
      /** To be appended to the history. */
      readonly entry: HistoryEntry;
    }
  | { readonly ok: false; readonly problem: { readonly path: string; readonly says: string } };

interface Stacks {
  readonly done: readonly HistoryEntry[];
  readonly undone: readonly HistoryEntry[];
}

/** Replays which edits are in force and which were taken back; a new edit forgets what was taken back. */
function stacksOf(history: readonly HistoryEntry[]): Stacks {
  const done: HistoryEntry[] = [];
  const undone: HistoryEntry[] = [];
  for (const entry of history) {
    if (entry.kind === 'edit') {
      done.push(entry);
      undone.length = 0;
    } else {
      const [from, to] = entry.kind === 'undo' ? [done, undone] : [undone, done];
      const moved = from.pop();
      if (moved !== undefined) to.push(moved);
    }
  }
  return { done, undone };
}

/** What undo and redo would do now, for the words on their buttons. */
export function reachOf(history: readonly HistoryEntry[]): {
  readonly undo?: Change;
  readonly redo?: Change;
} {
  const { done, undone } = stacksOf(history);
  const last = done.at(-1)?.change;
  const next = undone.at(-1)?.change;
  return {
    ...(last === undefined || last.fact === true ? {} : { undo: last }),
    ...(next === undefined ? {} : { redo: next }),
  };
}

/** Makes an edit and its entry. */
export function edit(job: Job, change: unknown): Step {
  return toStep('edit', applyChange(job, change));
}

/**
 * Takes back the last edit that is in force. Stops at a physical fact: what was cut stays cut.
 * @returns the job with its revision one higher and the entry to append, or why there is nothing to undo
 */
export function undo(job: Job, history: readonly HistoryEntry[]): Step {
  const last = stacksOf(history).done.at(-1);
  if (last === undefined) return refuse('There is nothing to undo.');
  if (last.change.fact === true) {
    return refuse(
      `"${last.change.says}" happened in the shop and cannot be undone; correct it by a new entry.`,
    );
  }
  return toStep('undo', applyChange(job, last.inverse));
}

/** Makes the last undone edit again. */
export function redo(job: Job, history: readonly HistoryEntry[]): Step {
  const next = stacksOf(history).undone.at(-1);
  return next === undefined
    ? refuse('There is nothing to redo.')
    : toStep('redo', applyChange(job, next.change));
}

const refuse = (says: string): Step => ({ ok: false, problem: { path: '', says } });

function toStep(kind: HistoryEntry['kind'], applied: Applied): Step {
  if (!applied.ok) return applied;
  const { job, change, inverse } = applied;
  return { ok: true, job, entry: { revision: job.revision, kind, change, inverse } };
}
