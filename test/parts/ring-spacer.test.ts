// Ring spacers: which rings fill a measured gap, and what remains.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { containsContour, findFaults, isCircle } from '../../parts-library/geometry/index.js';
import { runPart, startingShop, type PartRun } from '../../parts-library/job/index.js';
import { isCut, isMark, isOpening, outlineOf } from '../../parts-library/model/index.js';
import { bestStack } from '../../parts-library/parts/ring-spacer/stack.js';

const ring = (parameters: Readonly<Record<string, unknown>>, unit: 'mm' | 'in' = 'mm'): PartRun =>
  runPart({ family: 'ring-spacer', parameters, unit }, startingShop);

const finding = (run: PartRun, code: string) => run.findings.find((one) => one.code === code);
const derived = (run: PartRun, id: string) => run.value?.derived.find((one) => one.id === id);

describe('which rings fill the gap', () => {
  test('13.8 mm from plates of 6.05, 3.04 and 1.52: two and one, 0.18 remains', () => {
    // Worked by hand: 2 × 6.05 + 1.52 = 13.62; no two rings come within 0.25 of 13.8.
    const run = ring({});
    expect(derived(run, 'stack')?.value.amount).toBeCloseTo(13.62, 9);
    expect(derived(run, 'remains')?.value.amount).toBeCloseTo(0.18, 9);
    expect(derived(run, 'rings.6.05')?.value.amount).toBe(2);
    expect(derived(run, 'rings.1.52')?.value.amount).toBe(1);
    expect(finding(run, 'stack-remains')?.level).toBe('pass');
  });

  test('the closest stack takes more rings: 4 × 3.04 + 1.52 leaves 0.12, 6.05 + 2 × 3.04 + 1.52 leaves 0.15', () => {
    // Worked by hand over all stacks of up to six: 4 × 3.04 + 1.52 = 13.68 comes closest.
    const run = ring({ prefer: 'closest' });
    expect(derived(run, 'stack')?.value.amount).toBeCloseTo(13.68, 9);
    expect(finding(run, 'stack-many')?.level).toBe('note');
  });

  test('sums are exact: 0.1 and 0.2 fill 0.3 with nothing left', () => {
    const stack = bestStack({
      gap: 0.3,
      sheets: [
        { thickness: 0.1, most: 1 },
        { thickness: 0.2, most: 1 },
      ],
      leastPlay: 0,
      mostPlay: 0.05,
      mostRings: 6,
      prefer: 'closest',
    });
    expect(stack?.remains).toBe(0);
    expect(stack?.layers.map(({ sheet, count }) => [sheet.thickness, count])).toEqual([
      [0.2, 1],
      [0.1, 1],
    ]);
  });

  test('no more rings are taken of a plate than it gives, and a plate typed twice counts twice', () => {
    const run = ring({ gap: 12, plates: '3 ×2, 2 × 9' });
    expect(derived(run, 'rings.3')?.value.amount).toBe(2);
    expect(derived(run, 'rings.2')?.value.amount).toBe(3);
    expect(derived(ring({ gap: 12, plates: '3 ×2, 3 ×2' }), 'rings.3')?.value.amount).toBe(4);
  });

  test('play that must stay is kept: 12.5 less 0.5 is filled with two of 6, not with four of 3 and a shim', () => {
    const run = ring({ gap: '12.5', leastPlay: 0.5, mostPlay: 0.6, plates: '6, 3, 0.4' });
    expect(derived(run, 'remains')?.value.amount).toBeCloseTo(0.5, 9);
    expect(derived(run, 'rings.6')?.value.amount).toBe(2);
  });

  test('what is left over is a caution that names the plates, and says which plate would close it', () => {
    const { findings } = ring({ gap: 10, plates: '6' });
    expect(findings.find(({ code }) => code === 'stack-remains')).toMatchObject({
      level: 'caution',
      field: 'plates',
      value: { amount: 4 },
      formula: '10 − (1 × 6) = 10 − 6 = 4',
    });
  });

  test('every combination is weighed: no other count of rings comes closer', () => {
    const thickness = fc.integer({ min: 40, max: 900 }).map((n) => n / 100);
    fc.assert(
      fc.property(
        fc.array(thickness, { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 200, max: 2500 }).map((n) => n / 100),
        (sheets, gap) => {
          const stack = bestStack({
            gap,
            sheets: sheets.map((one) => ({ thickness: one })),
            leastPlay: 0,
            mostPlay: 0,
            mostRings: 5,
            prefer: 'closest',
          });
          const [a = 0, b = a, c = b] = sheets;
          let closest = Infinity;
          for (let i = 0; i <= 5; i++)
            for (let j = 0; i + j <= 5; j++)
              for (let k = 0; i + j + k <= 5; k++) {
                const rest = gap - i * a - j * b - k * c;
                if (i + j + k > 0 && rest > -1e-6) closest = Math.min(closest, rest);
              }
          if (stack === undefined) expect(closest).toBe(Infinity);
          else expect(stack.remains).toBeCloseTo(closest, 6);
        },
      ),
      { numRuns: 200, seed: 20261125 },
    );
  });
});

describe('how well it fits', () => {
  test('the ± of gap and rings adds up: 0.05 and three rings of 0.02 use 0.11 of 0.18', () => {
    expect(finding(ring({}), 'stack-worst')).toMatchObject({
      level: 'pass',
      formula: '0.05 + 2 × 0.02 + 1 × 0.02 = 0.11; room 0.18 − 0 = 0.18',
    });
    expect(finding(ring({ gap: '13.8 ±0.15' }), 'stack-worst')).toMatchObject({
      level: 'caution',
      field: 'gap',
    });
  });

  test('a plate that was not measured may be 0.76 mm over', () => {
    // ASTM A6: +0.03 in for widths to 60 in and thickness to 1 in (public excerpt): 0.762 mm.
    const note = finding(ring({ gap: '12.3 ±0.1', plates: '6' }), 'stack-worst');
    expect(note).toMatchObject({ level: 'note', field: 'plates' });
    expect(note?.limit?.amount).toBeCloseTo(0.03 * 25.4, 2);
  });
});

describe('the ring itself', () => {
  test.each([
    // ISO 273 normal holes, ISO 7089 and 7093 outsides (public fastener parameter lists).
    ['M8', 'plain', 9, 16],
    ['M10', 'plain', 11, 20],
    ['M12', 'large', 13.5, 37],
    ['M20', 'large', 22, 60],
  ] as const)('a washer for %s, %s: bore %f, outside %f', (bolt, washer, bore, outside) => {
    const part = ring({ bolt, washer, gap: 4, plates: '3' }).value?.part ?? raise();
    expect((isCircle(outlineOf(part).contour)?.radius ?? 0) * 2).toBeCloseTo(outside, 9);
    const opening = part.features.find(isOpening);
    expect((isCircle(opening?.contour ?? outlineOf(part).contour)?.radius ?? 0) * 2).toBeCloseTo(bore, 9);
  });

  test('the thickest ring is drawn, as many as the places want; another thickness on request', () => {
    const thick = ring({ places: 4 }).value?.part ?? raise();
    expect([thick.thickness, thick.quantity]).toEqual([6.05, 8]);
    const thin = ring({ places: 4, drawn: 1.52 }).value?.part ?? raise();
    expect([thin.thickness, thin.quantity]).toEqual([1.52, 4]);
  });

  test('a bore that the torch cannot cut is a stop with its remedy, and drilled it is a mark', () => {
    // M6 close is 6.4 (ISO 273); in 8 mm plate the least cut hole is one thickness.
    const parameters = { bolt: 'M6', holeFit: 'close', washer: 'large', gap: 8.2, plates: '8' };
    const stop = finding(ring(parameters), 'small-hole');
    expect(stop).toMatchObject({ level: 'stop', field: 'boreMade' });
    expect(stop?.remedies?.[0]?.change).toEqual([{ op: 'add', path: '/boreMade', value: 'drill' }]);
    const part = ring({ ...parameters, boreMade: 'drill' }).value?.part ?? raise();
    expect(part.features.filter(isMark).map(({ hole }) => hole?.size)).toEqual([6.4]);
  });

  test('the head bears on the ring, stands over it, or belongs to no bolt of this ring', () => {
    // ISO 4014 M20: 30 across flats, 34.64 across corners (public fastener parameter lists); (30 − 22) ÷ 2.
    const head = (parameters: Readonly<Record<string, unknown>>) => finding(ring(parameters), 'head-on-ring');
    expect(head({})).toMatchObject({
      level: 'pass',
      title: 'The head of M20 bears on 4 mm of the ring all round',
    });
    expect(head({ outside: 33 })).toMatchObject({ level: 'note', field: 'outside' });
    expect(head({ bore: 40, outside: 80 })).toBeUndefined();
  });

  test('a label that finds no room beside the bolts finds it between them', () => {
    const run = ring({ outside: 110, bore: 40, label: 'AXLE', pattern: { bolts: 4, circle: 'circle 80' } });
    expect(finding(run, 'label-room')).toBeUndefined();
    expect(run.value?.part.features.filter(({ name }) => name === 'label').length).toBeGreaterThan(3);
    expect(finding(ring({ label: 'A LONG STORY OF A RING' }), 'label-room')?.level).toBe('caution');
  });

  test('bolts through the ring stand on their circle', () => {
    const part =
      ring({ outside: 110, bore: 40, pattern: { bolts: 3, circle: 'adjacent 69.282', bolt: 'M8' } }).value
        ?.part ?? raise();
    const centres = part.features.filter(isOpening).flatMap(({ contour }) => isCircle(contour) ?? []);
    // Three holes, adjacent s: D = s / sin 60° = 80.
    expect(centres.slice(1).map(({ centre }) => Math.hypot(centre.x, centre.y))).toEqual([
      expect.closeTo(40, 3),
      expect.closeTo(40, 3),
      expect.closeTo(40, 3),
    ]);
  });

  test('readings of the bolt circle that contradict each other are a stop', () => {
    const pattern = { circle: 'across 110; adjacent 60' };
    expect(finding(ring({ outside: 160, pattern }), 'readings-disagree')).toMatchObject({
      level: 'stop',
      field: 'pattern.circle',
    });
  });

  test('in an inch job plates are read in inches: 1/4 and 1/16 fill 9/16 as two and one', () => {
    const run = ring({ gap: '9/16', plates: '1/4, 1/16', mostPlay: '0.005' }, 'in');
    expect(derived(run, 'stack')?.text).toContain('2 × 0.25 in + 0.0625 in');
    expect(derived(run, 'remains')?.value.amount).toBeCloseTo(0, 9);
  });

  test.each([
    [{ plates: '20' }, 'plates'],
    [{ outside: 20 }, 'outside'],
    [{ bore: 70 }, 'bore'],
    [{ drawn: 3.04 }, 'drawn'],
    [{ plates: '1,2,3,4,5,6,7,8,9' }, 'plates'],
    [{ outside: 100, pattern: { bolts: 3, circle: 'across 20' } }, 'pattern.circle'],
    [{ outside: 200, pattern: { bolts: 3, circle: '(0,55) (-52,17) (30,-40)' } }, 'pattern.circle'],
  ])('%o cannot be made, and names the field', (parameters, field) => {
    const { value, findings, problems } = ring(parameters);
    expect(value).toBeUndefined();
    expect(
      [...findings.filter(({ level }) => level === 'stop'), ...problems].map((one) => one.field),
    ).toContain(field);
  });
});

const runs = process.env['FISHPLATE_LONG'] === '1' ? 1500 : 60;
const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);

describe('random rings', () => {
  test('are sound, or a stop or a problem says why', () => {
    let drawn = 0;
    const rings = fc.record(
      {
        gap: tenths(2, 40).map((g) => `${g} ±0.05`),
        plates: fc
          .array(tenths(1, 12), { minLength: 1, maxLength: 5 })
          .map((list) => list.map((t, index) => `${t}${index % 2 === 0 ? '' : ' ×2'}`).join(', ')),
        bolt: fc.constantFrom('M6', 'M10', 'M12', 'M20', '1/2-13'),
        bore: fc.option(tenths(8, 60), { nil: undefined }),
        outside: fc.option(tenths(20, 150), { nil: undefined }),
        boreMade: fc.constantFrom('cut', 'drill'),
        holeFit: fc.constantFrom('close', 'normal', 'loose'),
        washer: fc.constantFrom('plain', 'large'),
        prefer: fc.constantFrom('fewest', 'closest'),
        leastPlay: tenths(0, 1),
        mostRings: fc.integer({ min: 1, max: 10 }),
        label: fc.constantFrom('CART', undefined),
        pattern: fc.option(
          fc.record({
            bolts: fc.integer({ min: 2, max: 8 }),
            circle: tenths(40, 120).map((d) => `circle ${d}`),
            holes: fc.constantFrom('clearance', 'drill', 'tapped'),
          }),
          { nil: undefined },
        ),
      },
      { requiredKeys: ['gap', 'plates'] },
    );
    fc.assert(
      fc.property(rings, (parameters) => {
        const { value, findings, problems } = ring(parameters);
        for (const { says, title } of findings)
          expect(`${title} ${says}`).not.toMatch(/NaN|undefined|Infinity/);
        const stopped = findings.some(({ level }) => level === 'stop');
        if (value === undefined) {
          expect(stopped || problems.length > 0).toBe(true);
          return;
        }
        drawn += 1;
        const outline = outlineOf(value.part).contour;
        for (const { contour } of value.part.features.filter(isCut)) expect(findFaults(contour)).toEqual([]);
        if (!stopped) {
          for (const { contour } of value.part.features.filter(isOpening))
            expect(containsContour(outline, contour)).toBe(true);
        }
        for (const { text } of [...value.dimensions, ...value.derived])
          expect(text).not.toMatch(/NaN|undefined/);
      }),
      { numRuns: runs, seed: 20261125 },
    );
    expect(drawn / runs).toBeGreaterThan(0.5);
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
      'gap',
      'plates',
      'bolt',
      'bore',
      'outside',
      'drawn',
      'pattern',
      'mostRings',
    );
    fc.assert(
      fc.property(fc.dictionary(field, anything), (parameters) => {
        const { problems, value, findings } = ring(parameters);
        expect(
          value !== undefined || problems.length > 0 || findings.some(({ level }) => level === 'stop'),
        ).toBe(true);
      }),
      { numRuns: runs * 2, seed: 20261125 },
    );
  });
});

function raise(): never {
  throw new Error('The part was not drawn.');
}
