// Tube caps, plugs and base plates: sizes that fit the tube, the vent before welding, bolts and plate under load.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, isCircle } from '../../parts-library/geometry/index.js';
import { basePlateThickness } from '../../parts-library/handbook/index.js';
import { isMark, isOpening } from '../../parts-library/model/index.js';
import { bench, expectAnswers, expectSound, numRuns, tenths } from './welded.js';

const { run, finding, part, outline } = bench('tube-cap');

const size = (given: Record<string, unknown>): readonly [number, number] => {
  const { minX, minY, maxX, maxY } = boundsOf(outline(given));
  return [maxX - minX, maxY - minY];
};

/** Foot of the orchard cart's stake. */
const FOOT = {
  kind: 'base',
  section: 'square',
  outside: 50,
  wall: 3,
  width: 130,
  depth: 130,
  bolt: 'M10',
  bolts: 4,
  inset: 20,
  thickness: 10,
  material: 'S275',
};

describe('the plate fits its tube', () => {
  test('set in 2 on a square tube of 50 with a wall of 3: 46 square, corners of 2 × 3 − 2', () => {
    // Cold-formed hollow sections: outside corner twice the wall up to 6 mm (EN 10219-2, from memory).
    // Area: 46² − (4 − π) 4² = 2102.27.
    const given = { kind: 'cap', section: 'square', outside: 50, wall: 3, shelf: -2, vent: 'tube' };
    expect(size(given)).toEqual([expect.closeTo(46, 9), expect.closeTo(46, 9)]);
    expect(areaOf(outline(given))).toBeCloseTo(2102.265, 3);
  });

  test('a plug in 80 × 40 × 3 with 1 mm of play is 73 × 33', () => {
    expect(
      size({ kind: 'plug', section: 'rectangular', outside: 80, otherSide: 40, wall: 3, play: 1 }),
    ).toEqual([expect.closeTo(73, 9), expect.closeTo(33, 9)]);
  });

  test('a round tube gets a true circle', () => {
    const circle = isCircle(outline({ kind: 'cap', section: 'round', outside: 60.3, shelf: 5 }));
    expect(circle?.radius).toBeCloseTo(35.15, 9);
  });

  test('four bolts stand their inset from both edges, six on a circle', () => {
    const corners = part(FOOT).features.filter(({ id }) => id.startsWith('bolt.'));
    expect(corners).toHaveLength(4);
    const first = corners[0];
    expect(first?.purpose === 'opening' ? isCircle(first.contour)?.centre : undefined).toEqual({
      x: 45,
      y: 45,
    });
    const ring = part({ ...FOOT, baseShape: 'round', width: 150, bolts: 6 }).features.filter(({ id }) =>
      id.startsWith('bolt.'),
    );
    expect(ring).toHaveLength(6);
    for (const feature of ring) {
      const at = feature.purpose === 'opening' ? isCircle(feature.contour)?.centre : undefined;
      expect(Math.hypot(at?.x ?? 0, at?.y ?? 0)).toBeCloseTo(55, 9);
    }
  });

  test('a cap’s and a plug’s whole edge is welded', () => {
    const [feature] = part({ kind: 'plug' }).features;
    expect(feature?.purpose === 'outline' ? feature.edges?.every(({ role }) => role === 'weld') : false).toBe(
      true,
    );
  });

  test('the label of a base plate stands beside the tube, not under it', () => {
    const { features } = part({ ...FOOT, label: 'FL' });
    const strokes = features.flatMap((one) => (one.purpose === 'etch' ? one.path.vertices : []));
    expect(strokes.length).toBeGreaterThan(0);
    for (const { x, y } of strokes) expect(Math.max(Math.abs(x), Math.abs(y))).toBeGreaterThan(25);
  });
});

describe('the vent comes before the weld', () => {
  test('a closed tube without a vent is a stop, with the hole as its remedy', () => {
    // Common practice: closed tubes need a vent before welding.
    expect(finding({ vent: 'none' }, 'vent')).toMatchObject({
      level: 'stop',
      field: 'vent',
      remedies: [{ change: [{ op: 'add', path: '/vent', value: 'here' }] }],
    });
    expect(finding({ vent: 'tube' }, 'vent')).toMatchObject({ level: 'pass' });
  });

  test.each(['here', 'tube', 'open'])(
    'vent %s: its step stands before tack and weld, after the look into the tube',
    (vent) => {
      const steps = run({ ...FOOT, vent }).value?.steps ?? [];
      const at = steps.findIndex(({ says }) => /vent|far end/.test(says));
      expect(at).toBeGreaterThan(steps.findIndex(({ says }) => says.includes('oil, fuel')));
      expect(at).toBeLessThan(steps.findIndex(({ kind }) => kind === 'tack'));
      expect(at).toBeLessThan(steps.findIndex(({ kind }) => kind === 'weld'));
    },
  );

  test('a vent that is rough for a bolt is good enough for air', () => {
    // 8 mm in 6 mm plate: below 1.5 thicknesses (published guideline), which is a caution for a bolt hole.
    expect(finding({ ventDiameter: 8 }, 'small-hole')).toMatchObject({
      level: 'note',
      field: 'ventDiameter',
    });
  });

  test('old tubes carry the caution of oil, gas and zinc', () => {
    expect(finding({}, 'old-tube').says).toMatch(/gas.*zinc/);
  });
});

describe('a shelf for the bead', () => {
  test('set in by the wall or more, the cap falls into the tube', () => {
    const cap = { kind: 'cap', wall: 3 };
    expect(finding({ ...cap, shelf: -3 }, 'weld-shelf')).toMatchObject({ level: 'stop', field: 'shelf' });
    expect(finding({ ...cap, shelf: 0 }, 'weld-shelf')).toMatchObject({ level: 'caution' });
    expect(finding({ ...cap, shelf: -1.5 }, 'weld-shelf')).toMatchObject({ level: 'pass' });
  });

  test('proud, it is wider than the leg by what can be seen', () => {
    expect(finding({ kind: 'cap', shelf: 3 }, 'weld-shelf')).toMatchObject({
      level: 'caution',
      limit: { amount: 4 },
    });
    expect(finding({ kind: 'cap', shelf: 4 }, 'weld-shelf')).toMatchObject({ level: 'pass' });
  });

  test('a square tube on a round base is measured over its corners', () => {
    // Half diagonal of 50 square with corners of 6: 35.355 − 0.4142 × 6 = 32.87; 70/2 − 32.87 = 2.13.
    const shelf = finding(
      { ...FOOT, baseShape: 'round', width: 70, inset: 4, bolts: 4, bolt: 'M4' },
      'weld-shelf',
    );
    expect(shelf.value?.amount).toBeCloseTo(2.13, 2);
  });

  test('the wall rules the fillet: 3 mm on 10 mm plate', () => {
    // AISC 360 Table J2.4 (published), by the thinner part.
    expect(finding(FOOT, 'fillet-leg').limit?.amount).toBe(3);
  });
});

describe('base plate under load', () => {
  test('10 kN on a lever of 30, 60 wide, Fy 250: 11.56 mm', () => {
    // By hand: √(4 × 1.67 × 10 000 × 30 ÷ (60 × 250)) = √133.6 (AISC Design Guide 1, from memory).
    expect(
      basePlateThickness({ newtons: 10_000, lever: 30, width: 60, yieldMegapascals: 250 }).value,
    ).toBeCloseTo(11.559, 3);
  });

  test('600 N·m over rows 90 apart pulls 3333 N at each of two bolts', () => {
    const pull = finding({ ...FOOT, overturning: 600 }, 'bolt-pull');
    expect(pull.value?.amount).toBeCloseTo(3333.3, 1);
    // Preload of M10 8.8: 0.75 × 580 × 58 = 25.23 kN (published torque–tension rule).
    expect(pull.limit?.amount).toBeCloseTo(25_230, -1);
  });

  test('a pull of 8 kN is shared by four bolts; by six on a circle the moment is 4 M/(n D)', () => {
    expect(finding({ ...FOOT, uplift: 8000 }, 'bolt-pull').value?.amount).toBeCloseTo(2000, 9);
    // 4 × 600 000 ÷ (6 × 110) = 3636.4 N.
    expect(
      finding({ ...FOOT, baseShape: 'round', width: 150, bolts: 6, overturning: 600 }, 'bolt-pull').value
        ?.amount,
    ).toBeCloseTo(3636.36, 2);
  });

  test('a thin base bends up beside its bolts', () => {
    expect(finding({ ...FOOT, overturning: 600 }, 'base-thickness')).toMatchObject({ level: 'pass' });
    expect(finding({ ...FOOT, overturning: 600, thickness: 3 }, 'base-thickness')).toMatchObject({
      level: 'stop',
      field: 'thickness',
    });
  });

  test('heads beside the tube: a narrow base leaves no seat', () => {
    const narrow = { ...FOOT, width: 90, depth: 90, inset: 12 };
    expect(finding(narrow, 'head-room-tube')).toMatchObject({ level: 'caution' });
    expect(finding({ ...narrow, width: 80, depth: 80 }, 'head-room-tube')).toMatchObject({ level: 'stop' });
    expect(finding(FOOT, 'head-room-tube')).toMatchObject({ level: 'pass' });
  });

  test('M16 wants 22 mm to the edge', () => {
    // AISC 360-16 Table J3.4M (published).
    expect(finding({ ...FOOT, bolt: 'M16', inset: 21 }, 'edge-distance')).toMatchObject({
      level: 'caution',
      field: 'inset',
    });
    expect(finding({ ...FOOT, bolt: 'M16', inset: 22 }, 'edge-distance')).toMatchObject({ level: 'note' });
  });

  test('bolts are as long as base and frame are thick', () => {
    // 10 + 8 + 2 washers 2.2 + nut 8.4 + 2 threads 1.5 = 33.8: M10 × 35.
    expect(run({ ...FOOT, seat: 8 }).value?.hardware.map(({ name }) => name)).toContain(
      'M10 × 35 hexagon bolt, 8.8',
    );
  });
});

describe('plates that cannot be', () => {
  test.each([
    [{ section: 'round', outside: 10, wall: 5 }, 'wall'],
    [{ tubeCorner: 30 }, 'tubeCorner'],
    [{ kind: 'cap', outside: 20, wall: 2, shelf: -9.5 }, 'shelf'],
    [{ kind: 'plug', outside: 10, wall: 2, play: 5 }, 'play'],
    [{ ...FOOT, cornerRadius: 70 }, 'cornerRadius'],
    [{ ...FOOT, bolts: 3 }, 'bolts'],
    [{ ...FOOT, inset: 70 }, 'inset'],
    [{ ...FOOT, inset: 4 }, 'inset'],
    [{ kind: 'cap', ventDiameter: 60 }, 'ventDiameter'],
  ])('%j names %s', (given, field) => {
    const { value, findings } = run(given);
    expect(value).toBeUndefined();
    expect(findings).toMatchObject([{ code: 'cannot-draw', level: 'stop', field }]);
  });
});

describe('random caps and bases', () => {
  const caps = fc.record(
    {
      kind: fc.constantFrom('cap', 'plug', 'base'),
      section: fc.constantFrom('round', 'square', 'rectangular'),
      outside: tenths(30, 120),
      otherSide: tenths(25, 80),
      wall: tenths(1.5, 5),
      shelf: tenths(-4, 8),
      play: tenths(0, 3),
      baseShape: fc.constantFrom('rectangle', 'round'),
      width: tenths(100, 250),
      depth: tenths(100, 250),
      cornerRadius: tenths(0, 30),
      vent: fc.constantFrom('here', 'tube', 'open', 'none'),
      ventDiameter: tenths(5, 15),
      bolt: fc.constantFrom('M8', 'M10', 'M16', '1/2-13'),
      holes: fc.constantFrom('clearance', 'tapped', 'drill', '14'),
      bolts: fc.constantFrom(2, 4, 4, 6),
      inset: tenths(12, 30),
      overturning: fc.constantFrom(undefined, 300),
      thickness: fc.constantFrom('4', '6', '10', '1/4 in'),
      label: fc.constantFrom(undefined, 'B'),
    },
    { requiredKeys: [] },
  );

  test('are sound, or a stop says why', () => {
    let drawn = 0;
    fc.assert(
      fc.property(caps, (parameters) => {
        if (expectSound(run(parameters)) === 'drawn') drawn += 1;
      }),
      { numRuns, seed: 20261125 },
    );
    expect(drawn / numRuns).toBeGreaterThan(0.6);
  });

  test('whatever is put in a field, reading answers and never throws', () => {
    expectAnswers('tube-cap', ['kind', 'outside', 'wall', 'shelf', 'bolts', 'inset', 'vent', 'overturning']);
  });

  test('tapped holes are marks', () => {
    const { features } = part({ ...FOOT, holes: 'tapped' });
    expect(features.filter(isMark)).toHaveLength(4);
    expect(features.filter(isOpening)).toHaveLength(1);
  });
});
