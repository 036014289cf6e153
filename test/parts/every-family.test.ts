// Every family at random parameters: valid ones give sound parts that can be cut, written and printed, or say why not;
// invalid ones name a field; nothing throws.
import fc from 'fast-check';
import Parser from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { checkFitness, drawPrint } from '../../parts-library/drawing/index.js';
import { containsContour, findFaults } from '../../parts-library/geometry/index.js';
import { partFiles, printOf, runPart, startingShop, type PartRun } from '../../parts-library/job/index.js';
import { isCut, isOpening, outlineOf } from '../../parts-library/model/index.js';
import { listFamilies, type Family } from '../../parts-library/parts/index.js';
import { optionsOf, parametersOf, usedIn, type Drawn } from './random-parameters.js';

const isLong = process.env['FISHPLATE_LONG'] === '1';
/** Parameter sets of each family: 2,000, of which ordinary runs take a seeded tenth. */
const RUNS = isLong ? 2000 : 200;
/** Every so many of them the files are written and parsed and the print is drawn. */
const FILES_EVERY = isLong ? 4 : 20;
const SEED = 20261125;

const run = (family: Family, parameters: unknown): PartRun =>
  runPart({ family: family.id, parameters, unit: 'mm' }, startingShop);

/** Runs a parameter set; what a refusal asks for by name and was left out is then given, as a person would. */
function runAsked(
  family: Family,
  { given, spare }: Drawn,
): { readonly parameters: Drawn['given']; readonly result: PartRun } {
  const result = run(family, given);
  const asked = result.findings.find(({ level, stage }) => level === 'stop' && stage === 'draw')?.field;
  const answer = asked === undefined ? undefined : spare[asked];
  if (result.value !== undefined || asked === undefined || answer === undefined)
    return { parameters: given, result };
  const parameters = { ...given, [asked]: answer };
  return { parameters, result: run(family, parameters) };
}

/** What a sound run keeps to, whatever the family. */
function expectSound(result: PartRun): void {
  for (const { title, says, formula = '' } of result.findings) {
    expect(`${title} ${says} ${formula}`).not.toMatch(/NaN|undefined|Infinity|\[object/);
  }
  const { value } = result;
  if (value === undefined) return;
  const stopped = result.findings.some(({ level }) => level === 'stop');
  const outline = outlineOf(value.part).contour;
  for (const { contour } of value.part.features.filter(isCut)) expect(findFaults(contour)).toEqual([]);
  if (!stopped) {
    for (const { contour } of value.part.features.filter(isOpening)) {
      expect(containsContour(outline, contour)).toBe(true);
    }
    // Every contour has its compensated path: offsets succeeded.
    const planned = new Set(value.plan.contours.map(({ featureId }) => featureId));
    for (const { id } of value.part.features.filter(isCut)) expect(planned).toContain(id);
  }
  expect(value.area).toBeGreaterThan(0);
  expect(Number.isFinite(value.mass + value.figures.length + value.figures.seconds.likely)).toBe(true);
  const words = [
    ...value.dimensions.map(({ text }) => text),
    ...value.derived.map(({ title, text }) => `${title} ${text}`),
    ...value.steps.map(({ says }) => says),
    ...value.hardware.map(({ name, says = '' }) => `${name} ${says}`),
  ].join('\n');
  expect(words).not.toMatch(/NaN|undefined|Infinity|\[object/);
}

function expectWritten(result: PartRun): void {
  const made = partFiles(result, { despiteFindings: true });
  if (!made.ok) return;
  for (const { mediaType, text } of made.files) {
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
    if (mediaType === 'image/vnd.dxf')
      expect(new Parser().parseSync(text)?.entities.length).toBeGreaterThan(0);
  }
  expect(printOf(result)).toBeDefined();
  const { part, dimensions, ghosts } = result.value ?? {};
  if (part === undefined || dimensions === undefined || ghosts === undefined) return;
  const list = drawPrint({
    part,
    dimensions,
    ghosts,
    findings: result.findings,
    size: { width: 810, height: 670 },
    frame: 'drawing',
    unit: 'mm',
  });
  expect(checkFitness(list)).toEqual([]);
}

describe.each(listFamilies())('$id', (family) => {
  test('at random valid parameters: sound, can be cut, written and printed, or says why not', () => {
    let accepted = 0;
    let count = 0;
    const used = new Map<string, number>();
    fc.assert(
      fc.property(parametersOf(family), (drawn) => {
        count += 1;
        const { parameters, result } = runAsked(family, drawn);
        expect(result.problems).toEqual([]);
        expectSound(result);
        if (result.value === undefined) {
          const stops = result.findings.filter(({ level }) => level === 'stop');
          expect(stops.length).toBeGreaterThan(0);
          return;
        }
        accepted += 1;
        for (const option of usedIn(parameters)) used.set(option, (used.get(option) ?? 0) + 1);
        if (count % FILES_EVERY === 0) expectWritten(result);
      }),
      { numRuns: RUNS, seed: SEED },
    );
    expect(accepted / RUNS).toBeGreaterThanOrEqual(0.8);
    const seldom = optionsOf(family).filter((option) => (used.get(option) ?? 0) / accepted < 0.05);
    expect(seldom).toEqual([]);
  });

  test('at invalid parameters: each field refuses what lies outside its bounds, by its own name', () => {
    for (const { path, kind, min, max, choices } of family.fields) {
      if (path.includes('.') || kind === 'group' || kind === 'text') continue;
      const wrong: unknown[] = [{}, [], null, 'no such thing'];
      if (min !== undefined && min > -1e6 && kind !== 'measure' && kind !== 'holes' && kind !== 'lengths')
        wrong.push(min - Math.max(1, Math.abs(min)));
      if (max !== undefined && kind !== 'measure' && kind !== 'lengths') wrong.push(max * 10 + 1);
      if (choices !== undefined) wrong.push(3);
      for (const value of wrong) {
        const { problems } = run(family, { [path]: value });
        expect(
          problems.map(({ field }) => field),
          `${path} = ${JSON.stringify(value)}`,
        ).toContain(path);
        for (const { says } of problems) expect(says.length).toBeGreaterThan(10);
      }
    }
  });

  test('whatever is put in any field, it answers and never throws', () => {
    const anything = fc.oneof(
      fc.string(),
      fc.double(),
      fc.constant(null),
      fc.array(fc.integer()),
      fc.constantFrom('0', '-1', '1e9', '1/0', '9999999', '0.0000001', 'circle 1', '5 ±900'),
    );
    const names = fc.constantFrom(
      ...family.fields.map(({ path }) => path).filter((path) => !path.includes('.')),
      '__proto__',
    );
    fc.assert(
      fc.property(fc.dictionary(names, anything), (parameters) => {
        const result = run(family, parameters);
        const isAnswered =
          result.value !== undefined ||
          result.problems.length > 0 ||
          result.findings.some(({ level }) => level === 'stop');
        expect(isAnswered).toBe(true);
        for (const { field } of result.problems) expect(field.length).toBeGreaterThan(0);
        expectSound(result);
      }),
      { numRuns: RUNS, seed: SEED },
    );
  });
});
