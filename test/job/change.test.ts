// Changes: each edit applies whole or not at all, and its inverse gives back the job before.
import * as fc from 'fast-check';
import { applyPatch, createPatch } from 'rfc6902';
import { describe, expect, it } from 'vitest';
import { applyChange, canonicalJson, openJob, type Change, type Job } from '../../parts-library/job/index.js';
import type { PatchOperation } from '../../parts-library/model/index.js';
import { exampleJob } from './example-job.js';

const change = (...patch: readonly PatchOperation[]): Change => ({ says: 'Edit', patch });

const applied = (job: Job, edit: Change) => {
  const result = applyChange(job, edit);
  if (!result.ok) throw new Error(`${result.problem.path} ${result.problem.says}`);
  return result;
};

const withoutRevision = (job: Job) => ({ ...job, revision: 0 });

describe('one change', () => {
  it('raises the revision by one and leaves the job before alone', () => {
    const before = canonicalJson(exampleJob);
    const { job } = applied(exampleJob, change({ op: 'replace', path: '/name', value: 'Cart' }));
    expect([job.revision, job.name]).toEqual([8, 'Cart']);
    expect(canonicalJson(exampleJob)).toBe(before);
  });

  it('is kept with a test of what it took away', () => {
    const { change: kept } = applied(
      exampleJob,
      change(
        { op: 'replace', path: '/name', value: 'Cart' },
        { op: 'remove', path: '/rows/0/parameters/bolts' },
      ),
    );
    expect(kept.patch).toEqual([
      { op: 'test', path: '/name', value: 'Orchard haul cart' },
      { op: 'replace', path: '/name', value: 'Cart' },
      { op: 'test', path: '/rows/0/parameters/bolts', value: 5 },
      { op: 'remove', path: '/rows/0/parameters/bolts' },
    ]);
  });

  it('has an inverse that also tests', () => {
    const { inverse } = applied(exampleJob, change({ op: 'replace', path: '/name', value: 'Cart' }));
    expect(inverse.patch).toEqual([
      { op: 'test', path: '/name', value: 'Cart' },
      { op: 'replace', path: '/name', value: 'Orchard haul cart' },
    ]);
  });

  it('is refused whole when a later operation fails', () => {
    const result = applyChange(
      exampleJob,
      change({ op: 'replace', path: '/name', value: 'Cart' }, { op: 'test', path: '/unit', value: 'in' }),
    );
    expect(result).toMatchObject({ ok: false, problem: { path: '/patch/1' } });
    expect(!result.ok && result.problem.says).toContain('changed meanwhile');
  });

  it.each<readonly [string, PatchOperation, string]>([
    ['a revision', { op: 'replace', path: '/revision', value: 1 }, '/patch/0'],
    ['an id', { op: 'replace', path: '/id', value: 'other' }, '/patch/0'],
    ['the version by a move', { op: 'move', from: '/version', path: '/name' }, '/patch/0'],
    ['the whole job', { op: 'replace', path: '', value: {} }, '/patch/0'],
    ['no pointer', { op: 'replace', path: 'name', value: 'x' }, '/patch/0'],
    ['a prototype', { op: 'add', path: '/rows/0/parameters/__proto__', value: 1 }, '/patch/0'],
    ['an inherited member', { op: 'replace', path: '/rows/0/toString', value: 1 }, '/patch/0'],
    ['the length of a list', { op: 'replace', path: '/rows/length', value: 0 }, '/patch/0'],
    ['a letter of a text', { op: 'replace', path: '/name/0', value: 'X' }, '/patch/0'],
    ['an index with a leading zero', { op: 'remove', path: '/rows/00' }, '/patch/0'],
    ['an index beyond the end', { op: 'add', path: '/rows/9', value: {} }, '/patch/0'],
    ['the place after the last', { op: 'remove', path: '/rows/-' }, '/patch/0'],
    ['a missing member', { op: 'remove', path: '/rows/0/role' }, '/patch/0'],
    ['a move into itself', { op: 'move', from: '/rows/0', path: '/rows/0/parameters/self' }, '/patch/0'],
    ['what would be no job', { op: 'replace', path: '/rows/0/quantity', value: 0 }, '/rows/0/quantity'],
    ['an unknown member', { op: 'add', path: '/colour', value: 'red' }, ''],
  ])('refuses %s', (_, operation, where) => {
    const result = applyChange(exampleJob, change(operation));
    expect(result).toMatchObject({ ok: false, problem: { path: where } });
  });

  it('cannot grow a job without bound by copying it into itself', () => {
    const doubling = Array.from({ length: 16 }, (): PatchOperation => ({
      op: 'copy',
      from: '/rows/0/parameters',
      path: '/rows/0/parameters/again',
    }));
    expect(applyChange(exampleJob, change(...doubling)).ok).toBe(true);
    expect(applyChange(exampleJob, change(...doubling, ...doubling))).toMatchObject({ ok: false });
    const grown = doubling.reduce((job, operation) => {
      const result = applyChange(job, change(operation, operation, operation));
      return result.ok ? result.job : job;
    }, exampleJob);
    expect(openJob(grown).ok).toBe(true);
  });
});

// Edits that mostly make sense, to reach deep into the job.
const parameterValue = fc.oneof(
  fc.integer(),
  fc.string(),
  fc.boolean(),
  fc.dictionary(fc.constantFrom('a', 'b'), fc.integer()),
);
const sensible: fc.Arbitrary<PatchOperation> = fc.oneof(
  fc.record({
    op: fc.constant('replace' as const),
    path: fc.constantFrom('/name', '/rows/0/name', '/kits/0/name'),
    value: fc.constantFrom('One', 'Two'),
  }),
  fc.record({
    op: fc.constant('replace' as const),
    path: fc.constantFrom('/rows/0/quantity', '/rows/1/quantity'),
    value: fc.integer({ min: 1, max: 9 }),
  }),
  fc.record({
    op: fc.constant('add' as const),
    path: fc.constantFrom(
      '/rows/0/parameters/new',
      '/rows/0/parameters/bolts',
      '/rows/0/parameters/pattern2/x~1y',
    ),
    value: parameterValue,
  }),
  fc.record({
    op: fc.constant('remove' as const),
    path: fc.constantFrom(
      '/rows/0/parameters/bolts',
      '/rows/0/parameters/pattern2',
      '/overrides/0',
      '/nests/0',
    ),
  }),
  fc.record({
    op: fc.constant('move' as const),
    from: fc.constantFrom('/rows/0', '/rows/1', '/rows/0/parameters/bolts'),
    path: fc.constantFrom('/rows/0', '/rows/1', '/rows/-', '/rows/0/parameters/moved'),
  }),
  fc.record({
    op: fc.constant('copy' as const),
    from: fc.constantFrom('/rows/0/parameters', '/rows/1/parameters/thickness'),
    path: fc.constantFrom('/rows/1/parameters/copied', '/rows/0/parameters/bolts'),
  }),
  fc.record({ op: fc.constant('test' as const), path: fc.constant('/unit'), value: fc.constant('mm') }),
);

describe('any sequence of operations', () => {
  it('applies whole, and its inverse gives the job before but for the revision', () => {
    let went = 0;
    fc.assert(
      fc.property(fc.array(sensible, { minLength: 1, maxLength: 6 }), (patch) => {
        const result = applyChange(exampleJob, change(...patch));
        if (!result.ok) return;
        went += 1;
        expect(result.job.revision).toBe(8);
        expect(openJob(result.job).ok).toBe(true);
        const back = applied(result.job, result.inverse);
        expect(canonicalJson(withoutRevision(back.job))).toBe(canonicalJson(withoutRevision(exampleJob)));
        // And the inverse of the inverse is the edit again.
        const again = applied(back.job, back.inverse);
        expect(canonicalJson(withoutRevision(again.job))).toBe(canonicalJson(withoutRevision(result.job)));
      }),
      { numRuns: 500 },
    );
    expect(went).toBeGreaterThan(100);
  });

  it('does what an independent patch library does', () => {
    fc.assert(
      fc.property(fc.array(sensible, { minLength: 1, maxLength: 6 }), (patch) => {
        const result = applyChange(exampleJob, change(...patch));
        if (!result.ok) return;
        const other = structuredClone(exampleJob);
        const errors = applyPatch(other, structuredClone(patch));
        expect(errors.every((error) => error === null)).toBe(true);
        expect(canonicalJson(withoutRevision(result.job))).toBe(canonicalJson(withoutRevision(other)));
      }),
      { numRuns: 300 },
    );
  });

  it('of garbage never throws and never half applies', () => {
    const before = canonicalJson(exampleJob);
    const path = fc.oneof(
      fc.string(),
      fc
        .array(
          fc.oneof(
            fc.string(),
            fc.constantFrom('rows', '0', '-', 'name', 'parameters', '__proto__', 'length'),
          ),
          { maxLength: 5 },
        )
        .map((tokens) => tokens.map((token) => `/${token}`).join('')),
    );
    const garbage = fc.oneof(
      fc.anything(),
      fc.record({
        says: fc.oneof(fc.string(), fc.constant('Edit')),
        patch: fc.oneof(
          fc.anything(),
          fc.array(
            fc.record(
              {
                op: fc.constantFrom('add', 'remove', 'replace', 'move', 'copy', 'test', 'burn'),
                path,
                from: path,
                value: fc.jsonValue(),
              },
              { requiredKeys: ['op', 'path'] },
            ),
            { maxLength: 5 },
          ),
        ),
      }),
      fc.record({
        says: fc.constant('Edit'),
        patch: fc.array(fc.record({ op: fc.constantFrom('add', 'replace'), path, value: fc.jsonValue() }), {
          minLength: 1,
          maxLength: 4,
        }),
      }),
      fc.record({
        says: fc.constant('Edit'),
        patch: fc.array(fc.record({ op: fc.constantFrom('move', 'copy'), path, from: path }), {
          minLength: 1,
          maxLength: 4,
        }),
      }),
    );
    fc.assert(
      fc.property(garbage, (input) => {
        const result = applyChange(exampleJob, input);
        expect(canonicalJson(exampleJob)).toBe(before);
        if (result.ok) expect(openJob(result.job).ok).toBe(true);
        else expect(result.problem.says).not.toBe('');
      }),
      { numRuns: 2000 },
    );
  });

  it('made by comparing two jobs leads from one to the other', () => {
    fc.assert(
      fc.property(
        fc.dictionary(
          fc.string({ maxLength: 4 }).filter((name) => name !== '__proto__'),
          parameterValue,
        ),
        (parameters) => {
          const target: Job = { ...exampleJob, rows: exampleJob.rows.map((row) => ({ ...row, parameters })) };
          const patch = createPatch(exampleJob, target);
          if (patch.length === 0) return;
          expect(applied(exampleJob, change(...patch)).job.rows).toEqual(target.rows);
        },
      ),
    );
  });
});
