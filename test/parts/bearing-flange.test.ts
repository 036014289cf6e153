// The plate that carries the axle bearing of the orchard cart: bought housings, bored seats, feet that are welded.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundsOf, isCircle } from '../../parts-library/geometry/index.js';
import { isCut, isOpening, outlineOf } from '../../parts-library/model/index.js';
import { drawAtRandom, familyOf, sizes, takeAnything } from './sound.js';

const { run, part, finding, opening, refused } = familyOf('bearing-flange');

const centres = (parameters: Readonly<Record<string, unknown>>, prefix: string) =>
  part(parameters)
    .features.filter(isOpening)
    .filter(({ id }) => id.startsWith(prefix))
    .map(({ contour }) => isCircle(contour)?.centre ?? { x: NaN, y: NaN });

describe('bolts of the housing', () => {
  test('a square of 92 is a circle of 130.11', () => {
    // Bolt-circle factor for four adjacent holes 1.41421 (published): 92 × 1.41421 = 130.11.
    const { value } = run({});
    expect(value?.derived.find(({ id }) => id === 'circle')?.value.amount).toBeCloseTo(130.107, 2);
    for (const { x, y } of centres({}, 'flange')) {
      expect(Math.abs(x)).toBeCloseTo(46, 6);
      expect(Math.abs(y)).toBeCloseTo(46, 6);
    }
  });

  test('two holes stand on a line through the shaft, three on a circle of 1.1547 times their distance', () => {
    // Factors 1 and 1.1547 (published).
    const two = centres({ flangeBolts: '2', boltCircle: 'adjacent 99', clocking: 0 }, 'flange');
    expect(two.map(({ x }) => Math.round(x * 1000) / 1000)).toEqual([49.5, -49.5]);
    const three = centres({ flangeBolts: '3', boltCircle: 'adjacent 86.6025' }, 'flange');
    expect(Math.hypot(three[0]?.x ?? 0, three[0]?.y ?? 0)).toBeCloseTo(50, 3);
  });

  test('the shaft is where it is said, and the housing goes with it', () => {
    const [first] = centres({ shaftX: 5, shaftY: 12, boltCircle: 'circle 100', clocking: 0 }, 'flange');
    expect(first).toEqual({ x: 55, y: 12 });
    expect(isCircle(opening({ shaftX: 5, shaftY: 12 }, 'opening').contour)?.centre).toEqual({ x: 5, y: 12 });
  });

  test('whether the housing bolts up is weighed once its hole is known', () => {
    // Floating fastener (ASME Y14.5, from memory): (11 − 10)/2 + (12 − 10)/2 = 1.5 of room.
    expect(finding({ housingHole: 12 }, 'bolt-up').limit?.amount).toBeCloseTo(1.5, 9);
    expect(finding({ housingHole: 10.2 }, 'bolt-up')).toMatchObject({
      level: 'caution',
      field: 'housingHole',
    });
    expect(finding({}, 'not-checked').title).toContain('will the housing bolt up');
  });

  test('the pull is shared by the bolts in shear: 8 kN on four M10 8.8 is 2 kN of 22.3', () => {
    // EN 1993-1-8 (from memory): 0.6 × 800 × 58 ÷ 1.25 = 22 272 N for M10 8.8.
    const shear = finding({ pull: 8000 }, 'bolt-shear');
    expect(shear.value?.amount).toBeCloseTo(2000, 6);
    expect(shear.limit?.amount).toBeCloseTo(22272, 0);
    expect(shear.level).toBe('pass');
  });
});

test('an inch job starts from the same plate', () => {
  const { value } = run({}, 'in');
  expect(value?.derived.find(({ id }) => id === 'circle')?.value.amount).toBeCloseTo(130.107, 2);
});

describe('opening and seat', () => {
  test('the opening clears the collar by a millimetre at its small limit', () => {
    // ISO 9013 class 2, 6 mm plate, 35 to 125 mm: ±0.9 (published): (44 − 38 − 0.9)/2 = 2.55.
    expect(finding({}, 'collar-room').value?.amount).toBeCloseTo(2.55, 9);
    expect(finding({ collarRoom: 2 }, 'collar-room').level).toBe('caution');
    expect(finding({ collarRoom: 0 }, 'collar-room').level).toBe('stop');
  });

  test('a bare bearing’s seat is cut under size and bored: 52 H7 is 52.000 to 52.030', () => {
    // ISO 286 H7 over 50 to 80: +30 µm (published).
    const seat = opening({ bearing: 'seat' }, 'opening');
    expect(isCircle(seat.contour)?.radius).toBeCloseTo(49 / 2, 9);
    expect(seat.hole?.finish).toBe('bore');
    expect(seat.hole?.size).toBeCloseTo(52.03, 9);
    expect(finding({ bearing: 'seat' }, 'bearing-seat').title).toContain('52 mm to 52.03 mm');
  });

  test('a seat narrower than half the bearing is a caution, as wide as it a pass', () => {
    const level = (thickness: number) => finding({ bearing: 'seat', thickness }, 'seat-width').level;
    expect([6, 8, 16].map(level)).toEqual(['caution', 'note', 'pass']);
  });

  test('a bearing that slides in is held by something', () => {
    expect(finding({ bearing: 'seat' }, 'bearing-held').level).toBe('pass');
    expect(finding({ bearing: 'seat', retainer: 'none' }, 'bearing-held').level).toBe('caution');
    expect(finding({ bearing: 'seat', retainer: 'none', seatFit: 'N7' }, 'bearing-held').level).toBe('pass');
  });

  test('the clamp ring’s screws keep 1.5 thicknesses to the finished bore', () => {
    // Worked by hand: 52.03 + 6 + 2 × 9 = 76.03.
    const { value } = run({ bearing: 'seat' });
    expect(value?.derived.find(({ id }) => id === 'clamp')?.value.amount).toBeCloseTo(76.03, 6);
    expect(
      value?.part.features.filter(({ id }) => id.startsWith('clamp')).map(({ purpose }) => purpose),
    ).toEqual(['mark', 'mark', 'mark', 'mark']);
  });

  test('what is left for boring covers the cut’s tolerance and the skin', () => {
    // ±0.9 for 49 mm in 6 mm plate (ISO 9013 class 2, published) and 0.5 a side.
    expect(finding({ bearing: 'seat' }, 'machined-allowance').limit?.amount).toBeCloseTo(1.9, 9);
    expect(finding({ bearing: 'seat', leave: 1.5 }, 'machined-allowance').level).toBe('caution');
  });

  test('a seat is bored after its foot is welded', () => {
    const kinds = run({ bearing: 'seat', mount: 'welded' }).value?.steps.map(({ kind }) => kind) ?? [];
    expect(kinds.indexOf('bore')).toBeGreaterThan(kinds.indexOf('weld'));
  });
});

describe('how it is held', () => {
  test('a welded foot is the straight of the lower edge, and carries the weld', () => {
    const outline = part({ mount: 'welded' }).features.filter(isCut)[0];
    expect(outline?.edges).toEqual([{ segment: 0, role: 'weld' }]);
    expect(run({ mount: 'welded' }).value?.derived.find(({ id }) => id === 'foot')?.value.amount).toBeCloseTo(
      190,
      9,
    );
  });

  test('fillets on the foot: least leg 3 for 5 mm, the pull along it bends it at the shaft’s height', () => {
    // AISC Table J2.4: 3 mm to 6 mm of the thinner part (published).
    expect(finding({ mount: 'welded' }, 'fillet-leg').limit?.amount).toBe(3);
    const weld = finding({ mount: 'welded', pull: 5000, height: 165 }, 'edge-weld');
    // Two lines of 190: bending 6 M/(2 L²) = 6 × 5000 × 82.5/(2 × 190²) = 34.28, shear 5000/380 = 13.16 N/mm;
    // together √(34.28² + 13.16²) = 36.7 on a throat of 2.121: 17.3 MPa. Worked by hand.
    expect(weld.value?.amount).toBeCloseTo(17.31, 1);
  });

  test('a hull goes round bolts and bearing, down to its foot', () => {
    const { minX, maxX, minY } = boundsOf(
      outlineOf(part({ shape: 'hull', mount: 'welded', width: 160, height: 150, edge: 20 })).contour,
    );
    expect(maxX - minX).toBeCloseTo(160, 6);
    expect(minY).toBeCloseTo(-75, 9);
  });

  test('the frame is thin: bolts are as long as plate, housing and nut ask', () => {
    // 6 + 13 + 2 × 2.2 + 8.4 + 3 = 34.8 → 35; 6 + 5 + 15.8 = 26.8 → 30 (worked by hand).
    const names = run({}).value?.hardware.map(({ name }) => name);
    expect(names).toContain('M10 × 35 hexagon bolt, 8.8');
    expect(names).toContain('M10 × 30 hexagon bolt, 8.8');
  });
});

describe('what cannot be drawn names its field', () => {
  test.each([
    ['boltCircle', { boltCircle: 'adjacent 1900' }],
    ['boltCircle', { boltCircle: 'circle 240' }],
    ['corner', { corner: 90 }],
    ['mountX', { mountX: 230 }],
    ['collar', { collar: 180 }],
    ['outside', { bearing: 'seat', outside: 180, width: 150, height: 150, mountX: 100, mountY: 100 }],
    ['height', { shape: 'hull', mount: 'welded', width: 40, height: 60 }],
  ])('%s', (field, parameters) => {
    expect(refused(parameters)).toMatchObject({ drawn: false, field });
  });
});

describe('random bearing flanges', () => {
  test('are sound, or say why not', () => {
    const plates = fc.record(
      {
        bearing: fc.constantFrom('flanged', 'seat'),
        flangeBolts: fc.constantFrom('2', '3', '4'),
        boltCircle: sizes(70, 110).map((d) => `adjacent ${d}`),
        clocking: fc.integer({ min: -180, max: 180 }),
        bolt: fc.constantFrom('M8', 'M10', 'M12', '3/8-16'),
        holes: fc.constantFrom('clearance', 'tapped', 'drill', '13'),
        collar: sizes(20, 60),
        collarRoom: sizes(0, 10),
        outside: sizes(15, 110),
        seatFit: fc.constantFrom('H7', 'N7'),
        retainer: fc.constantFrom('none', 'ring'),
        clampHoles: fc.constantFrom('tapped', 'drill', 'clearance'),
        mount: fc.constantFrom('bolted', 'welded'),
        mountX: sizes(80, 200),
        mountY: sizes(60, 150),
        shape: fc.constantFrom('rectangle', 'hull'),
        width: sizes(120, 300),
        height: sizes(120, 250),
        shaftX: sizes(-15, 15),
        shaftY: sizes(-15, 30),
        pull: fc.constantFrom(undefined, 3000, 30000),
        thickness: fc.constantFrom(4, 6, 8, 12),
        label: fc.constantFrom(undefined, 'AXLE L'),
      },
      { requiredKeys: [] },
    );
    expect(drawAtRandom('bearing-flange', plates)).toBeGreaterThan(0.4);
  });

  test('take anything without throwing', () => {
    takeAnything('bearing-flange', [
      'bearing',
      'boltCircle',
      'collar',
      'outside',
      'seatFit',
      'mountX',
      'width',
    ]);
  });
});
