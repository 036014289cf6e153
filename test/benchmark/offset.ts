// Benchmark of the kerf offset against the outline function of makerjs, on the same filleted polygons in one run,
// interleaved; then the throughput of each primitive. Run with `npx tsx test/benchmark/offset.ts [--json]`.
import makerjs from 'makerjs';
import {
  chordContour,
  containsPoint,
  distanceBetweenContours,
  findFaults,
  intersectSegments,
  nearestOnContour,
  nearestWithin,
  offsetContour,
  packContours,
  packedContains,
  segmentsOf,
  transformContour,
  type Contour,
} from '../../parts-library/geometry/index.js';
import { randomFilleted, seeded } from '../geometry/support/random.js';

/** Half of a 1.5 mm kerf. */
const distance = 0.75;

/** The least ratio wanted at a number of segments. */
const wanted = new Map([
  [100, 30],
  [500, 60],
]);

interface Ratio {
  readonly segments: number;
  readonly oursMs: Spread;
  readonly makerjsMs: Spread;
  readonly ratio: number;
  readonly wanted: number | undefined;
}

interface Spread {
  readonly least: number;
  readonly median: number;
}

interface Rate {
  readonly name: string;
  readonly perSecond: number;
}

/** A polygon of half the corners, nearly all filleted, cut down or built up to the wanted number of segments. */
function filletedPolygon(segments: number): Contour {
  const random = seeded(segments);
  for (;;) {
    const contour = randomFilleted(random, Math.round(segments / 1.8));
    if (Math.abs(contour.length - segments) <= segments * 0.05) return contour;
  }
}

function toMakerjs(contour: Contour): MakerJs.IModel {
  const paths: MakerJs.IPathMap = {};
  segmentsOf(contour).forEach((segment, i) => {
    if (segment.kind === 'line') {
      const { from, to } = segment;
      paths[`s${i}`] = new makerjs.paths.Line([from.x, from.y], [to.x, to.y]);
      return;
    }
    const { centre, radius, start, sweep } = segment;
    const [low, high] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
    const degrees = 180 / Math.PI;
    paths[`s${i}`] = new makerjs.paths.Arc([centre.x, centre.y], radius, low * degrees, high * degrees);
  });
  return { paths };
}

function milliseconds(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

function spreadOf(times: readonly number[]): Spread {
  const sorted = [...times].sort((a, b) => a - b);
  return { least: sorted[0] ?? 0, median: sorted[Math.floor(sorted.length / 2)] ?? 0 };
}

function compare(segments: number, rounds: number): Ratio {
  const contour = filletedPolygon(segments);
  const model = toMakerjs(contour);
  const ours: number[] = [];
  const theirs: number[] = [];
  for (let i = 0; i < 20; i++) offsetContour(contour, distance);
  for (let round = 0; round < rounds; round++) {
    theirs.push(milliseconds(() => makerjs.model.outline(model, distance)));
    // Several of ours to one of theirs, so that both see the same weather.
    for (let i = 0; i < 5; i++) ours.push(milliseconds(() => offsetContour(contour, distance)));
  }
  const oursMs = spreadOf(ours);
  const makerjsMs = spreadOf(theirs);
  return {
    segments: contour.length,
    oursMs,
    makerjsMs,
    ratio: makerjsMs.median / oursMs.median,
    wanted: wanted.get(segments),
  };
}

function rate(name: string, perCall: number, work: () => unknown): Rate {
  for (let i = 0; i < 3; i++) work();
  let calls = 0;
  const start = performance.now();
  while (performance.now() - start < 300) {
    work();
    calls++;
  }
  return { name, perSecond: (calls * perCall * 1000) / (performance.now() - start) };
}

function primitives(): Rate[] {
  const contour = filletedPolygon(100);
  const other = transformContour(contour, { dx: 200, rotateDegrees: 37 });
  const packed = packContours([contour]);
  const segments = segmentsOf(contour);
  const random = seeded(7);
  const points = Array.from({ length: 1000 }, () => ({ x: 120 * random() - 60, y: 120 * random() - 60 }));
  return [
    rate('point in contour, packed, 100 segments', points.length, () =>
      points.filter((p) => packedContains(packed, p.x, p.y)),
    ),
    rate('distance to contour within 5 mm, packed', points.length, () =>
      points.map((p) => nearestWithin(packed, p.x, p.y, 5)),
    ),
    rate('containsPoint, contour as given', 10, () =>
      points.slice(0, 10).map((p) => containsPoint(contour, p)),
    ),
    rate('nearestOnContour, contour as given', 10, () =>
      points.slice(0, 10).map((p) => nearestOnContour(contour, p)),
    ),
    rate('pair of segments intersected', segments.length * segments.length, () => {
      for (const a of segments) for (const b of segments) intersectSegments(a, b);
    }),
    rate('distance between two contours of 100 segments', 1, () => distanceBetweenContours(contour, other)),
    rate('inspection of 100 segments', 1, () => findFaults(contour)),
    rate('chords at 0.01 mm, 100 segments', 1, () => chordContour(contour, 0.01, 'outside')),
    rate('transform of 100 segments', 1, () => transformContour(contour, { rotateDegrees: 30 })),
    rate('offset of 100 segments', 1, () => offsetContour(contour, distance)),
  ];
}

const ratios = [compare(10, 9), compare(100, 7), compare(200, 3), compare(500, 2)];
const rates = primitives();
if (process.argv.includes('--json')) {
  console.log(JSON.stringify({ distance, ratios, rates }, null, 2));
} else {
  console.log(`Offset by ${distance} mm of filleted polygons, ms (least / median)`);
  for (const { segments, oursMs, makerjsMs, ratio, wanted: least } of ratios) {
    const ours = `${oursMs.least.toFixed(2)} / ${oursMs.median.toFixed(2)}`;
    const theirs = `${makerjsMs.least.toFixed(0)} / ${makerjsMs.median.toFixed(0)}`;
    const verdict = least === undefined ? '' : ` (at least ${least} wanted)`;
    console.log(
      `${String(segments).padStart(5)} segments: ${ours.padStart(16)}   makerjs ${theirs.padStart(15)}   ` +
        `${ratio.toFixed(0)} x${verdict}`,
    );
  }
  console.log('Primitives, per second');
  for (const { name, perSecond } of rates) {
    console.log(`${Math.round(perSecond).toLocaleString('en').padStart(14)}  ${name}`);
  }
}
const missed = ratios.filter(({ ratio, wanted: least }) => least !== undefined && ratio < least);
if (missed.length > 0) process.exitCode = 1;
