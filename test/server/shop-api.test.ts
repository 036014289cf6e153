// The shop over HTTP: starting values, saved whole, counted by revisions; parts are planned by what was saved.
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openShop, type ShopDocument } from '../../parts-library/job/index.js';
import { summarySchema } from '../../server/http/schemas.js';
import { onRevision, send, startBench, type Answer, type Bench } from './running.js';

let bench: Bench;
beforeEach(async () => {
  bench = await startBench();
});
afterEach(() => bench.stop());

const shop = (answer: Answer): ShopDocument => {
  const opened = openShop(answer.json());
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  return opened.shop;
};

describe('the shop', () => {
  it('begins with starting values that say so', async () => {
    const answer = await send(bench, 'GET', '/api/shop');
    expect(answer.headers['etag']).toBe('"0"');
    const { chart, machine, tools, plates } = shop(answer);
    expect([chart.starting, machine.starting]).toEqual([true, true]);
    expect([chart.rows.length > 20, tools.taps.includes('M10'), plates.length]).toEqual([true, true, 0]);
  });

  it('is saved over the revision it was made from, and then counts', async () => {
    const before = shop(await send(bench, 'GET', '/api/shop'));
    const rows = before.chart.rows.map((row) => ({ ...row, kerf: 2, confidence: 'measured' as const }));
    const mine = { ...before, chart: { ...before.chart, rows, starting: false } };
    const saved = await send(bench, 'PUT', '/api/shop', { body: mine, ...onRevision(0) });
    expect([saved.status, saved.headers['etag']]).toEqual([200, '"1"']);
    expect(shop(await send(bench, 'GET', '/api/shop'))).toEqual({ ...mine, revision: 1 });
    const part = await send(bench, 'POST', '/api/parts/adapter-plate', { body: {} });
    expect(summarySchema.parse(part.json()).cut.kerf).toBe(2);
    const late = await send(bench, 'PUT', '/api/shop', { body: mine, ...onRevision(0) });
    expect(late.status).toBe(412);
    expect(late.json()).toMatchObject({ current: { revision: 1 }, yours: { format: 'fishplate-shop' } });
  });

  it('judges a part by the largest plate in the rack', async () => {
    const before = shop(await send(bench, 'GET', '/api/shop'));
    const plates = [{ name: 'offcut', material: 'S275', thickness: 6, width: 120, height: 120 }];
    await send(bench, 'PUT', '/api/shop', { body: { ...before, plates }, ...onRevision(0) });
    const part = await send(bench, 'POST', '/api/parts/adapter-plate', {
      body: { parameters: { outside: 150 } },
    });
    const size = summarySchema.parse(part.json()).findings.find(({ code }) => code === 'plate-size');
    expect(size).toMatchObject({ level: 'stop', title: 'Does not fit on offcut' });
  });

  it.each<readonly [string, (shop: ShopDocument) => unknown]>([
    ['no chart', (one) => ({ ...one, chart: undefined })],
    ['a negative speed', (one) => ({ ...one, machine: { ...one.machine, rapidSpeed: -1 } })],
    ['an unknown member', (one) => ({ ...one, colour: 'red' })],
    ['an empty chart', (one) => ({ ...one, chart: { ...one.chart, rows: [] } })],
    ['nothing', () => null],
  ])('with %s is refused', async (_, spoil) => {
    const before = shop(await send(bench, 'GET', '/api/shop'));
    const { status } = await send(bench, 'PUT', '/api/shop', { body: spoil(before), ...onRevision(0) });
    expect([400, 422]).toContain(status);
    expect(shop(await send(bench, 'GET', '/api/shop')).revision).toBe(0);
  });
});
