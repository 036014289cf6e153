// The pedal base: flange and window of the cylinder, places of the pivot, and what the foot does to the plate.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, isCircle } from '../../parts-library/geometry/index.js';
import { isLine, isMark, isOpening } from '../../parts-library/model/index.js';
import { bench, expectAnswers, expectSound, numRuns, tenths } from './welded.js';

const { run, finding, part, outline } = bench('pedal-base');

/** Brake pedal of the orchard cart. */
const BASE = {
  bolt: 'M8',
  holes: 'drill',
  cylinderSpacing: 57.2,
  windowWidth: 28,
  rod: 8,
  pivotAt: 'below',
  pivotDrop: 60,
  pivotOut: 60,
  gap: 50.5,
  earThickness: 6,
  earBase: 60,
  width: 140,
  above: 60,
  below: 120,
  cornerRadius: 10,
  mountBolt: 'M12',
  mountInset: 20,
  padReach: 250,
  footForce: '2000 N',
  swing: '20',
  thickness: 8,
  material: 'S355',
};

describe('what is on the plate', () => {
  test('140 × 180 with corners of 10, the rod’s line as its origin', () => {
    // 140 × 180 − (4 − π) 10² = 25 114.16.
    expect(areaOf(outline(BASE))).toBeCloseTo(25_114.159, 3);
    expect(boundsOf(outline(BASE))).toEqual({ minX: -70, minY: -120, maxX: 70, maxY: 60 });
  });

  test('cylinder holes are marks to drill, half a spacing to both sides, or above each other', () => {
    const at = (given: Record<string, unknown>) =>
      part(given)
        .features.filter(isMark)
        .map((mark) => mark.at);
    expect(at(BASE)).toEqual([
      { x: -28.6, y: expect.closeTo(0, 9) },
      { x: 28.6, y: expect.closeTo(0, 9) },
    ]);
    expect(at({ ...BASE, cylinderAngle: '90', pivotDrop: 80 })[1]).toEqual({
      x: expect.closeTo(0, 9),
      y: 28.6,
    });
  });

  test('the ears’ places are etched: inner faces half a gap out, pivot line at its drop', () => {
    const lines = part(BASE).features.filter(isLine);
    expect(lines.map(({ id }) => id)).toEqual(['ear.1.inner', 'ear.1.pivot', 'ear.2.inner', 'ear.2.pivot']);
    expect(lines.every(({ purpose }) => purpose === 'etch')).toBe(true);
    expect(lines[2]?.path.vertices.map(({ x, y }) => [x, y])).toEqual([
      [25.25, -90],
      [25.25, -30],
    ]);
    expect(lines[3]?.path.vertices.every(({ y }) => y === -60)).toBe(true);
  });

  test('bolted ears get four upright slots, as long as the travel', () => {
    const slots = part({ ...BASE, pivotMount: 'slots', width: 170, below: 140, travel: 10 }).features.filter(
      ({ id }) => id.startsWith('ear.'),
    );
    expect(slots).toHaveLength(4);
    const slot = slots[0];
    const box = slot?.purpose === 'opening' ? boundsOf(slot.contour) : undefined;
    // M8 normal clearance 9 (ISO 273, published), 10 of travel.
    expect((box?.maxX ?? 0) - (box?.minX ?? 0)).toBeCloseTo(9, 9);
    expect((box?.maxY ?? 0) - (box?.minY ?? 0)).toBeCloseTo(19, 9);
  });

  test('a welded base has no corner holes and a weld edge below', () => {
    const { features } = part({ ...BASE, mount: 'weld' });
    expect(features.filter(isOpening).map(({ id }) => id)).toEqual(['window']);
    const [feature] = features;
    expect(feature?.purpose === 'outline' ? feature.edges : undefined).toEqual([
      { segment: 0, role: 'weld' },
    ]);
  });

  test('a round window is a circle, a slot is as high as asked', () => {
    const window = (given: Record<string, unknown>) =>
      part(given)
        .features.filter(isOpening)
        .find(({ id }) => id === 'window');
    const round = window(BASE);
    expect(round === undefined ? 0 : isCircle(round.contour)?.radius).toBeCloseTo(14, 9);
    const slot = window({ ...BASE, window: 'slot', windowHeight: 42 });
    expect(slot === undefined ? 0 : boundsOf(slot.contour).maxY).toBeCloseTo(21, 9);
  });
});

describe('forces of the foot', () => {
  test('2000 N at 250 mm with the rod at 50: ratio 5, rod 10 kN, pivot 8 kN', () => {
    // Worked lever of the trade: moments about the pivot.
    const { derived } = run({ ...BASE, pivotDrop: 50, below: 120 }).value ?? { derived: [] };
    expect(derived.find(({ id }) => id === 'ratio')?.value.amount).toBe(5);
    expect(derived.find(({ id }) => id === 'rod')).toMatchObject({ value: { amount: 10_000 } });
    expect(derived.find(({ id }) => id === 'rod')?.text).toContain('8000 N');
  });

  test('500 N at 5 to 1 into a 3/4 in bore: 8.77 MPa', () => {
    // F/(π/4 d²) with 2500 N (formula of published master-cylinder tables; 100 lbf at 6 to 1 into 3/4 in: 1358 psi).
    const given = { ...BASE, pivotDrop: 50, footForce: '500 N', bore: 19.05 };
    expect(finding(given, 'line-pressure').value?.amount).toBeCloseTo(8.77, 2);
    const inch = { ...BASE, pivotDrop: 50, padReach: 300, footForce: '100 lbf', bore: 19.05 };
    // 1359 psi is published with π to three digits: 9.37 MPa within 0.1 %.
    expect((finding(inch, 'line-pressure').value?.amount ?? 0) / 0.006894757).toBeCloseTo(1358.1, 0);
  });

  test('on two rows of bolts the plate is bent by 165.7 N·m under the rod', () => {
    // By hand: rows at −100 and 40; rod 8333.3 at 0, pivot −6333.3 at −60: lower row (8333.3 × 40 − 6333.3 × 100)/140 =
    // −2142.9 N; under the rod −2142.9 × 100 + 6333.3 × 60 = 165 714 N·mm. Width 140 − 28 − 2 × 9 = 94:
    // 6 × 165 714 ÷ (94 × 64) = 165.27 MPa; S355 ÷ 1.5 = 236.67.
    const bending = finding(BASE, 'plate-bending');
    expect(bending.value?.amount).toBeCloseTo(165.27, 2);
    expect(bending.limit?.amount).toBeCloseTo(236.67, 2);
    expect(finding({ ...BASE, thickness: 6 }, 'plate-bending')).toMatchObject({
      level: 'stop',
      field: 'thickness',
    });
  });

  test('welded below, it is a cantilever: rod × 120 − pivot × 60', () => {
    // By hand: 8333.3 × 120 − 6333.3 × 60 = 620 000 N·mm on 140 × 8: 6 × 620 000 ÷ (140 × 64) = 415.2 MPa: a stop.
    const bending = finding({ ...BASE, mount: 'weld' }, 'plate-bending');
    expect(bending.value?.amount).toBeCloseTo(415.18, 2);
    expect(bending.level).toBe('stop');
    // Its fillets: 620 000 ÷ (120 × 8) = 645.8 N/mm, and 2000 ÷ 240 = 8.3 across; leg 3: ÷ 2.121 = 304.5 MPa.
    expect(finding({ ...BASE, mount: 'weld', weldLeg: 3 }, 'edge-weld').value?.amount).toBeCloseTo(304.5, 1);
  });

  test('beyond the plate the cylinder hangs on its two bolts', () => {
    // 8333.3 ÷ 2; preload of M8 8.8 0.75 × 580 × 36.6 = 15.92 kN (published: 15.92).
    const bolts = finding(BASE, 'flange-bolts');
    expect(bolts.value?.amount).toBeCloseTo(4166.67, 2);
    expect((bolts.limit?.amount ?? 0) / 1000).toBeCloseTo(15.92, 2);
    expect(run({ ...BASE, cylinderSide: 'near' }).findings.some(({ code }) => code === 'flange-bolts')).toBe(
      false,
    );
  });

  test('a brake carries its caution, and an odd ratio a note', () => {
    expect(finding(BASE, 'use-brake')).toMatchObject({ level: 'caution' });
    expect(finding({ ...BASE, padReach: 200 }, 'ratio')).toMatchObject({ level: 'note', field: 'pivotDrop' });
    expect(finding(BASE, 'ratio')).toMatchObject({ level: 'pass' });
  });
});

describe('room', () => {
  test('the rod leaves its line by 60 (1 − cos 10°) and clears the window', () => {
    // 0.91 mm; (28 − 8)/2 − 0.91 = 9.09.
    expect(finding(BASE, 'rod-room').value?.amount).toBeCloseTo(9.088, 3);
    expect(finding({ ...BASE, windowWidth: 11 }, 'rod-room')).toMatchObject({ level: 'caution' });
    expect(finding({ ...BASE, windowWidth: 9 }, 'rod-room')).toMatchObject({ level: 'stop' });
  });

  test('a spigot wants half a millimetre, no fit', () => {
    expect(finding({ ...BASE, spigot: 27.8 }, 'spigot')).toMatchObject({ level: 'caution' });
    expect(finding({ ...BASE, spigot: 28.5 }, 'spigot')).toMatchObject({ level: 'stop' });
    expect(finding({ ...BASE, spigot: 27 }, 'spigot')).toMatchObject({ level: 'pass' });
  });

  test('an ear that stands on a cylinder nut is a stop', () => {
    expect(finding({ ...BASE, pivotDrop: 35 }, 'ear-room')).toMatchObject({ level: 'stop', field: 'gap' });
    expect(finding(BASE, 'ear-room')).toMatchObject({ level: 'pass' });
  });

  test('corner bolts: M16 wants 22 mm', () => {
    // AISC 360-16 Table J3.4M (published).
    const m16 = { ...BASE, mountBolt: 'M16' };
    const mounting = (given: Record<string, unknown>) =>
      run(given).findings.find(({ code, field }) => code === 'edge-distance' && field === 'mountInset');
    expect(mounting({ ...m16, mountInset: 21 })).toMatchObject({ level: 'caution' });
    expect(mounting({ ...m16, mountInset: 22 })).toMatchObject({ level: 'note' });
  });
});

describe('what is bought, what is done', () => {
  test('cylinder bolts through flange and plate: 10 + 8 + 2 × 1.8 + 6.8 + 2.5 = 30.9, M8 × 35', () => {
    const { hardware } = run(BASE).value ?? { hardware: [] };
    expect(hardware[0]).toMatchObject({ quantity: 2, name: 'M8 × 35 hexagon bolt, 8.8' });
  });

  test('the steps end with free play and a full-weight push', () => {
    const says =
      run(BASE)
        .value?.steps.map((step) => step.says)
        .join(' ') ?? '';
    expect(says).toMatch(/Free play of about 1 mm.*whole weight/s);
  });
});

describe('bases that cannot be', () => {
  test.each([
    [{ cornerRadius: 80 }, 'cornerRadius'],
    [{ mountInset: 75 }, 'mountInset'],
    [{ mountInset: 5 }, 'mountInset'],
    [{ gap: 130 }, 'gap'],
    [{ pivotDrop: 119 }, 'pivotDrop'],
    [{ windowWidth: 150 }, 'windowWidth'],
    [{ cylinderSpacing: 138 }, 'cylinderSpacing'],
    [{ pivotMount: 'slots', earBoltOut: 42 }, 'earBoltOut'],
  ])('%j names %s', (given, field) => {
    const { value, findings } = run({ ...BASE, ...given });
    expect(value).toBeUndefined();
    expect(findings).toMatchObject([{ code: 'cannot-draw', level: 'stop', field }]);
  });
});

describe('random pedal bases', () => {
  const bases = fc.record(
    {
      bolt: fc.constantFrom('M6', 'M8', '5/16-18'),
      holes: fc.constantFrom('drill', 'clearance', 'tapped'),
      cylinderSpacing: tenths(45, 75),
      cylinderAngle: fc.integer({ min: -90, max: 90 }).map(String),
      cylinderSide: fc.constantFrom('far', 'near'),
      bore: fc.constantFrom(undefined, 19.05),
      window: fc.constantFrom('round', 'slot'),
      windowWidth: tenths(18, 36),
      windowHeight: tenths(20, 44),
      spigot: fc.constantFrom(undefined, 20),
      pivotAt: fc.constantFrom('below', 'above'),
      pivotDrop: tenths(40, 80),
      gap: tenths(40, 60),
      earBase: tenths(40, 60),
      pivotMount: fc.constantFrom('welded', 'slots'),
      earBoltOut: tenths(18, 26),
      travel: fc.constantFrom(0, 8),
      width: tenths(140, 190),
      above: tenths(110, 160),
      below: tenths(110, 160),
      cornerRadius: tenths(0, 15),
      mount: fc.constantFrom('holes', 'weld'),
      mountInset: tenths(14, 22),
      footForce: fc.constantFrom('500 N', '2000 N'),
      swing: fc.integer({ min: 0, max: 40 }).map(String),
      thickness: fc.constantFrom('6', '8', '10'),
      label: fc.constantFrom(undefined, 'PB'),
    },
    { requiredKeys: ['above', 'below'] },
  );

  test('are sound, or a stop says why', () => {
    let drawn = 0;
    fc.assert(
      fc.property(bases, (parameters) => {
        if (expectSound(run(parameters)) === 'drawn') drawn += 1;
      }),
      { numRuns, seed: 20261125 },
    );
    expect(drawn / numRuns).toBeGreaterThan(0.6);
  });

  test('whatever is put in a field, reading answers and never throws', () => {
    expectAnswers('pedal-base', [
      'bolt',
      'windowWidth',
      'pivotDrop',
      'gap',
      'width',
      'above',
      'mount',
      'travel',
      'padReach',
    ]);
  });
});
