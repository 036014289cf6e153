// Everybody's page: keyboard alone, nothing serious for axe in light or dark, no policy broken, a light first load.
import { gzipSync } from 'node:zlib';
import axe, { type AxeResults } from 'axe-core';
import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser, openBench, type BenchInBrowser } from './bench-in-browser.js';

const browser = await findBrowser();
if (typeof browser === 'string') console.warn(browser);

/** What axe finds serious or critical. Its script goes in by evaluation, past the page's content policy. */
async function seriousOf(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate<AxeResults>('axe.run(document)');
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} at ${target.join(' ')}: ${failureSummary ?? ''}`),
    );
}

const focusedId = (page: Page): Promise<string> => page.evaluate(() => document.activeElement?.id ?? '');

/** Tabs until an element is reached, as a person would; the steps are bounded. */
async function tabTo(page: Page, reached: (page: Page) => Promise<boolean>, most = 120): Promise<boolean> {
  for (let step = 0; step < most; step += 1) {
    if (await reached(page)) return true;
    await page.keyboard.press('Tab');
  }
  return false;
}

describe.skipIf(typeof browser === 'string')('a page for everybody', () => {
  let bench: BenchInBrowser;
  beforeAll(async () => {
    if (typeof browser !== 'string') bench = await openBench(browser);
  });
  afterAll(async () => {
    if (typeof browser !== 'string') await bench.close();
  });

  it('keyboard alone: Tab walks the dimensions in the order of measuring, edits, undoes and takes a file', async () => {
    const { page } = await bench.open();
    expect(await tabTo(page, async (now) => (await focusedId(now)) === 'drawn-boltCircle')).toBe(true);
    await page.keyboard.press('Tab');
    expect(await focusedId(page)).toBe('drawn-bolt');
    await page.keyboard.press('Tab');
    expect(await focusedId(page)).toBe('drawn-hub');
    await page.keyboard.type('59.5');
    await expect.poll(() => page.locator('.canvas text.lit').count()).toBe(1);
    await expect.poll(() => page.locator('[id="list-hub"]').inputValue()).toBe('59.5');
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('[id="list-hub"]').inputValue()).toBe('57.15');
    const onCutPath = async (now: Page): Promise<boolean> =>
      (await now.evaluate(() => document.activeElement?.getAttribute('aria-label'))) === 'Cut path, DXF';
    expect(await tabTo(page, onCutPath)).toBe(true);
    const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
    expect(download.suggestedFilename()).toBe('sprocket-adapter.cut.dxf');
  });

  for (const colorScheme of ['light', 'dark'] as const) {
    it(`axe finds nothing serious, ${colorScheme}, at rest and with a broken entry in hand`, async () => {
      const { page } = await bench.open({ colorScheme, bypassCSP: true });
      expect(await seriousOf(page)).toEqual([]);
      await page.locator('[id="drawn-hub"]').fill('57.x');
      expect(await seriousOf(page)).toEqual([]);
    });
  }

  it('axe finds nothing serious on a phone', async () => {
    const { page } = await bench.open({ viewport: { width: 390, height: 844 }, bypassCSP: true });
    expect(await seriousOf(page)).toEqual([]);
  });

  it('what a finger hits is at least 44 pixels', async () => {
    const { page } = await bench.open({ viewport: { width: 390, height: 844 }, hasTouch: true });
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('button, input, select, summary, a')]
        .filter((element) => element.getClientRects().length > 0)
        // Turned text keeps its own box; what it measures before turning is what counts.
        .map((element) => ({
          name: element.id === '' ? (element.textContent ?? '') : element.id,
          width: element instanceof HTMLElement ? element.offsetWidth : 0,
          height: element instanceof HTMLElement ? element.offsetHeight : 0,
        }))
        // Where two dimensions stand close, the same entries in the list are full size.
        .filter(({ name, width, height }) => width < 44 || height < (name.startsWith('drawn-') ? 24 : 44)),
    );
    expect(small).toEqual([]);
  });

  it('no policy is broken and nothing fails on the way to the first drawing', async () => {
    const { errors } = await bench.open();
    expect(errors).toEqual([]);
  });

  it('script for the first sheet is at most 250 kB compressed; the rest comes after the drawing', async () => {
    const context = await bench.browser.newContext();
    const page = await context.newPage();
    // When the first line of the drawing stands, by the page's own clock.
    await page.addInitScript(() => {
      const watcher = new MutationObserver(() => {
        if (document.querySelector('.canvas svg path') === null) return;
        performance.mark('first drawing');
        watcher.disconnect();
      });
      watcher.observe(document, { childList: true, subtree: true });
    });
    const sizes = new Map<string, Promise<number>>();
    page.on('response', (response) => {
      if (response.url().endsWith('.js'))
        sizes.set(
          response.url(),
          response.body().then((body) => gzipSync(body).length),
        );
    });
    await page.goto(bench.address);
    await page.locator('.cell-cut dd', { hasText: 'mm' }).waitFor();
    const early = await page.evaluate(() => {
      const [drawn] = performance.getEntriesByName('first drawing');
      const scripts = performance.getEntriesByType('resource').filter(({ name }) => name.endsWith('.js'));
      return scripts
        .filter(({ startTime }) => startTime <= (drawn?.startTime ?? Number.POSITIVE_INFINITY))
        .map(({ name }) => name);
    });
    const bytes = (await Promise.all(early.map((name) => sizes.get(name) ?? Promise.resolve(0)))).reduce(
      (sum, size) => sum + size,
      0,
    );
    expect(bytes).toBeGreaterThan(100_000);
    expect(bytes).toBeLessThanOrEqual(250_000);
    // The engine of the kerf is among what came later.
    expect(sizes.size).toBeGreaterThan(early.length);
  });
});
