// What may be typed of a drive, what is refused, and that nothing typed throws.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { driveNumbers, driveReader, readDrive } from '../../parts-library/drive/index.js';
import { createFormat } from '../../parts-library/job/index.js';
import { cart, figure, numbersOf, refused } from './drive.js';

describe('entries', () => {
  test('are taken as they are typed: fractions, N·m, per cent, rev/s', () => {
    const numbers = numbersOf({
      ...cart,
      innerWidth: '5/16 in',
      roller: '0.335 in',
      motorTorque: '28 lbf·ft',
      motorSpeed: '23.333333 rev/s',
      grade: '18',
      mass: '683 lb',
    });
    // 1400 ÷ 4 rpm × 398 mm ÷ 5305.16 = 26.26
    expect(figure(numbers, 'road-speed')).toBeCloseTo(26.26, 2);
  });

  test('that are read again mean the same in the other unit', () => {
    const first = readDrive(cart, 'mm');
    expect(first.ok).toBe(true);
    if (!first.ok) return;
    expect(readDrive(first.value.json, 'in')).toEqual(first);
  });

  test('left out give the ratio and say what is wanting', () => {
    const { figures, findings } = numbersOf({});
    expect(figures.map(({ id }) => id)).toContain('ratio');
    expect(findings.filter(({ level }) => level === 'stop')).toEqual([]);
    const missing = findings.find(({ code }) => code === 'not-checked');
    expect(missing?.title).toMatch(/chain.*road speed.*climbing.*hill/);
  });

  test('every field says where it belongs and what it is for', () => {
    for (const { title, help, group } of driveReader.fields) {
      expect(title.length * help.length * group.length).toBeGreaterThan(0);
    }
  });
});

describe('refused, with the field named and what is accepted', () => {
  test.each<readonly [string, object, RegExp]>([
    ['motorTeeth', { motorTeeth: 'twelve' }, /6 to 150/],
    ['motorTeeth', { motorTeeth: 5 }, /6 to 150/],
    ['wheelTeeth', { wheelTeeth: 48.5 }, /whole number/],
    ['motorOthers', { motorOthers: '10, eleven' }, /"eleven".*6 to 150/],
    ['wheelOthers', { wheelOthers: '40 41 42 43 44 45 46 47 49' }, /up to 8/],
    ['chain', { chain: 'bicycle' }, /08B/],
    ['innerWidth', { innerWidth: '1/0 in' }, /Accepted/],
    ['roller', { roller: 'fat' }, /Accepted/],
    ['twelvePitches', { twelvePitches: '12' }, /50 to 700 mm/],
    ['links', { links: '98.5' }, /12 to 1000/],
    ['centres', { centres: '-420' }, /negative|30 to 5000/],
    ['tensioner', { tensioner: 'spring' }, /slots, idler, none/],
    ['takeUp', { takeUp: '900' }, /0 to 500 mm/],
    ['motorSpeed', { motorSpeed: '1400 furlongs' }, /rpm/],
    ['wheelSpeed', { wheelSpeed: '-3' }, /rpm/],
    ['reduction', { reduction: 'five' }, /decimal number/],
    ['motorTorque', { motorTorque: '38 kg' }, /N·m/],
    ['steadyTorque', { motorTorque: '10 N·m', steadyTorque: '16 N·m' }, /10 N·m/],
    ['efficiency', { efficiency: '120 %' }, /20 to 100 %/],
    ['tyreDiameter', { tyreDiameter: '9 m' }, /50 to 2500 mm/],
    ['loadedRadius', { tyreDiameter: '400', loadedRadius: '210' }, /up to 200 mm/],
    ['mass', { mass: 'heavy' }, /kg/],
    ['grade', { grade: '10°' }, /decimal number/],
    ['grade', { grade: '180 %' }, /0 to 100 %/],
    ['ground', { ground: 'ice' }, /wet-grass/],
    ['rolling', { rolling: '-2' }, /0 to 50 %/],
    ['grip', { grip: '3' }, /0.05 to 1.5/],
    ['drivenAxle', { drivenAxle: 'left' }, /rear, front, all/],
    ['drivenMass', { mass: '300 kg', drivenMass: '310 kg' }, /whole mass/],
    ['wheelbase', { wheelbase: '3' }, /100 to 10000 mm/],
    ['massHeight', { massHeight: '' }, /typed/],
    ['colour', { colour: 'red' }, /There is no parameter "colour"/],
  ])('%s of %o', (field, drive, says) => {
    expect(refused(drive)[field]).toMatch(says);
  });
});

const runs = process.env['FISHPLATE_LONG'] === '1' ? 3000 : 150;
const SEED = 48;

const paths = driveReader.fields.map(({ path }) => path);

const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((tenths) => tenths / 10);

const drives = fc.record(
  {
    motorTeeth: fc.integer({ min: 6, max: 40 }),
    wheelTeeth: fc.integer({ min: 6, max: 120 }),
    chain: fc.constantFrom('35', '40', '08B', '428', '520'),
    innerWidth: between(3, 14),
    roller: between(5, 12),
    twelvePitches: between(110, 200),
    links: fc.integer({ min: 20, max: 200 }),
    centres: between(60, 900),
    tensioner: fc.constantFrom('slots', 'idler', 'none'),
    takeUp: between(0, 60),
    motorSpeed: between(50, 5000),
    wheelSpeed: between(10, 900),
    reduction: between(0.5, 30),
    motorTorque: between(1, 400),
    tyreDiameter: between(400, 700),
    loadedRadius: between(100, 199),
    mass: between(200, 900),
    grade: between(0, 100),
    ground: fc.constantFrom('hard', 'grass', 'loose', 'wet-grass'),
    drivenAxle: fc.constantFrom('rear', 'front', 'all'),
    drivenMass: between(1, 199),
    wheelbase: between(500, 2000),
    massHeight: between(100, 2500),
  },
  { requiredKeys: [] },
);

describe('random drives', () => {
  test('give numbers that are numbers, words without holes, and the hill agrees with its limits', () => {
    fc.assert(
      fc.property(drives, fc.constantFrom('mm' as const, 'in' as const), (drive, unit) => {
        const numbers = numbersOf(drive, unit);
        for (const { text, formula, value } of numbers.figures) {
          expect(`${text} ${formula}`).not.toMatch(/NaN|undefined|Infinity/);
          expect(Number.isFinite(value.amount)).toBe(true);
        }
        for (const { title, says, field, formula = '' } of numbers.findings) {
          expect(`${title} ${says} ${formula}`).not.toMatch(/NaN|undefined|Infinity/);
          if (field !== undefined) expect(paths).toContain(field);
        }
        expect(JSON.parse(JSON.stringify(numbers))).toEqual(numbers);
        const [now, ...others] = numbers.changes;
        expect(now?.speed).toBe(1);
        for (const { chainRatio, speed } of others)
          expect(chainRatio * speed).toBeCloseTo(now?.chainRatio ?? 0, 9);
        const stalls = numbers.findings.some(
          ({ code, level }) => level === 'stop' && (code === 'hill-torque' || code === 'hill-grip'),
        );
        if (now?.climbs !== undefined) expect(now.climbs).toBe(!stalls);
      }),
      { seed: SEED, numRuns: runs },
    );
  });

  test('garbage is refused and never throws', () => {
    const field = fc.constantFrom(...paths, 'elsewhere');
    fc.assert(
      fc.property(
        fc.dictionary(field, fc.oneof(fc.string(), fc.double(), fc.boolean(), fc.object())),
        (drive) => {
          const reading = readDrive(drive, 'mm');
          if (reading.ok) driveNumbers(reading.value.parameters, createFormat('mm'));
          else expect(reading.problems.length).toBeGreaterThan(0);
        },
      ),
      { seed: SEED, numRuns: runs },
    );
  });
});
