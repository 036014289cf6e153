// Bearing spacers: measured, never short, never nominal, on their own race.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findFaults } from '../../parts-library/geometry/index.js';
import { bearingSpacer } from '../../parts-library/handbook/index.js';
import { runPart, startingShop, type PartRun } from '../../parts-library/job/index.js';
import { isCut } from '../../parts-library/model/index.js';

const spacer = (parameters: Readonly<Record<string, unknown>>, unit: 'mm' | 'in' = 'mm'): PartRun =>
  runPart({ family: 'bearing-spacer', parameters, unit }, startingShop);

const finding = (run: PartRun, code: string) => run.findings.find((one) => one.code === code);
const faces = (a: unknown, b: unknown, c: unknown, d: unknown) => ({
  face1: a,
  face2: b,
  face3: c,
  face4: d,
});

describe('length against the outer seats', () => {
  test('inner spacer = outer seat distance + 0 to 0.1 mm, the worst pair of places counts', () => {
    // Common practice; worked by hand: 5.07 − 5.03 and 5.08 − 5.02.
    const length = bearingSpacer([5.02, 5.03, 5.02], [5.07, 5.08]);
    expect(length?.least).toBeCloseTo(0.04, 9);
    expect(length?.most).toBeCloseTo(0.06, 9);
    expect(length?.from).toBeCloseTo(5.03, 9);
    expect(length?.to).toBeCloseTo(5.12, 9);
    expect(bearingSpacer([], [5])).toBeUndefined();
  });

  test('measured readings within the rule pass', () => {
    const run = spacer({});
    for (const code of ['spacer-short', 'spacer-long', 'spacer-parallel', 'spacer-own-race'])
      expect(finding(run, code)?.level).toBe('pass');
    expect(finding(run, 'spacer-nominal')).toBeUndefined();
  });

  test('one place a hundredth short is a stop that names it', () => {
    const short = finding(spacer(faces('5.07', '5.02', '5.08', '5.07')), 'spacer-short');
    expect(short).toMatchObject({ level: 'stop', field: 'face2' });
    expect(short?.value?.amount).toBeCloseTo(-0.01, 9);
  });

  test('exactly the seat distance is long enough; 0.1 over is not too long, 0.11 is a caution', () => {
    expect(finding(spacer(faces('5.03', '5.03', '5.03', '5.03')), 'spacer-short')?.level).toBe('pass');
    expect(finding(spacer(faces('5.12', '5.12', '5.12', '5.12')), 'spacer-long')?.level).toBe('pass');
    expect(finding(spacer(faces('5.13', '5.12', '5.12', '5.12')), 'spacer-long')).toMatchObject({
      level: 'caution',
      field: 'face1',
    });
  });

  test.each([
    ['a plate’s nominal thickness', faces('6', '6', '6', '6'), 'face1'],
    ['6.35 mm, a quarter inch', faces('6.35', '6.35', '6.35', '6.35'), 'face1'],
    ['whole tenths', faces('5.1', '5.1', '5.2', '5.1'), 'face1'],
    ['seats from a drawing', { seat1: '5', seat2: '5', seat3: '5' }, 'seat1'],
  ] as const)('%s is no reading: a stop', (_name, parameters, field) => {
    const stops = spacer(parameters).findings.filter(({ code }) => code === 'spacer-nominal');
    expect(stops.map((stop) => [stop.level, stop.field])).toContainEqual(['stop', field]);
  });

  test('a round size with the ± of a micrometer is a reading', () => {
    const run = spacer(faces('5.10 ±0.005', '5.10 ±0.005', '5.10 ±0.005', '5.10 ±0.005'));
    expect(finding(run, 'spacer-nominal')).toBeUndefined();
    expect(finding(run, 'spacer-short')?.level).toBe('pass');
  });

  test('a reading whose ± reaches below the seat is a caution', () => {
    const run = spacer(faces('5.04 ±0.01', '5.04 ±0.01', '5.05 ±0.01', '5.04 ±0.01'));
    expect(finding(run, 'spacer-short')?.level).toBe('caution');
  });

  test('faces out of parallel by more than 0.03 are a caution, scale left on a stop', () => {
    expect(finding(spacer(faces('5.04', '5.08', '5.08', '5.04')), 'spacer-parallel')?.level).toBe('caution');
    expect(finding(spacer({ faces: 'as-rolled' }), 'spacer-scale')).toMatchObject({
      level: 'stop',
      field: 'faces',
    });
    expect(finding(spacer({ faces: 'scale-off' }), 'spacer-scale')).toBeUndefined();
  });

  test('seats out of parallel by more than 0.1 leave no length that suits', () => {
    const run = spacer({ seat1: '5.02', seat2: '5.14', seat3: '5.05' });
    expect(run.value?.derived.find(({ id }) => id === 'wanted')?.text).toContain('none');
  });

  test('in an inch job the same rule holds: 0.1980 seats, 0.1995 spacer is 0.0015 in over', () => {
    const run = spacer(
      { seat1: '0.1980', seat2: '0.1981', seat3: '0.1980', ...faces('0.1995', '0.1996', '0.1996', '0.1995') },
      'in',
    );
    expect(finding(run, 'spacer-short')?.level).toBe('pass');
    // 0.1995 − 0.1981 = 0.0014 in.
    expect(finding(run, 'spacer-short')?.value?.amount).toBeCloseTo(0.0014 * 25.4, 6);
    const nominal = spacer(faces('1/4', '1/4', '1/4', '1/4'), 'in');
    expect(finding(nominal, 'spacer-nominal')?.level).toBe('stop');
  });
});

describe('its own race only', () => {
  test('the ring hangs in its bore: 65 outside and 1 mm of room reach the outer race at 66', () => {
    expect(finding(spacer({ outside: 65 }), 'spacer-own-race')).toMatchObject({
      level: 'stop',
      field: 'outside',
    });
    expect(finding(spacer({ outside: 57 }), 'spacer-own-race')?.level).toBe('caution');
    expect(finding(spacer({ outside: 54.5 }), 'spacer-own-race')?.level).toBe('note');
  });

  test('a bore that closes on the shaft when it comes out small is a caution', () => {
    // ISO 9013 class 2, 3.15 to 6.3 mm plate, 35 to 125 mm: ±0.9 (public excerpt): 40.5 − 0.9 = 39.6 < 39.98.
    const bore = finding(spacer({ bore: 40.5 }), 'spacer-bore');
    expect(bore).toMatchObject({ level: 'caution', field: 'bore' });
    expect(bore?.value?.amount).toBeCloseTo(39.6, 9);
  });

  test('a ring that no longer bears on the race is a stop', () => {
    expect(finding(spacer({ innerShoulder: 50, bore: 51 }), 'spacer-contact')?.level).toBe('stop');
  });

  test.each([
    [{ bore: 39.9 }, 'bore'],
    [{ outside: 40 }, 'outside'],
    [{ innerShoulder: 39 }, 'innerShoulder'],
    [{ outerShoulder: 50 }, 'outerShoulder'],
  ])('%o cannot be, and names the field', (parameters, field) => {
    const { value, findings } = spacer(parameters);
    expect(value).toBeUndefined();
    expect(findings.find(({ level }) => level === 'stop')?.field).toBe(field);
  });
});

const runs = process.env['FISHPLATE_LONG'] === '1' ? 1500 : 60;

describe('random spacers', () => {
  const hundredths = (min: number, max: number) =>
    fc.integer({ min: Math.round(min * 100), max: Math.round(max * 100) }).map((n) => (n / 100).toFixed(2));
  test('are sound, short ones are always stopped, and a stop says why there is none', () => {
    let drawn = 0;
    fc.assert(
      fc.property(
        fc.record({
          seat1: hundredths(4.9, 5.2),
          seat2: hundredths(4.9, 5.2),
          face1: hundredths(4.9, 5.3),
          face2: hundredths(4.9, 5.3),
          shaft: hundredths(20, 44),
          innerShoulder: hundredths(45, 60),
          outerShoulder: hundredths(61, 80),
          outside: hundredths(47, 70),
          faces: fc.constantFrom('ground', 'scale-off', 'as-rolled'),
          label: fc.constantFrom('L', undefined),
        }),
        (parameters) => {
          const { value, findings } = spacer(parameters);
          for (const { says, title } of findings)
            expect(`${title} ${says}`).not.toMatch(/NaN|undefined|Infinity/);
          const stopped = findings.some(({ level }) => level === 'stop');
          if (value === undefined) {
            expect(stopped).toBe(true);
            return;
          }
          drawn += 1;
          for (const { contour } of value.part.features.filter(isCut))
            expect(findFaults(contour)).toEqual([]);
          const shortest = Math.min(Number(parameters.face1), Number(parameters.face2), 5.07);
          const widest = Math.max(Number(parameters.seat1), Number(parameters.seat2), 5.02);
          if (shortest < widest - 1e-6) expect(stopped).toBe(true);
        },
      ),
      { numRuns: runs, seed: 20261125 },
    );
    expect(drawn / runs).toBeGreaterThan(0.6);
  });

  test('whatever is put in a field, reading answers and never throws', () => {
    const anything = fc.oneof(
      fc.string(),
      fc.double(),
      fc.constant(null),
      fc.array(fc.integer()),
      fc.object(),
    );
    const field = fc.constantFrom('seat1', 'face1', 'face4', 'shaft', 'outside', 'bore', 'faces');
    fc.assert(
      fc.property(fc.dictionary(field, anything), (parameters) => {
        const { problems, value, findings } = spacer(parameters);
        expect(
          value !== undefined || problems.length > 0 || findings.some(({ level }) => level === 'stop'),
        ).toBe(true);
      }),
      { numRuns: runs * 2, seed: 20261125 },
    );
  });
});
