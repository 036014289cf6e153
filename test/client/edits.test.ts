// Undo as a person counts it: one visit to a field is one step.
import { describe, expect, it } from 'vitest';
import { createEdits } from '../../client/state/edits.js';
import {
  addRow,
  applyChange,
  createJob,
  renameJob,
  setParameter,
  type Job,
} from '../../parts-library/job/index.js';

function jobWithRow(): Job {
  const empty = createJob({
    id: 'cart',
    name: 'Orchard cart',
    unit: 'mm',
    computedWith: { library: '0', chartVersion: '0', shopRevision: 0, seed: 1, lanes: 1, iterations: 0 },
  });
  const added = applyChange(
    empty,
    addRow({
      id: 'adapter',
      family: 'adapter-plate',
      name: 'Adapter',
      quantity: 1,
      parameters: { hub: '57' },
    }),
  );
  if (!added.ok) throw new Error(added.problem.says);
  return added.job;
}

describe('undo', () => {
  it('takes back all keystrokes of one visit at once', () => {
    const edits = createEdits(jobWithRow());
    for (const text of ['5', '58', '58.5']) {
      edits.make((job) => setParameter(job, 'adapter', 'hub', text), 'entry hub');
    }
    expect(edits.job.value.rows[0]?.parameters['hub']).toBe('58.5');
    edits.undo();
    expect(edits.job.value.rows[0]?.parameters['hub']).toBe('57');
    expect(edits.canUndo.value).toBeUndefined();
    edits.redo();
    expect(edits.job.value.rows[0]?.parameters['hub']).toBe('58.5');
  });

  it('counts a second visit to the same field as a second step', () => {
    const edits = createEdits(jobWithRow());
    edits.make((job) => setParameter(job, 'adapter', 'hub', '58'), 'entry hub');
    edits.endVisit();
    edits.make((job) => setParameter(job, 'adapter', 'hub', '59'), 'entry hub');
    edits.undo();
    expect(edits.job.value.rows[0]?.parameters['hub']).toBe('58');
  });

  it('the revision grows with every keystroke and never goes back', () => {
    const edits = createEdits(jobWithRow());
    const seen = [edits.job.value.revision];
    const note = () => seen.push(edits.job.value.revision);
    edits.make((job) => renameJob(job, 'Haul cart'), 'name');
    note();
    edits.make((job) => renameJob(job, 'Haul carts'), 'name');
    note();
    edits.undo();
    note();
    expect(seen).toEqual([1, 2, 3, 4]);
  });

  it('refuses with a sentence when there is nothing to undo', () => {
    const edits = createEdits(jobWithRow());
    expect(edits.undo()).toMatchObject({ ok: false, says: 'There is nothing to undo.' });
  });
});
