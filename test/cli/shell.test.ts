// The command line from a shell: streams, exit codes, standard input, relative folders.
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inFolder } from './in-folder.js';
import { runCli } from './run-cli.js';

describe('fishplate in a shell', () => {
  it('reads parameters from standard input and writes into a folder beside it', async () => {
    await inFolder(async (folder) => {
      const { code, out, err } = await runCli(
        ['part', 'adapter-plate', '--params', '-', '--out', 'plates', '--json'],
        { cwd: folder, input: '{"bolts": 6, "boltCircle": 110, "outside": 150}' },
      );
      expect([code, err]).toEqual([0, '']);
      expect(JSON.parse(out)).toMatchObject({ part: { bounds: { width: 150 } }, cut: { pierces: 7 } });
      expect(await readdir(join(folder, 'plates'))).toHaveLength(5);
    });
  });

  it('exits 2 and complains on the error stream', async () => {
    const { code, out, err } = await runCli(['part', 'adapter-plate', '--bolts', 'many']);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('--bolts: Bolts is "many"');
  });

  it('exits 2 with one JSON object on the output when asked for JSON', async () => {
    const { code, out, err } = await runCli(['part', 'adapter-plate', '--bolts', 'many', '--json']);
    expect([code, err]).toEqual([2, '']);
    expect(JSON.parse(out)).toMatchObject({
      error: { exitCode: 2, errors: [{ field: 'bolts', flag: '--bolts' }] },
    });
  });

  it('exits 3 on a stop finding', async () => {
    const { code } = await runCli([
      'part',
      'adapter-plate',
      '--bolt-circle',
      '110',
      '--bolt',
      'M10',
      '--outside',
      '124',
    ]);
    expect(code).toBe(3);
  });
});
