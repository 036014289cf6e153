// Opening jobs: today's version, an older one, a newer one, and everything that is no job.
import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson, createJob, openJob } from '../../parts-library/job/index.js';
import { exampleDocument, exampleJob } from './example-job.js';

const problemsOf = (input: unknown) => {
  const opened = openJob(input);
  return opened.ok ? [] : opened.problems;
};

/** The example with one place changed, or taken out by undefined. */
function spoil(path: readonly (string | number)[], value: unknown): unknown {
  const spoilIn = (at: unknown, [token, ...further]: readonly (string | number)[]): unknown => {
    if (token === undefined) return value;
    if (Array.isArray(at))
      return at.map((item: unknown, index) => (index === token ? spoilIn(item, further) : item));
    const members = Object.entries(typeof at === 'object' && at !== null ? at : {});
    const known = new Map<string, unknown>(members);
    return Object.fromEntries(known.set(String(token), spoilIn(known.get(String(token)), further)));
  };
  return spoilIn(exampleDocument(), path);
}

const withRow = (parameters: unknown): unknown => ({
  ...exampleDocument(),
  rows: [{ ...exampleJob.rows[0], parameters }],
});

function nested(depth: number): unknown {
  let value: unknown = 1;
  for (let level = 0; level < depth; level += 1) value = { deeper: value };
  return value;
}

describe('a job of this version', () => {
  it('opens as itself', () => {
    const opened = openJob(exampleDocument());
    expect(opened).toEqual({ ok: true, job: exampleJob });
  });

  it('shares nothing with what was opened', () => {
    const document = exampleDocument();
    const opened = openJob(document);
    document['name'] = 'changed behind its back';
    expect(opened.ok && opened.job.name).toBe('Orchard haul cart');
  });

  it('is made empty, and opens', () => {
    const job = createJob({ id: 'new', name: 'New', unit: 'in', computedWith: exampleJob.computedWith });
    expect(openJob(job)).toEqual({ ok: true, job });
    expect([job.revision, job.rows.length, job.unit]).toEqual([0, 0, 'in']);
  });
});

describe('a job of version 0', () => {
  const text = readFileSync(new URL('fixtures/job-version-0.json', import.meta.url), 'utf8');

  it('is migrated: units, cut list and counts find their new places', () => {
    const opened = openJob(JSON.parse(text));
    expect(opened.ok && opened.migratedFrom).toBe(0);
    expect(opened.ok && opened.job).toMatchObject({
      version: 1,
      id: 'orchard-cart',
      revision: 3,
      unit: 'in',
      rows: [
        { id: 'adapter', quantity: 2, parameters: { bolts: 5, boltCircle: 'circle 95 mm' } },
        { id: 'bracket', quantity: 1 },
      ],
      kits: [],
      nests: [],
      overrides: [],
    });
  });

  it('opens again as version 1 once migrated', () => {
    const opened = openJob(JSON.parse(text));
    expect(opened.ok && openJob(opened.job)).toEqual({ ok: true, job: opened.ok && opened.job });
  });

  it('still has to be right', () => {
    const broken: unknown = JSON.parse(text.replace('"in"', '"furlongs"'));
    const [problem] = problemsOf(broken);
    expect(problem?.path).toBe('/unit');
    expect(problem?.says).toContain('"furlongs"');
  });
});

describe('a job of a newer version', () => {
  it('is refused untouched, and the message says what to do', () => {
    const newer = Object.freeze({ ...exampleDocument(), version: 2, surprise: true });
    const before = canonicalJson(newer);
    const [problem] = problemsOf(newer);
    expect(problem?.path).toBe('/version');
    expect(problem?.says).toContain('version 2');
    expect(problem?.says).toContain('newer program');
    expect(canonicalJson(newer)).toBe(before);
  });
});

describe('what is wrong is named with its place, what stands there and what is accepted', () => {
  it.each([
    [['name'], undefined, '/name', 'missing'],
    [['name'], '', '/name', '""'],
    [['unit'], 'cm', '/unit', '"mm"'],
    [['revision'], -1, '/revision', '-1'],
    [['revision'], 1.5, '/revision', '1.5'],
    [['id'], '../escape', '/id', 'letters'],
    [['version'], '1', '/version', '"1"'],
    [['version'], -1, '/version', '-1'],
    [['rows'], {}, '/rows', '{}'],
    [['rows', 0, 'quantity'], 0, '/rows/0/quantity', '0'],
    [['rows', 0, 'quantity'], '2', '/rows/0/quantity', '"2"'],
    [['rows', 0, 'parameters'], [], '/rows/0/parameters', '[]'],
    [['rows', 1, 'id'], 'adapter', '/rows/1/id', 'twice'],
    [['rows', 1, 'kitId'], 'gone', '/rows/1/kitId', 'no kit "gone"'],
    [['rows', 0, 'colour'], 'red', '/rows/0', '"colour"'],
    [['plates', 0, 'thickness'], 0, '/plates/0/thickness', '0'],
    [['plates', 0, 'outline', 1, 'bulge'], 2, '/plates/0/outline/1/bulge', '2'],
    [['nests', 0, 'inputs'], 'abc', '/nests/0/inputs', 'SHA-256'],
    [['choices', 'process', 0, 'kerf'], -1, '/choices/process/0/kerf', '-1'],
    [['overrides', 0, 'reason'], '', '/overrides/0/reason', 'why'],
    [['computedWith', 'lanes'], 0, '/computedWith/lanes', '0'],
    [['format'], 'something-else', '/format', 'fishplate-job'],
  ])('%j = %j', (path, value, where, word) => {
    const problems = problemsOf(spoil(path, value));
    expect(problems.map((one) => one.path)).toContain(where);
    expect(problems.find((one) => one.path === where)?.says).toContain(word);
  });
});

describe('hostile input is refused before anything reads it', () => {
  it.each([
    ['nothing', undefined, ''],
    ['null', null, '/format'],
    ['a list', [exampleJob], '/format'],
    ['a text', '{"format":"fishplate-job"}', '/format'],
    ['not a number', withRow({ width: Number.NaN }), '/rows/0/parameters/width'],
    ['infinity', withRow({ width: Number.POSITIVE_INFINITY }), '/rows/0/parameters/width'],
    ['a function', withRow({ width: () => 1 }), '/rows/0/parameters/width'],
    ['a date', withRow({ day: new Date(0) }), '/rows/0/parameters/day'],
    ['a prototype', JSON.parse('{"format":"fishplate-job","__proto__":{"polluted":true}}'), '/__proto__'],
    ['a constructor', withRow({ constructor: { prototype: {} } }), '/rows/0/parameters/constructor'],
    ['a very long text', withRow({ label: 'x'.repeat(100_001) }), '/rows/0/parameters/label'],
  ])('%s', (_, input, where) => {
    expect(problemsOf(input)[0]?.path).toBe(where);
  });

  it('ten thousand levels deep', () => {
    expect(problemsOf(withRow(nested(10_000)))[0]?.says).toContain('deeper than');
  });

  it('a quarter of a million values', () => {
    expect(problemsOf(withRow({ list: Array.from({ length: 250_000 }, () => 0) }))[0]?.says).toContain(
      'values',
    );
  });

  it('leaves no mark on the prototype of objects', () => {
    openJob(JSON.parse('{"__proto__":{"polluted":true}}'));
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  it('any JSON at all gives an answer and never throws', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(openJob(value).ok).toBe(false);
      }),
    );
  });

  it('a job with any one member replaced by any JSON opens or is refused, never throws', () => {
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(exampleJob)), fc.jsonValue(), (name, value) => {
        const opened = openJob({ ...exampleDocument(), [name]: value });
        expect(opened.ok ? opened.job.format : opened.problems.length > 0).toBeTruthy();
      }),
    );
  });
});
