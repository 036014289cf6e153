// The library in a browser's bundle: it needs nothing that only Node has.
import { builtinModules } from 'node:module';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build, type Rolldown } from 'vite';
import { describe, expect, it } from 'vitest';
import { buildLibraryAndServer, ROOT } from './built.js';

const isBuiltin = (id: string): boolean => id.startsWith('node:') || builtinModules.includes(id);

/** Bundles a script as a page would have it. */
async function bundle(
  source: string,
): Promise<{ readonly code: string; readonly builtins: readonly string[] }> {
  const folder = await mkdtemp(join(ROOT, 'node_modules', '.bundle-'));
  const builtins: string[] = [];
  try {
    await writeFile(join(folder, 'entry.js'), source);
    const result = await build({
      root: folder,
      configFile: false,
      logLevel: 'silent',
      plugins: [
        {
          name: 'note-builtins',
          enforce: 'pre',
          resolveId: (id, importer) => {
            if (isBuiltin(id)) builtins.push(`${id} in ${importer ?? 'nothing'}`);
            return null;
          },
        },
      ],
      build: { write: false, lib: { entry: 'entry.js', formats: ['es'] } },
    });
    const outputs = (Array.isArray(result) ? result : [result]).flatMap((one) =>
      'output' in one ? one.output : [],
    );
    const chunks = outputs.filter((one): one is Rolldown.OutputChunk => one.type === 'chunk');
    return { code: chunks.map(({ code }) => code).join('\n'), builtins };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

describe('the built library', () => {
  it('is bundled for a browser without any module of Node', async () => {
    buildLibraryAndServer();
    const { code, builtins } = await bundle(
      `export * from ${JSON.stringify(join(ROOT, 'dist/parts-library/index.js'))};`,
    );
    expect(builtins).toEqual([]);
    expect(code).not.toMatch(/from ?["']node:|require\(["']node:/);
    expect(code).toContain('runPart');
  });

  it('would be caught reaching for one', async () => {
    const { builtins } = await bundle(`export { readFileSync } from 'node:fs';`);
    expect(builtins).toHaveLength(1);
  });
});
