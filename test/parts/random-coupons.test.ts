// Random coupons, valid and not: drawn ones are sound, etched on the metal, and nothing throws.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  containsContour,
  containsPoint,
  distanceBetweenContours,
  findFaults,
} from '../../parts-library/geometry/index.js';
import { runPart, startingShop, type PartRun } from '../../parts-library/job/index.js';
import { isCut, isLine, isOpening, outlineOf } from '../../parts-library/model/index.js';
import { findFamily } from '../../parts-library/parts/index.js';

const runs = process.env['FISHPLATE_LONG'] === '1' ? 1000 : 60;
const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((n) => n / 10);
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });

const plate = {
  thickness: fc.constantFrom('1.5', '3', '4', '6', '1/4 in', '8', '10', '12'),
  material: fc.constantFrom('S235', 'S275', '304', '6061-T6'),
  amps: maybe(fc.constantFrom('30', '45', '65', '85', '105')),
  labelHeight: fc.constantFrom('6', '8', '10'),
  label: fc.constantFrom(undefined, 'CART'),
};

const COUPONS: readonly (readonly [string, fc.Arbitrary<Record<string, unknown>>])[] = [
  [
    'coupon-kerf',
    fc.record({
      ...plate,
      side: tenths(70, 200),
      window: tenths(15, 90),
      outsideX: maybe(tenths(60, 200)),
      windowX: maybe(tenths(15, 90)),
      kerfSet: maybe(tenths(0, 3)),
    }),
  ],
  [
    'coupon-pierce',
    fc.record({
      ...plate,
      delay: maybe(tenths(0.1, 3).map(String)),
      rungs: fc.integer({ min: 2, max: 8 }),
      cut: tenths(10, 60),
      found: maybe(tenths(0, 3).map(String)),
    }),
  ],
  [
    'coupon-speed',
    fc.record({
      ...plate,
      speed: maybe(fc.integer({ min: 300, max: 9000 }).map(String)),
      step: maybe(fc.integer({ min: 2, max: 15 }).map(String)),
      rungs: fc.constantFrom(3, 5, 7, 9),
      line: tenths(50, 200),
      acceleration: tenths(0.5, 4).map(String),
    }),
  ],
  [
    'coupon-holes',
    fc.record({
      ...plate,
      diameters: maybe(
        fc.array(tenths(6, 40), { minLength: 1, maxLength: 6 }).map((list) => list.join(', ')),
      ),
      rows: fc.integer({ min: 1, max: 5 }),
      speed: maybe(fc.integer({ min: 300, max: 9000 }).map(String)),
      readNominal: maybe(tenths(6, 30)),
      bottomX: maybe(tenths(6, 30)),
      bottomY: maybe(tenths(6, 30)),
    }),
  ],
  [
    'coupon-fit',
    fc.record({
      ...plate,
      tab: tenths(1.5, 16),
      pin: tenths(8, 40),
      first: tenths(0, 1),
      step: tenths(0.1, 0.5),
      count: fc.integer({ min: 2, max: 9 }),
      slotLength: tenths(10, 60),
      slotFits: maybe(tenths(2, 18)),
    }),
  ],
];

function expectSound(run: PartRun): boolean {
  const { value, findings, problems } = run;
  for (const { says, title } of findings) expect(`${title} ${says}`).not.toMatch(/NaN|undefined|Infinity/);
  const stopped = findings.some(({ level }) => level === 'stop');
  if (value === undefined) {
    expect(stopped || problems.length > 0).toBe(true);
    return false;
  }
  const { features } = value.part;
  expect(new Set(features.map(({ id }) => id)).size).toBe(features.length);
  const outline = outlineOf(value.part).contour;
  const cuts = features.filter(isCut);
  for (const { contour } of cuts) expect(findFaults(contour)).toEqual([]);
  const holes = features.filter(isOpening);
  for (const [index, { contour }] of holes.entries()) {
    expect(containsContour(outline, contour)).toBe(true);
    for (const other of holes.slice(index + 1))
      expect(distanceBetweenContours(contour, other.contour).distance).toBeGreaterThan(0);
  }
  // A mark struck off the metal fires the torch into air.
  for (const { path } of features.filter(isLine)) {
    for (const at of path.vertices) {
      expect(containsPoint(outline, at)).toBe('inside');
      for (const { contour } of holes) expect(containsPoint(contour, at)).toBe('outside');
    }
  }
  for (const { text } of [...value.dimensions, ...value.derived])
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
  for (const { says } of value.steps) expect(says).not.toMatch(/NaN|undefined|Infinity/);
  return true;
}

describe.each(COUPONS)('random %s', (family, parameters) => {
  test('is sound, with every etch on metal, or a stop says why there is none', () => {
    let drawn = 0;
    fc.assert(
      fc.property(parameters, fc.constantFrom('mm' as const, 'in' as const), (given, unit) => {
        // Bare numbers are meant in millimetres here, whatever the job's unit.
        const metric = Object.fromEntries(
          Object.entries(given).map(([name, value]) => [
            name,
            typeof value === 'string' && name === 'thickness' && !value.includes('in')
              ? `${value} mm`
              : value,
          ]),
        );
        const { labelHeight, diameters, speed, ...rest } = metric;
        const run = runPart(
          {
            family,
            parameters: {
              ...rest,
              labelHeight: `${String(labelHeight)} mm`,
              ...(typeof diameters === 'string'
                ? { diameters: diameters.replaceAll(',', ' mm,') + ' mm' }
                : {}),
              ...(typeof speed === 'string' ? { speed: `${speed} mm/min` } : {}),
            },
            unit,
          },
          startingShop,
        );
        if (expectSound(run)) drawn += 1;
      }),
      { numRuns: runs, seed: 20261125 },
    );
    expect(drawn / runs).toBeGreaterThan(0.4);
  });

  test('whatever is put in a field, reading answers and never throws', () => {
    const anything = fc.oneof(
      fc.string(),
      fc.double(),
      fc.constant(null),
      fc.array(fc.integer()),
      fc.object(),
    );
    const fields = findFamily(family)?.fields.map(({ path }) => path) ?? [];
    expect(fields.length).toBeGreaterThan(5);
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...fields), anything), (given) => {
        const { problems, value, findings } = runPart(
          { family, parameters: given, unit: 'mm' },
          startingShop,
        );
        expect(
          value !== undefined || problems.length > 0 || findings.some(({ level }) => level === 'stop'),
        ).toBe(true);
      }),
      { numRuns: runs * 2, seed: 20261125 },
    );
  });
});
