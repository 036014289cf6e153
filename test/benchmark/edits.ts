// 200 edits in a real browser: how long from the input event to painted and laid out, and to the next frame.
// npx tsx test/benchmark/edits.ts [--json]
import type { Page } from 'playwright';
import { findBrowser, openBench } from '../browser/bench-in-browser.js';

const EDITS = 200;
/** Edits that are not counted: the engine compiles what it meets. */
const WARM_UP = 40;
/** Between two keystrokes, milliseconds: twice as fast as a fast typist, so that a frame is done before the next edit. */
const PAUSE = 50;

interface Times {
  /** Milliseconds from dispatching the input event until handler, drawing, list and notes are done and laid out. */
  readonly handled: readonly number[];
  /** Milliseconds until the next frame began after that. */
  readonly frame: readonly number[];
}

/** Types `count` values into the hub's entry on the drawing and times each. */
const typeValues = (page: Page, count: number): Promise<Times> =>
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
    { edits: count, pause: PAUSE },
  );

const share = (times: readonly number[], part: number): number => {
  const sorted = times.toSorted((a, b) => a - b);
  return Number(
    (sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))] ?? Number.NaN).toFixed(1),
  );
};

const summary = (times: readonly number[]) => ({ p50: share(times, 0.5), p95: share(times, 0.95) });

const browser = await findBrowser();
if (typeof browser === 'string') {
  console.error(browser);
  process.exit(1);
}
const bench = await openBench(browser);
try {
  const { page } = await bench.open();
  const drawn = await page.locator('.canvas svg [class]').count();
  await typeValues(page, WARM_UP);
  const times = await typeValues(page, EDITS);
  const result = {
    edits: EDITS,
    elements: drawn,
    handledMilliseconds: summary(times.handled),
    nextFrameMilliseconds: summary(times.frame),
  };
  if (process.argv.includes('--json')) console.log(JSON.stringify(result));
  else {
    console.log(`${EDITS} edits of the hub on the demo adapter, 1440 × 900, ${drawn} drawn elements`);
    console.log(
      `input to laid out   p50 ${result.handledMilliseconds.p50} ms   p95 ${result.handledMilliseconds.p95} ms   (wanted: p95 at most 8)`,
    );
    console.log(
      `input to next frame p50 ${result.nextFrameMilliseconds.p50} ms   p95 ${result.nextFrameMilliseconds.p95} ms   (wanted: p95 at most 34)`,
    );
  }
} finally {
  await bench.close();
}
