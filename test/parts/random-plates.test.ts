// Random adapter plates, valid and not: every drawn one is sound and can be cut or says why; nothing throws.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { containsContour, findFaults } from '../../parts-library/geometry/index.js';
import { isCut, isOpening, outlineOf } from '../../parts-library/model/index.js';
import { run } from './plate.js';

const runs = process.env['FISHPLATE_LONG'] === '1' ? 3000 : 150;
const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);

const plates = fc.record(
  {
    bolts: fc.integer({ min: 2, max: 12 }),
    boltCircle: tenths(60, 300).map((d) => `circle ${d}±0.1`),
    bolt: fc.constantFrom('M5', 'M8', 'M10', 'M12x1.25', '3/8-16', '1/4-28'),
    holes: fc.constantFrom('clearance', 'tapped', 'drill', '14'),
    holeFit: fc.constantFrom('close', 'normal', 'loose'),
    clocking: fc.integer({ min: -180, max: 180 }).map(String),
    centre: fc.constantFrom('slip-to-weld', 'bore-after', 'turned', 'none', undefined),
    hub: tenths(15, 40),
    shape: fc.constantFrom('round', 'lobed'),
    edge: tenths(10, 25),
    lightening: fc.integer({ min: 0, max: 5 }),
    lighteningDiameter: tenths(8, 18),
    thickness: fc.constantFrom('3', '5', '6', '8', '1/4 in', '10'),
    material: fc.constantFrom('S235', 'S275', 'A36', '304', '6061-T6'),
    weldSides: fc.constantFrom('one', 'both'),
    chain: fc.constantFrom('40', '428', '08B', undefined),
    teeth: fc.constantFrom(30, 50, undefined),
    torque: fc.constantFrom(50, 400, undefined),
    label: fc.constantFrom('CART', undefined),
  },
  { requiredKeys: ['bolts', 'boltCircle', 'hub'] },
);

describe('random adapter plates', () => {
  test('contours are valid, openings lie inside, figures are numbers, or a stop says why', () => {
    let drawn = 0;
    fc.assert(
      fc.property(plates, (parameters) => {
        const { problems, findings, value } = run(parameters);
        for (const { says, title } of findings)
          expect(`${title} ${says}`).not.toMatch(/NaN|undefined|Infinity/);
        if (value === undefined) {
          expect(problems.length + findings.filter(({ level }) => level === 'stop').length).toBeGreaterThan(
            0,
          );
          return;
        }
        drawn += 1;
        const outline = outlineOf(value.part).contour;
        for (const { contour } of value.part.features.filter(isCut)) expect(findFaults(contour)).toEqual([]);
        const stopped = findings.some(({ level }) => level === 'stop');
        if (!stopped) {
          for (const { contour } of value.part.features.filter(isOpening)) {
            expect(containsContour(outline, contour)).toBe(true);
          }
          expect(value.figures.pierces).toBe(value.part.features.filter(isCut).length);
        }
        expect(value.area).toBeGreaterThan(0);
        expect(Number.isFinite(value.mass + value.figures.length + value.figures.seconds.likely)).toBe(true);
      }),
      { numRuns: runs, seed: 20261125 },
    );
    expect(drawn / runs).toBeGreaterThan(0.6);
  });

  test('whatever is put in a field, reading answers and never throws', () => {
    const anything = fc.oneof(
      fc.string(),
      fc.double(),
      fc.constant(null),
      fc.array(fc.integer()),
      fc.object(),
    );
    const field = fc.constantFrom(
      'bolts',
      'boltCircle',
      'bolt',
      'holes',
      'hub',
      'pattern2',
      'thickness',
      'label',
      '__proto__',
    );
    fc.assert(
      fc.property(fc.dictionary(field, anything), (parameters) => {
        const { problems, value, findings } = run(parameters);
        expect(
          value !== undefined || problems.length > 0 || findings.some(({ level }) => level === 'stop'),
        ).toBe(true);
      }),
      { numRuns: runs * 2, seed: 20261125 },
    );
  });
});
