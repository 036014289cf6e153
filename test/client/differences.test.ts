// Two versions of a job side by side: only what differs, in words.
import { describe, expect, it } from 'vitest';
import { differences } from '../../client/sheet/differences.js';
import { createDemoJob, type Job } from '../../parts-library/job/index.js';

const demo = createDemoJob({
  library: '0',
  chartVersion: '0',
  shopRevision: 0,
  seed: 1,
  lanes: 1,
  iterations: 0,
});

const withHub = (hub: string): Job => ({
  ...demo,
  rows: demo.rows.map((row, index) =>
    index === 0 ? { ...row, parameters: { ...row.parameters, hub } } : row,
  ),
});

describe('what two versions differ in', () => {
  it('is nothing between a job and itself', () => {
    expect(differences(demo, demo)).toEqual([]);
  });

  it('names the field as the list does', () => {
    expect(differences(withHub('60'), withHub('61'))).toEqual([
      { what: 'Sprocket adapter: hub outside', mine: '60', theirs: '61' },
    ]);
  });

  it('names a part that only one of them has', () => {
    const shorter: Job = { ...demo, rows: demo.rows.slice(0, 1) };
    expect(differences(demo, shorter)).toEqual([
      { what: 'Motor bracket', mine: 'in the cut list', theirs: 'not there' },
    ]);
  });
});
