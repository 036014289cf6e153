// Starts the bench: loads the job that the address names, and shows it.
import { render } from 'preact';
import { startingShop } from '../parts-library/job/index.js';
import { App } from './app.js';
import { loadFirstJob, loadJob, putJob } from './state/api.js';
import { createBench } from './state/bench.js';
import { followRoute, writeRoute } from './state/route.js';

const host = document.getElementById('bench');

function say(words: string): void {
  if (host !== null) render(<p class="waiting">{words}</p>, host);
}

/** Goes to another sheet; the address is what the page follows. */
const go = (fragment: string): void => {
  window.location.hash = fragment;
};

async function start(): Promise<void> {
  const route = followRoute();
  const wanted = route.value.jobId;
  const loaded = wanted === undefined ? await loadFirstJob() : await loadJob(wanted);
  if (loaded.kind === 'none') return say(`There is no job "${wanted ?? ''}" here.`);
  if (loaded.kind === 'away') return say(`The job could not be opened: ${loaded.says}`);
  const { job, tag } = loaded;
  if (route.value.rowId === undefined && job.rows[0] !== undefined) {
    window.history.replaceState(null, '', writeRoute(job.id, job.rows[0].id));
    window.dispatchEvent(new HashChangeEvent('hashchange'));
  }
  const bench = createBench({ job, tag, put: putJob, shop: startingShop, route, go });
  window.addEventListener('online', () => void bench.saver.flush());
  window.addEventListener('pagehide', () => void bench.saver.flush());
  // Another job in the address is another page.
  window.addEventListener('hashchange', () => {
    if (route.value.jobId !== undefined && route.value.jobId !== bench.edits.job.value.id)
      window.location.reload();
  });
  if (host !== null) {
    host.replaceChildren();
    render(<App bench={bench} />, host);
  }
}

void start();
