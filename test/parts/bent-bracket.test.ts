// The bent bracket: flat length, bend line, holes clear of the bend; and one contract for two unlike families.
import { describe, expect, test } from 'vitest';
import { boundsOf, isCircle } from '../../parts-library/geometry/index.js';
import { partFiles, runPart, startingShop, summarise } from '../../parts-library/job/index.js';
import { isLine, isOpening, outlineOf } from '../../parts-library/model/index.js';
import { listFamilies } from '../../parts-library/parts/index.js';

const bracket = (parameters: Readonly<Record<string, unknown>>) =>
  runPart({ family: 'bent-bracket', parameters, unit: 'mm' }, startingShop);

/** Bend in 3 mm plate, inside radius 3, K 0.4. */
const MOTOR_BRACKET = {
  legA: 50,
  legB: 40,
  width: 40,
  radius: 3,
  thickness: 3,
  kFactor: 0.4,
  bolt: 'M5',
  holeA: 15,
  holeB: 12,
};

describe('bent bracket', () => {
  test('legs of 50 and 40 outside in 3 mm, R 3, K 0.4 are 84.597 flat', () => {
    // Bend allowance BA = (π/180) A (R + K T) = 6.597, setback 6 (US Navy sheet-metal course, published): 90 − 12 + 6.597.
    const { value } = bracket(MOTOR_BRACKET);
    const { minX, maxX } = boundsOf(outlineOf(value?.part ?? raise()).contour);
    expect(maxX - minX).toBeCloseTo(84.597, 3);
  });

  test('the bend line stands in the middle of the bent zone: 50 − 6 + 6.597 / 2', () => {
    const bend = (bracket(MOTOR_BRACKET).value?.part ?? raise()).features.find(({ id }) => id === 'bend');
    expect(bend !== undefined && isLine(bend) ? bend.path.vertices[0]?.x : undefined).toBeCloseTo(47.2987, 3);
    expect(bend).toMatchObject({ purpose: 'score', bend: { degrees: 90, radius: 3, direction: 'up' } });
  });

  test('holes keep their distance from their own end', () => {
    const part = bracket(MOTOR_BRACKET).value?.part ?? raise();
    const xs = part.features.filter(isOpening).map(({ contour }) => isCircle(contour)?.centre.x);
    expect(xs[0]).toBeCloseTo(15, 9);
    expect(xs[1]).toBeCloseTo(84.5973 - 12, 3);
  });

  test('a hole nearer to the bend than 2.5 T + R is a caution, one in the bend a stop', () => {
    // Published rules run 2 T, 2.5 T + R, 3 T + R; the middle one is taken: 10.5 mm.
    const level = (holeA: number) =>
      bracket({ ...MOTOR_BRACKET, holeA }).findings.find(
        ({ code, subject }) => code === 'hole-to-bend' && subject.featureId === 'legA.hole',
      );
    expect(level(15)).toMatchObject({ level: 'pass', limit: { amount: 10.5 } });
    expect(level(35)).toMatchObject({ level: 'caution' });
    expect(level(43)).toMatchObject({ level: 'stop' });
  });

  test.each([
    ['0.6', 'K factor is 0.6 ("0.6"); accepted is 0.25 to 0.5.'],
    ['soft', 'K factor is "soft", which is not a number. Accepted: a decimal number, 0.25 to 0.5.'],
  ])('a K factor of %s is told with its bounds', (kFactor, says) => {
    expect(bracket({ ...MOTOR_BRACKET, kFactor }).problems).toEqual([{ field: 'kFactor', says }]);
  });

  test('a leg that the bend eats up names the leg', () => {
    const { findings, value } = bracket({ ...MOTOR_BRACKET, legB: 10, radius: 12 });
    expect(value).toBeUndefined();
    expect(findings[0]).toMatchObject({ level: 'stop', field: 'legB' });
  });
});

describe('one contract for every family', () => {
  test.each(listFamilies().map((family) => [family.id, family] as const))(
    '%s at its defaults: drawn, checked, planned, dimensioned and written without code of its own',
    (id, family) => {
      const run = runPart({ family: id, parameters: {}, unit: 'mm' }, startingShop);
      expect(run.problems).toEqual([]);
      expect(run.findings.filter(({ level }) => level === 'stop')).toEqual([]);
      const value = run.value ?? raise();
      const fields = new Set(family.fields.map(({ path }) => path));
      const edited = value.dimensions.flatMap(({ field }) => field ?? []);
      expect(edited.length).toBeGreaterThan(3);
      for (const field of edited) expect(fields).toContain(field);
      // Findings name a parameter, or what was chosen about the process.
      for (const { field = 'process' } of run.findings) expect([...fields, 'process']).toContain(field);
      const ids = value.part.features.map((feature) => feature.id);
      expect(new Set(ids).size).toBe(ids.length);
      const files = partFiles(run, {});
      expect(files.ok ? files.files.map(({ name }) => name) : files).toEqual([
        `${id}.finished.dxf`,
        `${id}.cut.dxf`,
        `${id}.finished.svg`,
        `${id}.cut.svg`,
        `${id}.print.svg`,
      ]);
      expect(JSON.stringify(summarise(run))).not.toMatch(/null|NaN/);
    },
  );

  test.each(listFamilies())('$id: what was read reads back the same, in either unit', (family) => {
    const first = family.read({}, 'mm');
    if (!first.ok) throw new Error(first.problems[0]?.says);
    const again = family.read(first.value.parameters, 'in');
    if (!again.ok) throw new Error(again.problems[0]?.says);
    expect(again.value.parameters).toEqual(first.value.parameters);
  });

  test.each(listFamilies())('$id: every field has a title, help, a group and a schema entry', (family) => {
    const { properties } = family.inputSchema();
    for (const { path, title, help, group } of family.fields) {
      expect([title, help, group].every((words) => words.length > 0)).toBe(true);
      expect(properties).toHaveProperty(path.split('.')[0] ?? '');
    }
  });
});

function raise(): never {
  throw new Error('The part was not drawn.');
}
