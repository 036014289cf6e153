// The gusset: corner plate between two members, relief over the corner's weld, edges straight or coped.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, isCircle, lengthOf, segmentsOf } from '../../parts-library/geometry/index.js';
import { freeEdgeLimit } from '../../parts-library/handbook/index.js';
import { isOpening } from '../../parts-library/model/index.js';
import { bench, expectAnswers, expectSound, numRuns, tenths } from './welded.js';

const { run, finding, part, outline } = bench('gusset');

/** Between the orchard cart's upright and its sill. */
const CORNER = {
  legA: 80,
  legB: 60,
  angle: '90',
  toe: 10,
  relief: 'snip',
  reliefSize: 15,
  jointLeg: 5,
  thickness: 6,
  material: 'S275',
};

describe('the plate', () => {
  test('80 × 60 with toes of 10 and a 15 snip', () => {
    // By hand: the whole (0,0) (80,0) (80,10) (10,60) (0,60) is 10·60 + 70·(10 + 60)/2 = 3050; less 15²/2 = 112.5.
    // Around: 65 + 10 + √(70² + 50²) + 10 + 45 + √(15² + 15²) = 237.24.
    const plate = outline(CORNER);
    expect(areaOf(plate)).toBeCloseTo(2937.5, 6);
    expect(lengthOf(plate)).toBeCloseTo(237.236, 3);
  });

  test('a round relief takes a quarter of a circle about the corner', () => {
    // 3050 − π 15² / 4 = 2873.29.
    expect(areaOf(outline({ ...CORNER, relief: 'round' }))).toBeCloseTo(2873.285, 3);
  });

  test('without relief and toe it is the triangle itself', () => {
    expect(areaOf(outline({ ...CORNER, relief: 'none', toe: 0 }))).toBeCloseTo(2400, 9);
  });

  test('at 60° the triangle is half of 80 × 60 × sin 60°', () => {
    expect(areaOf(outline({ ...CORNER, angle: '60', relief: 'none', toe: 0 }))).toBeCloseTo(2078.461, 3);
  });

  test('a trapezoid is as wide as asked at its upper end', () => {
    // (0,0) (80,0) (80,10) (40,60) (0,60): 40·60 + 40·(10 + 60)/2 = 3800, less the snip.
    const plate = { ...CORNER, shape: 'trapezoid', top: 40 };
    expect(areaOf(outline(plate))).toBeCloseTo(3800 - 112.5, 6);
  });

  test('a free edge hollowed by 8 is an arc that deep', () => {
    // Chord c = √(70² + 50²) = 86.023: radius c²/(8·8) + 8/2 = 119.625.
    const free = segmentsOf(outline({ ...CORNER, hollow: 8 })).find(({ kind }) => kind === 'arc');
    expect(free?.kind === 'arc' ? free.radius : 0).toBeCloseTo(119.625, 3);
    expect(free?.kind === 'arc' ? free.sweep : 0).toBeLessThan(0);
  });

  test('an edge of 65 coped to ⌀100 is one arc of 50, its ends 12 below the crest', () => {
    // 50 − √(50² − 32.5²) = 12.003; the arc is 100 × asin 0.65 = 70.76 long.
    const given = { ...CORNER, edgeA: 'coped', tubeA: 100 };
    const edge = segmentsOf(outline(given))[0];
    expect(edge?.kind === 'arc' ? edge.radius : 0).toBeCloseTo(50, 9);
    expect(boundsOf(outline(given)).minY).toBeCloseTo(-12.003, 3);
    expect(run(given).value?.derived.find(({ id }) => id === 'weld')?.text).toContain('70.76');
  });

  test('both welded edges are known to lead-ins', () => {
    const [feature] = part(CORNER).features;
    const edges = feature?.purpose === 'outline' ? feature.edges : undefined;
    expect(edges?.map(({ role }) => role)).toEqual(['weld', 'weld']);
    const segments = segmentsOf(outline(CORNER));
    // One lies on the first member (y = 0), the other on the second (x = 0).
    expect(segments[edges?.[0]?.segment ?? -1]).toMatchObject({ from: { y: 0 }, to: { y: 0 } });
    expect(Math.abs(segments[edges?.[1]?.segment ?? -1]?.from.x ?? 9)).toBeLessThan(1e-9);
  });

  test('the lightening hole stands in the centre of the plate’s area', () => {
    // A bare triangle's centre is a third of each leg from the corner.
    const { features } = part({ ...CORNER, relief: 'none', toe: 0, hole: 16 });
    const hole = features.filter(isOpening)[0];
    const circle = hole === undefined ? undefined : isCircle(hole.contour);
    expect(circle?.centre.x).toBeCloseTo(80 / 3, 9);
    expect(circle?.centre.y).toBeCloseTo(20, 9);
  });
});

describe('rules', () => {
  test('the relief clears the corner’s bead by 2 mm', () => {
    // Common practice.
    expect(finding({ ...CORNER, reliefSize: 7 }, 'corner-relief')).toMatchObject({ level: 'pass' });
    const short = finding({ ...CORNER, reliefSize: 6 }, 'corner-relief');
    expect(short).toMatchObject({ level: 'caution', field: 'reliefSize', limit: { amount: 7 } });
    expect(finding({ ...CORNER, relief: 'none' }, 'corner-relief')).toMatchObject({
      level: 'caution',
      field: 'relief',
    });
    expect(finding({ ...CORNER, relief: 'none', jointLeg: 0 }, 'corner-relief')).toMatchObject({
      level: 'pass',
    });
  });

  test('a toe lower than the fillet burns away', () => {
    expect(finding({ ...CORNER, toe: 2 }, 'toe')).toMatchObject({ level: 'caution', limit: { amount: 3 } });
    expect(finding({ ...CORNER, toe: 3 }, 'toe')).toMatchObject({ level: 'pass' });
  });

  test('free edge: 2.06 √(E/Fy) is 58.3 for A36', () => {
    // AASHTO LRFD 6.14.2.8 (from memory): 2.06 √(29 000/36 ksi) = 58.5; with 200 GPa and 250 MPa 58.27.
    expect(freeEdgeLimit(250, 200_000).value).toBeCloseTo(58.27, 2);
    const plate = { ...CORNER, legA: 300, legB: 300, thickness: 3, material: 'A36' };
    expect(finding(plate, 'free-edge')).toMatchObject({ level: 'caution', field: 'thickness' });
    expect(finding({ ...plate, thickness: 10 }, 'free-edge')).toMatchObject({ level: 'pass' });
  });

  test('a thrust along a 45° strut pulls and shears each weld alike', () => {
    // By hand: equal legs, welds of 65 mm both sides; 10 kN at 45° gives 7071 N each way: 7071/130 = 54.39 N/mm, combined
    // 76.92 N/mm; leg 3: ÷ (0.707 × 3) = 36.27 MPa.
    const weld = finding({ ...CORNER, legB: 80, thrust: 10_000, weldLeg: 3 }, 'edge-weld');
    expect(weld.value?.amount).toBeCloseTo(36.27, 2);
    const both = run({ ...CORNER, legB: 80, thrust: 10_000 }).findings.filter(
      ({ code }) => code === 'edge-weld',
    );
    expect(both).toHaveLength(2);
  });

  test('least leg by the thinner part: 5 mm for 10 on 10, 3 mm on a 3 mm wall', () => {
    // AISC 360 Table J2.4 (published).
    expect(finding({ ...CORNER, thickness: 10, wall: 10 }, 'fillet-leg').limit?.amount).toBe(5);
    expect(finding({ ...CORNER, thickness: 10, wall: 3 }, 'fillet-leg').limit?.amount).toBe(3);
  });

  test('a hole that leaves too little beside it is told by the web', () => {
    expect(finding({ ...CORNER, hole: 20 }, 'web')).toMatchObject({ level: 'note' });
    expect(finding({ ...CORNER, hole: 30 }, 'web')).toMatchObject({ level: 'caution' });
    expect(finding({ ...CORNER, hole: 50 }, 'no-part')).toMatchObject({ level: 'stop' });
  });
});

describe('gussets that cannot be', () => {
  test.each([
    [{ reliefSize: 59.5 }, 'reliefSize'],
    [{ relief: 'none', legA: 10, angle: '30', toe: 60, legB: 10 }, 'toe'],
    [{ shape: 'trapezoid', top: 900, angle: '45' }, 'top'],
    [{ edgeA: 'coped', tubeA: 60 }, 'tubeA'],
    [{ edgeB: 'coped', tubeB: 40 }, 'tubeB'],
    [{ hollow: 40 }, 'hollow'],
  ])('%j names %s', (given, field) => {
    const { value, findings } = run({ ...CORNER, ...given });
    expect(value).toBeUndefined();
    expect(findings).toMatchObject([{ code: 'cannot-draw', level: 'stop', field }]);
  });
});

describe('random gussets', () => {
  const gussets = fc.record(
    {
      shape: fc.constantFrom('triangle', 'trapezoid'),
      legA: tenths(40, 200),
      legB: tenths(40, 200),
      angle: fc.integer({ min: 45, max: 135 }).map(String),
      toe: tenths(0, 15),
      top: tenths(5, 60),
      hollow: fc.constantFrom(0, 0, 5),
      hole: fc.constantFrom(undefined, 12, 20),
      relief: fc.constantFrom('snip', 'round', 'none'),
      reliefSize: tenths(5, 25),
      jointLeg: tenths(0, 8),
      edgeA: fc.constantFrom('straight', 'straight', 'coped'),
      tubeA: tenths(60, 300),
      edgeB: fc.constantFrom('straight', 'straight', 'coped'),
      tubeB: tenths(60, 300),
      thrust: fc.constantFrom(undefined, 3000),
      thickness: fc.constantFrom('3', '6', '10'),
      label: fc.constantFrom(undefined, 'G1'),
    },
    { requiredKeys: [] },
  );

  test('are sound, or a stop says why', () => {
    let drawn = 0;
    fc.assert(
      fc.property(gussets, (parameters) => {
        if (expectSound(run(parameters)) === 'drawn') drawn += 1;
      }),
      { numRuns, seed: 20261125 },
    );
    expect(drawn / numRuns).toBeGreaterThan(0.6);
  });

  test('whatever is put in a field, reading answers and never throws', () => {
    expectAnswers('gusset', [
      'legA',
      'legB',
      'angle',
      'toe',
      'hollow',
      'reliefSize',
      'tubeA',
      'edgeA',
      'hole',
    ]);
  });
});
