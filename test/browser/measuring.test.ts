// The print in a real browser: what is typed is drawn at once, what cannot be read is said at the entry, nothing is lost.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from 'playwright';
import { findBrowser, nextPicture, openBench, type BenchInBrowser } from './bench-in-browser.js';

const browser = await findBrowser();
if (typeof browser === 'string') console.warn(browser);

/** Coordinates of a bolt hole as drawn, CSS pixels. */
async function drawnHole(page: Page): Promise<readonly number[]> {
  const path = await page.locator('.canvas path.role-opening').last().getAttribute('d');
  return (path?.match(/-?[\d.]+/g) ?? []).map(Number);
}

const drawnTexts = (page: Page): Promise<readonly string[]> => page.locator('.canvas text').allTextContents();

const setField = async (page: Page, path: string, text: string): Promise<void> => {
  await page.locator(`[id="list-${path}"]`).fill(text);
  await nextPicture(page);
};

describe.skipIf(typeof browser === 'string')('measuring on the print', () => {
  let bench: BenchInBrowser;
  beforeAll(async () => {
    if (typeof browser !== 'string') bench = await openBench(browser);
  });
  afterAll(async () => {
    if (typeof browser !== 'string') await bench.close();
  });

  it('a pattern typed three different ways shows the same circle', async () => {
    const { page, errors } = await bench.open();
    // 114.3 mm (4.5 in) on five holes: D = s / sin(180 k/5). Near edges: adjacent centres less a 12.7 hole.
    const ways = ['adjacent 67.184', 'every-2nd 108.706', 'near-edges 54.484 hole 12.7'];
    await setField(page, 'outside', '160');
    const seen: (readonly number[])[] = [];
    for (const way of ways) {
      await setField(page, 'boltCircle', way);
      await page.locator('.canvas text', { hasText: /^Ø114\.3/ }).waitFor();
      await expect
        .poll(() => page.locator('[id="list-boltCircle-echo"]').textContent())
        .toContain('gives bolt circle 114.3 mm = 4.5 in');
      seen.push(await drawnHole(page));
    }
    const [first = [], ...others] = seen;
    expect(first.length).toBeGreaterThan(4);
    for (const other of others) {
      // A fifth of a pixel: the readings are rounded to a thousandth of a millimetre.
      for (const [index, value] of first.entries())
        expect(Math.abs((other[index] ?? Number.NaN) - value)).toBeLessThan(0.2);
    }
    expect(errors).toEqual([]);
  });

  it('the drawing and the list are one and the same entry', async () => {
    const { page } = await bench.open();
    await page.locator('[id="drawn-hub"]').fill('60');
    await expect.poll(() => page.locator('[id="list-hub"]').inputValue()).toBe('60');
    await setField(page, 'hub', '2 1/4 in');
    await expect.poll(() => page.locator('[id="drawn-hub"]').inputValue()).toBe('2 1/4 in');
    await expect
      .poll(() => page.locator('[id="list-hub-echo"]').textContent())
      .toContain('57.15 mm = 2.25 in');
  });

  it('a broken value keeps the last drawing and says what was read and what is accepted', async () => {
    const { page } = await bench.open();
    const before = await drawnTexts(page);
    const entry = page.locator('[id="drawn-hub"]');
    await entry.fill('57.x');
    await nextPicture(page);
    expect(await entry.getAttribute('aria-invalid')).toBe('true');
    const describedBy = (await entry.getAttribute('aria-describedby')) ?? '';
    const message = describedBy.split(' ').find((id) => id.endsWith('-problem'));
    const says = await page.locator(`[id="${message ?? ''}"]`).textContent();
    expect(says).toContain('57.');
    expect(says).toContain('Accepted: 35, 35 mm');
    expect(await drawnTexts(page)).toEqual(before);
    await expect.poll(() => page.locator('.state-strip').textContent()).toContain('last good drawing');
    await expect.poll(() => page.locator('.drawing.broken').count()).toBe(1);
    await entry.fill('58');
    await expect.poll(() => page.locator('.drawing.broken').count()).toBe(0);
    expect(await drawnTexts(page)).not.toEqual(before);
  });

  it('a value saved by itself is there again after a reload', async () => {
    const { page } = await bench.open();
    await setField(page, 'thickness', '8');
    await page.locator('.rail .save-saved').waitFor();
    await page.reload();
    await page.locator('.canvas svg path').first().waitFor();
    await expect.poll(() => page.locator('[id="list-thickness"]').inputValue()).toBe('8');
  });

  it('a remedy is one press, and undo takes it back', async () => {
    const { page } = await bench.open();
    // A 5 mm hole in 8 mm plate is smaller than the torch cuts; the remedy marks it to be drilled.
    await setField(page, 'thickness', '8');
    await setField(page, 'holes', '5');
    const remedy = page.getByRole('button', { name: /mark/i }).first();
    await remedy.click();
    await expect.poll(() => page.locator('[id="list-holes"]').inputValue()).toBe('drill');
    await expect.poll(() => page.locator('.canvas text', { hasText: 'mark, drill' }).count()).toBe(1);
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('[id="list-holes"]').inputValue()).toBe('5');
    await page.keyboard.press('Control+Shift+z');
    await expect.poll(() => page.locator('[id="list-holes"]').inputValue()).toBe('drill');
  });

  it('a job turned to inches keeps every size', async () => {
    const { page } = await bench.open();
    await setField(page, 'hub', '50.8');
    await page.getByRole('button', { name: 'in', exact: true }).click();
    await expect.poll(() => page.locator('[id="list-hub"]').inputValue()).toBe('2 in');
    await expect.poll(() => page.locator('[id="list-hub-echo"]').textContent()).toContain('50.8 mm = 2 in');
    await expect.poll(() => page.locator('[id="list-outside-echo"]').textContent()).toContain('mm = ');
  });

  it('a pattern can be shown as it would be measured another way', async () => {
    const { page } = await bench.open();
    await setField(page, 'boltCircle', 'circle 114.3');
    await page.locator('[id="list-boltCircle-way"]').selectOption('adjacent');
    await expect.poll(() => page.locator('[id="list-boltCircle"]').inputValue()).toBe('adjacent 67.184 mm');
  });

  it('work goes on while the server is away, and is saved when it is back', async () => {
    const { page } = await bench.open();
    await page.context().setOffline(true);
    await setField(page, 'hub', '61');
    await page.locator('.rail .save-away').waitFor();
    await expect.poll(() => page.locator('.canvas text', { hasText: 'Ø61' }).count()).toBeGreaterThan(0);
    await page.context().setOffline(false);
    await page.locator('.rail .save-saved').waitFor();
    await page.reload();
    await page.locator('.canvas svg path').first().waitFor();
    await expect.poll(() => page.locator('[id="list-hub"]').inputValue()).toBe('61');
  });

  it('two people on one job: the second is shown both and chooses', async () => {
    const first = await bench.open();
    const second = await bench.open({}, first.jobId);
    await setField(first.page, 'hub', '62');
    await first.page.locator('.rail .save-saved').waitFor();
    await setField(second.page, 'hub', '63');
    const conflict = second.page.locator('.conflict');
    await conflict.waitFor();
    expect(await conflict.locator('td').allTextContents()).toEqual(['63', '62']);
    await conflict.getByRole('button', { name: 'Keep what is here' }).click();
    await second.page.locator('.rail .save-saved').waitFor();
    await first.page.reload();
    await first.page.locator('.canvas svg path').first().waitFor();
    await expect.poll(() => first.page.locator('[id="list-hub"]').inputValue()).toBe('63');
  });
});
