// Files as a browser downloads them: read by an independent reader, the two kinds never confused, withheld by a stop.
import { readFile } from 'node:fs/promises';
import Parser from 'dxf-parser';
import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser, openBench, type BenchInBrowser } from './bench-in-browser.js';

const browser = await findBrowser();
if (typeof browser === 'string') console.warn(browser);

async function take(page: Page, button: string): Promise<{ readonly name: string; readonly text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), 'utf8') };
}

const entitiesOf = (text: string) => new Parser().parseSync(text)?.entities ?? [];

describe.skipIf(typeof browser === 'string')('files from the page', () => {
  let bench: BenchInBrowser;
  beforeAll(async () => {
    if (typeof browser !== 'string') bench = await openBench(browser);
  });
  afterAll(async () => {
    if (typeof browser !== 'string') await bench.close();
  });

  it('finished size has the holes as circles; cut path has open paths that start at a pierce', async () => {
    const { page } = await bench.open();
    const finished = await take(page, 'Finished size, DXF');
    expect(finished.name).toBe('sprocket-adapter.finished.dxf');
    const circles = entitiesOf(finished.text).filter(({ type }) => type === 'CIRCLE');
    // The demo adapter: outline 130, bore 57.35 and five holes, all round.
    expect(circles).toHaveLength(7);

    const cut = await take(page, 'Cut path, DXF');
    expect(cut.name).toBe('sprocket-adapter.cut.dxf');
    expect(entitiesOf(cut.text).filter(({ type }) => type === 'CIRCLE')).toEqual([]);
    const layers = (text: string): ReadonlySet<string> => new Set(entitiesOf(text).map(({ layer }) => layer));
    const shared = [...layers(finished.text)].filter((layer) => layers(cut.text).has(layer));
    expect(shared).toEqual([]);
    expect(finished.text).toContain('FINISHED SIZE');
    expect(cut.text).toContain('CUT PATH');
  });

  it('R2000 in inches says so and is smaller by 25.4', async () => {
    const { page } = await bench.open();
    await page.locator('.downloads select').selectOption('r2000 in');
    const { text } = await take(page, 'Finished size, DXF');
    expect(text).toContain('AC1015');
    const radii = entitiesOf(text).flatMap((entity) => ('radius' in entity ? [Number(entity.radius)] : []));
    expect(Math.max(...radii)).toBeCloseTo(130 / 2 / 25.4, 6);
  });

  it('SVG files are at true size, and the print is one too', async () => {
    const { page } = await bench.open();
    expect((await take(page, 'Finished size, SVG')).text).toMatch(/<svg[^>]*width="[\d.]+mm"/);
    const print = await take(page, 'Print, SVG');
    expect(print.name).toBe('sprocket-adapter.print.svg');
    expect(print.text).toMatch(/<svg[^>]*width="297mm"/);
  });

  it('a stop withholds the files, says which, and gives them when somebody says why', async () => {
    const { page } = await bench.open();
    // Bolt centres 7 mm from the edge; 8 mm is the least for M8 (one bolt diameter).
    await page.locator('[id="list-boltCircle"]').fill('circle 116');
    await page.locator('.note.level-stop').first().waitFor();
    const button = page.getByRole('button', { name: 'Cut path, DXF', exact: true });
    expect(await button.isDisabled()).toBe(true);
    await expect.poll(() => page.locator('.withheld').textContent()).toMatch(/Files withheld by stops? 1/);
    await page.getByLabel('Why the stops are accepted').fill('trial piece in card');
    await page.getByRole('button', { name: /^Accept / }).click();
    expect(await button.isDisabled()).toBe(false);
    // What was accepted lapses when it changes.
    await page.locator('[id="list-boltCircle"]').fill('circle 117');
    await page.locator('.withheld').waitFor();
  });

  it('the command on the clipboard names the family and only what was entered', async () => {
    const { page } = await bench.open();
    await page.getByRole('button', { name: 'Copy as command' }).click();
    await page.getByRole('button', { name: 'Command copied' }).waitFor();
    const command = await page.evaluate(() => navigator.clipboard.readText());
    expect(command).toMatch(/^npx fishplate part adapter-plate --bolts 5 --bolt-circle '[^']+' --bolt M8/);
    expect(command).toContain('--hub 57.15');
    expect(command).not.toContain('--keyway');
  });
});
