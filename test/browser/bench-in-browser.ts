// The real bench for browser tests: the page built, the server on a free port with a store in memory, a browser before it.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import chromium from '@sparticuz/chromium';
import { chromium as driver, type Browser, type BrowserContextOptions, type Page } from 'playwright';
import { build } from 'vite';
import { createDemoJob } from '../../parts-library/job/index.js';
import { serve, type Running } from '../../server/serve.js';

export interface OpenPage {
  readonly page: Page;
  readonly jobId: string;
  /** What the page complained of. */
  readonly errors: readonly string[];
}

export interface BenchInBrowser {
  readonly address: string;
  readonly server: Running;
  readonly browser: Browser;
  /** A page on the adapter of a fresh demo job, or of the job named; drawn. */
  readonly open: (options?: BrowserContextOptions, jobId?: string) => Promise<OpenPage>;
  readonly close: () => Promise<void>;
}

/** A sandbox needs rights that containers seldom give; these pages are our own. */
const ARGUMENTS = ['--no-sandbox', '--no-zygote'];

async function startBrowser(): Promise<Browser> {
  const executablePath = process.env['CHROMIUM_PATH'] ?? (await chromium.executablePath());
  return driver.launch({ executablePath, args: ARGUMENTS, headless: true });
}

/**
 * The browser, or why there is none. Where tests guard the main branch (CI is set) there has to be one.
 * @throws Error in CI without a browser
 */
export async function findBrowser(): Promise<Browser | string> {
  try {
    return await startBrowser();
  } catch (error) {
    const why = `No browser for the page tests: ${error instanceof Error ? error.message : String(error)}. Set CHROMIUM_PATH to a Chromium.`;
    if (process.env['CI'] !== undefined) throw new Error(why, { cause: error });
    return why;
  }
}

/** Waits until what an edit changed is on screen: words follow the drawing with the next picture. */
export const nextPicture = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        requestAnimationFrame(() => requestAnimationFrame(() => resolve()));
      }),
  );

/** Builds the page into a folder of its own, so that tests never meet a half built one. */
async function buildPage(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'fishplate-page-'));
  const configFile = join(import.meta.dirname, '../../client/vite.config.ts');
  await build({ configFile, logLevel: 'error', build: { outDir: folder, emptyOutDir: true } });
  return folder;
}

/** A copy of the demo job under an id of its own, so that tests do not meet. */
async function freshJob({ store }: Running): Promise<string> {
  const id = `demo-${(await store.jobs.list()).length}`;
  const computedWith = {
    library: 'test',
    chartVersion: 'starting',
    shopRevision: 0,
    seed: 1,
    lanes: 1,
    iterations: 0,
  };
  await store.jobs.create({ ...createDemoJob(computedWith), id });
  return id;
}

/** Starts everything that a page test needs. */
export async function openBench(browser: Browser): Promise<BenchInBrowser> {
  const folder = await buildPage();
  const server = await serve({ port: 0, host: '127.0.0.1', file: ':memory:', version: 'test', page: folder });
  return {
    address: server.address,
    server,
    browser,
    open: async (options, known) => {
      const jobId = known ?? (await freshJob(server));
      const context = await browser.newContext({
        viewport: { width: 1440, height: 900 },
        permissions: ['clipboard-read', 'clipboard-write'],
        ...options,
      });
      const page = await context.newPage();
      const errors: string[] = [];
      page.on('pageerror', (error) => errors.push(error.message));
      page.on('console', (message) => {
        if (message.type() === 'error') errors.push(message.text());
      });
      await page.goto(`${server.address}#/${jobId}/sprocket-adapter`);
      await page.locator('.canvas svg path').first().waitFor();
      return { page, jobId, errors };
    },
    close: async () => {
      await browser.close();
      await server.stop();
      await rm(folder, { recursive: true, force: true });
    },
  };
}
