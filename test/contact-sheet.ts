// The contact sheet: every family small, at its start and large, and every member of every kit, one sheet of prints.
// npm run contact-sheet [-- --out DIR] [--only ID] writes contact-sheet.svg, and a PNG of each family where there is a browser.
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { drawPrint, writeDisplaySvg } from '../parts-library/drawing/index.js';
import { runKit, runPart, startingShop, type PartRun } from '../parts-library/job/index.js';
import { listKits, type Kit } from '../parts-library/kits/index.js';
import { listFamilies, type Family } from '../parts-library/parts/index.js';
import { findBrowser } from './browser/bench-in-browser.js';
import { sizedFields, sizedParameters, type Values } from './parts/sized-parameters.js';

const CELL = { width: 640, height: 520 };
const HEADING = 28;
const SIZES = [
  ['small', 0.7],
  ['start', 1],
  ['large', 1.6],
] as const;

const escape = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');

/** One print as an SVG element at a place, under what it is and how many findings it has. */
function cell(title: string, run: PartRun, x: number, y: number): string {
  const count = (level: string): number => run.findings.filter((finding) => finding.level === level).length;
  const words = `${title}: ${count('stop')} stops, ${count('caution')} cautions, ${count('note')} notes, ${count('pass')} passed`;
  const heading = `<text x="${x + 8}" y="${y + 19}" font-family="sans-serif" font-size="14">${escape(words)}</text>`;
  if (run.value === undefined)
    return `${heading}<text x="${x + 8}" y="${y + 60}" font-size="14">not drawn</text>`;
  const { part, dimensions, ghosts } = run.value;
  const list = drawPrint({
    part,
    dimensions,
    ghosts,
    findings: run.findings,
    size: CELL,
    frame: 'drawing',
    unit: 'mm',
  });
  const svg = writeDisplaySvg(list, { unit: 'px', theme: 'print' }).replace(
    /^[\s\S]*?<svg/,
    `<svg x="${x}" y="${y + HEADING}"`,
  );
  return heading + svg;
}

/** What stands side by side under one name: a family at its sizes, or a kit's members at one. */
interface Entry {
  readonly id: string;
  readonly cells: readonly { readonly title: string; readonly run: PartRun }[];
}

const familyEntry = (family: Family): Entry => ({
  id: family.id,
  cells: SIZES.map(([size, factor]) => {
    const parameters = factor === 1 ? {} : sizedParameters(family, factor);
    return {
      title: `${family.title}, ${size}`,
      run: runPart({ family: family.id, parameters, unit: 'mm' }, startingShop),
    };
  }),
});

/** A kit at three sizes of its numbers, its members one after the other. */
const kitEntry = (kit: Kit): Entry => ({
  id: kit.id,
  cells: SIZES.flatMap(([size, factor]) => {
    const numbers = factor === 1 ? {} : sizedFields(kit.fields, factor, (some) => wholeKit(kit, some));
    const ran = runKit(kit.id, numbers, 'mm', startingShop);
    if (!ran.ok) throw new Error(`${kit.id} ${size}: ${ran.problems.map(({ says }) => says).join(' ')}`);
    return ran.value.members.map(({ name, run }) => ({ title: `${kit.title}, ${size}: ${name}`, run }));
  }),
});

function wholeKit(kit: Kit, numbers: Values): boolean {
  const ran = runKit(kit.id, numbers, 'mm', startingShop);
  return (
    ran.ok && ran.value.members.length > 0 && ran.value.members.every(({ run }) => run.value !== undefined)
  );
}

/** Cells in rows of as many as there are sizes. */
function sheetOf(entries: readonly Entry[]): string {
  const width = CELL.width * SIZES.length;
  const step = CELL.height + HEADING;
  const rows = entries.flatMap(({ cells }) =>
    Array.from({ length: Math.ceil(cells.length / SIZES.length) }, (_, row) =>
      cells.slice(row * SIZES.length, (row + 1) * SIZES.length),
    ),
  );
  const drawn = rows.flatMap((cells, row) =>
    cells.map(({ title, run }, column) => cell(title, run, column * CELL.width, row * step)),
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${step * rows.length}"><rect width="100%" height="100%" fill="white"/>${drawn.join('')}</svg>`;
}

const argument = (name: string): string | undefined => {
  const at = process.argv.indexOf(name);
  return at < 0 ? undefined : process.argv[at + 1];
};

const out = argument('--out') ?? 'contact-sheet';
const only = argument('--only');
const entries = [...listFamilies().map(familyEntry), ...listKits().map(kitEntry)].filter(
  ({ id }) => only === undefined || id === only,
);
await mkdir(out, { recursive: true });
await writeFile(join(out, 'contact-sheet.svg'), sheetOf(entries));
console.log(
  `${entries.length} families and kits at ${SIZES.length} sizes: ${join(out, 'contact-sheet.svg')}`,
);
const browser = await findBrowser();
if (typeof browser === 'string') console.log(browser);
else {
  const page = await browser.newPage({ viewport: { width: CELL.width * SIZES.length, height: CELL.height } });
  for (const entry of entries) {
    await page.setContent(`<body style="margin:0">${sheetOf([entry])}</body>`);
    await page.screenshot({ path: join(out, `${entry.id}.png`), fullPage: true });
  }
  await browser.close();
  console.log(`a PNG of each in ${out}`);
}
