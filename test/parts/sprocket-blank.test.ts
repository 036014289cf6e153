// The blank under a bought sprocket: on its bolts, on its pilot, clear of the chain, at the right stand-off.
import { describe, expect, test } from 'vitest';
import { isCircle } from '../../parts-library/geometry/index.js';
import { runPart, startingShop, type PartRun } from '../../parts-library/job/index.js';
import { isMark, isOpening, outlineOf, type Finding, type Part } from '../../parts-library/model/index.js';

type Parameters = Readonly<Record<string, unknown>>;

function raise(): never {
  throw new Error('The blank was not drawn, or has no such finding.');
}

const blank = (parameters: Parameters = {}): PartRun =>
  runPart({ family: 'sprocket-blank', parameters, unit: 'mm' }, startingShop);
const partOf = (parameters: Parameters): Part => blank(parameters).value?.part ?? raise();
const finding = (parameters: Parameters, code: string): Finding =>
  blank(parameters).findings.find((one) => one.code === code) ?? raise();
const outside = (parameters: Parameters): number =>
  2 * (isCircle(outlineOf(partOf(parameters)).contour)?.radius ?? raise());

describe('shape', () => {
  test('it reaches two bolts beyond a measured circle: adjacent 55 of six is 110, M10 gives 150', () => {
    // Twice the bolt from centre to edge (shop rule of 1.5 to 2, common practice).
    expect(outside({ boltCircle: 'adjacent 55' })).toBeCloseTo(150, 9);
    expect(outside({ edge: 25 })).toBeCloseTo(160, 9);
    expect(outside({ outside: 170 })).toBeCloseTo(170, 9);
  });

  test('a bored pilot is cut under size, a plain one to size, a disc has none', () => {
    const bore = (parameters: Parameters) =>
      partOf(parameters)
        .features.filter(isOpening)
        .filter(({ id }) => id === 'centre')
        .map(({ contour }) => 2 * (isCircle(contour)?.radius ?? raise()));
    expect(bore({})).toEqual([67]);
    expect(bore({ pilot: 'plain' })).toEqual([70]);
    expect(bore({ pilot: 'none' })).toEqual([]);
  });

  test('holes that are drilled are marks', () => {
    expect(partOf({ holes: 'drill' }).features.filter(isMark)).toHaveLength(6);
  });
});

describe('beside the chain', () => {
  // Published: 40 chain on 15 teeth, largest hub 1.8223 in = 46.29 mm; side plates clear 1.877 in = 47.68 mm.
  const small = { chain: '40', teeth: 15, bolts: 3, boltCircle: 'circle 26', bolt: 'M5', pilot: 'none' };

  test.each([
    [46, 'pass'],
    [47, 'caution'],
    [48, 'stop'],
  ])('an outside of %d under 15 teeth of 40: %s', (diameter, level) => {
    expect(finding({ ...small, outside: diameter }, 'chain-room')).toMatchObject({ level, field: 'outside' });
  });

  test('its heads are held against the same circle', () => {
    // ISO 7089 washer 10 (published) on ⌀36 + … : 37 + 10 = 47.
    const heads = { ...small, boltCircle: 'circle 37', outside: 46 };
    expect(finding(heads, 'chain-room-heads')).toMatchObject({ level: 'caution', field: 'boltCircle' });
  });

  // Published chain guide: 40 lbf·ft on ten teeth of 41 pull 593 lbf, over the 250 lbf that it may work at.
  test('the pull of a torque is held against the chain', () => {
    expect(finding({ ...small, chain: '41', teeth: 10, torque: '40 lbf·ft' }, 'chain-pull').level).toBe(
      'caution',
    );
  });

  test('a chain that measures like another is told', () => {
    expect(finding({ chain: '428', rollerMeasured: 7.93 }, 'chain-on-hand').level).toBe('caution');
  });
});

describe('between flange and sprocket', () => {
  test('the sprocket seats a bolt’s breadth inside and outside the bolts, or rocks', () => {
    // (110 − 80) ÷ 2 = 15 and 20 outside, both over 10; (110 − 100) ÷ 2 = 5 is not; past the bolts there is no seat.
    expect(finding({ boltedBore: 80 }, 'sprocket-seat').level).toBe('pass');
    expect(finding({ boltedBore: 100 }, 'sprocket-seat')).toMatchObject({
      level: 'caution',
      field: 'boltedBore',
      value: { amount: 5 },
    });
    expect(finding({ boltedBore: 112 }, 'sprocket-seat').level).toBe('stop');
    expect(finding({ boltedBore: 80, outside: 126 }, 'sprocket-seat')).toMatchObject({
      level: 'caution',
      field: 'outside',
    });
  });

  test('without a pilot the bolts’ play is all that centres it', () => {
    // ISO 273: ⌀11 for M10, so half a millimetre to each side.
    const loose = finding({ pilot: 'plain' }, 'centring');
    expect(loose).toMatchObject({ level: 'note', value: { amount: 0.5 } });
    expect(loose.remedies?.[0]?.change).toEqual([{ op: 'add', path: '/pilot', value: 'bored' }]);
    expect(finding({}, 'centring').level).toBe('pass');
  });

  test('its thickness puts the sprocket in line, or out of it', () => {
    expect(finding({ standoff: 6.2 }, 'chain-line').level).toBe('pass');
    expect(finding({ standoff: 9 }, 'chain-line')).toMatchObject({ level: 'caution', field: 'standoff' });
    expect(finding({ standoff: 9 }, 'chain-line').says).toMatch(/thicker plate/);
    expect(finding({ standoff: 3 }, 'chain-line').says).toMatch(/thinner plate/);
    expect(finding({}, 'not-checked').title).toMatch(/chain line/);
  });

  test('bolts grip sprocket, blank and flange', () => {
    // 5 + 6 + 6 = 17; with washers 4.4, nut 8.4 and two threads 3: 32.8, so 35 (ISO 4032, ISO 7089, by hand).
    const names = (parameters: Parameters) =>
      (blank(parameters).value ?? raise()).hardware.map(({ name }) => name);
    expect(names({})[0]).toBe('M10 × 35 hexagon bolt, 8.8');
    expect(names({ boltedBy: 'stud' })).toEqual([]);
    expect(names({ boltedBy: 'thread' })).toHaveLength(2);
    expect(names({ holes: 'tapped' })).toHaveLength(2);
  });

  test('sprocket, chain and the sprocket’s bore stand beside it as ghosts', () => {
    const ids = (blank({ boltedBore: 80 }).value ?? raise()).ghosts.map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(['sprocket', 'sprocket.bore', 'chain.pitch', 'chain.sides']));
  });

  test('boring comes before bolting up, and the guard last', () => {
    const kinds = (blank().value ?? raise()).steps.map(({ kind }) => kind);
    expect(kinds).toEqual(['deburr', 'measure', 'bore', 'fit', 'indicate', 'caution']);
  });
});

describe('what cannot be drawn names its field', () => {
  test.each([
    ['an outside within the bolts', { outside: 100 }, 'outside', /does not reach round the bolts/],
    ['a bore as large as the disc', { bore: 200 }, 'bore', /leaves nothing/],
    [
      'a bore smaller than what is left in it',
      { bore: 8, machiningAllowance: 9 },
      'machiningAllowance',
      /smaller/,
    ],
    [
      'a bolt circle of three metres',
      { boltCircle: 'circle 3000' },
      'boltCircle',
      /accepted is 10 to 2000 mm/,
    ],
  ] as const)('%s', (_name, parameters, field, says) => {
    const { value, findings } = blank(parameters);
    expect(value).toBeUndefined();
    expect(findings[0]).toMatchObject({ code: 'cannot-draw', level: 'stop', field });
    expect(findings[0]?.says).toMatch(says);
  });
});
