// Autosave: what is on screen reaches the store, and the page says truly whether it has.
import { signal } from '@preact/signals';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createSaver, type PutOutcome } from '../../client/state/saving.js';
import { createJob, type Job } from '../../parts-library/job/index.js';

const start = createJob({
  id: 'cart',
  name: 'Orchard cart',
  unit: 'mm',
  computedWith: { library: '0', chartVersion: '0', shopRevision: 0, seed: 1, lanes: 1, iterations: 0 },
});

const named = (name: string): Job => ({ ...start, name, revision: start.revision + 1 });

/** A store that answers as it is told, and remembers what it was sent. */
function store(...answers: readonly PutOutcome[]) {
  const sent: { readonly name: string; readonly tag: string }[] = [];
  const left = [...answers];
  return {
    sent,
    put: async (job: Job, tag: string): Promise<PutOutcome> => {
      sent.push({ name: job.name, tag });
      return left.shift() ?? { kind: 'saved', tag: 'later' };
    },
  };
}

describe('autosave', () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  it('saves a moment after the last of several keystrokes, once', async () => {
    const job = signal(start);
    const { sent, put } = store({ kind: 'saved', tag: 'v2' });
    const saver = createSaver(job, 'v1', put);
    expect(saver.state.value.kind).toBe('saved');
    job.value = named('Orchard c');
    job.value = named('Orchard ca');
    expect(saver.state.value.kind).toBe('waiting');
    await vi.runAllTimersAsync();
    expect(sent).toEqual([{ name: 'Orchard ca', tag: 'v1' }]);
    expect(saver.state.value.kind).toBe('saved');
  });

  it('keeps trying while the server is away, and then saves what stands there by then', async () => {
    const job = signal(start);
    const { sent, put } = store({ kind: 'away' }, { kind: 'away' }, { kind: 'saved', tag: 'v2' });
    const saver = createSaver(job, 'v1', put);
    job.value = named('first');
    await vi.advanceTimersByTimeAsync(600);
    expect(saver.state.value.kind).toBe('away');
    job.value = named('second');
    expect(saver.state.value.kind).toBe('away');
    await vi.runAllTimersAsync();
    expect(sent.map(({ name }) => name)).toEqual(['first', 'second', 'second']);
    expect(saver.state.value.kind).toBe('saved');
  });

  it('a conflict shows what stands in the store, and keeping mine saves over it', async () => {
    const job = signal(start);
    const theirs = named('theirs');
    const { sent, put } = store({ kind: 'conflict', theirs, tag: 'v7' }, { kind: 'saved', tag: 'v8' });
    const saver = createSaver(job, 'v1', put);
    job.value = named('mine');
    await vi.runAllTimersAsync();
    expect(saver.state.value).toEqual({ kind: 'conflict', theirs, tag: 'v7' });
    await saver.keepMine();
    expect(sent.at(-1)).toEqual({ name: 'mine', tag: 'v7' });
    expect(saver.state.value.kind).toBe('saved');
  });

  it('nothing is sent while a conflict waits for a person', async () => {
    const job = signal(start);
    const { sent, put } = store({ kind: 'conflict', theirs: named('theirs'), tag: 'v7' });
    createSaver(job, 'v1', put);
    job.value = named('mine');
    await vi.runAllTimersAsync();
    job.value = named('mine again');
    await vi.runAllTimersAsync();
    expect(sent).toHaveLength(1);
  });

  it('what is typed while a save is on its way is saved after it', async () => {
    const job = signal(start);
    const sent: string[] = [];
    const saver = createSaver(job, 'v1', async (current) => {
      sent.push(current.name);
      if (sent.length === 1) job.value = named('typed meanwhile');
      return { kind: 'saved', tag: `v${sent.length + 1}` };
    });
    job.value = named('first');
    await vi.runAllTimersAsync();
    expect(sent).toEqual(['first', 'typed meanwhile']);
    expect(saver.state.value.kind).toBe('saved');
  });
});
