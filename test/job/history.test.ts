// Undo and redo: changes of their own, in order, stopping at what happened in the shop.
import { describe, expect, it } from 'vitest';
import {
  edit,
  reachOf,
  redo,
  renameJob,
  setQuantity,
  undo,
  type HistoryEntry,
  type Job,
  type Step,
} from '../../parts-library/job/index.js';
import { exampleJob } from './example-job.js';

/** Takes steps one after another, each on the job and the history that the others left. */
function walk(...steps: readonly ((job: Job, history: readonly HistoryEntry[]) => Step)[]) {
  let job = exampleJob;
  const history: HistoryEntry[] = [];
  for (const step of steps) {
    const taken = step(job, history);
    if (!taken.ok) throw new Error(taken.problem.says);
    job = taken.job;
    history.push(taken.entry);
  }
  return { job, history };
}

const rename = (name: string) => (job: Job) => edit(job, renameJob(job, name));
const cut = (job: Job) =>
  edit(job, { says: 'Plate cut', patch: [{ op: 'remove', path: '/plates/0' }], fact: true });

describe('undo and redo', () => {
  it('walk back and forth through the edits, each as a new revision', () => {
    const { job, history } = walk(rename('A'), rename('B'), undo, undo, redo);
    expect(job.name).toBe('A');
    expect(job.revision).toBe(exampleJob.revision + 5);
    expect(history.map((entry) => [entry.kind, entry.revision])).toEqual([
      ['edit', 8],
      ['edit', 9],
      ['undo', 10],
      ['undo', 11],
      ['redo', 12],
    ]);
  });

  it('give back the job they started from', () => {
    const { job } = walk(rename('A'), (at) => edit(at, setQuantity(at, 'adapter', 9)), undo, undo);
    expect({ ...job, revision: 0 }).toEqual({ ...exampleJob, revision: 0 });
  });

  it('forget what was undone once something else is edited', () => {
    const { job, history } = walk(rename('A'), undo, rename('B'));
    expect(redo(job, history)).toMatchObject({ ok: false, problem: { says: 'There is nothing to redo.' } });
  });

  it('say what they would do', () => {
    const { history } = walk(rename('A'), rename('B'), undo);
    expect(reachOf(history).undo?.says).toBe('Rename the job to A');
    expect(reachOf(history).redo?.says).toBe('Rename the job to B');
    expect(reachOf([])).toEqual({});
  });

  it('stop at a physical fact', () => {
    const { job, history } = walk(rename('A'), cut);
    const refused = undo(job, history);
    expect(refused.ok).toBe(false);
    expect(!refused.ok && refused.problem.says).toContain('"Plate cut" happened in the shop');
    expect(reachOf(history).undo).toBeUndefined();
  });

  it('undo what came after a fact, but not beyond it', () => {
    const { job, history } = walk(rename('A'), cut, rename('B'), undo);
    expect(job.name).toBe('A');
    expect(undo(job, history).ok).toBe(false);
  });

  it('refuse when the job has been changed elsewhere at the same place', () => {
    const { history } = walk(rename('A'));
    const elsewhere: Job = { ...exampleJob, name: 'C', revision: 9 };
    expect(undo(elsewhere, history)).toMatchObject({ ok: false, problem: { path: '/patch/0' } });
  });
});
