// `fishplate kit`: several parts from one set of numbers, written whole or not at all.
import { readdir } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { run } from '../../server/cli/run.js';
import { inFolder } from './in-folder.js';

describe('fishplate kit', () => {
  test('writes five files for each member', async () => {
    await inFolder(async (folder) => {
      const { code, out } = await run(['kit', 'sprocket-carrier', '--gap', '6.05', '--out', folder]);
      expect(code).toBe(0);
      expect(out).toContain('1 × 6.05 mm = 6.05 mm, 0 mm out of line');
      const files = await readdir(folder);
      expect(files.filter((name) => name.endsWith('.cut.dxf'))).toEqual([
        'sprocket-carrier-adapter.cut.dxf',
        'sprocket-carrier-ring-1.cut.dxf',
      ]);
      expect(files).toHaveLength(10);
    });
  });

  test('a stop on the kit writes nothing and exits with 3', async () => {
    await inFolder(async (folder) => {
      const { code, err } = await run(['kit', 'sprocket-carrier', '--gap', '0.5', '--out', folder]);
      expect(code).toBe(3);
      expect(err).toContain('Nothing was written: No plate on hand goes into the gap');
      expect(await readdir(folder)).toEqual([]);
    });
  });

  test('names what cannot be used by its flag, and the nearest kit', async () => {
    expect(await run(['kit', 'sprocket-carrier', '--gap', 'wide'])).toMatchObject({ code: 2 });
    expect((await run(['kit', 'sprocket-carier'])).err).toContain('Did you mean sprocket-carrier?');
    expect((await run(['kit', 'sprocket-carrier', '--gapp', '3'])).err).toContain('--gap');
    expect((await run(['kits'])).out).toContain('sprocket-carrier');
    expect((await run(['kit', 'sprocket-carrier', '--help'])).out).toContain('--bolt-circle MEASURE');
  });
});
