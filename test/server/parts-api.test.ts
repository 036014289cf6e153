// Part families over HTTP: the same flow as the command line, errors as problem details.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { run } from '../../server/cli/run.js';
import { problemSchema, summarySchema } from '../../server/http/schemas.js';
import { send, startBench, type Bench } from './running.js';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.stop());

const adapter = {
  parameters: {
    bolts: 6,
    boltCircle: 110,
    bolt: 'M10',
    holes: 'drill',
    hub: 57.15,
    fit: 0.2,
    outside: 150,
    thickness: 6,
    material: 'S275',
  },
  process: { kerf: 1.6 },
};

describe('families', () => {
  it('are listed with their fields', async () => {
    const { status, json } = await send(bench, 'GET', '/api/parts');
    expect(status).toBe(200);
    const listed = z
      .object({ parts: z.array(z.looseObject({ id: z.string(), fields: z.array(z.unknown()) })) })
      .parse(json());
    expect(listed.parts.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['adapter-plate', 'bent-bracket']),
    );
    for (const { fields } of listed.parts) expect(fields.length).toBeGreaterThan(3);
  });

  it('describe their parameters as JSON Schema', async () => {
    const { json } = await send(bench, 'GET', '/api/parts/adapter-plate');
    const described = z
      .object({ id: z.string(), schema: z.looseObject({ properties: z.record(z.string(), z.unknown()) }) })
      .parse(json());
    expect(Object.keys(described.schema.properties)).toEqual(
      expect.arrayContaining(['bolts', 'boltCircle', 'pattern2']),
    );
  });

  it('that there are not are 404', async () => {
    const { status, headers, json } = await send(bench, 'GET', '/api/parts/flange');
    expect([status, headers['content-type']]).toEqual([404, 'application/problem+json; charset=utf-8']);
    expect(problemSchema.parse(json()).detail).toContain('adapter-plate');
  });
});

describe('a part', () => {
  it('gives what the command line gives', async () => {
    const answer = await send(bench, 'POST', '/api/parts/adapter-plate', { body: adapter });
    expect(answer.status).toBe(200);
    const summary = summarySchema.parse(answer.json());
    // Nothing comes back that the interface does not describe.
    expect(summary).toEqual(answer.json());
    // π (57.35 − 1.6) + π (150 + 1.6) = 651.41
    expect(summary.cut.length).toBeCloseTo(651.41, 2);
    expect(summary.cut.pierces).toBe(2);
    const flags = (
      'part adapter-plate --bolts 6 --bolt-circle 110 --bolt M10 --holes drill --hub 57.15 --fit 0.2 ' +
      '--outside 150 --thickness 6 --material S275 --kerf 1.6 --json'
    ).split(' ');
    const printed = summarySchema.parse(JSON.parse((await run(flags)).out ?? ''));
    expect(summary.part).toEqual(printed.part);
    expect(summary.cut).toEqual(printed.cut);
    expect(summary.findings.map(({ code }) => code)).toEqual(printed.findings.map(({ code }) => code));
  });

  it('of nothing but starting values is answered too', async () => {
    expect((await send(bench, 'POST', '/api/parts/adapter-plate')).status).toBe(200);
    expect((await send(bench, 'POST', '/api/parts/bent-bracket', { body: {} })).status).toBe(200);
  });

  it.each<readonly [string, object, string]>([
    ['a word for a count', { parameters: { bolts: 'six' } }, 'bolts'],
    ['an unknown parameter', { parameters: { boltCount: 6 } }, 'boltCount'],
    ['a parameter of the second pattern', { parameters: { pattern2: { bolts: 0 } } }, 'pattern2.bolts'],
    ['a kerf', { process: { kerf: -1 } }, 'process.kerf'],
    ['a unit', { unit: 'cm' }, 'unit'],
    ['an unknown member', { colour: 'red' }, 'colour'],
    ['a quantity', { quantity: 0 }, 'quantity'],
    ['parameters that are none', { parameters: [1] }, 'parameters'],
  ])('refused for %s names the field', async (_, body, field) => {
    const { status, headers, json } = await send(bench, 'POST', '/api/parts/adapter-plate', { body });
    expect([status, headers['content-type']]).toEqual([422, 'application/problem+json; charset=utf-8']);
    const problem = problemSchema.parse(json());
    expect(problem).toMatchObject({ status: 422, title: 'Values that cannot be used' });
    expect(problem.errors?.map((one) => one.field)).toContain(field);
    expect(problem.errors?.every(({ says }) => says.length > 10)).toBe(true);
  });

  it('that cannot be drawn says why', async () => {
    const { status, json } = await send(bench, 'POST', '/api/parts/adapter-plate', {
      body: { parameters: { ...adapter.parameters, outside: 60, boltCircle: 40, hub: 80 } },
    });
    expect(status).toBe(422);
    expect(problemSchema.parse(json()).detail).toContain('outside');
  });
});

describe('files', () => {
  const files = z.object({
    files: z.array(z.object({ name: z.string(), kind: z.string(), text: z.string() })),
  });

  it('come as text', async () => {
    const { status, json } = await send(bench, 'POST', '/api/parts/adapter-plate/files', { body: adapter });
    expect(status).toBe(200);
    expect(files.parse(json()).files.map(({ name }) => name)).toEqual([
      'adapter-plate.finished.dxf',
      'adapter-plate.cut.dxf',
      'adapter-plate.finished.svg',
      'adapter-plate.cut.svg',
      'adapter-plate.print.svg',
    ]);
  });

  it('come one by one as downloads', async () => {
    const asked = encodeURIComponent(JSON.stringify({ ...adapter, dxf: 'r2000' }));
    const { status, headers, text } = await send(
      bench,
      'GET',
      `/api/parts/adapter-plate/files?file=cut.dxf&request=${asked}`,
    );
    expect(status).toBe(200);
    expect(headers['content-disposition']).toBe('attachment; filename="adapter-plate.cut.dxf"');
    expect(headers['content-type']).toContain('image/vnd.dxf');
    expect(text).toContain('AC1015');
  });

  it.each([
    ['file=cut.gcode', 404],
    ['file=finished.dxf&request=%7B', 422],
    ['', 404],
  ])('asked for with "%s" are %i', async (query, status) => {
    expect((await send(bench, 'GET', `/api/parts/adapter-plate/files?${query}`)).status).toBe(status);
  });

  it('are withheld by a stop finding unless it is overruled', async () => {
    const body = { parameters: { ...adapter.parameters, outside: 115 } };
    const withheld = await send(bench, 'POST', '/api/parts/adapter-plate/files', { body });
    expect(withheld.status).toBe(409);
    expect(withheld.json()).toMatchObject({
      title: 'A stop finding',
      findings: [{ level: 'stop' }, { level: 'stop' }],
    });
    const overruled = await send(bench, 'POST', '/api/parts/adapter-plate/files', {
      body: { ...body, despiteFindings: true },
    });
    expect(overruled.status).toBe(200);
    expect(files.parse(overruled.json()).files.every(({ text }) => text.includes('STOP FINDING'))).toBe(true);
  });
});
