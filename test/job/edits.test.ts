// The edits that faces offer: each names its row by id and touches only what it says.
import { describe, expect, it } from 'vitest';
import {
  addRow,
  applyChange,
  applyRemedy,
  duplicateRow,
  moveRow,
  NoSuchRow,
  removeRow,
  renameRow,
  replaceParameters,
  setParameter,
  setQuantity,
  setUnit,
  type Change,
  type Job,
} from '../../parts-library/job/index.js';
import { exampleJob } from './example-job.js';

const after = (change: Change, job: Job = exampleJob): Job => {
  const result = applyChange(job, change);
  if (!result.ok) throw new Error(result.problem.says);
  return result.job;
};

const ids = (job: Job) => job.rows.map((row) => row.id);

describe('parameters', () => {
  it('are set by their dotted path', () => {
    const job = after(setParameter(exampleJob, 'adapter', 'pattern2.bolts', 6));
    expect(job.rows[0]?.parameters['pattern2']).toEqual({ bolts: 6 });
    expect(job.rows[0]?.parameters['bolts']).toBe(5);
  });

  it('make the group that they belong to', () => {
    const job = after(setParameter(exampleJob, 'bracket', 'pattern2.bolts', 6));
    expect(job.rows[1]?.parameters).toEqual({ thickness: 5, pattern2: { bolts: 6 } });
  });

  it('are taken away by undefined', () => {
    const job = after(setParameter(exampleJob, 'adapter', 'pattern2', undefined));
    expect(Object.keys(job.rows[0]?.parameters ?? {})).toEqual(['bolts', 'boltCircle']);
  });

  it('are replaced as a whole by the fewest operations', () => {
    const change = replaceParameters(exampleJob, 'adapter', { ...exampleJob.rows[0]?.parameters, bolts: 6 });
    expect(change.patch).toEqual([
      { op: 'test', path: '/rows/0/id', value: 'adapter' },
      { op: 'replace', path: '/rows/0/parameters/bolts', value: 6 },
    ]);
  });

  it('take the remedy of a finding', () => {
    const remedy = {
      says: 'Mark and drill',
      change: [{ op: 'add', path: '/holes', value: { kind: 'drill' } }] as const,
    };
    const change = applyRemedy(exampleJob, 'adapter', remedy);
    expect(change.says).toBe('Mark and drill');
    expect(after(change).rows[0]?.parameters['holes']).toEqual({ kind: 'drill' });
  });
});

describe('rows', () => {
  it('are added below the others', () => {
    const job = after(
      addRow({ id: 'new', family: 'bent-bracket', name: 'New', quantity: 1, parameters: {} }),
    );
    expect(ids(job)).toEqual(['adapter', 'bracket', 'new']);
  });

  it('are removed, moved, duplicated, renamed and counted', () => {
    expect(ids(after(removeRow(exampleJob, 'adapter')))).toEqual(['bracket']);
    expect(ids(after(moveRow(exampleJob, 'bracket', 0)))).toEqual(['bracket', 'adapter']);
    const twin = after(duplicateRow(exampleJob, 'adapter', { id: 'twin', name: 'Twin' }));
    expect(ids(twin)).toEqual(['adapter', 'twin', 'bracket']);
    expect(twin.rows[1]?.parameters).toEqual(exampleJob.rows[0]?.parameters);
    expect(after(renameRow(exampleJob, 'adapter', 'Plate')).rows[0]?.name).toBe('Plate');
    expect(after(setQuantity(exampleJob, 'adapter', 12)).rows[0]?.quantity).toBe(12);
  });

  it('are not touched when another row stands in their place by now', () => {
    const change = setQuantity(exampleJob, 'adapter', 12);
    const swapped = after(moveRow(exampleJob, 'bracket', 0));
    expect(applyChange(swapped, change)).toMatchObject({ ok: false, problem: { path: '/patch/0' } });
  });

  it('must exist', () => {
    expect(() => removeRow(exampleJob, 'gone')).toThrow(NoSuchRow);
    expect(() => removeRow(exampleJob, 'gone')).toThrow('it has adapter, bracket');
  });
});

describe('the unit', () => {
  it('is changed without touching a stored entry', () => {
    const job = after(setUnit(exampleJob, 'in'));
    expect(job.unit).toBe('in');
    expect(job.rows).toEqual(exampleJob.rows);
  });
});
