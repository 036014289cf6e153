// Random sprockets and blanks, valid and not: every drawn one is sound and can be cut or says why; nothing throws.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { containsContour, findFaults } from '../../parts-library/geometry/index.js';
import { runPart, startingShop, type PartRun } from '../../parts-library/job/index.js';
import { isCut, isOpening, outlineOf } from '../../parts-library/model/index.js';
import { listChains } from '../../parts-library/handbook/index.js';

const runs = process.env['FISHPLATE_LONG'] === '1' ? 1500 : 60;
const SEED = 20261125;
const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);

const common = {
  chain: fc.constantFrom(...listChains().map(({ name }) => name)),
  teeth: fc.integer({ min: 9, max: 90 }),
  bolts: fc.integer({ min: 2, max: 12 }),
  boltCircle: tenths(20, 200).map((d) => `circle ${d}±0.1`),
  bolt: fc.constantFrom('M5', 'M8', 'M10', '3/8-16'),
  holes: fc.constantFrom('clearance', 'tapped', 'drill', '14'),
  bore: tenths(6, 80),
  thickness: fc.constantFrom('2.5', '4', '5', '1/4 in', '7', '10'),
  material: fc.constantFrom('S275', '304', '6061-T6'),
  rollerMeasured: tenths(4, 12),
  torque: fc.constantFrom(20, 300),
  label: fc.constantFrom('CART', undefined),
};

const sprockets = fc.record(
  {
    ...common,
    form: fc.constantFrom('ansi', 'iso', undefined),
    faces: fc.constantFrom('as-cut', 'chamfered', 'faced'),
    bolted: fc.constantFrom('yes', 'no'),
    middle: fc.constantFrom('bore', 'bored', 'keyed', 'hub', 'none'),
    hub: tenths(10, 70),
    shaft: tenths(8, 40),
    lightening: fc.constantFrom('none', 'windows', 'holes'),
    openings: fc.integer({ min: 3, max: 12 }),
    spoke: tenths(6, 30),
    holeSize: tenths(8, 40),
    openingsClocking: fc.integer({ min: -180, max: 180 }).map(String),
    otherTeeth: fc.integer({ min: 9, max: 60 }),
    centreDistance: tenths(100, 900),
  },
  { requiredKeys: ['chain', 'teeth'] },
);

const blanks = fc.record(
  {
    ...common,
    pilot: fc.constantFrom('bored', 'plain', 'none'),
    edge: tenths(6, 30),
    boltedBore: tenths(20, 120),
    standoff: tenths(2, 14),
  },
  { requiredKeys: ['chain', 'teeth'] },
);

const run = (family: string, parameters: object): PartRun =>
  runPart({ family, parameters, unit: 'mm' }, startingShop);

function expectSound({ problems, findings, value }: PartRun): boolean {
  for (const { says, title, formula = '' } of findings)
    expect(`${title} ${says} ${formula}`).not.toMatch(/NaN|undefined|Infinity/);
  const stopped = findings.some(({ level }) => level === 'stop');
  if (value === undefined) {
    expect(problems.length > 0 || stopped).toBe(true);
    return false;
  }
  const outline = outlineOf(value.part).contour;
  for (const { contour } of value.part.features.filter(isCut)) expect(findFaults(contour)).toEqual([]);
  if (!stopped) {
    for (const { contour } of value.part.features.filter(isOpening))
      expect(containsContour(outline, contour)).toBe(true);
    expect(value.figures.pierces).toBe(value.part.features.filter(isCut).length);
  }
  const words = [
    ...value.dimensions.map(({ text }) => text),
    ...value.derived.map(({ text }) => text),
    ...value.steps.map(({ says }) => says),
    ...value.hardware.map(({ name, says = '' }) => `${name} ${says}`),
  ].join('\n');
  expect(words).not.toMatch(/NaN|undefined|Infinity/);
  expect(value.area).toBeGreaterThan(0);
  return true;
}

describe.each([
  ['sprocket-plate', sprockets, 0.3],
  ['sprocket-blank', blanks, 0.5],
] as const)('random parts: %s', (family, parameters, least) => {
  test('contours are valid, openings lie inside, figures are numbers, or a stop says why', () => {
    let drawn = 0;
    fc.assert(
      fc.property(parameters, (one) => {
        if (expectSound(run(family, one))) drawn += 1;
      }),
      { numRuns: runs, seed: SEED },
    );
    expect(drawn / runs).toBeGreaterThan(least);
  });

  test('whatever is put in a field, it answers and never throws', () => {
    const anything = fc.oneof(
      fc.string(),
      fc.double(),
      fc.constant(null),
      fc.array(fc.integer()),
      fc.object(),
    );
    const field = fc.constantFrom(
      'chain',
      'teeth',
      'outside',
      'bore',
      'boltCircle',
      'spoke',
      'thickness',
      '__proto__',
    );
    fc.assert(
      fc.property(fc.dictionary(field, anything), (one) => {
        expectSound(run(family, one));
      }),
      { numRuns: runs * 2, seed: SEED },
    );
  });
});
