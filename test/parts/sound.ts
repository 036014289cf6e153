// What holds of any random part of a family: sound contours, openings inside or a stop that says why, no nonsense in words.
import fc from 'fast-check';
import { expect } from 'vitest';
import { containsContour, findFaults } from '../../parts-library/geometry/index.js';
import { runPart, startingShop, type PartRun } from '../../parts-library/job/index.js';
import { isCut, isOpening, outlineOf, type Finding, type Part } from '../../parts-library/model/index.js';

type Parameters = Readonly<Record<string, unknown>>;

/** Runs, findings and the part of one family. */
export function familyOf(family: string) {
  const run = (parameters: Parameters = {}, unit: 'mm' | 'in' = 'mm', kerf = 1.6): PartRun =>
    runPart({ family, parameters, unit, process: { kerf } }, startingShop);
  const part = (parameters: Parameters = {}): Part => {
    const { value, findings, problems } = run(parameters);
    if (value === undefined)
      throw new Error([...problems.map(({ says }) => says), ...findings.map(({ says }) => says)].join(' '));
    return value.part;
  };
  const finding = (parameters: Parameters, code: string, field?: string): Finding => {
    const found = run(parameters).findings.find(
      (one) => one.code === code && (field === undefined || one.field === field),
    );
    if (found === undefined) throw new Error(`No finding "${code}".`);
    return found;
  };
  const opening = (parameters: Parameters, id: string) => {
    const feature = part(parameters)
      .features.filter(isCut)
      .find((one) => one.id === id);
    if (feature === undefined) throw new Error(`No opening "${id}".`);
    return feature;
  };
  /** The stop that says why nothing was drawn, and its field. */
  const refused = (parameters: Parameters) => {
    const { value, findings } = run(parameters);
    const stop = findings.find(({ level }) => level === 'stop');
    return { drawn: value !== undefined, field: stop?.field, says: stop?.says };
  };
  return { run, part, finding, opening, refused };
}

const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
export const sizes = tenths;

const LONG = process.env['FISHPLATE_LONG'] === '1';

/** Draws a family at random and says which share was drawn. */
export function drawAtRandom(family: string, parameters: fc.Arbitrary<Parameters>, runs = 60): number {
  const count = LONG ? runs * 20 : runs;
  const { run } = familyOf(family);
  let drawn = 0;
  fc.assert(
    fc.property(parameters, (chosen) => {
      const { problems, findings, value } = run(chosen);
      const stopped = findings.some(({ level }) => level === 'stop');
      for (const { title, says, formula = '' } of findings)
        expect(`${title} ${says} ${formula}`).not.toMatch(/NaN|undefined|Infinity|\[object/);
      if (value === undefined) {
        expect(problems.length > 0 || stopped).toBe(true);
        return;
      }
      drawn += 1;
      for (const { contour } of value.part.features.filter(isCut)) expect(findFaults(contour)).toEqual([]);
      const outline = outlineOf(value.part).contour;
      for (const { contour } of value.part.features.filter(isOpening))
        expect(containsContour(outline, contour)).toBe(true);
      const words = [
        ...value.dimensions.map(({ text }) => text),
        ...value.derived.map(({ text }) => text),
        ...value.steps.map(({ says }) => says),
        ...value.hardware.map(({ name, says = '' }) => `${name} ${says}`),
      ].join(' ');
      expect(words).not.toMatch(/NaN|undefined|Infinity|\[object/);
      expect(Number.isFinite(value.area + value.mass + value.figures.length)).toBe(true);
      expect(new Set(value.part.features.map(({ id }) => id)).size).toBe(value.part.features.length);
    }),
    { numRuns: count, seed: 20261125 },
  );
  return drawn / count;
}

/** Puts anything into the named fields: it is read, refused with a field, or stopped; it never throws. */
export function takeAnything(family: string, fields: readonly string[], runs = 60): void {
  const { run } = familyOf(family);
  const anything = fc.oneof(
    fc.string(),
    fc.double(),
    fc.constant(null),
    fc.array(fc.integer()),
    fc.object(),
    fc.constantFrom('0', '-1', '1e9', '3/8 in', 'none', '∞'),
  );
  fc.assert(
    fc.property(fc.dictionary(fc.constantFrom(...fields, '__proto__'), anything), (parameters) => {
      const { problems, value, findings } = run(parameters);
      const stopped = findings.some(({ level }) => level === 'stop');
      expect(value !== undefined || problems.length > 0 || stopped).toBe(true);
    }),
    { numRuns: LONG ? runs * 20 : runs, seed: 20261125 },
  );
}
