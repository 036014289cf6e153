// A drawing brought in on the page: chosen, asked about, drawn, sorted by layer, refused in words.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from 'playwright';
import { box, circle, dxf, line, svg } from '../files/drawn.js';
import { findBrowser, openBench, type BenchInBrowser } from './bench-in-browser.js';

const browser = await findBrowser();
if (typeof browser === 'string') console.warn(browser);

const bringIn = (page: Page, name: string, text: string): Promise<void> =>
  page
    .locator('[id="list-drawing"]')
    .setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });

const foot = dxf([box('0', 0, 0, 4, 3), circle('0', 2, 1.5, 0.5), line('fold', 0, 1, 4, 1)], { units: 0 });

describe.skipIf(typeof browser === 'string')('bringing a drawing in', () => {
  let bench: BenchInBrowser;
  beforeAll(async () => {
    if (typeof browser !== 'string') bench = await openBench(browser);
  });
  afterAll(async () => {
    if (typeof browser !== 'string') await bench.close();
  });

  const openOutline = async () => {
    const opened = await bench.open();
    await opened.page.getByRole('button', { name: 'Add a part' }).click();
    await opened.page.getByRole('button', { name: /^Own outline/ }).click();
    await opened.page.locator('.drawing-row').waitFor();
    return opened;
  };

  it('a file that is silent on its unit is asked about, then drawn under its own name', async () => {
    const { page, errors } = await openOutline();
    await bringIn(page, 'cart foot.dxf', foot);
    await page.locator('#list-drawing-said').getByText('does not say its unit').waitFor();
    await page.locator('#drawing-unit').selectOption('in');
    await page.locator('.canvas text', { hasText: /^101\.6$/ }).waitFor();
    await expect.poll(() => page.title()).toContain('cart foot');
    // The line on layer fold is scored by its name, and left out when a person says so.
    await expect.poll(() => page.locator('.canvas text', { hasText: 'score line' }).count()).toBe(1);
    await page.locator('[id="layer-fold"]').selectOption('ignore');
    await expect.poll(() => page.locator('.canvas text', { hasText: 'score line' }).count()).toBe(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => page.locator('.canvas text', { hasText: 'score line' }).count()).toBe(1);
    expect(errors).toEqual([]);
  });

  it('an SVG is read too, scripts and all left out, and what is no drawing is refused in words', async () => {
    const { page, errors } = await openOutline();
    await bringIn(
      page,
      'plate.svg',
      svg('<script>document.title="x"</script><rect width="80" height="60" onload="alert(1)"/>'),
    );
    await page.locator('.canvas text', { hasText: /^80$/ }).waitFor();
    await bringIn(page, 'letter.dxf', 'Dear customer');
    await page.locator('#list-drawing-said').getByText('neither DXF nor SVG').waitFor();
    // The last good drawing stays.
    expect(await page.locator('.canvas text', { hasText: /^80$/ }).count()).toBe(1);
    expect(errors).toEqual([]);
  });
});
