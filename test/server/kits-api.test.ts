// Kits over HTTP: several parts from one set of numbers, written whole or not at all.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { filesSchema, kitSummarySchema, problemSchema } from '../../server/http/schemas.js';
import { send, startBench, type Bench } from './running.js';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.stop());

describe('kits', () => {
  it('are listed, and describe their numbers', async () => {
    const { json } = await send(bench, 'GET', '/api/kits');
    expect(JSON.stringify(json())).toContain('sprocket-carrier');
    const one = await send(bench, 'GET', '/api/kits/sprocket-carrier');
    expect(one.json()).toMatchObject({ id: 'sprocket-carrier', schema: { type: 'object' } });
    expect((await send(bench, 'GET', '/api/kits/flange')).status).toBe(404);
  });

  it('give every member, and nothing that is not described', async () => {
    const answer = await send(bench, 'POST', '/api/kits/sprocket-carrier', {
      body: { numbers: { boltCircle: 'circle 104', gap: 6.05 } },
    });
    const kit = kitSummarySchema.parse(answer.json());
    expect(kit).toEqual(answer.json());
    expect(kit.members.map(({ role }) => role)).toEqual(['adapter', 'ring-1']);
    expect(kit.findings.map(({ code, level }) => [code, level])).toEqual([['joint', 'pass']]);
  });

  it('name the number that cannot be used', async () => {
    const answer = await send(bench, 'POST', '/api/kits/sprocket-carrier', {
      body: { numbers: { gap: 'wide' } },
    });
    expect(answer.status).toBe(422);
    expect(problemSchema.parse(answer.json()).errors?.[0]?.field).toBe('gap');
  });

  it('are written whole, and withheld whole', async () => {
    const whole = await send(bench, 'POST', '/api/kits/sprocket-carrier/files', { body: {} });
    const { files } = filesSchema.parse(whole.json());
    expect(files.filter(({ kind }) => kind === 'cut')).toHaveLength(6);
    const none = await send(bench, 'POST', '/api/kits/sprocket-carrier/files', {
      body: { numbers: { gap: 0.5 } },
    });
    expect(none.status).toBe(409);
  });
});
