// Pivot brackets: welded by the edge, bolted flat or on a bent foot; tube, bush or bolt as the pivot.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundsOf, isCircle, segmentsOf } from '../../parts-library/geometry/index.js';
import { isLine, isOpening } from '../../parts-library/model/index.js';
import { bench, expectAnswers, expectSound, numRuns, tenths } from './welded.js';

const { run, finding, part, outline } = bench('pivot-bracket');

/** Standoffs of the orchard cart's pedal. */
const STANDOFF = {
  pivot: 'tube',
  outside: 26.9,
  tubeWall: 2.6,
  fit: 0.3,
  overhang: 4,
  pin: 'M12',
  height: 70,
  nose: 24,
  base: 80,
  gap: 60.5,
  thickness: 6,
  material: 'S275',
};

const hole = (given: Record<string, unknown>, id: string) => {
  const feature = part(given)
    .features.filter(isOpening)
    .find((one) => one.id === id);
  return feature === undefined ? undefined : isCircle(feature.contour);
};

describe('the pivot’s hole', () => {
  test('a tube of 26.9 gets 27.2, a bush 3 mm less than itself, M12 the close clearance of 13', () => {
    // ISO 273 close (published): M12 13.
    expect(hole(STANDOFF, 'pivot')?.radius).toBeCloseTo(13.6, 9);
    expect(hole({ ...STANDOFF, pivot: 'bush', boreAllowance: 3 }, 'pivot')?.radius).toBeCloseTo(11.95, 9);
    expect(hole({ ...STANDOFF, pivot: 'bolt' }, 'pivot')?.radius).toBeCloseTo(6.5, 9);
  });

  test('it stands its height over the weld edge', () => {
    expect(hole(STANDOFF, 'pivot')?.centre).toEqual({ x: 0, y: 70 });
    expect(boundsOf(outline(STANDOFF)).maxY).toBeCloseTo(94, 9);
  });

  test('a bush is bored to H7: 26.900 to 26.921', () => {
    // ISO 286: H7 over 18 to 30 is +21 µm (published).
    const bored = finding({ ...STANDOFF, pivot: 'bush' }, 'pivot-fit');
    expect(bored.title).toContain('26.9 mm to 26.921 mm');
    expect(bored.level).toBe('pass');
    // ISO 9013 class 2 over 3.15 to 6.3 thick, 10 to 35 nominal: ±0.9; leaning up to 0.46 a side: 1.82.
    expect(bored.limit?.amount).toBeCloseTo(1.82, 2);
    expect(finding({ ...STANDOFF, pivot: 'bush', boreAllowance: 1.5 }, 'pivot-fit')).toMatchObject({
      level: 'caution',
      field: 'boreAllowance',
    });
  });

  test('a pivot bolt has its nose as edge distance, not the rim of its own hole', () => {
    // Nose R 24 about the bolt: 24 ÷ 12 = 2 d, the good distance.
    expect(finding({ ...STANDOFF, pivot: 'bolt' }, 'edge-distance')).toMatchObject({
      level: 'pass',
      value: { amount: 24 },
    });
  });

  test('a tube’s whole hole is welded, a turning bolt presses on its upper half', () => {
    const roles = (given: Record<string, unknown>) => {
      const feature = part(given).features.find(({ id }) => id === 'pivot');
      return feature?.purpose === 'opening' ? feature.edges : undefined;
    };
    expect(roles(STANDOFF)?.map(({ role }) => role)).toEqual(['weld', 'weld']);
    expect(roles({ ...STANDOFF, pivot: 'bolt' })).toEqual([{ segment: 1, role: 'bearing' }]);
  });

  test('a loose tube asks for a larger leg: 3 mm of fit is over 1.6 a side with the kerf’s ±0.3', () => {
    // AWS D1.1 root opening 1/16 in (from memory).
    expect(finding({ ...STANDOFF, fit: 3 }, 'pivot-fit')).toMatchObject({ level: 'caution' });
    expect(finding(STANDOFF, 'pivot-fit')).toMatchObject({ level: 'pass' });
  });
});

describe('a bent foot laid flat', () => {
  const BENT = {
    ...STANDOFF,
    foot: 'bent',
    footDepth: 60,
    radius: 9,
    kFactor: 0.4,
    bolts: 2,
    inset: 16,
    spacing: 45,
  };

  test('60 and 70 outside in 6 mm, R 9, K 0.4: 117.91 from the foot’s end to the pivot', () => {
    // BA = π/2 (9 + 0.4 × 6) = 17.907, setback 15 (US Navy sheet-metal course, published): 60 + 70 − 30 + 17.907.
    const pivot = hole(BENT, 'pivot');
    const { minY } = boundsOf(outline(BENT));
    expect((pivot?.centre.y ?? 0) - minY).toBeCloseTo(117.907, 3);
  });

  test('the bend line stands in the middle of the bent zone, marked and never cut', () => {
    const bend = part(BENT).features.find(({ id }) => id === 'bend');
    expect(bend).toMatchObject({ purpose: 'score', bend: { degrees: 90, radius: 9 } });
    // 60 − 15 + 17.907 / 2 from the foot's end.
    const y = bend !== undefined && isLine(bend) ? (bend.path.vertices[0]?.y ?? 0) : 0;
    expect(y - boundsOf(outline(BENT)).minY).toBeCloseTo(53.954, 3);
  });

  test('holes keep 2.5 T + R from the bend: 24 mm', () => {
    // Published rules run 2 T, 2.5 T + R, 3 T + R; the middle one. Here 60 − 15 − 16 − 4.5 = 24.5.
    const gap = finding(BENT, 'hole-to-bend');
    expect(gap.value?.amount).toBeCloseTo(24.5, 6);
    expect(gap).toMatchObject({ level: 'pass', limit: { amount: 24 } });
    expect(finding({ ...BENT, inset: 20 }, 'hole-to-bend')).toMatchObject({ level: 'caution' });
  });

  test('least flange 0.7 × 8 T and least radius 1.5 T', () => {
    expect(finding({ ...BENT, footDepth: 33, inset: 8, bolt: 'M5' }, 'least-flange')).toMatchObject({
      level: 'caution',
    });
    expect(finding(BENT, 'least-flange').limit?.amount).toBeCloseTo(33.6, 9);
    expect(finding({ ...BENT, radius: 6 }, 'bend-radius')).toMatchObject({
      level: 'caution',
      limit: { amount: 9 },
    });
  });

  test('pulled up, the foot bends between bolts and bend', () => {
    // By hand: 10 kN on a pair of brackets and two bolts each: 2500 N a bolt on 29 mm, width min(58, 40) = 40, Fy 275:
    // √(4 × 1.67 × 2500 × 29 ÷ (40 × 275)) = 6.64 mm.
    const thin = finding({ ...BENT, pull: 10_000 }, 'foot-bending');
    expect(thin.limit?.amount).toBeCloseTo(6.635, 2);
    expect(thin).toMatchObject({ level: 'caution', field: 'thickness' });
  });
});

describe('a flat foot', () => {
  const FLAT = {
    ...STANDOFF,
    foot: 'flat',
    height: 90,
    footDepth: 32,
    bolts: 2,
    inset: 16,
    spacing: 45,
    base: 90,
  };

  test('pushed along the foot its bolts carry share and moment', () => {
    // By hand: 2000 N on a pair, 1000 N each, 90 − 16 = 74 above the row: across 500, up and down 1000 × 74 ÷ 45 = 1644.4;
    // √(500² + 1644.4²) = 1718.8 N.
    expect(finding({ ...FLAT, pull: 2000, pullAngle: '90' }, 'foot-bolts').value?.amount).toBeCloseTo(
      1718.8,
      1,
    );
  });

  test('one bolt is a hinge', () => {
    expect(finding({ ...FLAT, bolts: 1, pull: 100 }, 'one-bolt')).toMatchObject({
      level: 'caution',
      field: 'bolts',
    });
  });

  test('M16 wants 22 mm to the foot’s edge', () => {
    // AISC 360-16 Table J3.4M (published).
    const m16 = { ...FLAT, bolt: 'M16', footDepth: 48 };
    expect(finding({ ...m16, inset: 20 }, 'edge-distance')).toMatchObject({
      level: 'caution',
      field: 'inset',
    });
    expect(finding({ ...m16, inset: 22 }, 'edge-distance').level).toBe('note');
  });
});

describe('a weld edge', () => {
  test('3000 N along it at 70 mm, a pair on 80 mm of both sides', () => {
    // By hand: 1500 N each: bending 6 × 1500 × 70 ÷ (2 × 80²) = 49.22, shear 1500 ÷ 160 = 9.375: 50.10 N/mm, on a throat of
    // 2.121 mm 23.62 MPa.
    expect(finding({ ...STANDOFF, pull: 3000, pullAngle: '90' }, 'edge-weld').value?.amount).toBeCloseTo(
      23.62,
      2,
    );
  });

  test('coped to a tube of 100 its corners lie 20 below the crest', () => {
    // 50 − √(50² − 40²) = 20 (3-4-5 triangle).
    const coped = outline({ ...STANDOFF, edge: 'coped', tube: 100 });
    expect(boundsOf(coped).minY).toBeCloseTo(-20, 9);
    const edge = segmentsOf(coped)[0];
    expect(edge?.kind === 'arc' ? edge.radius : 0).toBeCloseTo(50, 9);
  });

  test('a pivot high over thin plate wants a gusset', () => {
    expect(finding(STANDOFF, 'slender')).toMatchObject({ level: 'note' });
    expect(finding({ ...STANDOFF, thickness: 10 }, 'slender')).toMatchObject({ level: 'pass' });
  });

  test('pressed by the tube: 26.9 × 6 in S275', () => {
    // AISC 360 J3.10 by hand: ahead 24 − 13.6 = 10.4: 1.2 × 10.4 × 6 × 410 ÷ 2 = 15 350 N.
    expect(finding({ ...STANDOFF, pull: 3000 }, 'bearing').limit?.amount).toBeCloseTo(15_350.4, 1);
  });
});

describe('what is sawn and bought', () => {
  test('the pivot tube goes through both ears and stands out of them', () => {
    // 60.5 + 2 × (6 + 4) = 80.5; the bolt through it: 80.5 + 2 × 2.7 + 10.8 + 2 × 1.75 = 100.2, so 110.
    const { hardware } = run(STANDOFF).value ?? { hardware: [] };
    expect(hardware.find(({ id }) => id === 'pivot')).toMatchObject({ kind: 'tube', length: 80.5 });
    expect(hardware.find(({ id }) => id === 'pin.bolt')?.name).toBe('M12 × 110 hexagon bolt, 8.8');
  });

  test('a pair of bolted feet takes two bolts each', () => {
    const { hardware } = run({ ...STANDOFF, foot: 'flat', height: 90 }).value ?? { hardware: [] };
    expect(hardware.find(({ id }) => id === 'foot.bolts')?.quantity).toBe(4);
  });

  test('the tube is welded before it is reamed, and measured last', () => {
    const kinds = run(STANDOFF).value?.steps.map(({ kind }) => kind) ?? [];
    expect(kinds.indexOf('ream')).toBeGreaterThan(kinds.lastIndexOf('weld'));
    expect(kinds.lastIndexOf('measure')).toBeGreaterThan(kinds.indexOf('ream'));
  });
});

describe('brackets that cannot be', () => {
  test.each([
    [{ pivot: 'bush', outside: 6, boreAllowance: 6 }, 'boreAllowance'],
    [{ nose: 13 }, 'nose'],
    [{ foot: 'bent', footDepth: 14 }, 'footDepth'],
    [{ foot: 'flat', height: 40, footDepth: 50 }, 'height'],
    [{ height: 12, base: 40 }, 'height'],
    [{ edge: 'coped', tube: 60 }, 'base'],
    [{ foot: 'flat', height: 120, inset: 4 }, 'inset'],
    [{ foot: 'flat', height: 120, spacing: 78 }, 'spacing'],
  ])('%j names %s', (given, field) => {
    const { value, findings } = run({ ...STANDOFF, ...given });
    expect(value).toBeUndefined();
    expect(findings).toMatchObject([{ code: 'cannot-draw', level: 'stop', field }]);
  });
});

describe('one hand of a pair', () => {
  const HAND = { ...STANDOFF, standoffs: 'handed', foot: 'bent', height: 90, lean: 9, label: 'P' };
  const other = { ...HAND, mirrored: 'yes' };

  test('the other hand has its pivot on the other side, its foot bent up too, its lettering as it reads', () => {
    // Mirror image: x becomes −x seen from the face toward which both feet bend.
    expect(hole(HAND, 'pivot')?.centre.x).toBeCloseTo(9, 9);
    expect(hole(other, 'pivot')?.centre.x).toBeCloseTo(-9, 9);
    expect(part(other).mirrored).toBe(true);
    expect(part(HAND).mirrored).toBeUndefined();
    const bends = [HAND, other].map((given) => part(given).features.find(({ id }) => id === 'bend'));
    expect(bends.map((bend) => (bend?.purpose === 'score' ? bend.bend?.direction : ''))).toEqual([
      'up',
      'up',
    ]);
    const strokes = (given: Record<string, unknown>) =>
      part(given).features.flatMap((feature) =>
        feature.purpose === 'etch' ? [feature.path.vertices.map(({ x }) => x)] : [],
      );
    // The bow of a P lies to the right of its stem, whichever hand.
    const widths = (given: Record<string, unknown>) => {
      const [stem = []] = strokes(given);
      const all = strokes(given).flat();
      return [Math.min(...all) - (stem[0] ?? NaN), Math.max(...all) - (stem[0] ?? NaN)];
    };
    expect(widths(other)[0]).toBeCloseTo(widths(HAND)[0] ?? NaN, 6);
    expect(widths(other)[1]).toBeCloseTo(widths(HAND)[1] ?? NaN, 6);
  });

  test('a pull along the foot loads both hands alike', () => {
    const loaded = { pull: 1000, pullAngle: '90' };
    expect(finding({ ...other, ...loaded }, 'foot-bolts').value?.amount).toBeCloseTo(
      finding({ ...HAND, ...loaded }, 'foot-bolts').value?.amount ?? NaN,
      6,
    );
  });

  test('each is one part; tube and pivot bolt are listed once, with the hand that is as given', () => {
    const listed = (given: Record<string, unknown>) =>
      (run(given).value?.hardware ?? []).map(({ id }) => id).filter((id) => /^pi(vot|n)/.test(id));
    expect(part(other).quantity).toBe(1);
    expect(listed(HAND)).toContain('pivot');
    expect(listed(HAND)).toContain('pin.bolt');
    expect(listed(other)).toEqual([]);
    // A pair is one drawing, bent both ways.
    expect(part({ ...other, standoffs: 'pair' }).mirrored).toBeUndefined();
  });
});

describe('random brackets', () => {
  const brackets = fc.record(
    {
      pivot: fc.constantFrom('tube', 'bush', 'bolt'),
      outside: tenths(14, 40),
      fit: tenths(0, 1),
      boreAllowance: tenths(1, 4),
      pin: fc.constantFrom('M8', 'M12', '1/2-13'),
      height: tenths(60, 130),
      nose: fc.option(tenths(20, 35), { nil: undefined }),
      base: tenths(60, 120),
      lean: tenths(-15, 15),
      standoffs: fc.constantFrom('pair', 'handed', 'single'),
      mirrored: fc.constantFrom('no', 'yes'),
      gap: tenths(20, 120),
      foot: fc.constantFrom('weld', 'flat', 'bent'),
      bolts: fc.constantFrom(1, 2),
      footDepth: tenths(35, 55),
      inset: tenths(8, 18),
      spacing: tenths(25, 45),
      edge: fc.constantFrom('flat', 'along', 'coped'),
      tube: tenths(40, 200),
      pull: fc.constantFrom(undefined, 1500),
      pullAngle: fc.integer({ min: -90, max: 90 }).map(String),
      thickness: fc.constantFrom('4', '6', '8'),
      label: fc.constantFrom(undefined, 'P'),
    },
    { requiredKeys: [] },
  );

  test('are sound, or a stop says why', () => {
    let drawn = 0;
    fc.assert(
      fc.property(brackets, (parameters) => {
        if (expectSound(run(parameters)) === 'drawn') drawn += 1;
      }),
      { numRuns, seed: 20261125 },
    );
    expect(drawn / numRuns).toBeGreaterThan(0.6);
  });

  test('whatever is put in a field, reading answers and never throws', () => {
    expectAnswers('pivot-bracket', [
      'pivot',
      'outside',
      'height',
      'base',
      'foot',
      'footDepth',
      'bolts',
      'radius',
      'pull',
    ]);
  });
});
