// 200 edits in a real browser: how long from the input event to painted and laid out, and to the next frame.
// npx tsx test/benchmark/edits.ts [--json]
import type { Page } from 'playwright';
import { findBrowser, openBench } from '../browser/bench-in-browser.js';

const EDITS = 200;
/** Edits between the first figures and the second: by then the engine has compiled what it meets. */
const WARM_UP = 1500;
const WARM_UP_PAUSE = 4;
/** Between two keystrokes, milliseconds: twice as fast as a fast typist, so that a frame is done before the next edit. */
const PAUSE = 50;

interface Times {
  /** Milliseconds from dispatching the input event until the handler is done and the new drawing laid out. */
  readonly handled: readonly number[];
  /** Milliseconds until the list, the notes and the figures stood too, in the next frame. */
  readonly frame: readonly number[];
}

/** Types `count` values into the hub's entry on the drawing and times each. */
const typeValues = (page: Page, count: number, rest: number): Promise<Times> =>
  page.evaluate(
    async ({ edits, pause }) => {
      const entry = document.getElementById('drawn-hub');
      const svg = document.querySelector<SVGSVGElement>('.canvas svg');
      if (!(entry instanceof HTMLInputElement) || svg === null)
        throw new Error('The page shows no hub to edit.');
      const handled: number[] = [];
      const frames: number[] = [];
      entry.focus();
      for (let edit = 0; edit < edits; edit += 1) {
        await new Promise((resolve) => {
          setTimeout(resolve, pause);
        });
        const start = performance.now();
        entry.value = (50 + (edit % 40) * 0.25).toFixed(2);
        entry.dispatchEvent(new InputEvent('input', { bubbles: true }));
        // The page draws in microtasks behind the handler; they are part of the edit.
        for (let turn = 0; turn < 8; turn += 1) await Promise.resolve();
        svg.getBBox();
        document.body.getBoundingClientRect();
        handled.push(performance.now() - start);
        await new Promise((resolve) => {
          requestAnimationFrame(resolve);
        });
        frames.push(performance.now() - start);
      }
      return { handled, frame: frames };
    },
    { edits: count, pause: rest },
  );

const share = (times: readonly number[], part: number): number => {
  const sorted = times.toSorted((a, b) => a - b);
  return Number(
    (sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))] ?? Number.NaN).toFixed(1),
  );
};

const summary = (times: readonly number[]) => ({ p50: share(times, 0.5), p95: share(times, 0.95) });

const figures = (times: Times) => ({
  handledMilliseconds: summary(times.handled),
  nextFrameMilliseconds: summary(times.frame),
});

function print(
  which: string,
  { handledMilliseconds, nextFrameMilliseconds }: ReturnType<typeof figures>,
): void {
  console.log(which);
  console.log(
    `  input to laid out   p50 ${handledMilliseconds.p50} ms   p95 ${handledMilliseconds.p95} ms   (wanted: p95 at most 8)`,
  );
  console.log(
    `  input to next frame p50 ${nextFrameMilliseconds.p50} ms   p95 ${nextFrameMilliseconds.p95} ms   (wanted: p95 at most 34)`,
  );
}

const browser = await findBrowser();
if (typeof browser === 'string') {
  console.error(browser);
  process.exit(1);
}
const bench = await openBench(browser);
try {
  const { page } = await bench.open();
  await page.locator('#drawn-hub').waitFor();
  const drawn = await page.locator('.canvas svg [class]').count();
  const fresh = await typeValues(page, EDITS, PAUSE);
  await typeValues(page, WARM_UP, WARM_UP_PAUSE);
  const settled = await typeValues(page, EDITS, PAUSE);
  const result = { edits: EDITS, elements: drawn, fresh: figures(fresh), settled: figures(settled) };
  if (process.argv.includes('--json')) console.log(JSON.stringify(result));
  else {
    console.log(`${EDITS} edits of the hub on the demo adapter, 1440 × 900, ${drawn} drawn elements`);
    print('first on a page just opened', result.fresh);
    print(`after ${WARM_UP} more`, result.settled);
  }
} finally {
  await bench.close();
}
