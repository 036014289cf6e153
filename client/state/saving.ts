// Autosave: every edit reaches the store a moment later, and the page always says whether it has.
import { effect, signal, untracked, type ReadonlySignal } from '@preact/signals';
import type { Job } from '../../parts-library/job/index.js';

export type PutOutcome =
  | { readonly kind: 'saved'; readonly tag: string }
  /** Somebody else saved since; this is what stands in the store. */
  | { readonly kind: 'conflict'; readonly theirs: Job; readonly tag: string }
  | { readonly kind: 'away' }
  | { readonly kind: 'refused'; readonly says: string };

/** Sends the job on the condition that the store still holds the version with this tag. */
export type Put = (job: Job, tag: string) => Promise<PutOutcome>;

export type SaveState =
  | { readonly kind: 'saved' }
  | { readonly kind: 'waiting' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'away' }
  | { readonly kind: 'refused'; readonly says: string }
  | { readonly kind: 'conflict'; readonly theirs: Job; readonly tag: string };

export interface Saver {
  readonly state: ReadonlySignal<SaveState>;
  /** Sends at once what has not been sent, for example when the page closes or the connection is back. */
  readonly flush: () => Promise<void>;
  /** After a conflict: keep this page's job over the stored one. */
  readonly keepMine: () => Promise<void>;
  /** After a conflict, or whenever the stored document is taken over: it counts as saved. */
  readonly tookTheirs: (job: Job, tag: string) => void;
  readonly stop: () => void;
}

/** Keystrokes closer together than this are saved together. Milliseconds. */
const PAUSE = 500;
/** When the server is away: first and longest wait before the next try. Milliseconds. */
const FIRST_RETRY = 2_000;
const LONGEST_RETRY = 30_000;

/** Watches `job` and keeps the store in step. `tag` is the version that `job` was loaded as. */
export function createSaver(job: ReadonlySignal<Job>, tag: string, put: Put): Saver {
  const state = signal<SaveState>({ kind: 'saved' });
  let savedTag = tag;
  let saved = job.value;
  let retry = FIRST_RETRY;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let sending: Promise<void> | undefined;

  const later = (milliseconds: number): void => {
    clearTimeout(timer);
    timer = setTimeout(() => void flush(), milliseconds);
  };

  const send = async (): Promise<void> => {
    const sent = job.peek();
    state.value = { kind: 'saving' };
    const outcome = await put(sent, savedTag);
    if (outcome.kind === 'saved') {
      savedTag = outcome.tag;
      saved = sent;
      retry = FIRST_RETRY;
      state.value = { kind: job.peek() === sent ? 'saved' : 'waiting' };
      if (job.peek() !== sent) later(0);
    } else if (outcome.kind === 'away') {
      state.value = { kind: 'away' };
      later(retry);
      retry = Math.min(LONGEST_RETRY, retry * 2);
    } else state.value = outcome;
  };

  const flush = async (): Promise<void> => {
    clearTimeout(timer);
    if (sending !== undefined) await sending;
    if (job.peek() === saved || state.peek().kind === 'conflict') return;
    sending = send().finally(() => {
      sending = undefined;
    });
    await sending;
  };

  const stopWatching = effect(() => {
    const current = job.value;
    untracked(() => {
      if (current === saved || state.value.kind === 'conflict') return;
      if (state.value.kind !== 'away' && state.value.kind !== 'saving') state.value = { kind: 'waiting' };
      if (state.value.kind !== 'away') later(PAUSE);
    });
  });

  return {
    state,
    flush,
    keepMine: async () => {
      const conflict = state.peek();
      if (conflict.kind !== 'conflict') return;
      savedTag = conflict.tag;
      state.value = { kind: 'waiting' };
      await flush();
    },
    tookTheirs: (theirs, theirTag) => {
      saved = theirs;
      savedTag = theirTag;
      state.value = { kind: 'saved' };
    },
    stop: () => {
      clearTimeout(timer);
      stopWatching();
    },
  };
}
