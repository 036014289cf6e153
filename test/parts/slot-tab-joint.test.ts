// Ribs that stand on the deck of the orchard cart: tabs, slots, clearance and taper, reliefs, eyes.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, containsPoint } from '../../parts-library/geometry/index.js';
import { isCut, isOpening, outlineOf } from '../../parts-library/model/index.js';
import { drawAtRandom, familyOf, sizes, takeAnything } from './sound.js';

const { run, part, finding, opening, refused } = familyOf('slot-tab-joint');

const derived = (parameters: Readonly<Record<string, unknown>>, id: string): number =>
  run(parameters).value?.derived.find((one) => one.id === id)?.value.amount ?? NaN;

describe('sizes', () => {
  test('slot = tab + clearance + t tan θ: 6 on 6 mm with 0.4 at 2° is 6.61 wide', () => {
    // Shop rule (common practice): 6 + 0.4 + 6 × 0.034921 = 6.6095; along the joint both plates lean: 30 + 0.4 + 0.4190.
    expect(derived({}, 'slot.width')).toBeCloseTo(6.6095, 4);
    expect(derived({}, 'slot.length')).toBeCloseTo(30.819, 3);
    expect(derived({ lean: 0, clearance: 0.5 }, 'slot.width')).toBeCloseTo(6.5, 9);
  });

  test('whichever plate is drawn, the slot is the same', () => {
    const six = { draws: 'slotted', thickness: 8, other: 5 };
    const five = { draws: 'tabbed', thickness: 5, other: 8 };
    expect(derived(six, 'slot.width')).toBeCloseTo(derived(five, 'slot.width'), 12);
    expect(derived(six, 'slot.length')).toBeCloseTo(derived(five, 'slot.length'), 12);
    // 5 + 0.4 + 8 tan 2° = 5.6794, worked by hand.
    expect(derived(six, 'slot.width')).toBeCloseTo(5.6794, 4);
  });

  test('slots as cut are as wide and long as that, less nothing but their reliefs', () => {
    const { contour } = opening({ relief: 0 }, 'slot.1');
    const { minX, maxX, minY, maxY } = boundsOf(contour);
    expect(maxX - minX).toBeCloseTo(30.819, 3);
    expect(maxY - minY).toBeCloseTo(6.6095, 4);
    // A bite in a square corner: 2 π − 4 at radius 2, so π/2 ρ² − ρ² a corner.
    const bitten = -areaOf(opening({ relief: 1.5 }, 'slot.1').contour);
    expect(bitten + areaOf(contour)).toBeCloseTo(4 * (Math.PI / 2 - 1) * 2.25, 6);
  });

  test('tabs are the other plate long, and as much more as they stand proud', () => {
    const low = (parameters: Readonly<Record<string, unknown>>) =>
      boundsOf(outlineOf(part({ draws: 'tabbed', ...parameters })).contour).minY;
    expect(low({})).toBeCloseTo(-6, 9);
    expect(low({ other: 8, proud: -2 })).toBeCloseTo(-6, 9);
    expect(low({ proud: 1.5 })).toBeCloseTo(-7.5, 9);
  });

  test('tabs share the edge evenly, or begin where the first is put', () => {
    const centres = (parameters: Readonly<Record<string, unknown>>) =>
      part(parameters)
        .features.filter(isOpening)
        .map(({ contour }) => {
          const { minX, maxX } = boundsOf(contour);
          return Math.round(((minX + maxX) / 2) * 1000) / 1000;
        });
    expect(centres({ tabs: 4 })).toEqual([-75, -25, 25, 75]);
    expect(centres({ tabs: 3, first: 25 })).toEqual([-75, 0, 75]);
    expect(centres({ tabs: 1 })).toEqual([0]);
  });

  test('the area of the tabbed plate: plate, tabs, bites and chamfers', () => {
    // 200 × 80 − 2 (1 − π/4) 25 + 3 × 30 × 6 − 6 bites (π/2 − 1) 2.25 − 6 half squares of 1; worked by hand.
    const plate = outlineOf(part({ draws: 'tabbed' })).contour;
    const bites = 6 * (Math.PI / 2 - 1) * 2.25;
    expect(areaOf(plate)).toBeCloseTo(16000 - 2 * (1 - Math.PI / 4) * 25 + 540 - bites - 3, 6);
  });
});

describe('seats', () => {
  test('a bite leaves the square corner of the tab free', () => {
    const slot = opening({}, 'slot.2').contour;
    const { minX, maxX, maxY } = boundsOf(opening({ relief: 0 }, 'slot.2').contour);
    expect(containsPoint(slot, { x: minX, y: maxY })).toBe('on');
    expect(containsPoint(slot, { x: (minX + maxX) / 2, y: -10 })).toBe('inside');
  });

  test('shoulders and sides of tabs mate, their ends are welded, and so are kept or preferred by the lead-in', () => {
    const outline = part({ draws: 'tabbed' }).features.filter(isCut)[0];
    const roles = outline?.edges?.map(({ role }) => role) ?? [];
    // Four shoulders and six sides, three ends.
    expect(roles.filter((role) => role === 'mating')).toHaveLength(10);
    expect(roles.filter((role) => role === 'weld')).toHaveLength(3);
    expect(opening({}, 'slot.1').edges?.map(({ role }) => role)).toEqual(['mating', 'mating']);
  });

  test('without a relief the torch’s own radius holds the shoulder off', () => {
    expect(finding({ relief: 0 }, 'corner-relief')).toMatchObject({
      level: 'caution',
      limit: { amount: 0.8 },
    });
    expect(finding({ relief: 0.5 }, 'corner-relief').level).toBe('caution');
    expect(finding({}, 'corner-relief').level).toBe('pass');
    expect(finding({ relief: 0 }, 'corner-relief').remedies?.[0]?.change).toEqual([
      { op: 'add', path: '/relief', value: 1.6 },
    ]);
  });
});

describe('fit', () => {
  test('the kerf’s ± eats the clearance: 0.4 − 0.3', () => {
    expect(finding({}, 'joint-fit').value?.amount).toBeCloseTo(0.1, 9);
    expect(finding({ clearance: 0.2 }, 'joint-fit')).toMatchObject({ level: 'caution', field: 'clearance' });
    // ISO 9013 class 2, 6 mm plate, 3 to 10 mm: ±0.8 (published).
    expect(finding({}, 'joint-fit').formula).toContain('class 2: 0.4 − 0.8 = -0.4');
    expect(finding({ clearance: 0.9 }, 'joint-fit').level).toBe('pass');
  });

  test('a measured ± of the other plate counts as well', () => {
    expect(finding({ other: '6 ±0.2' }, 'joint-fit').value?.amount).toBeCloseTo(-0.1, 9);
  });

  test('a fillet bridges 1.6 mm and no more', () => {
    // AWS D1.1 fit-up (from memory): 0.4 + 2 × 0.2095 + 0.3 = 1.119; at 5° 0.4 + 2 × 0.5249 + 0.3 = 1.75.
    expect(finding({}, 'joint-gap').value?.amount).toBeCloseTo(1.119, 3);
    expect(finding({ lean: 5 }, 'joint-gap')).toMatchObject({ level: 'caution', field: 'lean' });
  });

  test('tabs of one and a half thicknesses survive their weld', () => {
    const level = (tabWidth: number) => finding({ tabWidth }, 'tab-width').level;
    expect([5, 7, 9].map(level)).toEqual(['caution', 'note', 'pass']);
  });

  test('what the slots leave along the joint is told', () => {
    // 1 − 3 × 30.819/200 = 0.538; with tabs of 55: 1 − 3 × 55.819/200 = 0.163.
    expect(finding({}, 'slotted-share').level).toBe('pass');
    expect(finding({ tabWidth: 55 }, 'slotted-share')).toMatchObject({ level: 'caution', field: 'tabs' });
  });
});

describe('narrow slots', () => {
  const thin = { thickness: 3, other: 3, relief: 1 };

  test('less than four kerfs: a stop, and an eye is offered', () => {
    const stop = finding(thin, 'slot-width');
    expect(stop).toMatchObject({ level: 'stop', field: 'eye' });
    expect(stop.limit?.amount).toBeCloseTo(6.4, 9);
    expect(stop.remedies?.[0]?.change).toEqual([{ op: 'add', path: '/eye', value: 8 }]);
  });

  test('with the eye every slot has a lead-in', () => {
    const { findings, value } = run({ ...thin, eye: 8 });
    expect(findings.filter(({ level }) => level === 'stop')).toEqual([]);
    expect(value?.plan.contours).toHaveLength(4);
    // Slot 3.505 × 30.6; the eye adds the two caps of a circle of 8 over a chord at 1.752: r² acos(h/r) − h √(r² − h²) each.
    const h = (3 + 0.4 + 3 * Math.tan(Math.PI / 90)) / 2;
    const cap = 16 * Math.acos(h / 4) - h * Math.sqrt(16 - h * h);
    const plain = areaOf(opening(thin, 'slot.1').contour);
    expect(areaOf(opening({ ...thin, eye: 8 }, 'slot.1').contour)).toBeCloseTo(plain - 2 * cap, 6);
  });
});

describe('what cannot be drawn names its field', () => {
  test.each([
    ['proud', { proud: -5.5 }],
    ['tabWidth', { tabs: 1, tabWidth: 199 }],
    ['first', { first: 12 }],
    ['first', { tabs: 6, first: 60 }],
    ['tabWidth', { tabs: 8 }],
    ['corner', { corner: 60 }],
    ['corner', { draws: 'tabbed', corner: 120 }],
    ['relief', { relief: 3 }],
    ['relief', { draws: 'tabbed', relief: 4 }],
    ['chamfer', { draws: 'tabbed', chamfer: 7 }],
    ['eye', { eye: 29 }],
    ['plateLength', { plateLength: 160 }],
    ['jointAt', { jointAt: 97 }],
  ])('%s', (field, parameters) => {
    expect(refused(parameters)).toMatchObject({ drawn: false, field });
  });
});

describe('random joints', () => {
  test('are sound, or say why not', () => {
    const joints = fc.record(
      {
        draws: fc.constantFrom('tabbed', 'slotted'),
        length: sizes(100, 400),
        tabs: fc.integer({ min: 1, max: 6 }),
        tabWidth: sizes(8, 40),
        first: fc.option(sizes(15, 60), { nil: undefined }),
        other: fc.constantFrom(3, 4, 6, 8, '1/4 in', '6 ±0.2'),
        thickness: fc.constantFrom(3, 4, 6, 8, 10),
        proud: sizes(-2, 2),
        chamfer: sizes(0, 2),
        clearance: sizes(0, 1),
        lean: sizes(0, 5),
        relief: fc.constantFrom(0, 0.5, 1, 1.5, 2),
        eye: fc.constantFrom(undefined, 6, 9, 12),
        plateLength: sizes(150, 450),
        jointAt: sizes(10, 80),
        corner: sizes(0, 12),
        label: fc.constantFrom(undefined, 'RIB 1'),
      },
      { requiredKeys: [] },
    );
    expect(drawAtRandom('slot-tab-joint', joints)).toBeGreaterThan(0.4);
  });

  test('take anything without throwing', () => {
    takeAnything('slot-tab-joint', [
      'draws',
      'length',
      'tabs',
      'first',
      'proud',
      'relief',
      'eye',
      'lean',
      'jointAt',
    ]);
  });
});
