// Random pedal arms, valid and not: every drawn one is sound and says its numbers; nothing throws.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { containsContour, findFaults } from '../../parts-library/geometry/index.js';
import { runPart, startingShop } from '../../parts-library/job/index.js';
import { findFamily } from '../../parts-library/parts/index.js';
import { isCut, isOpening, outlineOf } from '../../parts-library/model/index.js';

const runs = process.env['FISHPLATE_LONG'] === '1' ? 2000 : 60;
const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
const run = (parameters: unknown) => runPart({ family: 'pedal-arm', parameters, unit: 'mm' }, startingShop);

const fields = [...(findFamily('pedal-arm')?.fields.map(({ path }) => path) ?? []), 'process'];

const pedals = fc.record(
  {
    use: fc.constantFrom('brake', 'throttle', 'clutch'),
    pivot: fc.constantFrom('welded', 'bushed'),
    tubeOutside: tenths(16, 45),
    tubeWall: tenths(2, 6),
    tubeLength: tenths(20, 90),
    bossEdge: tenths(8, 20),
    length: tenths(140, 320),
    profile: fc.constantFrom('straight', 'dog-leg'),
    kneeAlong: tenths(70, 110),
    kneeOff: tenths(-50, 50),
    kneeHeight: tenths(28, 50),
    headHeight: tenths(20, 36),
    fillet: tenths(5, 20),
    pad: fc.constantFrom('welded', 'folded', 'flat'),
    padLength: tenths(50, 100),
    padWidth: tenths(40, 80),
    dimples: fc.constantFrom('no', 'yes'),
    fold: fc.constantFrom('slots', 'scored'),
    weldedAfter: fc.constantFrom('yes', 'no'),
    jogOffset: tenths(5, 25),
    link: fc.constantFrom('rod', 'cable'),
    linkRadius: tenths(40, 75),
    linkAngle: fc.integer({ min: -180, max: 180 }),
    linkPin: tenths(5, 10),
    linkMade: fc.constantFrom('ream', 'drill', 'cut'),
    linkHoles: fc.integer({ min: 1, max: 3 }),
    anchorOff: tenths(-200, 200),
    travel: tenths(10, 60),
    freePlay: tenths(0, 3),
    restStop: fc.constantFrom('yes', 'no'),
    forwardStop: fc.integer({ min: 10, max: 70 }),
    stopOn: fc.constantFrom('arm', 'tab'),
    stopRadius: tenths(60, 85),
    springs: fc.integer({ min: 0, max: 2 }),
    thickness: fc.constantFrom('4', '6', '8', '3/8 in'),
    material: fc.constantFrom('S235', 'S355', 'A36', '6061-T6'),
    label: fc.constantFrom('CART', ''),
  },
  { requiredKeys: ['use', 'length'] },
);

describe('random pedal arms', () => {
  test('contours are valid, openings lie inside, figures are numbers, or a stop says why', () => {
    let drawn = 0;
    fc.assert(
      fc.property(pedals, (parameters) => {
        const { problems, findings, value } = run(parameters);
        expect(problems).toEqual([]);
        for (const { says, title, formula = '' } of findings) {
          expect(`${title} ${says} ${formula}`).not.toMatch(/NaN|undefined|Infinity/);
        }
        for (const { field = 'process' } of findings) expect(fields).toContain(field);
        if (value === undefined) {
          expect(findings.some(({ level, field }) => level === 'stop' && field !== undefined)).toBe(true);
          return;
        }
        drawn += 1;
        const { dimensions, ghosts, derived, steps, hardware, part } = value;
        expect(JSON.stringify([dimensions, ghosts, derived, steps, hardware])).not.toMatch(
          /null|NaN|undefined/,
        );
        const outline = outlineOf(part).contour;
        for (const { contour } of part.features.filter(isCut)) expect(findFaults(contour)).toEqual([]);
        if (findings.some(({ level }) => level === 'stop')) return;
        for (const { contour } of part.features.filter(isOpening)) {
          expect(containsContour(outline, contour)).toBe(true);
        }
      }),
      { numRuns: runs, seed: 20261125 },
    );
    expect(drawn / runs).toBeGreaterThan(0.8);
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
      'use',
      'length',
      'kneeOff',
      'linkAngle',
      'travel',
      'pad',
      'springs',
      'stopScrew',
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

  test('at the ends of every range of numbers: drawn or refused with a field, never thrown', () => {
    const extremes = fc.dictionary(
      fc.constantFrom(
        'tubeOutside',
        'bossEdge',
        'length',
        'kneeAlong',
        'kneeOff',
        'headHeight',
        'fillet',
        'padLength',
        'padWidth',
        'linkRadius',
        'linkPin',
        'anchorAlong',
        'anchorOff',
        'travel',
        'stopRadius',
        'springAt',
        'jogOffset',
      ),
      fc.constantFrom(5, 8, 15, 30, 60, 80, 150, 200),
    );
    fc.assert(
      fc.property(
        extremes,
        fc.constantFrom('welded', 'folded', 'flat'),
        fc.constantFrom('arm', 'tab'),
        (sizes, pad, stopOn) => {
          const { problems, value, findings } = run({ ...sizes, pad, stopOn });
          for (const { says, title, formula = '' } of findings) {
            expect(`${title} ${says} ${formula}`).not.toMatch(/NaN|undefined|Infinity/);
          }
          if (value !== undefined || problems.length > 0) return;
          expect(findings.some(({ level, field }) => level === 'stop' && field !== undefined)).toBe(true);
        },
      ),
      { numRuns: runs * 2, seed: 20261126 },
    );
  });
});
