// How long a print takes to draw, warm: `npx tsx test/drawing/time-prints.ts`. Figures for reading, not for asserting.
import { drawPrint } from '../../parts-library/drawing/index.js';
import { crowdedAdapter, lobedAdapter, ringPlate } from './orchard-parts.js';
import { onPaper, onWindow, PAPERS, WINDOWS } from './prints.js';

const [wide, middle, narrow] = WINDOWS;

const CASES = [
  ['ring, 6 dimensions, 980 × 720', onWindow(ringPlate(150, 6), wide)],
  ['adapter, 8 dimensions, 3 balloons, 980 × 720', onWindow(lobedAdapter(150, 5), wide)],
  ['adapter, 12 dimensions, 8 balloons, 980 × 720', onWindow(crowdedAdapter(150, 5), wide)],
  ['adapter, 12 dimensions, 8 balloons, 640 × 560', onWindow(crowdedAdapter(150, 5), middle)],
  ['adapter, 12 dimensions, 8 balloons, 390 × 420', onWindow(crowdedAdapter(150, 5), narrow)],
  ['adapter, 12 dimensions, 8 balloons, A4', onPaper(crowdedAdapter(150, 5), PAPERS[0])],
] as const;

const WARM_UP = 300;
const RUNS = 500;

for (const [name, input] of CASES) {
  for (let i = 0; i < WARM_UP; i++) drawPrint(input);
  const times = Array.from({ length: RUNS }, () => {
    const start = performance.now();
    drawPrint(input);
    return performance.now() - start;
  }).toSorted((a, b) => a - b);
  const at = (share: number): string => (times[Math.floor(share * RUNS)] ?? 0).toFixed(2);
  console.log(`${name}: least ${at(0)} ms, median ${at(0.5)} ms, 95 % below ${at(0.95)} ms`);
}
