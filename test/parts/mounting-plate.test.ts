// The mounting plate of the orchard cart's drive motor: holes, slots, motor face, window, notch, and what is said of them.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, containsPoint, isCircle } from '../../parts-library/geometry/index.js';
import { isOpening, outlineOf } from '../../parts-library/model/index.js';
import { drawAtRandom, familyOf, sizes, takeAnything } from './sound.js';

const { run, part, finding, opening, refused } = familyOf('mounting-plate');

const PLAIN = { face: 'none', width: 200, height: 100, corner: 10, pitchX: 160, pitchY: 60 } as const;

describe('outside and openings', () => {
  test('the area is the rectangle less its corners, holes, window and notch', () => {
    // Worked by hand: 200 × 100 − (4 − π) 10² = 19914.16; four holes π 5.5² = 380.13; window 60 × 20 − (4 − π) 25 =
    // 1178.54; notch 30 × 15 less its two corners (4 − π)/4 × 2 × 9 = 446.14.
    const features = part({
      ...PLAIN,
      window: { width: 60, height: 20, corner: 5 },
      notch: { side: 'top', width: 30, depth: 15, corner: 3 },
    }).features.filter((feature) => 'contour' in feature);
    const area = features.reduce((sum, { contour }) => sum + areaOf(contour), 0);
    expect(area).toBeCloseTo(19914.159 - 4 * Math.PI * 5.5 ** 2 - 1178.54 - 446.137, 2);
  });

  test.each([
    ['top', { x: 20, y: 45 }],
    ['bottom', { x: 20, y: -45 }],
    ['right', { x: 95, y: 20 }],
    ['left', { x: -95, y: 20 }],
  ] as const)('a notch 20 from the middle of the %s edge is open where it should be', (side, at) => {
    const plate = part({
      ...PLAIN,
      figure: 'none',
      notch: { side, width: 14, depth: 10, corner: 2, at: 20 },
    });
    expect(containsPoint(outlineOf(plate).contour, at)).toBe('outside');
    expect(containsPoint(outlineOf(plate).contour, { x: -at.x, y: -at.y })).toBe('inside');
  });

  test('a grid stands about the middle', () => {
    const centres = part({ ...PLAIN, columns: 3, rows: 2, pitchX: 80 })
      .features.filter(isOpening)
      .map(({ contour }) => isCircle(contour)?.centre);
    expect(centres).toHaveLength(6);
    expect(centres[0]).toEqual({ x: -80, y: -30 });
    expect(centres[4]?.x).toBeCloseTo(0, 9);
    expect(centres[5]).toEqual({ x: 80, y: 30 });
  });

  test('a circle is read the way it was measured: 5 holes, adjacent 67.184, are on ⌀114.3', () => {
    // Bolt-circle factor 1/sin(36°) = 1.7013 (published): 67.184 × 1.7013 = 114.3.
    const { value } = run({
      ...PLAIN,
      height: 180,
      figure: 'circle',
      bolts: 5,
      boltCircle: 'adjacent 67.184',
    });
    expect(value?.derived.find(({ id }) => id === 'circle')?.value.amount).toBeCloseTo(114.3, 2);
  });

  test('the hull is a belt round the holes: its length is the pitches and one full circle', () => {
    const plate = part({ ...PLAIN, shape: 'hull', edge: 20 });
    // Worked by hand: 160 + 60 + 2 × 20 wide and high, area 160 × 60 + 2 × 20 (160 + 60) + π 400.
    const { minX, maxX } = boundsOf(outlineOf(plate).contour);
    expect(maxX - minX).toBeCloseTo(200, 9);
    expect(areaOf(outlineOf(plate).contour)).toBeCloseTo(9600 + 8800 + 400 * Math.PI, 6);
  });

  test('without an edge distance the hull keeps two bolt diameters, or metal of 1.5 thicknesses', () => {
    // M10 in 6 mm: max(20, 9 + 5.5) = 20; in 12 mm: max(20, 18 + 5.5) = 23.5; shop rule and published guideline.
    const width = (thickness: number) => {
      const { minX, maxX } = boundsOf(outlineOf(part({ ...PLAIN, shape: 'hull', thickness })).contour);
      return maxX - minX;
    };
    expect(width(6)).toBeCloseTo(200, 9);
    expect(width(12)).toBeCloseTo(207, 9);
  });
});

test('an inch job starts from the same plate', () => {
  const { value } = run({}, 'in');
  expect(value?.derived.find(({ id }) => id === 'motor')?.value.amount).toBeCloseTo(110, 9);
});

describe('slots', () => {
  test('a slot is as wide as the clearance hole and as long as its travel more', () => {
    // ISO 273 normal for M10 is 11 (published); 11 × 24 + π 5.5².
    const { contour } = opening({ ...PLAIN, slot: 24, slotDirection: 90 }, 'hole.1');
    const { minX, maxX, minY, maxY } = boundsOf(contour);
    expect(maxX - minX).toBeCloseTo(11, 9);
    expect(maxY - minY).toBeCloseTo(35, 9);
    expect(areaOf(contour)).toBeCloseTo(-(11 * 24 + Math.PI * 5.5 ** 2), 6);
  });

  test('the motor slides with its pilot: hole slots and pilot slot have one travel', () => {
    const plate = {
      face: 'sliding',
      travel: 20,
      travelDirection: 0,
      pilot: 50,
      pilotPlay: 1,
      motorFit: 'normal',
    };
    const pilot = boundsOf(opening(plate, 'motor.pilot').contour);
    expect(pilot.maxX - pilot.minX).toBeCloseTo(71, 9);
    expect(pilot.maxY - pilot.minY).toBeCloseTo(51, 9);
    const slot = boundsOf(opening(plate, 'motor.hole.1').contour);
    expect(slot.maxX - slot.minX).toBeCloseTo(29, 9);
  });

  test('the motor turns in slots along its bolt circle: four arcs, ends on the circle', () => {
    // 20° on radius 55: middle line 19.2 mm; area 9 × 19.2 + π 4.5².
    const { contour } = opening({ face: 'turning', swing: 20, motorFit: 'normal' }, 'motor.hole.1');
    expect(areaOf(contour)).toBeCloseTo(-(9 * 55 * (Math.PI / 9) + Math.PI * 4.5 ** 2), 6);
    expect(contour.every(({ bulge }) => bulge !== 0)).toBe(true);
  });

  test('a bolt that slides is judged at the end of its slot', () => {
    // Hole 20 from the edge, 10 of travel each way: 10, one bolt diameter; AISC floor of 1 d (published), 1.5 d wanted.
    const edge = finding({ ...PLAIN, slot: 20 }, 'edge-distance');
    expect(edge.value?.amount).toBeCloseTo(10, 9);
    expect(edge.level).toBe('caution');
  });

  test('four M8 8.8 hold 12.7 kN by friction, and two thirds of it are counted', () => {
    // Preload 15.92 kN (published torque tables), friction 0.2: 4 × 0.2 × 15.92 = 12.74; ÷ 1.5 = 8.49.
    const at = (pull: number) => finding({ pull }, 'slot-slip');
    expect(at(8000).level).toBe('pass');
    expect(at(9000).level).toBe('caution');
    expect((at(9000).limit?.amount ?? 0) / 1000).toBeCloseTo(8.49, 2);
    expect(finding({}, 'slot-slip').level).toBe('note');
  });

  test('one pitch of travel reaches from one even number of links to the next', () => {
    // Chain length L = 2 C + …, published: two links of 12.7 are 12.7 of centre distance.
    expect(finding({ chain: '40', travel: 16 }, 'take-up').level).toBe('pass');
    expect(finding({ chain: '40', travel: 10 }, 'take-up')).toMatchObject({
      level: 'caution',
      field: 'travel',
    });
    expect(finding({ chain: '40', travel: 10 }, 'take-up').limit?.amount).toBeCloseTo(12.7, 9);
  });

  test('a slot of less than four kerfs cannot be pierced', () => {
    // Pierce up to 3 kerfs wide and half a kerf each side: 4 × 1.6 = 6.4 (common practice); M5 normal is 5.5 (ISO 273).
    expect(finding({ ...PLAIN, bolt: 'M5', slot: 10, thickness: 3 }, 'slot-width').level).toBe('stop');
    expect(finding({ ...PLAIN, bolt: 'M6', slot: 10, thickness: 3 }, 'slot-width').level).toBe('pass');
  });
});

describe('what is said of the motor and the bolts', () => {
  test('a head that runs into the motor’s body is a stop', () => {
    // Corner bolts stand at 115, 75; the motor slides 8 each way: √(107² + 75²) = 130.67 from its middle.
    expect(finding({ motorBody: 200 }, 'motor-room').value?.amount).toBeCloseTo(30.667, 2);
    expect(finding({ motorBody: 200 }, 'motor-room').level).toBe('pass');
    expect(finding({ motorBody: 245 }, 'motor-room').level).toBe('stop');
  });

  test('tapped holes in the motor: only the hole in the plate gives', () => {
    // ASME Y14.5 fixed fastener (from memory): room (H − F)/2; M8 loose 10 (ISO 273): 1 mm.
    expect(finding({ motorFit: 'loose' }, 'bolt-up').limit?.amount).toBeCloseTo(1, 9);
    expect(finding({ motorFit: 'close' }, 'bolt-up')).toMatchObject({ level: 'caution', field: 'motorFit' });
  });

  test('the holes of rail or floor are asked for, and weighed when they are given', () => {
    expect(finding(PLAIN, 'not-checked').title).toContain('will it bolt up (M10)');
    expect(finding({ ...PLAIN, bolted: 12 }, 'bolt-up')).toMatchObject({ field: 'bolted' });
  });

  test('inside corners sharper than half the kerf come out at half the kerf', () => {
    expect(
      finding({ ...PLAIN, window: { width: 60, height: 20, corner: 0.5 } }, 'inside-corner'),
    ).toMatchObject({
      level: 'note',
      limit: { amount: 0.8 },
    });
  });

  test('small holes offer to be drilled from a mark', () => {
    const small = finding({ ...PLAIN, bolt: 'M5', thickness: 6 }, 'small-hole');
    expect(small).toMatchObject({ level: 'stop', field: 'holes' });
    expect(small.remedies?.[0]?.change).toEqual([{ op: 'add', path: '/holes', value: 'drill' }]);
  });

  test('bolts are long enough: M10 through 6 + 5 mm is 30, M8 into the motor 16', () => {
    // 11 + 2 × 2.2 + 8.4 + 3 = 26.8 → 30; 6 + 1.8 + 8 = 15.8 → 16 (ISO 7089 washers published, nuts from memory).
    const names = run({}).value?.hardware.map(({ name }) => name);
    expect(names).toContain('M10 × 30 hexagon bolt, 8.8');
    expect(names).toContain('M8 × 16 hexagon bolt, 8.8');
    expect(names).toContain('large washer for M8');
  });
});

describe('what cannot be drawn names its field', () => {
  test.each([
    ['corner', { ...PLAIN, corner: 60 }],
    ['slot', { ...PLAIN, holes: 'tapped', slot: 10 }],
    ['boltCircle', { ...PLAIN, figure: 'circle', boltCircle: 'adjacent 1800' }],
    ['motorCircle', { motorCircle: 'adjacent 1900' }],
    ['swing', { face: 'turning', motorBolts: 12, swing: 30 }],
    ['pitchX', { ...PLAIN, pitchX: 195 }],
    ['pitchY', { ...PLAIN, columns: 1, pitchY: 95 }],
    ['motorX', { motorX: 90 }],
    ['window.corner', { ...PLAIN, window: { width: 20, height: 10, corner: 8 } }],
    ['window.x', { ...PLAIN, window: { x: 90 } }],
    ['notch.depth', { ...PLAIN, notch: { depth: 120 } }],
    ['notch.at', { ...PLAIN, notch: { at: 85 } }],
    ['notch.corner', { ...PLAIN, notch: { width: 10, corner: 6 } }],
    ['notch.side', { ...PLAIN, shape: 'hull', notch: {} }],
    ['figure', { ...PLAIN, shape: 'hull', figure: 'none' }],
  ])('%s', (field, parameters) => {
    expect(refused(parameters)).toMatchObject({ drawn: false, field });
  });
});

describe('random mounting plates', () => {
  test('are sound, or say why not', () => {
    const plates = fc.record(
      {
        shape: fc.constantFrom('rectangle', 'hull'),
        width: sizes(120, 400),
        height: sizes(100, 300),
        corner: sizes(0, 30),
        figure: fc.constantFrom('grid', 'circle', 'none'),
        columns: fc.integer({ min: 1, max: 5 }),
        rows: fc.integer({ min: 1, max: 4 }),
        pitchX: sizes(25, 120),
        pitchY: sizes(25, 100),
        boltCircle: sizes(130, 220).map((d) => `circle ${d}`),
        bolt: fc.constantFrom('M6', 'M8', 'M10', '3/8-16'),
        holes: fc.constantFrom('clearance', 'tapped', 'drill', '12'),
        slot: fc.constantFrom(0, 0, 8, 15),
        slotDirection: fc.integer({ min: -90, max: 90 }),
        face: fc.constantFrom('none', 'fixed', 'sliding', 'turning'),
        pilot: fc.constantFrom(0, 20, 40),
        motorCircle: sizes(60, 110).map((d) => `circle ${d}`),
        motorBolts: fc.integer({ min: 2, max: 6 }),
        motorBolt: fc.constantFrom('M6', 'M8'),
        travel: sizes(0, 25),
        swing: fc.integer({ min: 1, max: 60 }),
        motorBody: sizes(50, 140),
        window: fc.constantFrom(undefined, undefined, { width: 30, height: 20, y: 60 }),
        notch: fc.constantFrom(undefined, {}, { side: 'left', width: 20, depth: 10 }),
        thickness: fc.constantFrom(3, 5, 6, 8, 10),
        label: fc.constantFrom(undefined, 'MOTOR'),
      },
      { requiredKeys: [] },
    );
    expect(drawAtRandom('mounting-plate', plates)).toBeGreaterThan(0.3);
  });

  test('take anything without throwing', () => {
    takeAnything('mounting-plate', [
      'shape',
      'width',
      'motorCircle',
      'window',
      'notch',
      'holes',
      'swing',
      'columns',
    ]);
  });
});
