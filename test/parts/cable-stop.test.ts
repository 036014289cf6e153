// Cable stops: a hole with a slot, closed or tapped; welded, bolted flat or on a bent foot; pulled square to the plate.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, containsPoint, isCircle, segmentsOf } from '../../parts-library/geometry/index.js';
import { isMark, isOpening } from '../../parts-library/model/index.js';
import { bench, expectAnswers, expectSound, numRuns, tenths } from './welded.js';

const { run, finding, part, outline } = bench('cable-stop');

/** Throttle cable of the orchard cart. */
const STOP = {
  seat: 'slot',
  neck: 8,
  neckFit: 0.5,
  shoulder: 12,
  cable: 1.6,
  slot: 3.5,
  height: 50,
  nose: 13,
  base: 40,
  thickness: 4,
  material: 'S275',
};

describe('hole and slot', () => {
  test('the slot takes the nose’s rim and the hole out of the ear', () => {
    // By hand, closed ear less open one: the hole π 4.25² = 56.745 and the slot between the two circles, which is
    // 3.5 wide from √(4.25² − 1.75²) to √(13² − 1.75²) and its two caps: strip 3.5 × (12.8817 − 3.8730) = 31.5303, cap of the
    // nose 13²(α − sin α cos α), α = asin(1.75/13): 0.2755; cap of the hole counted in the hole, 4.25²(β − sin β cos β),
    // β = asin(1.75/4.25): 0.8881 less.
    const closed = areaOf(outline({ ...STOP, seat: 'hole' }));
    const open = areaOf(outline(STOP));
    const alpha = Math.asin(1.75 / 13);
    const beta = Math.asin(1.75 / 4.25);
    const capNose = 13 ** 2 * (alpha - Math.sin(alpha) * Math.cos(alpha));
    const capHole = 4.25 ** 2 * (beta - Math.sin(beta) * Math.cos(beta));
    const strip = 3.5 * (Math.sqrt(13 ** 2 - 1.75 ** 2) - Math.sqrt(4.25 ** 2 - 1.75 ** 2));
    expect(closed - open).toBeCloseTo(Math.PI * 4.25 ** 2 - capHole + strip + capNose, 6);
  });

  test('the hole is round: true arcs of 4.25 about the cable', () => {
    const arcs = segmentsOf(outline(STOP)).filter((one) => one.kind === 'arc' && one.sweep < 0);
    expect(arcs.length).toBeGreaterThan(0);
    for (const arc of arcs) {
      expect(arc.kind === 'arc' ? arc.radius : 0).toBeCloseTo(4.25, 9);
      expect(arc.kind === 'arc' ? arc.centre.y : 0).toBeCloseTo(50, 9);
    }
  });

  test('the cable can be dropped in: no metal along the slot’s middle, metal beside it', () => {
    const ear = outline({ ...STOP, slotAngle: '30' });
    const on = (reach: number, aside: number) => ({
      x: reach * Math.sin(Math.PI / 6) + aside * Math.cos(Math.PI / 6),
      y: 50 + reach * Math.cos(Math.PI / 6) - aside * Math.sin(Math.PI / 6),
    });
    expect(containsPoint(ear, on(9, 0))).toBe('outside');
    expect(containsPoint(ear, on(9, 2.5))).toBe('inside');
    expect(containsPoint(ear, on(9, -2.5))).toBe('inside');
  });

  test('lead-ins keep off slot and hole, and know the weld edge', () => {
    const [feature] = part(STOP).features;
    const edges = feature?.purpose === 'outline' ? (feature.edges ?? []) : [];
    expect(edges[0]).toEqual({ segment: 0, role: 'weld' });
    const mating = edges.filter(({ role }) => role === 'mating').map(({ segment }) => segment);
    const segments = segmentsOf(outline(STOP));
    expect(mating).toHaveLength(4);
    // Two straight sides of the slot, and the hole in two arcs between them.
    expect(mating.map((index) => segments[index]?.kind)).toEqual(['line', 'arc', 'arc', 'line']);
  });

  test('closed it is an opening, tapped it is a mark to drill 6.8 for M8', () => {
    const closed = part({ ...STOP, seat: 'hole' }).features.filter(isOpening)[0];
    expect(closed === undefined ? 0 : isCircle(closed.contour)?.radius).toBeCloseTo(4.25, 9);
    const mark = part({ ...STOP, seat: 'thread', adjuster: 'M8', shoulder: 13 }).features.filter(isMark)[0];
    // M8 × 1.25: tap drill 6.8 (published chart).
    expect(mark?.hole).toMatchObject({ finish: 'tap', size: 6.8, takes: 8 });
  });
});

describe('ferrule, cable and slot', () => {
  test('a shoulder bears on 1 mm of ring', () => {
    // Common practice: (12 − 8.5) / 2 = 1.75.
    expect(finding(STOP, 'shoulder')).toMatchObject({ level: 'pass', value: { amount: 1.75 } });
    expect(finding({ ...STOP, shoulder: 10 }, 'shoulder')).toMatchObject({ level: 'caution' });
    expect(finding({ ...STOP, shoulder: 8.4 }, 'shoulder')).toMatchObject({ level: 'stop' });
  });

  test('a cable thicker than the slot does not drop in; a neck thinner than the slot falls out', () => {
    expect(finding({ ...STOP, cable: 4 }, 'slot-passes')).toMatchObject({ level: 'stop', field: 'slot' });
    expect(finding({ ...STOP, cable: 3.3 }, 'slot-passes')).toMatchObject({ level: 'caution' });
    expect(finding({ ...STOP, neck: 4, neckFit: 0.5, slot: 4.2 }, 'neck-held')).toMatchObject({
      level: 'stop',
    });
    expect(finding(STOP, 'neck-held')).toMatchObject({ level: 'pass' });
  });

  test('a slot narrower than the kerf is no slot', () => {
    expect(finding({ ...STOP, slot: 1.4, cable: 0.8 }, 'slot-cut')).toMatchObject({
      level: 'stop',
      field: 'slot',
    });
    expect(finding({ ...STOP, slot: 2, cable: 1.2 }, 'slot-cut')).toMatchObject({ level: 'caution' });
    expect(finding(STOP, 'slot-cut')).toMatchObject({ level: 'pass' });
  });
});

describe('under the cable’s pull', () => {
  test('200 N at 50 mm on 40 × 4: 93.75 MPa, and it gives 0.186 mm', () => {
    // Beam theory by hand: 6 × 200 × 50 ÷ (40 × 16) = 93.75; 4 × 200 × 50³ ÷ (210 000 × 40 × 64) = 0.18601.
    expect(finding({ ...STOP, pull: 200 }, 'plate-bending').value?.amount).toBeCloseTo(93.75, 9);
    expect(finding({ ...STOP, pull: 200 }, 'plate-bending').limit?.amount).toBeCloseTo(275 / 1.5, 9);
    expect(finding({ ...STOP, pull: 200 }, 'give').value?.amount).toBeCloseTo(0.18601, 4);
    expect(finding({ ...STOP, pull: 500 }, 'plate-bending')).toMatchObject({ level: 'stop' });
  });

  test('the fillets hold it as a couple, a plate’s thickness apart', () => {
    // 200 × 50 ÷ (40 × 4) = 62.5 N/mm and 200 ÷ 80 = 2.5 across: 62.55; leg 3: ÷ 2.121 mm = 29.49 MPa.
    expect(finding({ ...STOP, pull: 200, weldLeg: 3 }, 'edge-weld').value?.amount).toBeCloseTo(29.49, 2);
  });

  test('welded on one side it hinges: a stop, and what mends it', () => {
    expect(finding({ ...STOP, pull: 100, weldSides: 'one' }, 'edge-weld')).toMatchObject({
      level: 'stop',
      field: 'weldSides',
      remedies: [{ change: [{ op: 'add', path: '/weldSides', value: 'both' }] }],
    });
  });

  test('a bent foot’s bolts are pulled by height over inset', () => {
    // 200 × 50 ÷ 10 ÷ 2 = 500 N; preload of M6 8.8: 0.75 × 580 × 20.1 = 8744 N (published torque–tension rule).
    const pull = finding(
      { ...STOP, foot: 'bent', footDepth: 42, inset: 10, bolts: 2, bolt: 'M6', pull: 200 },
      'foot-pull',
    );
    expect(pull.value?.amount).toBeCloseTo(500, 9);
    expect(pull.limit?.amount).toBeCloseTo(8744, -1);
  });

  test('a bent foot is laid flat by allowance and setback', () => {
    // 4 mm, R 6, K 0.4: BA = π/2 (6 + 1.6) = 11.938, setback 10: 42 + 50 − 20 + 11.938 = 83.938 (US Navy sheet-metal course).
    const bent = { ...STOP, foot: 'bent', footDepth: 42, radius: 6, inset: 12 };
    const arc = segmentsOf(outline(bent)).find((one) => one.kind === 'arc' && one.sweep < 0);
    const cableY = arc?.kind === 'arc' ? arc.centre.y : 0;
    expect(cableY - boundsOf(outline(bent)).minY).toBeCloseTo(83.938, 3);
  });

  test('without a pull it says what was not checked', () => {
    expect(finding(STOP, 'not-checked').says).toContain('cable');
  });
});

describe('stops that cannot be', () => {
  test.each([
    [{ nose: 4 }, 'nose'],
    [{ slot: 9 }, 'slot'],
    [{ slotAngle: '80', base: 80, nose: 9 }, 'slotAngle'],
    [{ foot: 'bent', footDepth: 9 }, 'footDepth'],
    [{ foot: 'flat', footDepth: 60 }, 'height'],
    [{ edge: 'coped', tube: 35 }, 'base'],
    [{ foot: 'flat', footDepth: 30, inset: 3 }, 'inset'],
    [{ foot: 'flat', footDepth: 30, inset: 10, spacing: 36 }, 'spacing'],
  ])('%j names %s', (given, field) => {
    const { value, findings } = run({ ...STOP, ...given });
    expect(value).toBeUndefined();
    expect(findings).toMatchObject([{ code: 'cannot-draw', level: 'stop', field }]);
  });
});

describe('random cable stops', () => {
  const stops = fc.record(
    {
      seat: fc.constantFrom('slot', 'hole', 'thread'),
      neck: tenths(6, 10),
      shoulder: tenths(10, 16),
      adjuster: fc.constantFrom('M6', 'M8', '5/16-18'),
      cable: tenths(1, 3),
      slot: tenths(2.5, 5),
      slotAngle: fc.integer({ min: -60, max: 60 }).map(String),
      height: tenths(55, 90),
      nose: fc.option(tenths(11, 16), { nil: undefined }),
      base: tenths(30, 60),
      lean: tenths(-8, 8),
      foot: fc.constantFrom('weld', 'flat', 'bent'),
      bolts: fc.constantFrom(1, 2),
      spacing: tenths(12, 18),
      inset: tenths(8, 12),
      footDepth: tenths(28, 42),
      edge: fc.constantFrom('flat', 'along', 'coped'),
      tube: tenths(30, 90),
      pull: fc.constantFrom(undefined, 150),
      weldSides: fc.constantFrom('both', 'one'),
      thickness: fc.constantFrom('3', '4', '5'),
      label: fc.constantFrom(undefined, 'C'),
    },
    { requiredKeys: [] },
  );

  test('are sound, or a stop says why', () => {
    let drawn = 0;
    fc.assert(
      fc.property(stops, (parameters) => {
        if (expectSound(run(parameters)) === 'drawn') drawn += 1;
      }),
      { numRuns, seed: 20261125 },
    );
    expect(drawn / numRuns).toBeGreaterThan(0.6);
  });

  test('whatever is put in a field, reading answers and never throws', () => {
    expectAnswers('cable-stop', ['seat', 'neck', 'slot', 'slotAngle', 'height', 'foot', 'inset', 'pull']);
  });
});
