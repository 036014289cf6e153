// The job's edits with undo and redo: keystrokes in one field are one step, as a person counts them.
import { computed, signal, type ReadonlySignal } from '@preact/signals';
import {
  edit,
  reachOf,
  redo,
  undo,
  type Change,
  type HistoryEntry,
  type Job,
} from '../../parts-library/job/index.js';

export interface Edits {
  readonly job: ReadonlySignal<Job>;
  /** Makes a change; those that follow each other with the same `visit` count as one step of undo. */
  readonly make: (change: (job: Job) => Change, visit?: string) => EditOutcome;
  /** Ends the visit, so that the next keystroke starts a step of its own. */
  readonly endVisit: () => void;
  readonly undo: () => EditOutcome;
  readonly redo: () => EditOutcome;
  /** What undo and redo would do, in the words of the edit. */
  readonly canUndo: ReadonlySignal<string | undefined>;
  readonly canRedo: ReadonlySignal<string | undefined>;
  /** Takes another document as it is, for example the one that is stored; its history starts anew. */
  readonly replace: (job: Job) => void;
}

export type EditOutcome = { readonly ok: true } | { readonly ok: false; readonly says: string };

interface Visit {
  readonly name: string;
  readonly base: Job;
  readonly before: readonly HistoryEntry[];
}

/** Edits of one job, starting from the document given. */
export function createEdits(start: Job): Edits {
  const job = signal(start);
  const history = signal<readonly HistoryEntry[]>([]);
  const reach = computed(() => reachOf(history.value));
  let visit: Visit | undefined;

  const take = (step: ReturnType<typeof edit>, before: readonly HistoryEntry[]): EditOutcome => {
    if (!step.ok) return { ok: false, says: step.problem.says };
    history.value = [...before, step.entry];
    job.value = step.job;
    return { ok: true };
  };

  return {
    job,
    make: (change, name) => {
      const current = name === undefined || visit?.name !== name ? undefined : visit;
      const from: Visit = current ?? { name: name ?? '', base: job.value, before: history.value };
      visit = name === undefined ? undefined : from;
      // A visit is always one change from where it began; the revision still grows with every keystroke.
      const base = { ...from.base, revision: job.value.revision };
      return take(edit(base, change(base)), from.before);
    },
    endVisit: () => {
      visit = undefined;
    },
    undo: () => {
      visit = undefined;
      return take(undo(job.value, history.value), history.value);
    },
    redo: () => {
      visit = undefined;
      return take(redo(job.value, history.value), history.value);
    },
    canUndo: computed(() => reach.value.undo?.says),
    canRedo: computed(() => reach.value.redo?.says),
    replace: (next) => {
      visit = undefined;
      history.value = [];
      job.value = next;
    },
  };
}
