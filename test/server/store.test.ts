// The data file: what survives, what is refused untouched, what may be bound, and the queue.
import { existsSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import SQLite from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { edit, renameJob } from '../../parts-library/job/index.js';
import { adapt, openDatabase, openStore, SCHEMA_VERSION, StoreProblem } from '../../server/store/index.js';
import { exampleJob } from '../job/example-job.js';

let folder: string;
let file: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'fishplate-store-'));
  file = join(folder, 'data', 'fishplate.sqlite');
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const digest = async () =>
  createHash('sha256')
    .update(await readFile(file))
    .digest('hex');

describe('the data file', () => {
  it('keeps jobs, their history and the shop', async () => {
    const first = openStore(file);
    expect(await first.jobs.create(exampleJob)).toBe(true);
    expect(await first.jobs.create(exampleJob)).toBe(false);
    const result = await first.jobs.step('orchard-cart', 7, (job) => edit(job, renameJob(job, 'Cart')));
    expect(result.outcome).toBe('saved');
    await first.shop.save(await first.shop.read(), 0);
    await first.close();
    const second = openStore(file);
    expect(await second.jobs.find('orchard-cart')).toEqual({ ...exampleJob, name: 'Cart', revision: 8 });
    expect((await second.jobs.history('orchard-cart')).map(({ change }) => change.says)).toEqual([
      'Rename the job to Cart',
    ]);
    expect((await second.shop.read()).revision).toBe(1);
    await second.close();
  });

  it('is written so that a committed change survives', () => {
    const store = openDatabase(file);
    const raw = new SQLite(file);
    expect(raw.pragma('journal_mode', { simple: true })).toBe('wal');
    expect(raw.pragma('user_version', { simple: true })).toBe(SCHEMA_VERSION);
    raw.close();
    return store.close();
  });

  it('of a newer program is refused untouched', async () => {
    await openStore(file).close();
    const raw = new SQLite(file);
    raw.pragma('journal_mode = DELETE');
    raw.pragma(`user_version = ${SCHEMA_VERSION + 1}`);
    raw.close();
    const before = await digest();
    expect(() => openStore(file)).toThrow(StoreProblem);
    expect(() => openStore(file)).toThrow(/newer program .*Nothing was changed/);
    expect(await digest()).toBe(before);
  });

  it('of another program is refused untouched', async () => {
    await openStore(file).close();
    const other = join(folder, 'other.sqlite');
    const raw = new SQLite(other);
    raw.exec('CREATE TABLE notes (text TEXT)');
    raw.close();
    const before = await readFile(other);
    expect(() => openStore(other)).toThrow(/another program/);
    expect(await readFile(other)).toEqual(before);
  });

  it('that is no database is refused', async () => {
    await writeFile(join(folder, 'letter.txt'), 'Dear orchard, '.repeat(100));
    expect(() => openStore(join(folder, 'letter.txt'))).toThrow(StoreProblem);
  });

  it.skipIf(!existsSync('/proc/self'))('in a place that takes no folders is refused at once', () => {
    expect(() => openStore('/proc/fishplate/data.sqlite')).toThrow(StoreProblem);
  });

  it('lets a job be stepped only from the revision that stands', async () => {
    const store = openStore(file);
    await store.jobs.create(exampleJob);
    const rename = (name: string) =>
      store.jobs.step('orchard-cart', 7, (job) => edit(job, renameJob(job, name)));
    const results = await Promise.all([rename('A'), rename('B')]);
    expect(results.map(({ outcome }) => outcome).toSorted()).toEqual(['conflict', 'saved']);
    const refused = await store.jobs.step('orchard-cart', 8, (job) =>
      edit(job, { says: 'x', patch: [{ op: 'remove', path: '/name' }] }),
    );
    expect(refused.outcome).toBe('refused');
    expect((await store.jobs.find('orchard-cart'))?.revision).toBe(8);
    expect((await store.jobs.step('gone', 0, (job) => edit(job, renameJob(job, 'x')))).outcome).toBe(
      'missing',
    );
    await store.close();
  });

  it('forgets the history of a job with the job', async () => {
    const store = openStore(file);
    await store.jobs.create(exampleJob);
    await store.jobs.step('orchard-cart', 7, (job) => edit(job, renameJob(job, 'A')));
    expect(await store.jobs.remove('orchard-cart', 8)).toEqual({ outcome: 'removed' });
    expect(await store.jobs.history('orchard-cart')).toEqual([]);
    await store.close();
  });
});

describe('the adapter', () => {
  it.each<readonly [string, unknown]>([
    ['a truth value', true],
    ['undefined', undefined],
    ['a date', new Date(0)],
    ['an object', {}],
    ['a list', [1]],
    ['a function', () => 1],
    ['a symbol', Symbol('x')],
  ])('does not bind %s', (_, value) => {
    const raw = new SQLite(':memory:');
    const statement = adapt(raw).prepare('SELECT ? AS value');
    expect(() => statement.all([value])).toThrow(TypeError);
    raw.close();
  });

  it('binds and gives back text, numbers, bytes and null', () => {
    const raw = new SQLite(':memory:');
    const statement = adapt(raw).prepare('SELECT ? AS value');
    for (const value of ['Ø 57.15 ±0.1', '', 0.1, -7, null])
      expect(statement.all([value])).toEqual([{ value }]);
    expect(statement.all([new Uint8Array([0, 255])])).toEqual([{ value: Buffer.from([0, 255]) }]);
    raw.close();
  });
});

describe('the queue', () => {
  it('gives each task to one worker at a time, the oldest first', async () => {
    let time = 1000;
    const store = openStore(':memory:', () => time);
    const { queue } = store;
    const first = await queue.enqueue('arrange', { plate: 1 });
    time += 1;
    await queue.enqueue('arrange', { plate: 2 });
    await queue.enqueue('print', { page: 1 });
    const claimed = await queue.claim(['arrange'], 'worker-1', 100);
    expect(claimed).toMatchObject({ id: first, payload: { plate: 1 }, attempts: 1, state: 'running' });
    expect((await queue.claim(['arrange'], 'worker-2', 100))?.payload).toEqual({ plate: 2 });
    expect(await queue.claim(['arrange'], 'worker-3', 100)).toBeUndefined();
    expect(await queue.progress(first, 'worker-1', { density: 0.5 }, 100)).toBe(true);
    expect(await queue.progress(first, 'worker-2', { density: 0.9 }, 100)).toBe(false);
    expect(await queue.finish(first, 'worker-1', { density: 0.7 })).toBe(true);
    expect(await queue.find(first)).toMatchObject({
      state: 'finished',
      progress: { density: 0.5 },
      result: { density: 0.7 },
    });
    await store.close();
  });

  it('gives a lost worker’s task to another, and no longer listens to the lost one', async () => {
    let time = 1000;
    const store = openStore(':memory:', () => time);
    const { queue } = store;
    const id = await queue.enqueue('arrange', {}, { mostAttempts: 2 });
    await queue.claim(['arrange'], 'lost', 100);
    time += 101;
    expect(await queue.finish(id, 'lost', {})).toBe(false);
    expect(await queue.claim(['arrange'], 'second', 100)).toMatchObject({ id, attempts: 2 });
    time += 101;
    expect(await queue.claim(['arrange'], 'third', 100)).toBeUndefined();
    expect(await queue.find(id)).toMatchObject({
      state: 'failed',
      error: 'The worker was lost on the last attempt.',
    });
    await store.close();
  });

  it('tries a failed task again, up to its last attempt', async () => {
    const store = openStore(':memory:');
    const { queue } = store;
    const id = await queue.enqueue('arrange', null, { mostAttempts: 2 });
    await queue.claim(['arrange'], 'worker', 1000);
    expect(await queue.fail(id, 'worker', 'no room')).toBe(true);
    expect(await queue.find(id)).toMatchObject({ state: 'queued', error: 'no room' });
    await queue.claim(['arrange'], 'worker', 1000);
    await queue.fail(id, 'worker', 'still no room');
    expect(await queue.find(id)).toMatchObject({ state: 'failed', error: 'still no room' });
    expect(await queue.claim(['arrange'], 'worker', 1000)).toBeUndefined();
    await store.close();
  });
});
