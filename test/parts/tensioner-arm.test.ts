// The chain tensioner of the orchard cart: how far the idler swings, what it takes up, what its lock holds.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, lengthOf } from '../../parts-library/geometry/index.js';
import { outlineOf } from '../../parts-library/model/index.js';
import { drawAtRandom, familyOf, sizes, takeAnything } from './sound.js';

const { run, part, finding, opening, refused } = familyOf('tensioner-arm');

const derived = (parameters: Readonly<Record<string, unknown>>, id: string): number =>
  run(parameters).value?.derived.find((one) => one.id === id)?.value.amount ?? NaN;

describe('shape', () => {
  test('without a slot the arm is a belt round two noses', () => {
    // Worked by hand: two equal noses of 22, 120 apart: 2 × 120 + 44 π; area 120 × 44 + π 22².
    const { contour } = outlineOf(part({ lock: 'pivot', arm: 120, pivotNose: 22, idlerNose: 22 }));
    expect(lengthOf(contour)).toBeCloseTo(240 + 44 * Math.PI, 6);
    expect(areaOf(contour)).toBeCloseTo(5280 + 484 * Math.PI, 6);
  });

  test('the slot runs round the pivot, as long as the swing turns it', () => {
    // M8 normal 9 (ISO 273, published): area 9 × 60 × 30° in radians + π 4.5².
    const { contour } = opening({ slotRadius: 60, swing: 30 }, 'slot');
    expect(areaOf(contour)).toBeCloseTo(-(9 * 60 * (Math.PI / 6) + Math.PI * 4.5 ** 2), 6);
    const { minX, maxX } = boundsOf(contour);
    expect(minX).toBeCloseTo(-64.5, 6);
    expect(maxX).toBeLessThan(-46);
  });

  test('its sides bear on the bolt, so that a cut starts at an end', () => {
    expect(opening({}, 'slot').edges).toEqual([
      { segment: 0, role: 'bearing' },
      { segment: 2, role: 'bearing' },
    ]);
  });

  test('a pivot tube gets an opening with its fit', () => {
    expect(opening({ bush: 20, bushFit: 0.3 }, 'pivot').hole?.size).toBeCloseTo(20.3, 9);
  });

  test('noses are two bolt diameters, or metal of 1.5 thicknesses round the opening', () => {
    // M10 in 6 mm: max(20, 10.5/2 + 9); round a tube of 30: 30.3/2 + 9 = 24.15 (shop rule, published guideline).
    const radius = (parameters: Readonly<Record<string, unknown>>) =>
      run({ lock: 'pivot', ...parameters }).value?.dimensions.find(({ id }) => id === 'pivotNose')?.text;
    expect(radius({})).toBe('R20');
    expect(radius({ bush: 30 })).toBe('R24.15');
  });
});

describe('travel and take-up', () => {
  test('the idler moves along a chord of its circle: 2 × 110 sin 16° = 60.64', () => {
    expect(derived({ arm: 110, swing: 32 }, 'travel')).toBeCloseTo(60.64, 2);
    // At 30° to the strand only cos 30° of it counts.
    expect(derived({ arm: 110, swing: 32, chainAngle: 30 }, 'travel')).toBeCloseTo(52.516, 2);
  });

  test('pressed from 0 to 50 in the middle of 400 with a pitch radius of 30 it takes up 12.46', () => {
    // Worked by hand, see the idler’s own test. A roller of 2 × 30 less the link plates of 40 chain (0.95 × 12.7).
    const swing = (2 * Math.asin(25 / 110) * 180) / Math.PI;
    const roller = 60 - 0.95 * 12.7;
    const take = derived(
      { idler: 'roller', roller, span: 400, idlerAt: 200, press: 0, swing: `${swing}`, arm: 110 },
      'take-up',
    );
    expect(take).toBeCloseTo(12.461, 2);
  });

  test('wanted is 2 % of the chain, or two links where that is less', () => {
    // Elongation limit 2 % (makers’ guides, from memory): 0.02 × 96 × 12.7 = 24.38; of 150 links 38.1, two links 25.4.
    expect(finding({ links: 96 }, 'take-up').limit?.amount).toBeCloseTo(24.384, 6);
    expect(finding({ links: 150 }, 'take-up').limit?.amount).toBeCloseTo(25.4, 6);
    expect(finding({}, 'take-up').level).toBe('pass');
    expect(finding({ swing: 15 }, 'take-up')).toMatchObject({ level: 'caution', field: 'swing' });
  });

  test('three teeth in mesh and four pitches away are wanted of an idler', () => {
    // Makers’ guides (from memory).
    expect(finding({}, 'idler-mesh').level).toBe('note');
    expect(finding({ press: 160 }, 'idler-mesh').level).toBe('pass');
    expect(finding({ idlerAt: 60 }, 'idler-place').level).toBe('pass');
    expect(finding({ idlerAt: 45 }, 'idler-place')).toMatchObject({ level: 'caution' });
    expect(finding({}, 'idler-place').limit?.amount).toBeCloseTo(50.8, 9);
  });
});

describe('what holds and what breaks', () => {
  test('a strand that also brakes is a caution, and a spring cannot hold it', () => {
    expect(finding({}, 'slack-side').level).toBe('note');
    expect(finding({ reverses: 'yes' }, 'slack-side').level).toBe('caution');
    expect(finding({ lock: 'spring' }, 'spring').level).toBe('pass');
    expect(finding({ lock: 'spring', reverses: 'yes' }, 'spring').level).toBe('caution');
  });

  test('the spring presses through its lever: 60 N at 45 on an arm of 110 is 24.5 N', () => {
    expect(finding({ lock: 'spring' }, 'spring').value?.amount).toBeCloseTo(24.545, 2);
  });

  test('the lock bolt holds the idler’s moment at the slot: one M8 8.8 grips 3.18 kN, 2.12 kN counted', () => {
    // 0.2 × 15.92 kN (published preload, friction from memory) ÷ 1.5.
    const slip = finding({ pull: 500 }, 'slot-slip');
    expect((slip.limit?.amount ?? 0) / 1000).toBeCloseTo(2.12, 2);
    // Chain force on the idler times 110/55.
    const force = slip.value?.amount ?? 0;
    const wrap = derived({ pull: 500 }, 'wrap');
    expect(wrap).toBeGreaterThan(0);
    expect(force).toBeGreaterThan(2 * 2 * 500 * Math.sin((wrap * Math.PI) / 360));
    expect(finding({ pull: 5000 }, 'slot-slip').level).toBe('caution');
  });

  test('bending at the pivot: 6 M h ÷ [t (h³ − d³)]', () => {
    // With a half turn of wrap the chain presses with twice its pull; here the moment comes from the finding's own force:
    // a section 40 × 6 with a hole of 10.5 has 6 × 40/(6 (64000 − 1157.6)) = 6.365e-4 per N·mm (Peterson, from memory).
    const bending = finding({ lock: 'pivot', pull: 1000 }, 'arm-bending');
    const newtons = Number(/= (\d+) N;/.exec(bending.formula ?? '')?.[1]);
    expect(newtons).toBeGreaterThan(100);
    expect((bending.value?.amount ?? 0) / (newtons * 110)).toBeCloseTo(6.365e-4, 5);
  });

  test('an idler that reaches the lock bolt is a stop', () => {
    expect(finding({}, 'idler-room').level).toBe('pass');
    expect(finding({ slotAngle: 0, slotRadius: 70 }, 'idler-room')).toMatchObject({
      level: 'stop',
      field: 'slotRadius',
    });
  });

  test('bolts: M10 × 30 through arm and frame, M10 × 45 through idler and spacer', () => {
    // 14 + 15.8 = 29.8 → 30; 28 + 15.8 = 43.8 → 45 (worked by hand: washers 2 × 2.2, nut 8.4, 2 × 1.5).
    const names = run({}).value?.hardware.map(({ name }) => name);
    expect(names).toContain('M10 × 30 hexagon bolt, 8.8');
    expect(names).toContain('M10 × 45 hexagon bolt, 8.8');
  });
});

describe('what cannot be drawn names its field', () => {
  test.each([
    ['idlerAt', { span: 100, idlerAt: 150 }],
    ['slotRadius', { slotRadius: 12, bush: 40 }],
    ['pivotNose', { lock: 'pivot', pivotNose: 5 }],
    ['idlerNose', { lock: 'pivot', idlerNose: 4 }],
  ])('%s', (field, parameters) => {
    expect(refused(parameters)).toMatchObject({ drawn: false, field });
  });
});

describe('random tensioner arms', () => {
  test('are sound, or say why not', () => {
    const arms = fc.record(
      {
        arm: sizes(40, 250),
        pivotBolt: fc.constantFrom('M8', 'M10', 'M12', '3/8-16'),
        pivotHoles: fc.constantFrom('drill', 'clearance', 'tapped', '12'),
        idlerHoles: fc.constantFrom('drill', 'clearance', 'tapped'),
        bush: fc.constantFrom(undefined, undefined, 18, 30),
        idler: fc.constantFrom('sprocket', 'roller'),
        teeth: fc.integer({ min: 9, max: 25 }),
        lock: fc.constantFrom('slot', 'spring', 'pivot'),
        swing: sizes(5, 120),
        slotRadius: sizes(20, 120),
        slotAngle: fc.integer({ min: -180, max: 180 }),
        chainAngle: fc.integer({ min: -60, max: 60 }),
        chain: fc.constantFrom('35', '40', '428', '08B', '520'),
        press: sizes(0, 40),
        idlerAt: sizes(60, 300),
        pull: fc.constantFrom(undefined, 300, 5000),
        reverses: fc.constantFrom('yes', 'no'),
        thickness: fc.constantFrom(4, 6, 8, 10),
        label: fc.constantFrom(undefined, 'TENS'),
      },
      { requiredKeys: [] },
    );
    expect(drawAtRandom('tensioner-arm', arms)).toBeGreaterThan(0.5);
  });

  test('take anything without throwing', () => {
    takeAnything('tensioner-arm', [
      'arm',
      'bush',
      'teeth',
      'lock',
      'swing',
      'slotRadius',
      'chain',
      'press',
      'span',
    ]);
  });
});
