// House rules that no linter knows: floors, no circular imports, every source file tested, bundle budget.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { judgeImport } from './floors.js';

const top = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
/** Script that the first sheet may load, gzipped. */
const SCRIPT_BUDGET_KILOBYTES = 250;

function listSources(folder: string): readonly string[] {
  return readdirSync(join(top, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) return listSources(path);
    return /\.(ts|tsx)$/.test(entry.name) && !entry.name.endsWith('.d.ts') ? [path] : [];
  });
}

function importsOf(file: string): readonly { readonly to: string; readonly typeOnly: boolean }[] {
  const text = readFileSync(join(top, file), 'utf8');
  const statements = text.matchAll(
    /(?:^|\n)\s*(?:import|export)\s+(type\s)?[^;'"]*?from\s+['"](\.[^'"]+)['"]/g,
  );
  const dynamic = text.matchAll(/import\(\s*['"](\.[^'"]+)['"]\s*\)/g);
  const resolve = (specifier: string): string => {
    const bare = normalize(join(dirname(file), specifier)).replaceAll('\\', '/');
    return (
      [bare.replace(/\.js$/, '.ts'), bare.replace(/\.js$/, '.tsx'), bare].find((path) =>
        existsSync(join(top, path)),
      ) ?? bare
    );
  };
  return [
    ...[...statements].map((match) => ({ to: resolve(match[2] ?? ''), typeOnly: match[1] !== undefined })),
    ...[...dynamic].map((match) => ({ to: resolve(match[1] ?? ''), typeOnly: false })),
  ].filter(({ to }) => /\.(ts|tsx)$/.test(to));
}

/** Circles among value imports; type imports vanish at run time and may point both ways within a room. */
function findCircles(graph: ReadonlyMap<string, readonly string[]>): readonly string[] {
  const state = new Map<string, 'open' | 'done'>();
  const circles: string[] = [];
  const visit = (file: string, trail: readonly string[]): void => {
    if (state.get(file) === 'done') return;
    if (state.get(file) === 'open') {
      circles.push([...trail.slice(trail.indexOf(file)), file].join(' → '));
      return;
    }
    state.set(file, 'open');
    for (const next of graph.get(file) ?? []) visit(next, [...trail, file]);
    state.set(file, 'done');
  };
  for (const file of graph.keys()) visit(file, []);
  return circles;
}

/** Every source file is reached by some test, directly or through what the test imports. */
function findUntested(
  sources: readonly string[],
  graph: ReadonlyMap<string, readonly string[]>,
): readonly string[] {
  const reached = new Set<string>();
  const walk = (file: string): void => {
    if (reached.has(file)) return;
    reached.add(file);
    for (const next of graph.get(file) ?? []) walk(next);
  };
  for (const file of graph.keys()) if (file.endsWith('.test.ts')) walk(file);
  // The page and the command line are run whole by the browser and command tests.
  const runWhole = /^client\/|^server\/cli/;
  return sources.filter((file) => !reached.has(file) && !runWhole.test(file));
}

function checkBundle(): readonly string[] {
  const folder = join(top, 'dist', 'client');
  const page = join(folder, 'index.html');
  if (!existsSync(page)) return [];
  const scripts = [...readFileSync(page, 'utf8').matchAll(/(?:src|href)="\/?([^"]+\.js)"/g)].map(
    (match) => match[1] ?? '',
  );
  const bytes = scripts.reduce((sum, script) => sum + gzipSync(readFileSync(join(folder, script))).length, 0);
  const kilobytes = bytes / 1000;
  return kilobytes > SCRIPT_BUDGET_KILOBYTES
    ? [
        `The page loads ${kilobytes.toFixed(1)} kB of script (gzip); the budget is ${SCRIPT_BUDGET_KILOBYTES} kB.`,
      ]
    : [];
}

const sources = ['parts-library', 'server', 'client']
  .flatMap(listSources)
  .filter((file) => !file.endsWith('vite.config.ts'));
const tests = listSources('test');
const all = [...sources, ...tests];
const imports = new Map(all.map((file) => [file, importsOf(file)]));
const graph = new Map(
  all.map((file) => [file, (imports.get(file) ?? []).filter((one) => !one.typeOnly).map(({ to }) => to)]),
);
const wholeGraph = new Map(all.map((file) => [file, (imports.get(file) ?? []).map(({ to }) => to)]));

const complaints = [
  ...sources.flatMap((file) =>
    (imports.get(file) ?? []).flatMap(({ to }) => judgeImport(file, relative(top, join(top, to))) ?? []),
  ),
  ...findCircles(graph).map((circle) => `Circular import: ${circle}`),
  ...findUntested(sources, wholeGraph).map((file) => `No test reaches ${file}.`),
  ...checkBundle(),
];

for (const complaint of complaints) process.stderr.write(`${complaint}\n`);
process.stdout.write(`house rules: ${sources.length} source files, ${complaints.length} complaints\n`);
process.exit(complaints.length === 0 ? 0 : 1);
