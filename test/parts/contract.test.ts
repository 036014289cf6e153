// One contract for every family: drawn, checked, planned, dimensioned and written without code of its own.
import { describe, expect, test } from 'vitest';
import { partFiles, runPart, startingShop, summarise } from '../../parts-library/job/index.js';
import { listFamilies } from '../../parts-library/parts/index.js';

function raise(): never {
  throw new Error('The part was not drawn.');
}

/** Codes of the stops that stand at a family's defaults. */
const WITHHELD_BY_DEFAULT: ReadonlySet<string> = new Set(['machined-blank']);

describe('one contract for every family', () => {
  test.each(listFamilies().map((family) => [family.id, family] as const))(
    '%s at its defaults: drawn, checked, planned, dimensioned and written without code of its own',
    (id, family) => {
      const run = runPart({ family: id, parameters: {}, unit: 'mm' }, startingShop);
      expect(run.problems).toEqual([]);
      // A part that can lose a wheel is withheld until somebody takes it on; every other one is free of stops.
      const stops = run.findings.filter(({ level }) => level === 'stop').map(({ code }) => code);
      expect(stops.filter((code) => !WITHHELD_BY_DEFAULT.has(code))).toEqual([]);
      const value = run.value ?? raise();
      const fields = new Set(family.fields.map(({ path }) => path));
      const edited = value.dimensions.flatMap(({ field }) => field ?? []);
      expect(edited.length).toBeGreaterThan(3);
      for (const field of edited) expect(fields).toContain(field);
      // Findings name a parameter, or what was chosen about the process.
      for (const { field = 'process' } of run.findings) expect([...fields, 'process']).toContain(field);
      const ids = value.part.features.map((feature) => feature.id);
      expect(new Set(ids).size).toBe(ids.length);
      const files = partFiles(run, { despiteFindings: true });
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
