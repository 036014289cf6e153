// What every request passes: hosts, origins, bodies, headers; and the pages that are not there.
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { problemSchema } from '../../server/http/schemas.js';
import { send, startBench, type Bench } from './running.js';

let bench: Bench;
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'fishplate-page-'));
  const page = join(folder, 'client');
  await mkdir(join(page, 'assets'), { recursive: true });
  await writeFile(join(page, 'index.html'), '<!doctype html><title>Bench</title>');
  await writeFile(join(page, 'assets', 'app-1234.js'), 'export {};');
  await writeFile(join(page, '.secret'), 'hidden');
  await writeFile(join(folder, 'outside.txt'), 'kept to itself');
  bench = await startBench(page);
});
afterAll(async () => {
  await bench.stop();
  await rm(folder, { recursive: true, force: true });
});

describe('a request', () => {
  it.each([
    ['localhost', 200],
    ['localhost:4173', 200],
    ['LOCALHOST', 200],
    ['127.0.0.1:80', 200],
    ['[::1]:4173', 200],
    ['orchard.example', 403],
    ['localhost.orchard.example', 403],
    ['127.0.0.1.orchard.example', 403],
    ['orchard', 403],
  ])('for host "%s" is answered %i', async (host, status) => {
    expect((await send(bench, 'GET', '/healthz', { headers: { Host: host } })).status).toBe(status);
  });

  it('from a page of another origin is refused, from our own it is not', async () => {
    const from = (origin: string) =>
      send(bench, 'GET', '/healthz', { headers: { Host: 'localhost:1', Origin: origin } });
    expect((await from('http://localhost:1')).status).toBe(200);
    for (const origin of ['http://orchard.example', 'null', 'http://localhost:2', 'https://localhost:1']) {
      expect((await from(origin)).status).toBe(403);
    }
  });

  it.each<readonly [string, string, string, number]>([
    ['a form', 'application/x-www-form-urlencoded', 'name=Gate', 415],
    ['plain text', 'text/plain', '{"name":"Gate"}', 415],
    ['half a JSON', 'application/json', '{"name":', 400],
    ['another encoding', 'application/json; charset=latin1', '{"name":"Gate"}', 415],
    ['a prototype', 'application/json', '{"__proto__":{"name":"Gate"}}', 422],
    ['five megabytes', 'application/json', JSON.stringify({ name: 'x'.repeat(5_000_000) }), 413],
    ['a number', 'application/json', '7', 400],
  ])('with %s is refused', async (_, type, text, status) => {
    const answer = await send(bench, 'POST', '/api/jobs', { text, headers: { 'Content-Type': type } });
    expect(answer.status).toBe(status);
    expect(answer.headers['content-type']).toBe('application/problem+json; charset=utf-8');
    expect(problemSchema.parse(answer.json()).status).toBe(status);
  });

  it.each(['gzip', 'deflate', 'br', 'paper'])('packed as %s is refused', async (encoding) => {
    const headers = { 'Content-Encoding': encoding };
    const answer = await send(bench, 'POST', '/api/jobs', { text: '{"name":"Gate"}', headers });
    expect(answer.status).toBe(415);
    expect(problemSchema.parse(answer.json()).status).toBe(415);
  });

  it('with ten thousand levels is refused', async () => {
    const text = `{"parameters":${'['.repeat(10_000)}${']'.repeat(10_000)}}`;
    const answer = await send(bench, 'POST', '/api/parts/adapter-plate', { text });
    expect(answer.status).toBe(422);
  });

  it.each(['/nowhere', '/api', '/api/nowhere', '/api/jobs/none/nowhere', '/assets/none.js'])(
    'for %s is 404',
    async (path) => {
      const answer = await send(bench, 'GET', path);
      expect(answer.status).toBe(404);
      expect(problemSchema.parse(answer.json()).detail).toContain(path);
    },
  );

  it('with an address that cannot be read is 400', async () => {
    expect((await send(bench, 'GET', '/api/parts/%E0%A4%A')).status).toBe(400);
  });
});

describe('an answer', () => {
  it('lets the page load nothing but its own', async () => {
    const { headers } = await send(bench, 'GET', '/');
    const policy = headers['content-security-policy'] ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self'");
    expect(policy).not.toContain('unsafe');
    expect(headers).toMatchObject({ 'x-content-type-options': 'nosniff', 'referrer-policy': 'no-referrer' });
    expect(headers['x-powered-by']).toBeUndefined();
  });

  it('of the interface is kept by nobody', async () => {
    expect((await send(bench, 'GET', '/api/parts')).headers['cache-control']).toBe('no-store');
  });
});

describe('the page', () => {
  it('is served with its files, which may be kept', async () => {
    const page = await send(bench, 'GET', '/');
    expect([page.status, page.headers['content-type']]).toEqual([200, 'text/html; charset=utf-8']);
    const asset = await send(bench, 'GET', '/assets/app-1234.js');
    expect([asset.status, asset.headers['cache-control']]).toEqual([
      200,
      'public, max-age=31536000, immutable',
    ]);
  });

  it.each([
    '/../outside.txt',
    '/%2e%2e/outside.txt',
    '/..%2foutside.txt',
    '/assets/..%2f..%2foutside.txt',
    '/.secret',
    '/%00',
  ])('gives nothing from outside its folder: %s', async (path) => {
    const { status, text } = await send(bench, 'GET', path);
    expect(status).toBeGreaterThanOrEqual(400);
    expect(text).not.toMatch(/kept to itself|hidden/);
  });
});

describe('the description of the interface', () => {
  it('is OpenAPI 3.1, with the parameters of every family by name', async () => {
    const { status, text } = await send(bench, 'GET', '/openapi.json');
    expect(status).toBe(200);
    expect(JSON.parse(text)).toMatchObject({
      openapi: '3.1.0',
      paths: {
        '/api/parts/adapter-plate': {
          post: {
            requestBody: {
              content: {
                'application/json': {
                  schema: {
                    properties: {
                      parameters: {
                        properties: { bolts: { title: 'Bolts' }, boltCircle: { title: 'Bolt circle' } },
                      },
                      process: { properties: { kerf: {} } },
                    },
                  },
                },
              },
            },
          },
        },
        '/api/jobs/{id}/changes': {},
        '/api/shop': {},
      },
    });
  });

  it('refers to nothing that it does not hold', async () => {
    const { text } = await send(bench, 'GET', '/openapi.json');
    const { components } = z
      .object({ components: z.object({ schemas: z.record(z.string(), z.unknown()) }) })
      .parse(JSON.parse(text));
    const wanted = new Set(
      [...text.matchAll(/"\$ref":"#\/components\/schemas\/([^"]+)"/g)].map(([, name]) => name),
    );
    expect(wanted.size).toBeGreaterThan(4);
    expect(Object.keys(components.schemas)).toEqual(expect.arrayContaining([...wanted]));
  });

  it('names every route that answers', async () => {
    const { text } = await send(bench, 'GET', '/openapi.json');
    for (const path of [
      '/api/jobs',
      '/api/jobs/{id}/undo',
      '/api/jobs/{id}/redo',
      '/api/jobs/{id}/history',
      '/healthz',
    ]) {
      expect(text).toContain(`"${path}":`);
    }
  });
});

it('nothing of all this made the program fail', () => {
  expect(bench.failures).toEqual([]);
});
