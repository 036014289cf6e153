// `fishplate serve`: says where it is open, keeps its data, stops when told, refuses what it cannot do.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { run } from '../../server/cli/run.js';
import { CLI } from './run-cli.js';

let data: string;
beforeEach(async () => {
  data = await mkdtemp(join(tmpdir(), 'fishplate-serve-'));
});
afterEach(() => rm(data, { recursive: true, force: true }));

/** Opens a bench, uses it and closes it by a signal; gives back what it printed and how it ended. */
async function withBench(
  args: readonly string[],
  use: (address: string) => Promise<void>,
): Promise<{ readonly code: number | null; readonly out: string; readonly err: string }> {
  const child = spawn(process.execPath, [...CLI, 'serve', '--data', data, ...args]);
  const closed = once(child, 'close');
  let out = '';
  let err = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => (err += text));
  try {
    const address = await new Promise<string>((resolve, reject) => {
      child.stdout.setEncoding('utf8').on('data', (text: string) => {
        out += text;
        const found = /open at (http:\S+)/.exec(out)?.[1];
        if (found !== undefined) resolve(found);
      });
      closed.then(() => reject(new Error(`closed before it was open: ${out}${err}`)), reject);
    });
    await use(address);
  } finally {
    child.kill('SIGTERM');
    await closed;
  }
  return { code: child.exitCode, out, err };
}

describe('fishplate serve', () => {
  it('opens the bench, keeps what was changed, and stops when told', async () => {
    const first = await withBench(['--port', '0'], async (address) => {
      expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
      const deleted = await fetch(`${address}api/jobs/orchard-haul-cart/changes`, {
        method: 'POST',
        headers: { 'Content-Type': 'application/json', 'If-Match': '"0"' },
        body: JSON.stringify({ says: 'Rename', patch: [{ op: 'replace', path: '/name', value: 'Cart' }] }),
      });
      expect(deleted.status).toBe(200);
    });
    expect([first.code, first.err]).toEqual([0, '']);
    const second = await withBench(['--port', '0'], async (address) => {
      const answer = await fetch(`${address}api/jobs`);
      // The demo is put only into a store without jobs.
      expect(await answer.json()).toMatchObject({ jobs: [{ name: 'Cart', revision: 1 }] });
    });
    expect(second.code).toBe(0);
  });

  it('says which port is taken', async () => {
    const other = createServer().listen(0, '127.0.0.1');
    await once(other, 'listening');
    const address = other.address();
    const port = typeof address === 'object' && address !== null ? address.port : 0;
    const { code, err } = await run(['serve', '--port', String(port), '--data', data]);
    other.close();
    expect(code).toBe(2);
    expect(err).toContain(`--port: ${port} is taken`);
  });

  it.each<readonly [readonly string[], string]>([
    [['--host', '0.0.0.0'], 'loopback'],
    [['--host', '192.168.1.20'], 'loopback'],
    [['--port', 'many'], '0 to 65535'],
    [['--port', '70000'], '0 to 65535'],
    [['--prot', '80'], 'did you mean --port'],
    [['now'], '"now"'],
    [['--data', '/dev/null'], 'cannot be opened'],
  ])('%j is refused', async (args, words) => {
    const { code, err } = await run(['serve', ...args]);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });
});
