// The sheet of drive numbers in a real browser: reached from the print, counted with every keystroke, kept with the job.
import axe, { type AxeResults } from 'axe-core';
import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser, nextPicture, openBench, type BenchInBrowser } from './bench-in-browser.js';

const browser = await findBrowser();
if (typeof browser === 'string') console.warn(browser);

/** From the adapter's print to the drive numbers beside it. */
async function openDrive(page: Page): Promise<void> {
  await page.getByRole('navigation').getByRole('link', { name: 'Drive numbers' }).click();
  await page.locator('.drive-picture svg').waitFor();
}

const figure = (page: Page, title: string) =>
  page.locator('.figure summary', { hasText: title }).locator('strong').innerText();

const field = (page: Page, path: string) => page.locator(`[id="list-${path}"]`);

async function seriousOf(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate<AxeResults>('axe.run(document)');
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id} at ${target.join(' ')}`));
}

describe.skipIf(typeof browser === 'string')('drive numbers on the page', () => {
  let bench: BenchInBrowser;
  beforeAll(async () => {
    if (typeof browser !== 'string') bench = await openBench(browser);
  });
  afterAll(async () => {
    if (typeof browser !== 'string') await bench.close();
  });

  it('are fetched only when they are asked for, and have an address of their own', async () => {
    const { page, jobId, errors } = await bench.open();
    const fetched: string[] = [];
    page.on('request', (request) => fetched.push(request.url()));
    await openDrive(page);
    expect(fetched.some((address) => /drive-sheet.*\.js$/.test(address))).toBe(true);
    expect(page.url()).toBe(`${bench.address}#/${jobId}/sprocket-adapter/drive`);
    await page.reload();
    await page.locator('.drive-picture svg').waitFor();
    await page.getByRole('link', { name: 'Sprocket adapter' }).click();
    await page.locator('.canvas svg path').first().waitFor();
    expect(errors).toEqual([]);
  });

  it('stand beside the chain of a part too', async () => {
    const { page } = await bench.open();
    await page.locator('.drive-link a').click();
    await page.locator('.drive-picture svg').waitFor();
  });

  it('follow what is typed; a broken entry keeps the last good numbers and Escape takes it back', async () => {
    const { page } = await bench.open();
    await openDrive(page);
    // 48 ÷ 12 and 48 ÷ 16 by hand.
    expect(await figure(page, 'Ratio')).toBe('4 : 1');
    await field(page, 'motorTeeth').fill('16');
    await expect.poll(() => figure(page, 'Ratio')).toBe('3 : 1');
    await field(page, 'motorTeeth').fill('sixteen');
    await expect.poll(() => page.locator('.field.broken .problem').innerText()).toContain('6 to 150');
    expect(await figure(page, 'Ratio')).toBe('3 : 1');
    expect(await page.locator('.drive-main .state-strip').innerText()).toContain('Motor sprocket');
    await field(page, 'motorTeeth').press('Escape');
    await expect.poll(() => field(page, 'motorTeeth').inputValue()).toBe('16');
  });

  it('take a pair of sprockets from the table, and undo gives the old one back', async () => {
    const { page } = await bench.open();
    await openDrive(page);
    await page.getByRole('button', { name: 'Take 11 and 48 teeth' }).click();
    await expect.poll(() => field(page, 'motorTeeth').inputValue()).toBe('11');
    await page.keyboard.press('Control+z');
    await expect.poll(() => field(page, 'motorTeeth').inputValue()).toBe('12');
  });

  it('mend what a note says, and the note goes', async () => {
    const { page } = await bench.open();
    await openDrive(page);
    await page.getByRole('button', { name: '53 teeth on the wheel' }).click();
    await expect.poll(() => field(page, 'wheelTeeth').inputValue()).toBe('53');
    await nextPicture(page);
    expect(await page.getByRole('button', { name: 'teeth on the wheel' }).count()).toBe(0);
  });

  it('are kept with the job, sizes unchanged in another unit', async () => {
    const { page, jobId } = await bench.open();
    await openDrive(page);
    await field(page, 'centres').fill('450');
    await page.getByRole('button', { name: 'in', exact: true }).click();
    // 450 ÷ 25.4 = 17.7165 in.
    await expect.poll(() => field(page, 'centres').inputValue()).toBe('17.7165 in');
    await expect.poll(async () => (await bench.server.store.jobs.find(jobId))?.unit).toBe('in');
    const stored = await bench.server.store.jobs.find(jobId);
    expect(stored?.drive?.['centres']).toEqual({ typed: '450', mm: 450 });
    await page.reload();
    await page.locator('.drive-picture svg').waitFor();
    expect(await field(page, 'centres').inputValue()).toBe('17.7165 in');
  });

  it('begin with starting values in a job that says nothing of its drive', async () => {
    const first = await bench.open();
    const job = await bench.server.store.jobs.find(first.jobId);
    if (job === undefined) throw new Error('The job is not there.');
    const { drive: _drive, ...bare } = job;
    await bench.server.store.jobs.create({ ...bare, id: `${first.jobId}-bare` });
    const { page } = await bench.open({}, `${first.jobId}-bare`);
    await page.getByRole('navigation').getByRole('link', { name: 'Drive numbers' }).click();
    await page.locator('.no-picture').waitFor();
    expect(await figure(page, 'Ratio')).toBe('4 : 1');
    await field(page, 'chain').fill('40');
    await field(page, 'links').fill('98');
    await page.locator('.drive-picture svg').waitFor();
    expect(await page.locator('.drive-picture .roller').count()).toBe(98);
  });

  it('give the command that counts the same', async () => {
    const { page } = await bench.open();
    await openDrive(page);
    await page.getByRole('button', { name: 'Copy as command' }).click();
    await page.getByRole('button', { name: 'Command copied' }).waitFor();
    const command = await page.evaluate(() => navigator.clipboard.readText());
    expect(command).toContain('npx fishplate drive --motor-teeth 12 --wheel-teeth 48');
    expect(command).toContain("--grade '18 %'");
    // A starting value stays one.
    expect(command).not.toContain('--efficiency');
  });

  it.each(['light', 'dark'] as const)('hide nothing serious from anybody, %s', async (colorScheme) => {
    const { page } = await bench.open({ colorScheme });
    await openDrive(page);
    await field(page, 'centres').fill('wide');
    await expect.poll(() => page.locator('.field.broken').count()).toBe(1);
    expect(await seriousOf(page)).toEqual([]);
  });

  it.each([
    [820, 1180],
    [390, 844],
  ])('stand within a window of %d by %d', async (width, height) => {
    const { page } = await bench.open({ viewport: { width, height } });
    await openDrive(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    expect(await seriousOf(page)).toEqual([]);
  });
});
