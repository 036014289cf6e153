// Shorthands for tests of families that are welded by an edge: one run, one finding, and what holds of every run.
import fc from 'fast-check';
import { expect } from 'vitest';
import { containsContour, findFaults, type Contour } from '../../parts-library/geometry/index.js';
import { runPart, startingShop, type PartRun } from '../../parts-library/job/index.js';
import { isCut, isOpening, outlineOf, type Finding, type Part } from '../../parts-library/model/index.js';

export type Given = Readonly<Record<string, unknown>>;

/** Random parts drawn in a test; more in a long run. */
export const numRuns = process.env['FISHPLATE_LONG'] === '1' ? 2000 : 60;

export const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((n) => n / 10);

/** One family's runs, findings and parts. */
export function bench(family: string, unit: 'mm' | 'in' = 'mm') {
  const run = (parameters: Given): PartRun => runPart({ family, parameters, unit }, startingShop);
  const finding = (parameters: Given, code: string): Finding => {
    const found = run(parameters).findings.find((one) => one.code === code);
    if (found === undefined) throw new Error(`No finding "${code}".`);
    return found;
  };
  const part = (parameters: Given): Part => {
    const { value, findings, problems } = run(parameters);
    if (value === undefined)
      throw new Error([...problems, ...findings].map(({ says }) => says).join(' ') || 'Nothing was drawn.');
    return value.part;
  };
  const outline = (parameters: Given): Contour => outlineOf(part(parameters)).contour;
  return { run, finding, part, outline };
}

/** What holds of every run: words without gaps, and a sound part or a reason why there is none. */
export function expectSound({ problems, findings, value }: PartRun): 'drawn' | 'refused' {
  for (const { title, says, formula = '' } of findings) {
    expect(`${title} ${says} ${formula}`).not.toMatch(/NaN|undefined|Infinity/);
  }
  const stopped = findings.some(({ level }) => level === 'stop');
  if (value === undefined) {
    expect(problems.length > 0 || stopped).toBe(true);
    return 'refused';
  }
  const { contour } = outlineOf(value.part);
  for (const cut of value.part.features.filter(isCut)) expect(findFaults(cut.contour)).toEqual([]);
  if (!stopped) {
    for (const opening of value.part.features.filter(isOpening)) {
      expect(containsContour(contour, opening.contour)).toBe(true);
    }
  }
  const words = JSON.stringify([value.dimensions, value.derived, value.steps, value.hardware]);
  expect(words).not.toMatch(/NaN|undefined|Infinity|null/);
  return 'drawn';
}

/** Whatever is put in the fields named, a run answers. */
export function expectAnswers(family: string, fields: readonly string[]): void {
  const anything = fc.oneof(
    fc.string(),
    fc.double(),
    fc.constant(null),
    fc.array(fc.integer()),
    fc.object(),
    fc.constant('1e9'),
    fc.constant(-5),
  );
  fc.assert(
    fc.property(fc.dictionary(fc.constantFrom(...fields, '__proto__'), anything), (parameters) => {
      expectSound(runPart({ family, parameters, unit: 'mm' }, startingShop));
    }),
    { numRuns, seed: 20261125 },
  );
}
