// The drive of a job: stored with it, edited like everything else, and taken back again.
import { describe, expect, it } from 'vitest';
import { createDemoJob, edit, openJob, setDrive, undo } from '../../parts-library/job/index.js';
import { runDrive } from '../../server/drive.js';
import { exampleJob } from './example-job.js';

describe('the drive of a job', () => {
  it('is set as a whole and then changed by the fewest operations', () => {
    const first = edit(exampleJob, setDrive(exampleJob, { motorTeeth: 12, chain: '40' }));
    expect(first.ok).toBe(true);
    if (!first.ok) return;
    expect(first.job.drive).toEqual({ motorTeeth: 12, chain: '40' });
    const change = setDrive(first.job, { motorTeeth: 11, chain: '40' });
    expect(change.patch).toEqual([{ op: 'replace', path: '/drive/motorTeeth', value: 11 }]);
    const second = edit(first.job, change);
    if (!second.ok) throw new Error(second.problem.says);
    const back = undo(second.job, [first.entry, second.entry]);
    if (!back.ok) throw new Error(back.problem.says);
    expect(back.job.drive).toEqual({ motorTeeth: 12, chain: '40' });
  });

  it('comes back from the store as it went in; a job without one has none', () => {
    const job = createDemoJob(exampleJob.computedWith);
    const opened = openJob(JSON.parse(JSON.stringify(job)));
    expect(opened.ok && opened.job.drive).toEqual(job.drive);
    const plain = openJob(JSON.parse(JSON.stringify(exampleJob)));
    expect(plain.ok && 'drive' in plain.job).toBe(false);
  });

  it('of the demo cart can be worked out in either unit, and means the same', () => {
    const { drive } = createDemoJob(exampleJob.computedWith);
    const [metric, inch] = (['mm', 'in'] as const).map((unit) => runDrive(drive, unit));
    expect(metric?.ok && inch?.ok).toBe(true);
    if (metric?.ok !== true || inch?.ok !== true) return;
    expect(inch.value.parameters).toEqual(metric.value.parameters);
    expect(metric.value.findings.filter(({ level }) => level === 'stop')).toEqual([]);
    expect(metric.value.chain?.name).toBe('08B');
  });
});
