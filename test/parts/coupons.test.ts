// Coupons: what is cut, what is etched beside it, and what the readings come to.
import { describe, expect, test } from 'vitest';
import { boundsOf, isCircle } from '../../parts-library/geometry/index.js';
import { runPart, startingShop, type PartRun } from '../../parts-library/job/index.js';
import { isLine, isOpening, outlineOf } from '../../parts-library/model/index.js';

const coupon = (
  kind: string,
  parameters: Readonly<Record<string, unknown>> = {},
  unit: 'mm' | 'in' = 'mm',
): PartRun => runPart({ family: `coupon-${kind}`, parameters, unit }, startingShop);

const partOf = (run: PartRun) => run.value?.part ?? raise();
const openings = (run: PartRun) => partOf(run).features.filter(isOpening);
const finding = (run: PartRun, code: string) => run.findings.find((one) => one.code === code);
const derived = (run: PartRun, id: string) => run.value?.derived.find((one) => one.id === id);
/** What is etched, by the names of its features. */
const etchNames = (run: PartRun) => [
  ...new Set(
    partOf(run)
      .features.filter(isLine)
      .map(({ name }) => name),
  ),
];
const sizes = (run: PartRun) =>
  openings(run).map(({ contour }) => {
    const circle = isCircle(contour);
    if (circle !== undefined) return Number((2 * circle.radius).toFixed(6));
    const { minX, maxX } = boundsOf(contour);
    return Number((maxX - minX).toFixed(6));
  });

describe('kerf coupon', () => {
  test('a 100 mm square with a 45 mm window in its middle, X and Y etched', () => {
    // Published procedure of an independent table maker: 100 mm square; window 40 to 50 mm.
    const run = coupon('kerf');
    const { minX, maxX, minY, maxY } = boundsOf(outlineOf(partOf(run)).contour);
    expect([maxX - minX, maxY - minY]).toEqual([100, 100]);
    expect(sizes(run)).toEqual([45]);
    expect(etchNames(run)).toEqual(['axis x', 'axis y', 'label']);
  });

  test('readings of 99.8 and 45.3 with 1.5 in the path are a kerf of 1.7 outside and 1.8 inside', () => {
    // k = k₀ + (P − M) = 1.5 + 0.2; k = k₀ + (M − P) = 1.5 + 0.3; by hand.
    const kerf = finding(
      coupon('kerf', { outsideX: 99.8, outsideY: 99.8, windowX: 45.3, windowY: 45.3, kerfSet: 1.5 }),
      'kerf-measured',
    );
    expect(kerf?.value).toMatchObject({ unit: 'mm' });
    expect(kerf?.value?.amount).toBeCloseTo(1.75, 9);
    expect(kerf?.value?.plusMinus).toBeCloseTo(0.05, 9);
    expect(kerf?.title).toContain('1.7 mm outside, 1.8 mm in the window');
  });

  test('without the kerf it was cut with, the kerf of the job counts', () => {
    const run = runPart(
      {
        family: 'coupon-kerf',
        parameters: { outsideX: 99.9, windowX: 45.1 },
        unit: 'mm',
        process: { kerf: 1.8 },
      },
      startingShop,
    );
    // 1.8 + 0.1 on both.
    expect(run.findings.find(({ code }) => code === 'kerf-measured')?.value?.amount).toBeCloseTo(1.9, 9);
  });

  test('axes more than 0.2 mm apart are not kerf', () => {
    expect(finding(coupon('kerf', { outsideX: 99.8, outsideY: 100.1 }), 'axes-differ')).toMatchObject({
      level: 'caution',
      field: 'outsideX',
    });
    expect(finding(coupon('kerf', { outsideX: 99.8, outsideY: 100 }), 'axes-differ')?.level).toBe('pass');
    expect(finding(coupon('kerf', { outsideX: 99.8 }), 'kerf-half-read')?.field).toBe('windowX');
  });

  test('readings that give no kerf at all are a slip', () => {
    const parameters = { outsideX: 103, windowX: 43, kerfSet: 1.5 };
    expect(finding(coupon('kerf', parameters), 'kerf-measured')?.level).toBe('caution');
  });

  test('a window that leaves no frame names itself', () => {
    const { value, findings } = coupon('kerf', { window: 90 });
    expect(value).toBeUndefined();
    expect(findings[0]).toMatchObject({ level: 'stop', field: 'window' });
  });
});

describe('pierce-delay ladder', () => {
  test('six slots from half to twice the delay, each etched with its own', () => {
    // Rungs 50, 75, 100, 125, 150, 200 % of 0.8 s; common practice.
    const run = coupon('pierce', { delay: '0.8' });
    expect(openings(run).map(({ name }) => name)).toEqual([
      'slot 1, 0.4 s',
      'slot 2, 0.6 s',
      'slot 3, 0.8 s',
      'slot 4, 1 s',
      'slot 5, 1.2 s',
      'slot 6, 1.6 s',
    ]);
    for (const setting of ['0.4', '0.6', '0.8', '1', '1.2', '1.6'])
      expect(etchNames(run)).toContain(`setting ${setting}`);
    expect(
      run.value?.steps.filter(({ kind, featureIds }) => kind === 'cut' && featureIds !== undefined),
    ).toHaveLength(6);
  });

  test('without a delay the starting chart is asked: 0.5 s for 45 A in 6 mm', () => {
    // Remembered mechanised charts, starting value; from memory.
    expect(derived(coupon('pierce'), 'delay')?.value.amount).toBe(0.5);
    expect(derived(coupon('pierce', { thickness: 3, amps: '45' }), 'delay')?.value.amount).toBe(0.3);
  });

  test('each cut after the pierce is 25 mm straight', () => {
    const run = coupon('pierce', { slotWidth: 14 });
    expect(sizes(run)).toEqual([39, 39, 39, 39, 39, 39]);
  });

  test('the shortest that severed gives one small step more for production', () => {
    // Shortest reliable delay + 0.05 to 0.1 s; common practice.
    expect(derived(coupon('pierce', { found: 0.5 }), 'use')?.value.amount).toBeCloseTo(0.6, 9);
    expect(finding(coupon('pierce', { found: 0.5 }), 'delay-found')?.level).toBe('note');
    expect(finding(coupon('pierce', { found: 0.25 }), 'delay-found')?.level).toBe('caution');
  });

  test('a plate that this current does not pierce names the current', () => {
    const { value, findings } = coupon('pierce', { thickness: 12, amps: '30' });
    expect(value).toBeUndefined();
    expect(findings[0]).toMatchObject({ level: 'stop', field: 'amps' });
  });

  test('cut with another nozzle than it was laid out for is a caution with its remedy', () => {
    const run = runPart(
      { family: 'coupon-pierce', parameters: {}, unit: 'mm', process: { processClass: 'air-65A' } },
      startingShop,
    );
    const caution = run.findings.find(({ code }) => code === 'coupon-class');
    expect(caution).toMatchObject({ level: 'caution', field: 'amps' });
    expect(caution?.remedies?.[0]?.change).toEqual([{ op: 'add', path: '/amps', value: '65' }]);
  });
});

describe('speed ladder', () => {
  test('seven lines round a speed of one’s own, −15 to +15 %', () => {
    // Published procedure of an independent table maker; 2000 mm/min by hand.
    const run = coupon('speed', { speed: 2000 });
    expect(openings(run).map(({ name }) => name.replace(/line \d, /, ''))).toEqual([
      '1700 mm/min',
      '1800 mm/min',
      '1900 mm/min',
      '2000 mm/min',
      '2100 mm/min',
      '2200 mm/min',
      '2300 mm/min',
    ]);
  });

  test('round the starting chart’s 1450 mm/min the steps are 10 %', () => {
    const run = coupon('speed');
    expect(openings(run)[0]?.name).toBe('line 1, 1010 mm/min');
    expect(openings(run)[6]?.name).toBe('line 7, 1890 mm/min');
  });

  test('a run-up of v² ÷ 2a is added at both ends', () => {
    // 8000 mm/min at 1 m/s² take 8.9 mm; 7 lines to 115 %: 9200 mm/min take (153.3)² / 2000 = 11.8 mm.
    const run = coupon('speed', { speed: 8000, thickness: 1.5, slotWidth: 12 });
    expect(derived(run, 'runUp')?.value.amount).toBeCloseTo(11.76, 2);
    expect(sizes(run)[0]).toBe(Math.ceil(100 + 2 * 11.76) + 12);
  });

  test('in an inch job lines are set and etched in whole inches a minute', () => {
    const run = coupon('speed', { speed: '100 in/min', step: 10 }, 'in');
    expect(openings(run).map(({ name }) => name.replace(/line \d, /, ''))).toEqual([
      '70 in/min',
      '80 in/min',
      '90 in/min',
      '100 in/min',
      '110 in/min',
      '120 in/min',
      '130 in/min',
    ]);
    expect(etchNames(run)).toContain('setting 110');
  });

  test('the middle of the clean window is taken, and a window at the end is not believed', () => {
    const read = (slowest: number, fastest: number) =>
      finding(coupon('speed', { speed: 2000, slowest, fastest }), 'speed-window');
    expect(read(1900, 2200)).toMatchObject({ level: 'note' });
    expect(read(1900, 2200)?.title).toContain('take 2050 mm/min');
    expect(read(1700, 2000)?.level).toBe('caution');
    expect(read(2100, 1900)?.title).toContain('No speed is clean');
  });

  test.each([
    [{ rungs: 6 }, 'rungs'],
    [{ speed: 20000, acceleration: 0.1, thickness: 2 }, 'acceleration'],
    [{ thickness: 30 }, 'thickness'],
  ])('%o cannot be laid out, and names the field', (parameters, field) => {
    const { value, findings } = coupon('speed', parameters);
    expect(value).toBeUndefined();
    expect(findings.find(({ level }) => level === 'stop')?.field).toBe(field);
  });

  test('a line shorter than 100 mm is said', () => {
    expect(finding(coupon('speed', { line: 60 }), 'speed-line')?.level).toBe('note');
  });
});

describe('hole ladder', () => {
  test('1, 1.5, 2 and 3 thicknesses at five speeds, none smaller than a pierce has room in', () => {
    // Published procedure: diameters 1, 1.5, 2, 3 t; four kerfs of 1.6 mm are 6.4 mm, so 6.5 stands for 6.
    const run = coupon('holes');
    expect(sizes(run).slice(0, 4)).toEqual([6.5, 9, 12, 18]);
    expect(openings(run)).toHaveLength(20);
    expect(openings(run)[19]?.name).toBe('hole ⌀18 at 100%');
    for (const row of ['50%', '60%', '70%', '80%', '100%']) expect(etchNames(run)).toContain(`speed ${row}`);
    expect(finding(run, 'small-hole')?.level).toBe('note');
  });

  test('on thin plate larger multiples take the place of what cannot be cut', () => {
    // 3 mm with 45 A: four kerfs of 1.45 are 5.8, so 6 stands for 3 and 4.5; then 2, 3, 4 and 5 t.
    expect(sizes(coupon('holes', { thickness: 3, amps: '45', rows: 1 }))).toEqual([6, 9, 12, 15]);
  });

  test('a typed hole that cannot be cut is a stop that leaves it out', () => {
    const stop = finding(coupon('holes', { diameters: '4, 8, 12' }), 'small-hole');
    expect(stop).toMatchObject({ level: 'stop', field: 'diameters' });
    expect(stop?.remedies?.[0]?.change).toEqual([{ op: 'add', path: '/diameters', value: '8 mm, 12 mm' }]);
    expect(coupon('holes', { diameters: '7,8,9,10,11,12,13,14,15' }).findings[0]?.field).toBe('diameters');
  });

  test('a hole of 12 on a path for 1.7 that reads 11.8 below and 12.22 above: kerf 1.5, 2° of lean', () => {
    // Path 10.3; 11.8 − 10.3 = 1.5. Δd = 2 t tan θ: 6 mm at 2° is 0.42 mm.
    const run = coupon('holes', {
      readNominal: 12,
      bottomX: 11.8,
      bottomY: 11.8,
      topX: 12.22,
      topY: 12.22,
      kerfSet: 1.7,
    });
    expect(finding(run, 'hole-kerf-measured')?.value?.amount).toBeCloseTo(1.5, 9);
    expect(finding(run, 'hole-taper')?.value?.amount).toBeCloseTo(2, 1);
    expect(finding(run, 'hole-taper')?.level).toBe('pass');
    expect(finding(run, 'hole-round')?.level).toBe('pass');
  });

  test('10 mm plate that opens by 1.5 mm leans more than the 4° called acceptable; 0.5 out of round is said', () => {
    // atan(1.5 / 20) = 4.3°.
    const run = coupon('holes', {
      thickness: 10,
      readNominal: 20,
      bottomX: 19.25,
      bottomY: 19.75,
      topX: 21,
      topY: 21,
      kerfSet: 1.9,
    });
    expect(finding(run, 'hole-taper')?.level).toBe('caution');
    expect(finding(run, 'hole-round')?.level).toBe('caution');
  });
});

describe('fit ladder', () => {
  test('five slots and five bores from 0.2 over tab and pin in steps of 0.15', () => {
    const run = coupon('fit');
    expect(sizes(run).slice(5)).toEqual([12.2, 12.35, 12.5, 12.65, 12.8]);
    expect(
      openings(run)
        .slice(0, 5)
        .map(({ name }) => name),
    ).toEqual(['slot 6.2', 'slot 6.35', 'slot 6.5', 'slot 6.65', 'slot 6.8']);
    for (const size of ['6.35', '12.5']) expect(etchNames(run)).toContain(`size ${size}`);
  });

  test('narrow slots end in an eye that a pierce has room in, wide ones are plain', () => {
    // A slot of 6.2 by 25 with a round eye of 4.7: the eye is the widest place.
    const narrow = coupon('fit');
    expect(narrow.findings.map(({ code }) => code)).not.toContain('lead-in-no-room');
    expect(sizes(narrow)[0]).toBeCloseTo(9.4, 9);
    expect(sizes(coupon('fit', { tab: 12, thickness: 6 })).slice(0, 5)).toEqual([
      12.2, 12.35, 12.5, 12.65, 12.8,
    ]);
  });

  test('a tab of 6 in 6 mm plate is expected at 6.51 to 6.71', () => {
    // From memory: tab + 0.3 to 0.5 mm, and 6 × tan 2° = 0.21.
    const range = finding(coupon('fit'), 'fit-range');
    expect(range?.level).toBe('pass');
    expect(range?.limit?.amount).toBeCloseTo(6.71, 2);
    expect(finding(coupon('fit', { count: 3 }), 'fit-range')).toMatchObject({
      level: 'note',
      field: 'count',
    });
  });

  test('the steps that fitted become the clearances to draw', () => {
    const run = coupon('fit', { slotFits: 6.5, boreFits: 12.35 });
    expect(derived(run, 'slotClearance')?.value.amount).toBeCloseTo(0.5, 9);
    expect(derived(run, 'boreClearance')?.value.amount).toBeCloseTo(0.35, 9);
    expect(finding(run, 'fit-slot')?.level).toBe('note');
    expect(finding(coupon('fit', { slotFits: 6.2 }), 'fit-slot')?.level).toBe('caution');
    expect(finding(coupon('fit', { boreFits: 14 }), 'fit-bore')?.says).toContain('No bore of this ladder');
  });
});

function raise(): never {
  throw new Error('The part was not drawn.');
}
