// Starts the bench: loads the job that the address names, and shows it.
import { options, render, type ComponentChild } from 'preact';
import { effect, signal } from '@preact/signals';
import { loadPolygonEngine } from '../parts-library/geometry/index.js';
import { startingShop, type Job, type ShopFacts } from '../parts-library/job/index.js';
import { loadKits } from '../parts-library/kits/index.js';
import { loadFamilies } from '../parts-library/parts/index.js';
import { App } from './app.js';
import { loadJob, loadLastJob, loadShop, makeDemoJob, makeJob, putJob, type Loaded } from './state/api.js';
import { createBench, type Bench } from './state/bench.js';
import { renderInNextFrame } from './state/next-frame.js';
import { followRoute, writeDriveRoute, writeRoute } from './state/route.js';

options.debounceRendering = renderInNextFrame;

const route = followRoute();

function show(page: ComponentChild): void {
  const host = document.getElementById('bench');
  if (host === null) return;
  // The words that stand there before the script are not Preact's to remove.
  if (host.querySelector(':scope > .waiting') !== null) host.replaceChildren();
  render(page, host);
}

/** Goes to another sheet; the address is what the page follows. */
const go = (fragment: string): void => {
  window.location.hash = fragment;
};

async function open(loaded: Loaded, shop: ShopFacts): Promise<void> {
  if (loaded.kind === 'none') {
    const make = (made: Promise<Loaded>): void => void made.then((job) => open(job, shop));
    const { jobId } = route.value;
    const { FirstJob } = await import('./sheet/first-job.js');
    show(
      <FirstJob
        says={jobId === undefined ? 'No job yet' : `There is no job "${jobId}" here`}
        demo={() => make(makeDemoJob())}
        begin={() => make(makeJob('New job'))}
      />,
    );
    return;
  }
  if (loaded.kind === 'away') {
    show(<p class="problem-page">The job could not be opened: {loaded.says} Reload to try again.</p>);
    return;
  }
  const { job, tag } = loaded;
  const shown = job.rows.find(({ id }) => id === route.value.rowId) ?? job.rows[0];
  await Promise.all([
    loadFamilies(shown === undefined ? [] : [shown.family]),
    loadKits(job.kits.map(({ kit }) => kit)),
  ]);
  if (!job.rows.some(({ id }) => id === route.value.rowId) || route.value.jobId !== job.id) {
    const write = route.value.beside === 'drive' ? writeDriveRoute : writeRoute;
    window.history.replaceState(null, '', write(job.id, job.rows[0]?.id));
    window.dispatchEvent(new HashChangeEvent('hashchange'));
  }
  const ready = signal(false);
  const bench = createBench({ job, tag, put: putJob, shop, route, go, ready });
  window.addEventListener('online', () => void bench.saver.flush());
  window.addEventListener('pagehide', () => void bench.saver.flush());
  // Another job in the address is another page.
  window.addEventListener('hashchange', () => {
    const { jobId } = route.value;
    if (jobId !== undefined && jobId !== bench.edits.job.value.id) window.location.reload();
  });
  show(<App bench={bench} />);
  await Promise.race([firstDrawing(bench), wait(LONGEST)]);
  await loadRest(job);
  ready.value = true;
}

/** Longest wait for a drawing before the rest is fetched all the same, and between two tries to fetch it. Milliseconds. */
const LONGEST = 500;
const AGAIN = 2000;

const wait = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, milliseconds);
  });

/** Resolves when the first drawing stands. */
const firstDrawing = ({ print }: Bench): Promise<void> =>
  new Promise((resolve) => {
    const stop = effect(() => {
      // An effect may not end itself while it runs for the first time.
      if (print.drawing.value !== undefined)
        void Promise.resolve()
          .then(() => stop())
          .then(resolve);
    });
  });

/** Fetches what the job needs beyond its first drawing: its other families and the engine of the kerf. */
async function loadRest(job: Job): Promise<void> {
  try {
    await Promise.all([loadFamilies(job.rows.map(({ family }) => family)), loadPolygonEngine()]);
  } catch {
    await wait(AGAIN);
    await loadRest(job);
  }
}

async function start(): Promise<void> {
  const { jobId } = route.value;
  const [loaded, shop] = await Promise.all([
    jobId === undefined ? loadLastJob() : loadJob(jobId),
    loadShop(),
  ]);
  await open(loaded, shop ?? startingShop);
}

start().catch((error: unknown) => {
  const says = error instanceof Error ? error.message : String(error);
  show(<p class="problem-page">The page could not be opened: {says} Reload to try again.</p>);
});
