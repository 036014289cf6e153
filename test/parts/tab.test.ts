// The tab: a round-nosed ear on a flat, along a tube or coped to it, alone or as a pair round an eye.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, lengthOf, segmentsOf } from '../../parts-library/geometry/index.js';
import { outlineOf } from '../../parts-library/model/index.js';
import { bench, expectAnswers, expectSound, numRuns, tenths } from './welded.js';

const { run, finding, part, outline } = bench('tab');

/** A spring eye’s ear on the orchard cart’s frame. */
const SPRING_EAR = {
  bolt: 'M12',
  height: 30,
  nose: 20,
  base: 40,
  thickness: 6,
  material: 'S235',
  ears: 'single',
};

describe('the ear’s outside', () => {
  test('as wide as its nose it is a rectangle under a half circle', () => {
    // By hand: 40 × 30 + π 20² / 2 = 1828.32; 40 + 2 × 30 + π 20 = 162.83.
    const ear = outline(SPRING_EAR);
    expect(areaOf(ear)).toBeCloseTo(1828.319, 3);
    expect(lengthOf(ear)).toBeCloseTo(162.832, 3);
  });

  test('a wider edge runs tangent into the nose', () => {
    // From (30, 0) to a circle of 15 about (0, 40): the tangent is √(30² + 40² − 15²) = 47.697 long.
    const ear = outline({ ...SPRING_EAR, base: 60, nose: 15, height: 40, bolt: 'M8' });
    const side = segmentsOf(ear)[1];
    expect(side?.kind).toBe('line');
    expect(Math.hypot((side?.to.x ?? 0) - 30, side?.to.y ?? 0)).toBeCloseTo(47.697, 3);
  });

  test('coped 30 wide to a tube of 50 it is one arc of 25, its corners 5 below the crest', () => {
    // 25 − √(25² − 15²) = 5 (3-4-5 triangle); the arc is 2 × 25 × asin 0.6 = 32.175 long.
    const ear = outline({ ...SPRING_EAR, base: 30, nose: 15, bolt: 'M8', edge: 'coped', tube: 50 });
    const edge = segmentsOf(ear)[0];
    expect(edge).toMatchObject({ kind: 'arc' });
    expect(edge?.kind === 'arc' ? edge.radius : 0).toBeCloseTo(25, 9);
    expect(edge?.kind === 'arc' ? edge.centre.y : 0).toBeCloseTo(-25, 9);
    expect(boundsOf(ear).minY).toBeCloseTo(-5, 9);
    expect(
      finding({ ...SPRING_EAR, base: 30, nose: 15, bolt: 'M8', edge: 'coped', tube: 50 }, 'weld-length').value
        ?.amount,
    ).toBeCloseTo(32.175, 3);
  });

  test('lead-ins are told of the weld edge and of the half of the hole that the pin presses on', () => {
    const { features } = part(SPRING_EAR);
    expect(features[0]).toMatchObject({ edges: [{ segment: 0, role: 'weld' }] });
    expect(features[1]).toMatchObject({ id: 'hole', edges: [{ segment: 1, role: 'bearing' }] });
    // A clockwise circle from its right: the second half lies above the middle.
    const hole = features[1];
    const half = hole?.purpose === 'opening' ? segmentsOf(hole.contour)[1] : undefined;
    expect(half?.kind === 'arc' ? half.start : 0).toBeCloseTo(Math.PI, 9);
  });
});

describe('strength of pin, ear and weld', () => {
  test('M12 in 6 mm S235, 20 from the edge, hole 13.5: tear-out 34.34 kN nominal, half of it allowed', () => {
    // AISC 360 J3.10: 1.2 × (20 − 6.75) × 6 × 360 = 34 344 N (Structural Steel Designer’s Handbook quoting AISC 2005); Ω 2.
    const bearing = finding({ ...SPRING_EAR, pull: 5000 }, 'bearing');
    expect(bearing.limit?.amount).toBeCloseTo(34_344 / 2, 3);
    expect(bearing).toMatchObject({ level: 'pass', value: { amount: 5000, unit: 'N' } });
    expect(finding({ ...SPRING_EAR, pull: 20_000 }, 'bearing')).toMatchObject({
      level: 'stop',
      field: 'nose',
    });
  });

  test('1/2 bolt in 1/4 A36, 3/4 from the edge, hole 9/16: 4.078 kip allowed', () => {
    // Bearing/tear-out check of the same formula, ASD 4.078 kips = 18 140 N: 1.2 × 0.46875 × 0.25 × 58 ksi ÷ 2, here with
    // Fu 400 MPa (58.02 ksi) as A36 is published in metric: 1.2 × 11.906 × 6.35 × 400 ÷ 2 = 18 145 N.
    const inch = bench('tab', 'in');
    const bearing = inch.finding(
      {
        ...SPRING_EAR,
        bolt: '1/2-13',
        nose: '3/4',
        base: '1-1/2',
        thickness: '1/4',
        material: 'A36',
        pull: 4000,
      },
      'bearing',
    );
    expect((bearing.limit?.amount ?? 0) / 4448.2216).toBeCloseTo(4.078, 2);
  });

  test('40 × 6 A36 with a 13.5 hole: 44.1 kN net at φ 0.75 is 29.4 kN at Ω 2', () => {
    // AISC 360 D2 by hand: 400 × (40 − 15.5) × 6 ÷ 2 = 29 400.
    expect(finding({ ...SPRING_EAR, material: 'A36', pull: 5000 }, 'net-section').limit?.amount).toBeCloseTo(
      29_400,
      3,
    );
  });

  test('a pair halves the pull on each ear and doubles the shear planes', () => {
    const single = { ...SPRING_EAR, pull: 6000 };
    const pair = { ...single, ears: 'pair' };
    expect(finding(pair, 'bearing').value?.amount).toBe(3000);
    expect(finding(pair, 'bolt-shear').limit?.amount).toBeCloseTo(
      2 * (finding(single, 'bolt-shear').limit?.amount ?? 0),
      6,
    );
    // EN 1993-1-8 Table 3.4 (from memory): 0.6 × 800 × 84.3 ÷ 1.25 = 32 371 N for M12 8.8.
    expect(finding(single, 'bolt-shear').limit?.amount).toBeCloseTo(32_371, -1);
  });

  test('pulled along the edge, the weld is bent: 2000 N at 30 mm on 40 mm of both sides', () => {
    // By hand: bending 6 × 2000 × 30 ÷ (2 × 40²) = 112.5 N/mm, shear 2000 ÷ 80 = 25; √(112.5² + 25²) = 115.24 N/mm;
    // leg 3: ÷ (0.707 × 3) = 54.33 MPa.
    const weld = finding({ ...SPRING_EAR, pull: 2000, pullAngle: '90', weldLeg: 3 }, 'edge-weld');
    expect(weld.value?.amount).toBeCloseTo(54.33, 2);
    // Plate side of the fillet: 0.40 × 235 × 3 = 282 N/mm is below 0.30 × 482.6 × 0.707 × 3 = 307.1; ÷ 2.121 mm of throat.
    expect(weld.limit?.amount).toBeCloseTo(132.96, 2);
  });

  test('the thinner part rules the fillet: 3 mm leg on a 3 mm wall under 10 mm plate, 5 mm on a 10 mm one', () => {
    // AISC 360 Table J2.4 (published): to 6 mm a 3 mm leg, over 6 to 13 mm a 5 mm leg.
    const thick = { ...SPRING_EAR, thickness: 10 };
    expect(finding({ ...thick, wall: 3 }, 'fillet-leg').limit?.amount).toBe(3);
    expect(finding({ ...thick, wall: 10 }, 'fillet-leg').limit?.amount).toBe(5);
    expect(finding({ ...thick, wall: 10, weldLeg: 3 }, 'fillet-leg')).toMatchObject({
      level: 'caution',
      remedies: [{ change: [{ op: 'add', path: '/weldLeg', value: 5 }] }],
    });
  });

  test('the nose is the edge distance: M16 wants 22 mm', () => {
    // AISC 360-16 Table J3.4M (published).
    const ear = { ...SPRING_EAR, bolt: 'M16', base: 50 };
    expect(finding({ ...ear, nose: 21 }, 'edge-distance')).toMatchObject({ level: 'caution', field: 'nose' });
    expect(finding({ ...ear, nose: 22 }, 'edge-distance')).toMatchObject({ level: 'note' });
    expect(finding({ ...ear, nose: 14 }, 'edge-distance')).toMatchObject({ level: 'stop' });
  });
});

describe('how it stands on the tube', () => {
  test('a pair along a round tube stands beside the crest: root gap 2.22 on ⌀60.3', () => {
    // By hand, r 30.15: faces 7.4 and 13.4 from the crest lie 0.923 and 3.141 below it; 1.6 mm is AWS D1.1’s limit (from memory).
    const pair = { ...SPRING_EAR, ears: 'pair', eye: 14, play: 0.8, edge: 'along', tube: 60.3 };
    const gap = finding(pair, 'root-gap');
    expect(gap).toMatchObject({ level: 'caution', limit: { amount: 1.6 } });
    expect(gap.value?.amount).toBeCloseTo(2.218, 2);
    expect(finding({ ...pair, tube: 25 }, 'root-gap')).toMatchObject({ level: 'stop', field: 'tube' });
    expect(finding({ ...pair, ears: 'single' }, 'root-gap')).toMatchObject({ level: 'pass' });
  });

  test('tips of a cope that spans the tube are thin: 36 wide on 40 leaves 26°', () => {
    // 90 − asin 0.9 = 25.84°.
    const tip = finding(
      { ...SPRING_EAR, base: 36, nose: 18, edge: 'coped', tube: 40, bolt: 'M8' },
      'cope-tip',
    );
    expect(tip).toMatchObject({ level: 'caution', field: 'base' });
    expect(tip.value?.amount).toBeCloseTo(25.84, 2);
  });

  test('an eye without play binds after welding', () => {
    expect(finding({ ...SPRING_EAR, ears: 'pair', play: 0.2 }, 'pair-gap')).toMatchObject({
      level: 'caution',
      field: 'play',
    });
    expect(finding({ ...SPRING_EAR, ears: 'pair', play: 0.8 }, 'pair-gap')).toMatchObject({ level: 'pass' });
  });

  test('a tall ear wants a gusset: 60 mm of 6 mm plate is ten thicknesses', () => {
    expect(finding({ ...SPRING_EAR, height: 60 }, 'slender')).toMatchObject({ level: 'note' });
    expect(finding({ ...SPRING_EAR, height: 40 }, 'slender')).toMatchObject({ level: 'pass' });
  });
});

describe('what comes with it', () => {
  test('a pair is cut twice, and its bolt goes through both ears and the gap', () => {
    // Grip 2 × 6 + 14 + 0.8 = 26.8; + 2 washers 2.7 + nut 10.8 + 2 threads 1.75 = 46.5: M12 × 50.
    const { value } = run({ ...SPRING_EAR, ears: 'pair', eye: 14, play: 0.8 });
    expect(value?.part.quantity).toBe(2);
    expect(value?.hardware[0]?.name).toBe('M12 × 50 hexagon bolt, 8.8');
  });

  test('a brake’s tab carries its caution', () => {
    expect(finding({ ...SPRING_EAR, use: 'brake' }, 'use-brake')).toMatchObject({ level: 'caution' });
    expect(finding({ ...SPRING_EAR, use: 'lift' }, 'use-lift')).toMatchObject({ level: 'caution' });
  });

  test('without a pull it says what was not checked', () => {
    expect(finding(SPRING_EAR, 'not-checked').title).toContain('under load');
  });

  test('tapped, the torch marks and the drill makes the hole', () => {
    const { value } = run({ ...SPRING_EAR, holes: 'tapped' });
    expect(value?.part.features.find(({ id }) => id === 'hole')?.purpose).toBe('mark');
    expect(value?.steps.map(({ kind }) => kind)).toEqual(expect.arrayContaining(['drill', 'tap', 'weld']));
  });

  test('the steps grind before the weld and measure the gap after it', () => {
    const kinds = run({ ...SPRING_EAR, ears: 'pair' }).value?.steps.map(({ kind }) => kind) ?? [];
    expect(kinds.indexOf('grind')).toBeLessThan(kinds.indexOf('tack'));
    expect(kinds.lastIndexOf('measure')).toBeGreaterThan(kinds.indexOf('weld'));
  });
});

describe('tabs that cannot be', () => {
  test.each([
    [{ nose: 5 }, 'nose'],
    [{ base: 60, tube: 50, edge: 'coped' }, 'base'],
    [{ height: 4, base: 20 }, 'height'],
    [{ base: 99.9, tube: 100, edge: 'coped', height: 3, nose: 20, lean: 0 }, 'nose'],
  ])('%j names %s', (given, field) => {
    const { value, findings } = run({ ...SPRING_EAR, ...given });
    expect(value).toBeUndefined();
    expect(findings).toMatchObject([{ code: 'cannot-draw', level: 'stop', field }]);
  });
});

describe('random tabs', () => {
  const tabs = fc.record(
    {
      bolt: fc.constantFrom('M5', 'M8', 'M10', 'M16', '3/8-16'),
      holes: fc.constantFrom('clearance', 'tapped', 'drill', '12'),
      height: tenths(15, 80),
      nose: tenths(12, 30),
      base: tenths(20, 90),
      lean: tenths(-15, 15),
      edge: fc.constantFrom('flat', 'along', 'coped'),
      tube: tenths(25, 120),
      wall: tenths(1.5, 8),
      ears: fc.constantFrom('single', 'pair'),
      pull: fc.constantFrom(undefined, 500, 8000),
      pullAngle: fc.integer({ min: -90, max: 90 }).map(String),
      thickness: fc.constantFrom('3', '6', '10', '1/4 in'),
      material: fc.constantFrom('S235', 'A36', '304', '6061-T6'),
      label: fc.constantFrom(undefined, 'EAR'),
    },
    { requiredKeys: [] },
  );

  test('are sound, or a stop says why', () => {
    let drawn = 0;
    fc.assert(
      fc.property(tabs, (parameters) => {
        if (expectSound(run(parameters)) === 'drawn') drawn += 1;
      }),
      { numRuns, seed: 20261125 },
    );
    expect(drawn / numRuns).toBeGreaterThan(0.6);
  });

  test('whatever is put in a field, reading answers and never throws', () => {
    expectAnswers('tab', ['bolt', 'height', 'nose', 'base', 'lean', 'tube', 'pull', 'eye', 'thickness']);
  });

  test('mirrored lean mirrors the outside', () => {
    const right = boundsOf(outlineOf(part({ ...SPRING_EAR, base: 60, lean: 8 })).contour);
    const left = boundsOf(outlineOf(part({ ...SPRING_EAR, base: 60, lean: -8 })).contour);
    expect(right.maxX).toBeCloseTo(-left.minX, 9);
    expect(right.minX).toBeCloseTo(-left.maxX, 9);
  });
});
