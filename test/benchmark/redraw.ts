// Time of a redraw of every family, at its default and at its largest size: read, draw, check, display list; and the
// kerf that follows. Ratios are against the adapter plate at its default, in the same run.
// npx tsx test/benchmark/redraw.ts [--json]
import { drawPrint } from '../../parts-library/drawing/index.js';
import { continueRun, startingShop, startRun } from '../../parts-library/job/index.js';
import { listFamilies, type Family } from '../../parts-library/parts/index.js';
import { sizedParameters, type Values } from '../parts/sized-parameters.js';

const WARM_UP = 300;
const RUNS = 300;
const BASELINE = 'adapter-plate';
/** A large part of its kind is three times as large as its start. */
const LARGEST = 3;

interface Times {
  /** Milliseconds to read, draw, check and make the display list: half of all runs, and 95 of 100, are faster. */
  readonly p50: number;
  readonly p95: number;
  /** Milliseconds until the kerf, the lead-ins and the figures are there too, 95 of 100. */
  readonly kerf: number;
}

const start = (family: Family, parameters: Values) =>
  startRun({ family: family.id, parameters, unit: 'mm' }, startingShop);

function redraw(family: Family, parameters: Values): { readonly drawn: number; readonly cut: number } {
  const begun = performance.now();
  const sketch = continueRun(start(family, parameters), 'print');
  const { part, print, findings } = sketch;
  if (part === undefined || print === undefined) throw new Error(`${family.id} was not drawn.`);
  const { dimensions, ghosts } = print;
  const size = { width: 810, height: 670 };
  drawPrint({ part, dimensions, ghosts, findings, size, frame: 'drawing', unit: 'mm' });
  const drawn = performance.now() - begun;
  continueRun(sketch);
  return { drawn, cut: performance.now() - begun };
}

const share = (times: readonly number[], part: number): number =>
  Number((times.toSorted((a, b) => a - b)[Math.floor(times.length * part)] ?? Number.NaN).toFixed(2));

function time(family: Family, parameters: Values): Times {
  // A redraw follows an edit: a first field that changes each time, as while a number is typed.
  const vary = (run: number): Values => ({ ...parameters, label: `CART ${run % 10}` });
  const hasLabel = family.fields.some(({ path }) => path === 'label');
  const at = (run: number): Values => (hasLabel ? vary(run) : parameters);
  for (let run = 0; run < WARM_UP; run += 1) redraw(family, at(run));
  const times = Array.from({ length: RUNS }, (_, run) => redraw(family, at(run)));
  const drawn = times.map((one) => one.drawn);
  return {
    p50: share(drawn, 0.5),
    p95: share(drawn, 0.95),
    kerf: share(
      times.map((one) => one.cut),
      0.95,
    ),
  };
}

const rows = listFamilies().map((family) => ({
  id: family.id,
  start: time(family, {}),
  largest: time(family, sizedParameters(family, LARGEST)),
}));
const baseline = rows.find(({ id }) => id === BASELINE)?.start.p50 ?? Number.NaN;

if (process.argv.includes('--json')) console.log(JSON.stringify({ runs: RUNS, baseline: BASELINE, rows }));
else {
  console.log(
    `${RUNS} redraws each, ms; ratios to the ${BASELINE} at its start (${baseline} ms). Wanted: p95 at most 8, kerf within 100.`,
  );
  for (const row of rows) {
    for (const [which, { p50, p95, kerf }] of [
      ['start', row.start],
      ['largest', row.largest],
    ] as const) {
      console.log(
        `${row.id.padEnd(20)} ${which.padEnd(8)} p50 ${p50.toFixed(2).padStart(6)} (${(p50 / baseline).toFixed(1)}×)  p95 ${p95.toFixed(2).padStart(6)}  kerf p95 ${kerf.toFixed(1).padStart(6)}`,
      );
    }
  }
}
