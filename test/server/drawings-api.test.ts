// Drawings over HTTP: a file is read into a row that a job takes as it is, or refused with the option that would help.
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { drawingAnswerSchema } from '../../server/http/drawing-schemas.js';
import { problemSchema, summarySchema } from '../../server/http/schemas.js';
import { box, circle, dxf, svg } from '../files/drawn.js';
import { onRevision, send, startBench, type Bench } from './running.js';

const tiePlate = readFileSync(new URL('../files/drawings/tie-plate.dxf', import.meta.url), 'utf8');

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.stop());

const post = (body: unknown) => send(bench, 'POST', '/api/drawings', { body });

describe('a drawing', () => {
  test('is read into a row that nothing is missing from but its id', async () => {
    const { status, json } = await post({ text: tiePlate, name: 'tie-plate.dxf' });
    expect(status).toBe(200);
    const read = drawingAnswerSchema.parse(json());
    // Nothing comes back that the interface does not describe.
    expect(read).toEqual(json());
    expect(read.row).toMatchObject({ family: 'own-outline', name: 'tie-plate', quantity: 1 });
    const made = await send(bench, 'POST', '/api/jobs', { body: { name: 'Cart', unit: 'mm' } });
    const { id, revision } = z.object({ id: z.string(), revision: z.number() }).loose().parse(made.json());
    const change = {
      says: 'Bring in tie-plate',
      patch: [{ op: 'add', path: '/rows/-', value: { ...read.row, id: 'tie-plate' } }],
    };
    const added = await send(bench, 'POST', `/api/jobs/${id}/changes`, {
      body: change,
      ...onRevision(revision),
    });
    expect(added.status).toBe(200);
    const part = summarySchema.parse((await send(bench, 'GET', `/api/jobs/${id}/rows/tie-plate`)).json());
    // 160 × 90 less corners, holes, window and slot, worked by hand.
    expect(part.part.area).toBeCloseTo(
      14400 - (4 - Math.PI) * 144 - 5 * Math.PI * 4.5 ** 2 - Math.PI * 625 - 225,
      6,
    );
  });

  test('longer than any text of a job is read too', async () => {
    const padded = tiePlate.replace('0\nSECTION', `${'999\nOrchard haul cart\n'.repeat(10_000)}0\nSECTION`);
    expect(padded.length).toBeGreaterThan(200_000);
    expect((await post({ text: padded })).status).toBe(200);
  });

  test('takes unit, part, layers and tolerances', async () => {
    const text = dxf([box('0', 0, 0, 4, 3), circle('holes', 2, 1, 0.25)], { units: 0 });
    const { json } = await post({
      text,
      unit: 'in',
      layers: { holes: 'mark' },
      part: 1,
      gap: 0.1,
      arcTolerance: 0.02,
      lines: 'etch',
    });
    const { row, parts, layers } = drawingAnswerSchema.parse(json());
    expect(parts).toEqual([{ number: 1, width: 101.6, height: expect.closeTo(76.2, 9), openings: 0 }]);
    expect(row.parameters.drawing.shapes.map(({ operation }) => operation)).toEqual(['outline', 'mark']);
    expect(layers[1]).toMatchObject({ name: 'holes', because: 'told' });
  });
});

describe('what cannot be read', () => {
  test.each<readonly [string, object, string]>([
    ['no text', { name: 'x.dxf' }, 'text'],
    ['text that is no text', { text: 5 }, 'text'],
    ['a file that is silent on its unit', { text: svg('<rect width="5" height="5"/>', '') }, 'unit'],
    ['a unit that there is not', { text: tiePlate, unit: 'cubit' }, 'unit'],
    ['a part that there is not', { text: tiePlate, part: 7 }, 'part'],
    ['a layer that there is not', { text: tiePlate, layers: { weld: 'cut' } }, 'layers'],
    ['an operation that there is not', { text: tiePlate, layers: { cut: 'weld' } }, 'layers.cut'],
    ['a tolerance out of bounds', { text: tiePlate, gap: 50 }, 'gap'],
    ['an option that there is not', { text: tiePlate, scale: 2 }, 'scale'],
    ['a file that is none', { text: 'Dear customer' }, 'file'],
  ])('%s is 422 with its field', async (_, body, field) => {
    const { status, headers, json } = await post(body);
    expect([status, headers['content-type']]).toEqual([422, 'application/problem+json; charset=utf-8']);
    expect(problemSchema.parse(json()).errors?.map((error) => error.field)).toEqual([field]);
  });

  test('a body larger than is accepted is 413', async () => {
    expect((await post({ text: ' '.repeat(5_000_000) })).status).toBe(413);
  });

  test('is described', async () => {
    const { json } = await send(bench, 'GET', '/openapi.json');
    const { paths } = z
      .object({ paths: z.record(z.string(), z.unknown()) })
      .loose()
      .parse(json());
    expect(Object.keys(paths)).toContain('/api/drawings');
    expect(bench.failures).toEqual([]);
  });
});
