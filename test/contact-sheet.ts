// The contact sheet: every family small, at its start and large, one sheet of prints to look at.
// npm run contact-sheet [-- --out DIR] [--only ID] writes contact-sheet.svg, and a PNG of each family where there is a browser.
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { drawPrint, writeDisplaySvg } from '../parts-library/drawing/index.js';
import { runPart, startingShop } from '../parts-library/job/index.js';
import { listFamilies, type Family } from '../parts-library/parts/index.js';
import { findBrowser } from './browser/bench-in-browser.js';
import { sizedParameters } from './parts/sized-parameters.js';

const CELL = { width: 640, height: 520 };
const HEADING = 28;
const SIZES = [
  ['small', 0.7],
  ['start', 1],
  ['large', 1.6],
] as const;

const escape = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');

/** One print as an SVG element at a place, under what it is and how many findings it has. */
function cell(family: Family, size: string, factor: number, x: number, y: number): string {
  const parameters = factor === 1 ? {} : sizedParameters(family, factor);
  const run = runPart({ family: family.id, parameters, unit: 'mm' }, startingShop);
  const count = (level: string): number => run.findings.filter((finding) => finding.level === level).length;
  const words = `${family.title}, ${size}: ${count('stop')} stops, ${count('caution')} cautions, ${count('note')} notes, ${count('pass')} passed`;
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

function sheetOf(families: readonly Family[]): string {
  const width = CELL.width * SIZES.length;
  const step = CELL.height + HEADING;
  const cells = families.flatMap((family, row) =>
    SIZES.map(([size, factor], column) => cell(family, size, factor, column * CELL.width, row * step)),
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${step * families.length}"><rect width="100%" height="100%" fill="white"/>${cells.join('')}</svg>`;
}

const argument = (name: string): string | undefined => {
  const at = process.argv.indexOf(name);
  return at < 0 ? undefined : process.argv[at + 1];
};

const out = argument('--out') ?? 'contact-sheet';
const only = argument('--only');
const families = listFamilies().filter(({ id }) => only === undefined || id === only);
await mkdir(out, { recursive: true });
await writeFile(join(out, 'contact-sheet.svg'), sheetOf(families));
console.log(`${families.length} families at ${SIZES.length} sizes: ${join(out, 'contact-sheet.svg')}`);
const browser = await findBrowser();
if (typeof browser === 'string') console.log(browser);
else {
  const page = await browser.newPage({
    viewport: { width: CELL.width * SIZES.length, height: CELL.height + HEADING },
  });
  for (const family of families) {
    await page.setContent(`<body style="margin:0">${sheetOf([family])}</body>`);
    await page.screenshot({ path: join(out, `${family.id}.png`) });
  }
  await browser.close();
  console.log(`a PNG of each in ${out}`);
}
