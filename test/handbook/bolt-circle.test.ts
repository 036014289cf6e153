import { describe, expect, test } from 'vitest';
import {
  bestReading,
  boltCircleFrom,
  boltHoles,
  chordFactor,
  fitCircle,
  usualCircles,
  usualNear,
} from '../../parts-library/handbook/index.js';
import type { BoltCircle, BoltCircleProblem } from '../../parts-library/handbook/index.js';
import { readMeasure } from '../../parts-library/units/index.js';
import type { Measure, Tagged } from '../../parts-library/units/index.js';

function measured(typed: string): Measure {
  const reading = readMeasure(typed, { unit: 'mm' });
  if (!reading.ok) throw new Error(reading.problem.says);
  return reading.value;
}

const readings = (...tagged: readonly Tagged[]): Measure => ({ typed: 'as data', readings: tagged });

function circle(measure: Measure | string, count: number): BoltCircle {
  const answer = boltCircleFrom(typeof measure === 'string' ? measured(measure) : measure, count);
  if (!answer.ok) throw new Error(`${answer.problem.field}: ${answer.problem.says}`);
  return answer.value;
}

function problem(measure: Measure | string, count: number): BoltCircleProblem {
  const answer = boltCircleFrom(typeof measure === 'string' ? measured(measure) : measure, count);
  if (answer.ok) throw new Error(`expected a problem, got ${answer.value.diameter}`);
  return answer.problem;
}

describe('bolt circle from one pair of holes', () => {
  // Published wheel bolt pattern formula and worked example: six holes, 25.00 apart, circle 50.00.
  test('six holes at 25.00 adjacent is 50.00', () => {
    expect(circle('adjacent 25', 6).diameter).toBeCloseTo(50, 9);
  });

  // Geometry of a regular pentagon on 114.3: sides 67.184, diagonals 108.706.
  test('five holes at 67.184 adjacent is 114.3 (4.5 in)', () => {
    expect(circle('adjacent 67.184', 5).diameter).toBeCloseTo(114.3, 2);
  });

  test('five holes at 108.706 every second is 114.3', () => {
    expect(circle('every-2nd 108.706', 5).diameter).toBeCloseTo(114.3, 2);
  });

  test('five holes at 2.6450 in adjacent is 4.5 in', () => {
    expect(circle('adjacent 2.645in', 5).diameter / 25.4).toBeCloseTo(4.5, 3);
  });

  test('four holes at 70.711 adjacent, or 100 across, is 100', () => {
    expect(circle('adjacent 70.711', 4).diameter).toBeCloseTo(100, 2);
    expect(circle('across 100', 4).diameter).toBeCloseTo(100, 9);
  });

  test('three steps the long way round are the two of the short way', () => {
    expect(circle(readings({ way: 'steps', step: 3, distance: 108.706 }), 5).diameter).toBeCloseTo(114.3, 2);
  });

  // 54.484 + 12.7 = 67.184.
  test('a gap of 54.484 between 12.7 holes is 114.3 on five', () => {
    expect(circle('near-edges 54.484 hole 12.7', 5).diameter).toBeCloseTo(114.3, 2);
  });

  test('79.884 over 12.7 holes is 114.3 on five', () => {
    expect(circle('far-edges 79.884 hole 12.7', 5).diameter).toBeCloseTo(114.3, 2);
  });

  test('edges of holes two steps apart: 96.006 between 12.7 holes is 114.3', () => {
    expect(circle('near-edges 96.006 hole 12.7 step 2', 5).diameter).toBeCloseTo(114.3, 2);
  });

  test('across near edges of 8.5 holes on six: 101.5 is 110', () => {
    expect(circle('across near-edges 101.5 hole 8.5', 6).diameter).toBeCloseTo(110, 9);
    expect(circle('across far-edges 118.5 hole 8.5', 6).diameter).toBeCloseTo(110, 9);
  });

  // D = bore + 2 × distance + hole: 57.15 + 2 × 20.5 + 8.5.
  test('20.5 from a 57.15 bore to 8.5 holes is 106.65', () => {
    expect(circle('from-bore 20.5 bore 57.15 hole 8.5', 5).diameter).toBeCloseTo(106.65, 9);
  });

  test('two holes are simply their distance apart', () => {
    expect(circle('adjacent 80', 2).diameter).toBeCloseTo(80, 9);
    expect(circle('across 80', 2).diameter).toBeCloseTo(80, 9);
  });

  // Published factor table: D over the distance between neighbours, and over the widest pair.
  test.each([
    [3, 1.1547, 1.1547],
    [4, 14_142 / 10_000, 1],
    [5, 1.7013, 1.05146],
    [6, 2, 1],
    [7, 2.30477, 1.02572],
    [8, 2.61313, 1],
    [9, 2.9238, 1.01543],
    [10, 3.23607, 1],
    [11, 3.54947, 1.01028],
    [12, 3.8637, 1],
  ])('%d holes have the factors %d and %d', (count, adjacent, widest) => {
    expect(chordFactor(count, 1)).toBeCloseTo(adjacent, 4);
    expect(chordFactor(count, Math.floor(count / 2))).toBeCloseTo(widest, 4);
  });
});

describe('the ± of a circle', () => {
  // dD = ds / sin(180 k/n): on five holes ±0.1 gives ±0.17 adjacent and ±0.105 over the widest pair.
  test('±0.1 on neighbours of five is ±0.170; on every second ±0.105', () => {
    expect(circle('adjacent 67.184±0.1', 5).plusMinus).toBeCloseTo(0.17013, 5);
    expect(circle('every-2nd 108.706±0.1', 5).plusMinus).toBeCloseTo(0.10515, 5);
  });

  test('the hole’s ± comes on top, and both are shown', () => {
    const got = circle('near-edges 54.484±0.1 hole 12.7±0.05', 5);
    expect(got.plusMinus).toBeCloseTo(0.15 * 1.7013, 4);
    expect(got.contributions.map(({ plusMinus }) => Number(plusMinus.toFixed(4)))).toEqual([0.1701, 0.0851]);
    expect(got.contributions[1]?.what).toBe('hole size');
  });

  test('from the bore the distance counts twice', () => {
    const got = circle('from-bore 20.5±0.1 bore 57.15±0.02 hole 8.5±0.05', 5);
    expect(got.plusMinus).toBeCloseTo(0.27, 9);
  });

  test('inside and outside of one pair: the hole size cancels and its ± with it', () => {
    const got = circle('near-edges 54.484±0.1; far-edges 79.884±0.1', 5);
    expect(got.diameter).toBeCloseTo(114.3, 2);
    expect(got.holeDiameter).toBeCloseTo(12.7, 9);
    expect(got.plusMinus).toBeCloseTo(0.1 * 1.7013, 4);
  });

  test('a wrong hole size does not move the circle of both sides, but is spoken of', () => {
    const got = circle('near-edges 54.484±0.1 hole 13.5; far-edges 79.884±0.1 hole 13.5', 5);
    expect(got.diameter).toBeCloseTo(114.3, 2);
    expect(got.notes.join(' ')).toContain('12.7');
  });

  test('five neighbours measured one by one are averaged, and their limits are not rooted away', () => {
    const got = circle('adjacent 67.1±0.1; adjacent 67.2±0.1; adjacent 67.252±0.1', 5);
    expect(got.diameter).toBeCloseTo(114.3, 2);
    expect(got.plusMinus).toBeCloseTo(0.17013, 4);
  });

  test('two pairs that agree: the wider one weighs more and the ± is no worse than its own plus the distance', () => {
    const got = circle('adjacent 67.184±0.1; every-2nd 108.706±0.1', 5);
    expect(got.diameter).toBeCloseTo(114.3, 2);
    expect(got.plusMinus).toBeLessThan(0.108);
    expect(got.plusMinus).toBeGreaterThan(0.105);
    expect(got.notes).toEqual([]);
  });

  test('two pairs that cannot both be right widen the ± over both and ask to measure again', () => {
    const got = circle('adjacent 67.184±0.05; every-2nd 110.1±0.05', 5);
    const wide = 110.1 * 1.0514622;
    expect(got.diameter + (got.plusMinus ?? 0)).toBeGreaterThanOrEqual(wide - 1e-6);
    expect(got.diameter - (got.plusMinus ?? 0)).toBeLessThanOrEqual(114.301);
    expect(got.notes.join(' ')).toContain('measure again');
  });

  test('a reading without ± leaves the circle without, and says so', () => {
    const got = circle('adjacent 67.184; every-2nd 108.706±0.1', 5);
    expect(got.plusMinus).toBeUndefined();
    expect(got.diameter).toBeCloseTo(114.3, 2);
    expect(got.notes.join(' ')).toContain('without its ±');
  });

  test('a circle given outright is not asked for its ±', () => {
    expect(circle('circle 110', 6)).toMatchObject({ diameter: 110, contributions: [], notes: [] });
    expect(circle('circle 110', 6).plusMinus).toBeUndefined();
    expect(circle('circle 110±0.2', 6).plusMinus).toBeCloseTo(0.2, 9);
  });

  test('the contributions of one reading add up to the ±', () => {
    for (const typed of [
      'circle 110±0.2',
      'adjacent 55±0.1',
      'near-edges 47±0.1 hole 8±0.1',
      'across far-edges 118±0.1 hole 8±0.1',
      'from-bore 22±0.1 bore 58±0.1 hole 8±0.1',
    ]) {
      const got = circle(typed, 6);
      const sum = got.contributions.reduce((total, { plusMinus }) => total + plusMinus, 0);
      expect(got.plusMinus, typed).toBeCloseTo(sum, 9);
      expect(sum, typed).toBeGreaterThan(0);
    }
  });

  test('the true circle lies within the ± of 2,000 patterns measured within their limits', () => {
    let seed = 12_345;
    const random = (): number => {
      seed = (seed * 48_271) % 2_147_483_647;
      return seed / 2_147_483_647;
    };
    const error = (limit: number): number => (2 * random() - 1) * limit;
    for (let pattern = 0; pattern < 2000; pattern += 1) {
      const count = 3 + Math.floor(random() * 8);
      const diameter = 60 + random() * 200;
      const hole = 3 + random() * 3;
      const tagged = Array.from({ length: 1 + Math.floor(random() * 3) }, (): Tagged => {
        const step = 1 + Math.floor(random() * Math.floor(count / 2));
        const plusMinus = 0.02 + random() * 0.2;
        const apart = diameter * Math.sin((Math.PI * step) / count);
        const way = Math.floor(random() * 3);
        if (way === 0) return { way: 'steps', step, distance: apart + error(plusMinus), plusMinus };
        const side = way === 1 ? 'near' : 'far';
        const distance = (side === 'near' ? apart - hole : apart + hole) + error(plusMinus);
        return {
          way: 'edges',
          side,
          step,
          distance,
          plusMinus,
          hole: { mm: hole + error(0.05), plusMinus: 0.05 },
        };
      });
      const got = circle(readings(...tagged), count);
      expect(Math.abs(got.diameter - diameter)).toBeLessThanOrEqual((got.plusMinus ?? 0) + 1e-9);
      expect(got.notes.join(' ')).not.toContain('measure again');
    }
  });

  test('the best reading of five is every second hole, ±0.105 against ±0.170', () => {
    const best = bestReading(5, 0.1);
    expect(best).toMatchObject({ step: 2, way: 'every-2nd' });
    expect(best.plusMinus).toBeCloseTo(0.105, 3);
    expect(best.adjacentPlusMinus).toBeCloseTo(0.17, 3);
  });

  test.each([
    [2, 'across'],
    [3, 'adjacent'],
    [4, 'across'],
    [6, 'across'],
    [7, 'every-3rd'],
    [9, 'every-4th'],
  ])('the best way on %d holes is %s', (count, way) => {
    expect(bestReading(count, 0.1).way).toBe(way);
  });
});

describe('bolt circle from hole centres', () => {
  // Circle through three points by perpendicular bisectors, worked apart from this code.
  test('(10, 0), (0, 20), (−15, −5) lie on a circle of radius 15.1098 about (−4.0909, 5.4545)', () => {
    const fit = fitCircle([
      { x: 10, y: 0 },
      { x: 0, y: 20 },
      { x: -15, y: -5 },
    ]);
    expect(fit?.centre.x).toBeCloseTo(-4.0909, 4);
    expect(fit?.centre.y).toBeCloseTo(5.4545, 4);
    expect(fit?.radius).toBeCloseTo(15.1098, 4);
  });

  // Five on 114.3 from 90°.
  test('three of five centres give 114.3 and their clocking', () => {
    const got = circle('centres (0, 57.15) (-54.353, 17.66) (33.592, -46.235)', 5);
    expect(got.diameter).toBeCloseTo(114.3, 2);
    expect(got.centre?.x).toBeCloseTo(0, 2);
    expect(got.clockingDegrees).toBeCloseTo(90, 2);
    expect(got.evenlySpaced).toBe(true);
    expect(got.holes?.map(({ place }) => place)).toEqual([0, 1, 3]);
  });

  test('it does not matter where the frame lies or how it is turned', () => {
    const holes = boltHoles(114.3, 5, 17).map(({ x, y }) => ({ x: x + 1234.5, y: y - 987 }));
    const got = circle(readings({ way: 'centres', centres: holes }), 5);
    expect(got.diameter).toBeCloseTo(114.3, 9);
    expect(got.centre?.x).toBeCloseTo(1234.5, 9);
    expect(got.centre?.y).toBeCloseTo(-987, 9);
    expect(got.clockingDegrees).toBeCloseTo(17, 9);
    for (const hole of got.holes ?? []) expect(hole.error).toBeLessThan(1e-9);
  });

  test('one hole 0.5 out along the radius shows in its own error, not in its neighbours’', () => {
    const holes = boltHoles(100, 6, 0).map(({ x, y }, index) => (index === 0 ? { x: x + 0.5, y } : { x, y }));
    const got = circle(readings({ way: 'centres', centres: holes }), 6);
    const errors = (got.holes ?? []).map(({ error }) => error);
    expect(Math.max(...errors)).toBe(errors[0]);
    expect(errors[0]).toBeGreaterThan(0.2);
    expect(got.evenlySpaced).toBe(true);
  });

  test('least squares is the smallest sum of squared distances there is', () => {
    const points = [
      { x: 50.2, y: 0.1 },
      { x: 0.3, y: 49.7 },
      { x: -50.4, y: -0.2 },
      { x: 0.1, y: -50.1 },
      { x: 35.6, y: 35.1 },
    ];
    const fit = fitCircle(points);
    expect(fit).toBeDefined();
    if (fit === undefined) return;
    const squares = (x: number, y: number, radius: number): number =>
      points.reduce((sum, point) => sum + (Math.hypot(point.x - x, point.y - y) - radius) ** 2, 0);
    const best = squares(fit.centre.x, fit.centre.y, fit.radius);
    for (const [dx, dy, dr] of [
      [1e-3, 0, 0],
      [-1e-3, 0, 0],
      [0, 1e-3, 0],
      [0, -1e-3, 0],
      [0, 0, 1e-3],
      [0, 0, -1e-3],
    ] as const) {
      expect(squares(fit.centre.x + dx, fit.centre.y + dy, fit.radius + dr)).toBeGreaterThan(best);
    }
  });

  test('an odd pattern keeps its clocking', () => {
    const degrees = [0, 72, 144, 216, 300];
    const holes = degrees.map((angle) => ({
      x: 50 * Math.cos((angle * Math.PI) / 180),
      y: 50 * Math.sin((angle * Math.PI) / 180),
    }));
    const got = circle(readings({ way: 'centres', centres: holes }), 5);
    expect(got.diameter).toBeCloseTo(100, 9);
    expect(got.evenlySpaced).toBe(false);
    got.holes?.forEach((hole, index) => expect(hole.degrees).toBeCloseTo(degrees[index] ?? 0, 6));
    expect(got.notes.join(' ')).toContain('not evenly spaced');
  });

  test('an odd pattern needs all of its holes', () => {
    const holes = [0, 72, 100].map((angle) => ({
      x: 50 * Math.cos((angle * Math.PI) / 180),
      y: 50 * Math.sin((angle * Math.PI) / 180),
    }));
    expect(problem(readings({ way: 'centres', centres: holes }), 5)).toMatchObject({
      field: 'readings.0.centres',
    });
  });

  test('the ± of centres covers every way the coordinates can be off by it', () => {
    const holes = boltHoles(100, 4, 45);
    const got = circle(readings({ way: 'centres', centres: holes, plusMinus: 0.1 }), 4);
    const limit = got.plusMinus ?? 0;
    expect(limit).toBeGreaterThan(0.1);
    let worst = 0;
    for (let signs = 0; signs < 256; signs += 1) {
      const moved = holes.map(({ x, y }, index) => ({
        x: x + (signs & (1 << (2 * index)) ? 0.1 : -0.1),
        y: y + (signs & (2 << (2 * index)) ? 0.1 : -0.1),
      }));
      const fit = fitCircle(moved);
      worst = Math.max(worst, Math.abs(2 * (fit?.radius ?? 0) - 100));
    }
    expect(worst).toBeLessThanOrEqual(limit * 1.005);
    expect(worst).toBeGreaterThan(limit * 0.95);
  });
});

describe('readings that cannot be', () => {
  test.each<[string, Measure | string, number, string]>([
    ['one hole', 'adjacent 50', 1, 'count'],
    ['half a hole', 'adjacent 50', 5.5, 'count'],
    ['nothing measured', readings(), 5, 'readings'],
    ['across an odd pattern', 'across 100', 5, 'readings.0.way'],
    ['a step round the whole circle', 'every-5th 100', 5, 'readings.0.step'],
    [
      'an edge without its hole',
      readings({ way: 'edges', side: 'near', step: 1, distance: 50 }),
      5,
      'readings.0.hole',
    ],
    ['overlapping holes', 'far-edges 20 hole 12', 5, 'readings.0.hole'],
    ['outside less than inside', 'near-edges 60; far-edges 50', 5, 'readings.1.distance'],
    ['a negative distance', readings({ way: 'steps', step: 1, distance: -5 }), 5, 'readings.0.distance'],
    ['a negative ±', readings({ way: 'circle', diameter: 100, plusMinus: -0.1 }), 5, 'readings.0.plusMinus'],
    ['no circle', readings({ way: 'circle', diameter: NaN }), 5, 'readings.0.diameter'],
    ['centres on a line', 'centres (0, 0) (10, 0) (20, 0)', 5, 'readings.0.centres'],
    ['one centre three times', 'centres (5, 5) (5, 5) (5, 5)', 5, 'readings.0.centres'],
    ['more centres than holes', 'centres (0, 50) (50, 0) (0, -50) (-50, 0)', 3, 'readings.0.centres'],
    ['the second reading is wrong', 'adjacent 50; across 100', 5, 'readings.1.way'],
  ])('%s', (_, measure, count, field) => {
    const found = problem(measure, count);
    expect(found.field).toBe(field);
    expect(found.says.length).toBeGreaterThan(20);
  });

  test('across five names the pair that would do', () => {
    expect(problem('across 100', 5).says).toContain('2 holes apart');
  });
});

describe('usual circles', () => {
  test('114.27 is near 114.3 (4 1/2 in), and within ±0.1 of it', () => {
    expect(usualNear(114.27, 0.1)).toMatchObject([{ circle: { name: '114.3 (4 1/2 in)' }, within: true }]);
  });

  test('between 114.3 and 115 a wide ± offers both', () => {
    expect(usualNear(114.7, 0.5).map(({ circle: { diameter } }) => diameter)).toEqual([115, 114.3]);
  });

  test('a circle far from all of them is its own', () => {
    expect(usualNear(193)).toEqual([]);
  });

  test('each usual circle is near itself', () => {
    for (const { diameter } of usualCircles) expect(usualNear(diameter)[0]?.circle.diameter).toBe(diameter);
  });
});

// Coordinates of 5 × 114.3 from 90°, worked apart from this code.
test('holes of an even pattern', () => {
  const expected = [
    [0, 57.15],
    [-54.353, 17.66],
    [-33.592, -46.235],
    [33.592, -46.235],
    [54.353, 17.66],
  ];
  boltHoles(114.3, 5, 90).forEach(({ x, y }, index) => {
    expect(x).toBeCloseTo(expected[index]?.[0] ?? NaN, 3);
    expect(y).toBeCloseTo(expected[index]?.[1] ?? NaN, 3);
  });
});
