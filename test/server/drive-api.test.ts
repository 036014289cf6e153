// Drive numbers over HTTP: the same as the command line, errors as problem details, everything described.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { run } from '../../server/cli/run.js';
import { driveSummarySchema, problemSchema } from '../../server/http/schemas.js';
import { send, startBench, type Bench } from './running.js';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.stop());

const cart = {
  motorTeeth: 12,
  wheelTeeth: 48,
  chain: '08B',
  centres: '420',
  motorSpeed: '1400 rpm',
  motorTorque: '38 N·m',
  tyreDiameter: '16 in',
  mass: '310 kg',
  grade: '18 %',
  drivenMass: '190 kg',
};

describe('drive numbers', () => {
  it('are what the command line gives, and nothing that is not described', async () => {
    const { status, json } = await send(bench, 'POST', '/api/drive', { body: { parameters: cart } });
    expect(status).toBe(200);
    const numbers = driveSummarySchema.parse(json());
    expect(numbers).toMatchObject({ unit: 'mm', chain: { name: '08B', from: 'name' } });
    const flags = Object.entries(cart).flatMap(([field, value]) => [
      `--${field.replaceAll(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`)}`,
      String(value),
    ]);
    const printed: unknown = JSON.parse((await run(['drive', ...flags, '--json'])).out ?? '');
    // Counts are texts on the command line and numbers here; what they mean is the same.
    expect(json()).toEqual(printed);
  });

  it('of nothing but starting values are answered too', async () => {
    expect((await send(bench, 'POST', '/api/drive')).status).toBe(200);
    expect((await send(bench, 'POST', '/api/drive', { body: {} })).status).toBe(200);
  });

  it('come back with parameters that mean the same in inches', async () => {
    const first = await send(bench, 'POST', '/api/drive', { body: { parameters: cart } });
    const { parameters } = driveSummarySchema.parse(first.json());
    const again = await send(bench, 'POST', '/api/drive', { body: { parameters, unit: 'in' } });
    expect(driveSummarySchema.parse(again.json()).parameters).toEqual(parameters);
  });

  it('carry their stop findings as an answer, not as an error', async () => {
    const { status, json } = await send(bench, 'POST', '/api/drive', {
      body: { parameters: { ...cart, grade: '40 %' } },
    });
    expect(status).toBe(200);
    expect(driveSummarySchema.parse(json()).findings[0]).toMatchObject({
      level: 'stop',
      code: 'hill-torque',
      field: 'wheelTeeth',
    });
  });

  it.each<readonly [string, object, string]>([
    ['a word for a count', { parameters: { motorTeeth: 'six' } }, 'motorTeeth'],
    ['a truth for a mass', { parameters: { mass: true } }, 'mass'],
    ['an unknown parameter', { parameters: { teeth: 6 } }, 'teeth'],
    ['fields that cannot both be', { parameters: { mass: 100, drivenMass: 120 } }, 'drivenMass'],
    ['a unit', { unit: 'cm' }, 'unit'],
    ['an unknown member', { colour: 'red' }, 'colour'],
    ['parameters that are none', { parameters: [1] }, 'parameters'],
  ])('refused for %s name the field', async (_, body, field) => {
    const { status, headers, json } = await send(bench, 'POST', '/api/drive', { body });
    expect([status, headers['content-type']]).toEqual([422, 'application/problem+json; charset=utf-8']);
    const { errors } = problemSchema.parse(json());
    expect(errors?.map((one) => one.field)).toContain(field);
    expect(errors?.every(({ says }) => says.length > 10)).toBe(true);
  });

  it('say what can be said of a drive', async () => {
    const { status, json } = await send(bench, 'GET', '/api/drive');
    expect(status).toBe(200);
    const { fields, schema } = z
      .object({
        fields: z.array(z.looseObject({ path: z.string(), title: z.string(), help: z.string() })),
        schema: z.looseObject({ properties: z.record(z.string(), z.unknown()) }),
      })
      .parse(json());
    expect(fields.map(({ path }) => path)).toEqual(Object.keys(schema.properties));
  });

  it('are described with every parameter by name', async () => {
    const { json } = await send(bench, 'GET', '/openapi.json');
    expect(json()).toMatchObject({
      paths: {
        '/api/drive': {
          get: { operationId: 'drive_fields' },
          post: {
            requestBody: {
              content: {
                'application/json': {
                  schema: {
                    properties: {
                      parameters: { properties: { twelvePitches: { title: 'Twelve pitches' } } },
                    },
                  },
                },
              },
            },
          },
        },
      },
    });
  });
});

it('nothing of all this made the program fail', () => {
  expect(bench.failures).toEqual([]);
});
