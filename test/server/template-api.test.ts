// The paper template over HTTP: a PDF on the paper that is asked for.
import { afterAll, beforeAll, expect, it } from 'vitest';
import { send, startBench, type Bench } from './running.js';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.stop());

const ask = (query: string) => send(bench, 'GET', `/api/parts/adapter-plate/template${query}`);

it('comes as a PDF named after the part', async () => {
  const request = encodeURIComponent(JSON.stringify({ parameters: { outside: 150 }, name: 'Rear carrier' }));
  const { status, headers } = await ask(`?paper=letter&request=${request}`);
  expect(status).toBe(200);
  expect(headers['content-type']).toBe('application/pdf');
  expect(headers['content-disposition']).toContain('rear-carrier.template.pdf');
});

it('names the field that cannot be used, and the papers there are', async () => {
  expect((await ask('?paper=a3')).status).toBe(422);
  const request = encodeURIComponent(JSON.stringify({ parameters: { outside: 'wide' } }));
  expect((await ask(`?request=${request}`)).status).toBe(422);
});
