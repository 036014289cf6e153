// Canonical JSON, digests, and what hangs on them: nests that go stale and overrides that lapse.
import { createHash } from 'node:crypto';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circleContour } from '../../parts-library/geometry/index.js';
import {
  applyChange,
  canonicalJson,
  digestOf,
  findingDigest,
  isOverridden,
  isStale,
  lapsedOverrides,
  makeNest,
  nestInputsOf,
  openJob,
  overrideFinding,
} from '../../parts-library/job/index.js';
import type { Finding, Part } from '../../parts-library/model/index.js';
import { exampleJob } from './example-job.js';

describe('canonical JSON', () => {
  it('sorts names by code unit and writes numbers as ECMAScript does', () => {
    // RFC 8785, section 3.2.2 and appendix B: the number samples of the specification.
    expect(
      canonicalJson({ numbers: [333333333.3333333, 1e30, 4.5, 2e-3, 1e-27], literals: [null, true, false] }),
    ).toBe('{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27]}');
  });

  it('sorts as RFC 8785 section 3.2.3 shows', () => {
    const value = {
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '\ud83d\ude00': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
    };
    expect([...canonicalJson(value).matchAll(/:"([^"]+)"/g)].map(([, word]) => word)).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });

  it('reads back as the same value', () => {
    fc.assert(
      fc.property(fc.jsonValue({ noUnicodeString: false }), (value) => {
        expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });

  it('refuses what JSON does not have', () => {
    expect(() => canonicalJson({ a: Number.NaN })).toThrow(TypeError);
    expect(() => canonicalJson({ a: () => 1 })).toThrow(TypeError);
  });
});

describe('the digest', () => {
  it('is SHA-256 of the canonical text, as another implementation computes it', () => {
    // FIPS 180-4: the digest of the two characters {} is well known.
    expect(digestOf({})).toBe('44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a');
    const value = { text: 'Ø 57.15 ±0.1', list: [1, 2.5] };
    expect(digestOf(value)).toBe(createHash('sha256').update(canonicalJson(value), 'utf8').digest('hex'));
  });

  it('does not depend on the order of names, but on every value', () => {
    expect(digestOf({ a: 1, b: 2 })).toBe(digestOf({ b: 2, a: 1 }));
    expect(digestOf({ a: 1, b: 2 })).not.toBe(digestOf({ a: 1, b: 2.0000001 }));
    expect(digestOf([1, 2])).not.toBe(digestOf([2, 1]));
  });
});

const disc = (radius: number, over: Partial<Part> = {}): Part => ({
  family: 'disc',
  name: 'Disc',
  features: [
    {
      id: 'outline',
      name: 'outside',
      purpose: 'outline',
      contour: circleContour({ x: 0, y: 0 }, radius, 'outline'),
    },
  ],
  material: 'S275',
  thickness: 6,
  quantity: 1,
  ...over,
});

describe('a nest of one', () => {
  it('lies at the origin, not turned, and fits into a job', () => {
    const nest = makeNest('adapter', disc(75));
    expect(nest.placements).toEqual([
      {
        id: 'adapter.0',
        rowId: 'adapter',
        copy: 0,
        at: { x: 0, y: 0 },
        turnDegrees: 0,
        mirrored: false,
        locked: false,
      },
    ]);
    expect(openJob({ ...exampleJob, nests: [nest] }).ok).toBe(true);
  });

  it('is stale when size, thickness or material changed, and not when the name did', () => {
    const nest = makeNest('adapter', disc(75));
    expect(isStale(nest, nestInputsOf(disc(75)))).toBe(false);
    expect(isStale(nest, nestInputsOf(disc(75, { name: 'Other', quantity: 9 })))).toBe(false);
    expect(isStale(nest, nestInputsOf(disc(75.001)))).toBe(true);
    expect(isStale(nest, nestInputsOf(disc(75, { thickness: 8 })))).toBe(true);
    expect(isStale(nest, nestInputsOf(disc(75, { material: 'S355' })))).toBe(true);
  });
});

const finding: Finding = {
  code: 'edge-distance',
  level: 'stop',
  stage: 'check',
  subject: { rowId: 'adapter', featureId: 'pattern1.hole.1' },
  title: 'Edge distance 12 mm, 15 wanted',
  says: 'Too near the edge.',
  value: { amount: 12, unit: 'mm' },
  limit: { amount: 15, unit: 'mm' },
  source: { title: 'EN 1993-1-8', where: 'Table 3.3', certainty: 'published' },
};

describe('an override', () => {
  const applied = applyChange(
    exampleJob,
    overrideFinding(finding, { reason: 'Trial fit', date: '2024-05-04' }),
  );
  const job = applied.ok ? applied.job : exampleJob;

  it('is stored with its reason and counts for that finding', () => {
    expect(applied.ok).toBe(true);
    expect(job.overrides.at(-1)).toMatchObject({
      code: 'edge-distance',
      reason: 'Trial fit',
      date: '2024-05-04',
    });
    expect(isOverridden(finding, job.overrides)).toBe(true);
  });

  it('still counts when only the words changed', () => {
    expect(
      isOverridden({ ...finding, title: 'Edge distance 0.472 in', says: 'Zu nah.' }, job.overrides),
    ).toBe(true);
  });

  it('lapses when the number, the limit or the hole changed', () => {
    const other: readonly Finding[] = [
      { ...finding, value: { amount: 11, unit: 'mm' } },
      { ...finding, limit: { amount: 16, unit: 'mm' } },
      { ...finding, subject: { rowId: 'adapter', featureId: 'pattern1.hole.2' } },
    ];
    for (const one of other) expect(isOverridden(one, job.overrides)).toBe(false);
    expect(lapsedOverrides(job, [finding]).map((one) => one.reason)).toEqual(['Trial fit only']);
    expect(lapsedOverrides(job, other)).toHaveLength(2);
    expect(findingDigest(finding)).toMatch(/^[0-9a-f]{64}$/);
  });
});
