// Jobs over HTTP: revisions, conflicts that show both sides, undo and redo, rows.
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { openJob, removeRow, renameJob, setParameter, type Job } from '../../parts-library/job/index.js';
import { problemSchema, summarySchema } from '../../server/http/schemas.js';
import { exampleDocument as wholeExample } from '../job/example-job.js';
import { onRevision, send, startBench, type Answer, type Bench } from './running.js';

let bench: Bench;
beforeEach(async () => {
  bench = await startBench();
});
afterEach(() => bench.stop());

// The demo job has the id that the example would have.
const exampleDocument = () => ({ ...wholeExample(), id: 'brought-in' });

const DEMO = '/api/jobs/orchard-haul-cart';

const jobIn = (value: unknown): Job => {
  const opened = openJob(value);
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  return opened.job;
};
const job = (answer: Answer): Job => jobIn(answer.json());
const stepped = (answer: Answer): Job => jobIn(z.looseObject({ job: z.unknown() }).parse(answer.json()).job);

describe('jobs', () => {
  it('begin with the demo, a haul cart of two parts', async () => {
    const { json } = await send(bench, 'GET', '/api/jobs');
    expect(json()).toMatchObject({
      jobs: [{ id: 'orchard-haul-cart', name: 'Orchard haul cart', revision: 0 }],
    });
    const demo = await send(bench, 'GET', DEMO);
    expect(demo.headers['etag']).toBe('"0"');
    expect(job(demo).rows.map(({ family }) => family)).toEqual(['adapter-plate', 'bent-bracket']);
  });

  it('are made empty', async () => {
    const made = await send(bench, 'POST', '/api/jobs', { body: { name: 'Gate', unit: 'in' } });
    expect(made.status).toBe(201);
    expect(made.headers['location']).toBe(`/api/jobs/${job(made).id}`);
    expect(job(await send(bench, 'GET', made.headers['location'] ?? ''))).toMatchObject({
      name: 'Gate',
      unit: 'in',
      rows: [],
    });
  });

  it('are brought in whole, but not over one that is there', async () => {
    const clash = await send(bench, 'POST', '/api/jobs', { body: exampleDocument() });
    expect(clash.status).toBe(201);
    const again = await send(bench, 'POST', '/api/jobs', { body: { ...exampleDocument(), name: 'Other' } });
    expect(again.status).toBe(409);
    expect(again.json()).toMatchObject({ current: { name: 'Orchard haul cart' }, yours: { name: 'Other' } });
  });

  it('that are not readable are refused with their places', async () => {
    const { status, json } = await send(bench, 'POST', '/api/jobs', {
      body: { ...exampleDocument(), unit: 'cm' },
    });
    expect(status).toBe(422);
    expect(problemSchema.parse(json()).errors?.map(({ field }) => field)).toEqual(['/unit']);
    const newer = await send(bench, 'POST', '/api/jobs', { body: { ...exampleDocument(), version: 9 } });
    expect(problemSchema.parse(newer.json()).detail).toContain('newer program');
  });

  it('answer 304 to who has them', async () => {
    const { status, text } = await send(bench, 'GET', DEMO, { headers: { 'If-None-Match': '"0"' } });
    expect([status, text]).toEqual([304, '']);
  });

  it('are deleted with their revision', async () => {
    expect((await send(bench, 'DELETE', DEMO)).status).toBe(428);
    expect((await send(bench, 'DELETE', DEMO, onRevision(3))).status).toBe(412);
    expect((await send(bench, 'DELETE', DEMO, onRevision(0))).status).toBe(204);
    expect((await send(bench, 'GET', DEMO)).status).toBe(404);
  });
});

describe('a change', () => {
  it('gives the next revision, and what undo would do', async () => {
    const change = renameJob(job(await send(bench, 'GET', DEMO)), 'Cart');
    const answer = await send(bench, 'POST', `${DEMO}/changes`, { body: change, ...onRevision(0) });
    expect([answer.status, answer.headers['etag']]).toEqual([200, '"1"']);
    expect(stepped(answer)).toMatchObject({ name: 'Cart', revision: 1 });
    expect(answer.json()).toMatchObject({ undo: { says: 'Rename the job to Cart' } });
    expect(job(await send(bench, 'GET', DEMO)).name).toBe('Cart');
  });

  it('is undone and redone as further revisions', async () => {
    const before = job(await send(bench, 'GET', DEMO));
    await send(bench, 'POST', `${DEMO}/changes`, {
      body: removeRow(before, 'motor-bracket'),
      ...onRevision(0),
    });
    const undone = await send(bench, 'POST', `${DEMO}/undo`, onRevision(1));
    expect(stepped(undone)).toEqual({ ...before, revision: 2 });
    const redone = await send(bench, 'POST', `${DEMO}/redo`, onRevision(2));
    expect(stepped(redone).rows).toHaveLength(1);
    expect((await send(bench, 'POST', `${DEMO}/redo`, onRevision(3))).status).toBe(409);
    const history = await send(bench, 'GET', `${DEMO}/history`);
    expect(history.json()).toMatchObject({
      revision: 3,
      entries: [
        { revision: 1, kind: 'edit', says: 'Remove Motor bracket' },
        { revision: 2, kind: 'undo' },
        { revision: 3, kind: 'redo' },
      ],
    });
  });

  it('made on an older revision is refused with both sides', async () => {
    const before = job(await send(bench, 'GET', DEMO));
    await send(bench, 'POST', `${DEMO}/changes`, { body: renameJob(before, 'First'), ...onRevision(0) });
    const late = await send(bench, 'POST', `${DEMO}/changes`, {
      body: renameJob(before, 'Second'),
      ...onRevision(0),
    });
    expect(late.status).toBe(412);
    expect(late.json()).toMatchObject({
      title: 'Changed meanwhile',
      current: { name: 'First', revision: 1 },
      yours: { says: 'Rename the job to Second' },
    });
  });

  it('of two sent at once only one is taken', async () => {
    const before = job(await send(bench, 'GET', DEMO));
    const answers = await Promise.all(
      Array.from({ length: 8 }, (_, index) =>
        send(bench, 'POST', `${DEMO}/changes`, {
          body: renameJob(before, `Name ${index}`),
          ...onRevision(0),
        }),
      ),
    );
    expect(answers.map(({ status }) => status).toSorted((a, b) => a - b)).toEqual([
      200,
      ...Array.from({ length: 7 }, () => 412),
    ]);
    expect(job(await send(bench, 'GET', DEMO)).revision).toBe(1);
  });

  it.each<readonly [string, Readonly<Record<string, string>>, unknown, number]>([
    ['without a revision', {}, { says: 'x', patch: [] }, 428],
    ['with a weak revision', { 'If-Match': 'W/"0"' }, { says: 'x', patch: [] }, 400],
    ['with a star', { 'If-Match': '*' }, { says: 'x', patch: [] }, 400],
    ['that is no change', { 'If-Match': '"0"' }, { patch: 'all' }, 422],
    [
      'that does not fit',
      { 'If-Match': '"0"' },
      { says: 'x', patch: [{ op: 'remove', path: '/rows/9' }] },
      409,
    ],
    [
      'that breaks the job',
      { 'If-Match': '"0"' },
      { says: 'x', patch: [{ op: 'remove', path: '/rows' }] },
      409,
    ],
    [
      'of its id',
      { 'If-Match': '"0"' },
      { says: 'x', patch: [{ op: 'replace', path: '/id', value: 'y' }] },
      409,
    ],
  ])('%s is refused and changes nothing', async (_, headers, body, status) => {
    expect((await send(bench, 'POST', `${DEMO}/changes`, { body, headers })).status).toBe(status);
    expect(job(await send(bench, 'GET', DEMO)).revision).toBe(0);
  });

  it('of the whole job is one change that can be undone', async () => {
    const before = job(await send(bench, 'GET', DEMO));
    // The page may have counted its own revisions meanwhile; the store counts on from its own.
    const next = { ...before, name: 'Whole', unit: 'in', revision: 40, rows: [] };
    const put = await send(bench, 'PUT', DEMO, { body: next, ...onRevision(0) });
    expect([put.status, put.headers['etag']]).toEqual([200, '"1"']);
    expect(stepped(put)).toMatchObject({ name: 'Whole', unit: 'in', rows: [], revision: 1 });
    expect(stepped(await send(bench, 'POST', `${DEMO}/undo`, onRevision(1)))).toEqual({
      ...before,
      revision: 2,
    });
    const other = await send(bench, 'PUT', DEMO, { body: { ...before, id: 'other' }, ...onRevision(2) });
    expect(other.status).toBe(422);
  });
});

describe('a row', () => {
  it('is the part that its parameters give', async () => {
    const answer = await send(bench, 'GET', `${DEMO}/rows/sprocket-adapter`);
    const { part, cut } = summarySchema.parse(answer.json());
    expect(part).toMatchObject({ name: 'Sprocket adapter', quantity: 2 });
    expect(cut.pierces).toBe(7);
  });

  it('follows its edits', async () => {
    const before = job(await send(bench, 'GET', DEMO));
    const change = setParameter(before, 'sprocket-adapter', 'bolts', 6);
    await send(bench, 'POST', `${DEMO}/changes`, { body: change, ...onRevision(0) });
    const { cut } = summarySchema.parse((await send(bench, 'GET', `${DEMO}/rows/sprocket-adapter`)).json());
    expect(cut.pierces).toBe(8);
  });

  it('that cannot be read says which field', async () => {
    const before = job(await send(bench, 'GET', DEMO));
    const change = setParameter(before, 'sprocket-adapter', 'bolts', 'some');
    await send(bench, 'POST', `${DEMO}/changes`, { body: change, ...onRevision(0) });
    const { status, json } = await send(bench, 'GET', `${DEMO}/rows/sprocket-adapter`);
    expect(status).toBe(422);
    expect(problemSchema.parse(json()).errors?.[0]?.field).toBe('bolts');
  });

  it('has files', async () => {
    const { status, headers, text } = await send(
      bench,
      'GET',
      `${DEMO}/rows/sprocket-adapter/files?file=finished.svg`,
    );
    expect([status, headers['content-disposition']]).toEqual([
      200,
      'attachment; filename="sprocket-adapter.finished.svg"',
    ]);
    expect(text).toContain('<svg');
    const all = await send(bench, 'GET', `${DEMO}/rows/motor-bracket/files`);
    expect(all.json()).toMatchObject({ files: [{ name: 'motor-bracket.finished.dxf' }, {}, {}, {}, {}] });
  });

  it('that is not there is 404', async () => {
    expect((await send(bench, 'GET', `${DEMO}/rows/gone`)).status).toBe(404);
    expect((await send(bench, 'GET', `/api/jobs/gone/rows/gone`)).status).toBe(404);
  });
});
