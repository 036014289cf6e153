// The package as others get it: packed, installed elsewhere without development packages, run and imported.
import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildLibraryAndServer, ROOT, runProgram } from './built.js';

let folder: string;
let home: string;

beforeAll(async () => {
  buildLibraryAndServer();
  folder = await mkdtemp(join(tmpdir(), 'fishplate-package-'));
  home = join(folder, 'elsewhere');
  await mkdir(home);
  // Scripts would build again and compile the store's native part; neither is what is tried here.
  runProgram('npm', ['pack', '--ignore-scripts', '--pack-destination', folder], ROOT);
  const packed = (await readdir(folder)).find((name) => name.endsWith('.tgz'));
  if (packed === undefined) throw new Error('npm pack made no package');
  await writeFile(
    join(home, 'package.json'),
    JSON.stringify({ name: 'elsewhere', private: true, type: 'module' }),
  );
  const flags = ['--ignore-scripts', '--prefer-offline', '--omit=dev', '--no-audit', '--no-fund'];
  runProgram('npm', ['install', ...flags, join(folder, packed)], home);
}, 300_000);

afterAll(() => rm(folder, { recursive: true, force: true }));

describe('the installed package', () => {
  it('holds what is built and no sources or tests', async () => {
    const installed = join(home, 'node_modules', 'fishplate');
    const entries = (await readdir(installed)).filter((name) => !/^(README|LICENSE|CHANGELOG)/.test(name));
    expect(entries.toSorted()).toEqual(['dist', 'package.json']);
    expect(existsSync(join(installed, 'dist/server/cli.js'))).toBe(true);
    expect(existsSync(join(home, 'node_modules/typescript'))).toBe(false);
  });

  it('makes the files of a part', async () => {
    const args = [
      'part',
      'adapter-plate',
      '--bolts',
      '6',
      '--bolt-circle',
      '110',
      '--outside',
      '150',
      '--out',
      'plates',
    ];
    const { out } = runProgram(join(home, 'node_modules/.bin/fishplate'), args, home);
    expect(out).toMatch(/pierces +7/);
    expect(await readdir(join(home, 'plates'))).toContain('adapter-plate.cut.dxf');
  });

  it('is imported as a library', () => {
    const script = `
      import { runPart, startingShop, summarise } from 'fishplate';
      const run = runPart({ family: 'adapter-plate', parameters: { bore: 57.35, holes: 'drill', outside: 150 }, unit: 'mm' }, startingShop);
      console.log(summarise(run).part.area);
    `;
    const { out } = runProgram(process.execPath, ['--input-type=module', '-e', script], home);
    // π/4 (150² − 57.35²) = 15088.27
    expect(Number(out)).toBeCloseTo(15088.27, 2);
  });

  it('brings its types', async () => {
    const source = `
      import { findFamily, runPart, startingShop, type PartRun } from 'fishplate';
      const run: PartRun = runPart({ family: 'adapter-plate', parameters: {}, unit: 'mm' }, startingShop);
      export const area: number | undefined = run.value?.area;
      export const title: string | undefined = findFamily('adapter-plate')?.title;
      // @ts-expect-error: there is no such unit
      runPart({ family: 'adapter-plate', parameters: {}, unit: 'cm' }, startingShop);
    `;
    await writeFile(join(home, 'use.ts'), source);
    const flags = [
      '--noEmit',
      '--strict',
      '--module',
      'nodenext',
      '--target',
      'es2023',
      '--types',
      '',
      '--skipLibCheck',
    ];
    const compiler = join(ROOT, 'node_modules/typescript/bin/tsc');
    expect(runProgram(process.execPath, [compiler, ...flags, 'use.ts'], home).out).toBe('');
  });
});
