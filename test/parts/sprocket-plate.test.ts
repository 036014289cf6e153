// The sprocket plate: what its chain, its bolts and the torch make of it. The wheel sprocket of the orchard's haul cart.
import { describe, expect, test } from 'vitest';
import {
  boundsOf,
  isCircle,
  nearestOnContour,
  pointAlong,
  segmentsOf,
} from '../../parts-library/geometry/index.js';
import { runPart, startingShop, type PartRun } from '../../parts-library/job/index.js';
import { isOpening, outlineOf, type Finding, type Part } from '../../parts-library/model/index.js';

type Parameters = Readonly<Record<string, unknown>>;

function raise(): never {
  throw new Error('The sprocket was not drawn, or has no such finding.');
}

const sprocket = (parameters: Parameters = {}, kerf = 1.6): PartRun =>
  runPart({ family: 'sprocket-plate', parameters, unit: 'mm', process: { kerf } }, startingShop);
const partOf = (parameters: Parameters): Part => sprocket(parameters).value?.part ?? raise();
const finding = (parameters: Parameters, code: string, kerf?: number): Finding =>
  sprocket(parameters, kerf).findings.find((one) => one.code === code) ?? raise();
const openings = (parameters: Parameters, id: string) =>
  partOf(parameters)
    .features.filter(isOpening)
    .filter((one) => one.id.startsWith(id));

/** A drive sprocket on a keyed motor shaft, without bolts. */
const MOTOR = { bolted: 'no', middle: 'keyed', shaft: 20, lightening: 'none' } as const;

describe('outline', () => {
  // Published formula sheet: 41 on 60 teeth, outside 9.8406 in.
  test('41 on 60 teeth reaches 9.8406 in', () => {
    const reach = Math.max(...outlineOf(partOf({})).contour.map(({ x, y }) => Math.hypot(x, y)));
    expect((2 * reach) / 25.4).toBeCloseTo(9.8406, 3);
  });

  test('an ISO outside is the least of ISO 606: 84.358 mm for 08B on 20 teeth', () => {
    // da_min = d + p (1 − 1.6/z) − d1, published; worked apart from this code.
    const { derived } = sprocket({ ...MOTOR, chain: '08B', teeth: 20, thickness: 7 }).value ?? raise();
    expect(derived.find(({ id }) => id === 'pitch-diameter')?.text).toMatch(/outside ⌀84.36 mm/);
  });

  test('the torch’s path round 90 teeth is exact and keeps half a kerf off', () => {
    const { plan, part } = sprocket({ teeth: 90 }).value ?? raise();
    const path = plan.contours.find(({ featureId }) => featureId === 'outline') ?? raise();
    expect(path.exact).toBe(true);
    for (const segment of segmentsOf(outlineOf(part).contour).slice(0, 40)) {
      const { distance } = nearestOnContour(path.path, pointAlong(segment, 0.5));
      expect(Math.abs(distance - 0.8)).toBeLessThan(1e-6);
    }
  });

  test('the form may be chosen: ISO teeth for an ANSI chain stand on another outside', () => {
    const { text = '' } = sprocket({ form: 'iso' }).value?.dimensions.find(({ id }) => id === 'teeth') ?? {};
    expect(text).toBe('60 teeth, ISO 606');
  });
});

describe('thickness between the inner plates', () => {
  // Published stock column of the ASME B29.1 thickness table: 1/4 in lies 0.001 over the low limit of 40, 3/16 in
  // 0.0045 under that of 41, 8 mm inside 50, 10 mm under 60; 5/16 in and the 0.312 in width of 40 meet.
  test.each([
    ['40', '1/4 in', 'pass'],
    ['40', '7 mm', 'pass'],
    ['40', '5/16 in', 'stop'],
    ['41', '5 mm', 'pass'],
    ['41', '6 mm', 'caution'],
    ['41', '3/16 in', 'caution'],
    ['50', '8 mm', 'pass'],
    ['60', '10 mm', 'caution'],
    ['80', '1/2 in', 'caution'],
    ['428', '7 mm', 'pass'],
    ['428', '6 mm', 'caution'],
  ])('%s chain and %s plate: %s', (chain, thickness, level) => {
    expect(finding({ chain, thickness }, 'tooth-thickness')).toMatchObject({ level, field: 'thickness' });
  });

  test('a plate a little too thick is chamfered or turned down, each offered as a change', () => {
    const thick = finding({ thickness: 6 }, 'tooth-thickness');
    expect(thick.remedies?.map(({ change }) => change)).toEqual([
      [{ op: 'add', path: '/faces', value: 'chamfered' }],
      [{ op: 'add', path: '/faces', value: 'faced' }],
    ]);
    expect(finding({ thickness: 6, faces: 'chamfered' }, 'tooth-thickness').level).toBe('note');
    expect(finding({ thickness: 8, faces: 'faced' }, 'tooth-thickness').level).toBe('note');
    expect(finding({ thickness: 5, faces: 'faced' }, 'tooth-thickness')).toMatchObject({
      level: 'caution',
      field: 'faces',
    });
  });

  test('a chamfer is an eighth of the pitch deep and half of it down the tooth', () => {
    // Tooth chamfer 0.125 P by 0.5 P (from memory): 1.59 and 6.35 mm at half-inch pitch.
    const { steps } = sprocket({ thickness: 6, faces: 'chamfered' }).value ?? raise();
    expect(steps.find(({ kind }) => kind === 'grind')?.says).toMatch(/1\.59 mm deep, 6\.35 mm down/);
  });

  test('a measured inner width counts before the table’s', () => {
    expect(finding({ thickness: 5, widthMeasured: 4.9 }, 'tooth-thickness').level).toBe('stop');
  });
});

describe('what the torch can do', () => {
  // Seat 1.005 Dr + 0.003 in over two: 25 chain 0.066825 in = 1.697 mm, by hand; the path is half a kerf less.
  test.each([
    [1.6, 'note', 0.897],
    [1.8, 'caution', 0.797],
    [3.6, 'stop', -0.103],
  ])('25 chain with a kerf of %d: %s', (kerf, level, path) => {
    const found = finding(
      { ...MOTOR, chain: '25', teeth: 30, thickness: 2.5, shaft: 10 },
      'seat-radius',
      kerf,
    );
    expect(found.level).toBe(level);
    expect(found.value?.amount).toBeCloseTo(path, 3);
  });

  test('40 chain has room for it', () => {
    expect(finding({ chain: '40', thickness: 7 }, 'seat-radius').level).toBe('pass');
  });

  test('narrow tips are told, and the change that is offered makes them one kerf broad', () => {
    const found = finding({}, 'tooth-tip');
    expect(found.level).toBe('note');
    expect(found.value?.amount).toBeCloseTo(0.84, 2);
    const change = found.remedies?.[0]?.change[0];
    const outside = change !== undefined && 'value' in change ? change.value : raise();
    expect(finding({ outside }, 'tooth-tip').value?.amount).toBeCloseTo(1.6, 1);
  });

  test('tips below the least of ISO 606 are a caution', () => {
    // d + p (1 − 1.6/60) − d1 = 242.663 + 12.361 − 7.772 = 247.252, by hand.
    expect(finding({ outside: 246.5 }, 'tooth-tip')).toMatchObject({ level: 'caution', field: 'outside' });
    expect(finding({ outside: 246.5 }, 'tooth-tip').limit?.amount).toBeCloseTo(247.25, 2);
  });

  test('the caliper diameter stands on the print and beside the teeth, even and odd', () => {
    // Worked by hand from the published construction: 9.2432 in over opposite gaps, 2.0752 in over 15 teeth of 40.
    const read = (parameters: Parameters) =>
      (sprocket(parameters).value ?? raise()).derived.find(({ id }) => id === 'caliper')?.value.amount ?? 0;
    expect(read({}) / 25.4).toBeCloseTo(9.2432, 3);
    expect(read({ ...MOTOR, chain: '40', teeth: 15, thickness: 7 }) / 25.4).toBeCloseTo(2.0752, 3);
    expect(sprocket().value?.dimensions.find(({ id }) => id === 'caliper')).toMatchObject({
      kind: 'linear',
      text: 'caliper 234.78',
    });
  });

  test('a kerf known to ±0.05 holds the caliper’s band, one known to ±0.3 does not', () => {
    // Commercial tolerance 0.006 + 0.002 × 0.5 × √60 = 0.01375 in = 0.349 mm, by hand.
    const level = (kerfPlusMinus: number) =>
      runPart(
        { family: 'sprocket-plate', parameters: {}, unit: 'mm', process: { kerf: 1.6, kerfPlusMinus } },
        startingShop,
      ).findings.find(({ code }) => code === 'tooth-tolerance')?.level;
    expect(level(0.3)).toBe('caution');
    expect(level(0.05)).toBe('note');
  });
});

describe('chain', () => {
  // Published: 40 has roller 7.92, 428 has 8.51; they do not interchange.
  test('a roller of 7.93 is no 428’s: it is called 40, and the change is offered', () => {
    const found = finding({ chain: '428', thickness: 7, rollerMeasured: 7.93 }, 'chain-on-hand');
    expect(found).toMatchObject({ level: 'caution', field: 'rollerMeasured' });
    expect(found.remedies?.[0]?.change).toEqual([{ op: 'add', path: '/chain', value: '40' }]);
    expect(finding({ rollerMeasured: 7.75, widthMeasured: 6.3 }, 'chain-on-hand').level).toBe('pass');
  });

  test('a roller of no known chain says so', () => {
    expect(finding({ rollerMeasured: 9.4 }, 'chain-on-hand').says).toMatch(/No chain of this pitch/);
  });

  // Published chain guide: 10 lbf·ft on ten teeth of 41 pull 148.3 lbf, 40 lbf·ft 593 lbf; it may work at 250 lbf.
  test.each([
    ['10 lbf·ft', 148.3, 'pass'],
    ['40 lbf·ft', 593, 'caution'],
    ['60 lbf·ft', 890, 'stop'],
  ])('41 on ten teeth at %s: %d lbf, %s', (torque, pounds, level) => {
    const found = finding({ ...MOTOR, teeth: 10, shaft: 12, torque }, 'chain-pull');
    expect(found.level).toBe(level);
    expect(Math.abs((found.value?.amount ?? 0) / 4.4482216 - pounds)).toBeLessThan(1);
  });

  // Published: 10/60 teeth, 78 links, centres 252.54 mm at half-inch pitch, wrap 132.96° on the small one.
  test('ten and sixty teeth at 252.54 wrap 132.96° and take 78 links', () => {
    const drive = { otherTeeth: 10, centreDistance: 252.54 };
    expect(finding(drive, 'wrap').level).toBe('pass');
    expect(finding(drive, 'wrap').value?.amount).toBeCloseTo(132.96, 2);
    const { derived, hardware } = sprocket(drive).value ?? raise();
    expect(derived.find(({ id }) => id === 'links')?.text).toMatch(/^78 links at 252\.5[34] mm/);
    expect(hardware.find(({ kind }) => kind === 'chain')?.name).toBe('41 roller chain, 78 links');
  });

  test('nearer than 120° of wrap is a caution, teeth in teeth a stop', () => {
    // (9.5537 − 1.6180) ÷ (200 ÷ 12.7) = 0.50392, 180 − 2 asin = 119.48°; outsides 249.95 and 46.71, mean 148.33: by hand.
    const near = finding({ otherTeeth: 10, centreDistance: 200 }, 'wrap');
    expect(near).toMatchObject({ level: 'caution', field: 'centreDistance' });
    expect(near.value?.amount).toBeCloseTo(119.48, 1);
    const touching = finding({ otherTeeth: 10, centreDistance: 148 }, 'centre-distance');
    expect(touching.level).toBe('stop');
    expect(touching.limit?.amount).toBeCloseTo(148.33, 1);
  });

  // Published: 9 teeth swing the speed by 6.0 %, 11 by 4.1 %, 17 by 1.7 %.
  test.each([
    [9, '6 %', 'caution'],
    [11, '4.1 %', 'caution'],
    [15, '2.2 %', 'note'],
    [17, '1.7 %', 'pass'],
  ])('%d teeth swing %s: %s', (teeth, swing, level) => {
    const found = finding({ ...MOTOR, chain: '60', thickness: 11, teeth }, 'few-teeth');
    expect(found.level).toBe(level);
    expect(found.title).toContain(swing);
  });

  test('mild steel is told to wear, aluminium more so', () => {
    expect(finding({}, 'tooth-wear').level).toBe('note');
    expect(finding({ material: '6061-T6' }, 'tooth-wear').level).toBe('caution');
  });
});

describe('bolts, hub and chain beside each other', () => {
  // Published: 40 chain on 15 teeth, largest hub 1.8223 in = 46.29 mm; its side plates clear 1.877 in = 47.68 mm.
  test.each([
    [30, 'pass'],
    [35, 'caution'],
    [36, 'stop'],
  ])('M6 with washers of 12 on ⌀%d under 15 teeth of 40: %s', (circle, level) => {
    const found = finding(
      {
        chain: '40',
        teeth: 15,
        thickness: 7,
        bolts: 3,
        boltCircle: `circle ${circle}`,
        bolt: 'M6',
        bore: 10,
      },
      'chain-room-heads',
    );
    expect(found.level).toBe(level);
    if (level !== 'stop') expect(found.limit?.amount).toBeCloseTo(46.29, 2);
  });

  test('a hub with its fillet is held against the same circle', () => {
    const hub = finding(
      { chain: '40', teeth: 15, thickness: 7, bolted: 'no', middle: 'hub', hub: 40 },
      'chain-room',
    );
    expect(hub).toMatchObject({ level: 'stop', field: 'hub' });
    // 40 + 2 × 5, the least leg for 7 mm.
    expect(hub.value?.amount).toBeCloseTo(50, 9);
  });

  test('a welded sprocket is tacked, indicated, welded and indicated again, then bolted up true', () => {
    const { steps } = sprocket({ middle: 'hub' }).value ?? raise();
    expect(steps.map(({ kind }) => kind)).toEqual([
      'deburr',
      'measure',
      'grind',
      'fit',
      'tack',
      'indicate',
      'weld',
      'indicate',
      'caution',
      'indicate',
      'caution',
    ]);
    expect(finding({ middle: 'hub' }, 'not-checked').title).toMatch(/hub’s steel/);
    expect(finding({ middle: 'hub', torque: 100 }, 'hub-weld').level).toBe('pass');
  });

  // DIN 6885-1 (published): bore 25, key 8 wide, hub depth 3.3, so its floor lies 28.3 from the far side.
  test('a keyed bore of 25 has a keyway 8 wide to 28.3', () => {
    const [bore = raise()] = openings(
      { ...MOTOR, chain: '40', teeth: 30, thickness: 7, shaft: 25 },
      'centre',
    );
    const { minY, maxY } = boundsOf(bore.contour);
    expect(maxY - minY).toBeCloseTo(28.3, 9);
    expect(bore.contour.filter(({ y }) => y > 15).map(({ x }) => x)).toEqual([-4, 4]);
  });

  test('a bored pilot is cut under size', () => {
    const [bore = raise()] = openings({ middle: 'bored' }, 'centre');
    expect(isCircle(bore.contour)?.radius).toBeCloseTo(33.5, 9);
    expect(bore.hole).toMatchObject({ finish: 'bore', size: 70 });
  });

  test('the bolts are long enough for sprocket, flange, washers, nut and two threads', () => {
    // ISO 4032, ISO 7089 by hand: 11 + 2 × 2.2 (washers, greatest) + 8.4 + 2 × 1.5 = 26.8, so 30.
    const names = (parameters: Parameters) =>
      (sprocket(parameters).value ?? raise()).hardware.map(({ name, quantity }) => `${quantity} × ${name}`);
    expect(names({})).toEqual([
      '6 × M10 × 30 hexagon bolt, 8.8',
      '12 × washer for M10',
      '6 × M10 hexagon locknut',
      '1 × 41 roller chain',
    ]);
    expect(names({ boltedBy: 'thread' }).some((name) => name.includes('nut'))).toBe(false);
    expect(names({ boltedBy: 'stud' })).toEqual(['1 × 41 roller chain']);
    expect(names({ holes: 'tapped' }).some((name) => name.includes('nut'))).toBe(false);
  });

  test('a measured circle is resolved as on any plate: adjacent 55 of six is 110', () => {
    const [hole = raise()] = openings({ boltCircle: 'adjacent 55' }, 'pattern1');
    const { x, y } = isCircle(hole.contour)?.centre ?? raise();
    expect(Math.hypot(x, y)).toBeCloseTo(55, 9);
  });
});

describe('lightening', () => {
  test('windows have a spoke of the given breadth between them, and stay one pitch off the gaps', () => {
    expect(openings({}, 'lightening')).toHaveLength(6);
    const [window = raise()] = openings({}, 'lightening');
    // Root 234.776 less two pitches of 12.7.
    const reach = Math.max(...window.contour.map(({ x, y }) => Math.hypot(x, y)));
    expect(2 * reach).toBeCloseTo(234.776 - 25.4, 2);
    // The first spoke stands on the first bolt, straight up: its side is 8 from the middle line.
    expect(Math.max(...window.contour.map(({ x }) => x))).toBeCloseTo(-8, 6);
    expect(finding({ bolted: 'no', spoke: 12 }, 'web')).toMatchObject({ level: 'pass' });
    expect(finding({ bolted: 'no', spoke: 12 }, 'web').value?.amount).toBeCloseTo(12, 6);
  });

  test('holes go on a circle between bolts and rim', () => {
    const [hole = raise()] = openings({ lightening: 'holes', holeSize: 20 }, 'lightening');
    expect(isCircle(hole.contour)?.radius).toBe(10);
    expect(openings({ lightening: 'holes', holeSize: 20, openings: 5 }, 'lightening')).toHaveLength(5);
  });

  test('where there is no room they are left out, and that is said', () => {
    const few = { teeth: 40, lightening: 'windows' };
    expect(openings(few, 'lightening')).toEqual([]);
    expect(finding(few, 'lightening-room')).toMatchObject({ level: 'note', field: 'lightening' });
    expect(finding({ lightening: 'holes', holeSize: 60 }, 'lightening-room').level).toBe('note');
  });
});

describe('what cannot be drawn names its field', () => {
  test.each([
    ['an outside beyond the point of the teeth', { outside: 260 }, 'outside', /come to a point/],
    ['an outside inside the pitch circle', { outside: 230 }, 'outside', /no tooth/],
    ['windows that end before they begin', { windowInner: 200, windowOuter: 150 }, 'windowOuter', /no depth/],
    ['windows into the gaps', { windowOuter: 236 }, 'windowOuter', /cut into the gaps/],
    ['spokes that run together', { windowInner: 80, windowOuter: 200, spoke: 60 }, 'spoke', /run together/],
    ['corners larger than the window', { windowCorner: 40 }, 'windowCorner', /do not fit/],
    ['a shaft that no key is made for', { middle: 'keyed', shaft: 65 }, 'shaft', /key for a shaft/],
    [
      'a bore smaller than what is left in it',
      { middle: 'bored', bore: 8, machiningAllowance: 10 },
      'machiningAllowance',
      /smaller allowance/,
    ],
    [
      'a bolt circle of three metres',
      { boltCircle: 'circle 3000' },
      'boltCircle',
      /accepted is 10 to 2000 mm/,
    ],
  ] as const)('%s', (_name, parameters, field, says) => {
    const { value, findings } = sprocket(parameters);
    expect(value).toBeUndefined();
    expect(findings[0]).toMatchObject({ code: 'cannot-draw', level: 'stop', field });
    expect(findings[0]?.says).toMatch(says);
  });
});

describe('print', () => {
  test('chain, rollers, heads, hub and weld stand beside it as ghosts', () => {
    const { ghosts } = sprocket({ middle: 'hub' }).value ?? raise();
    expect([...new Set(ghosts.map(({ kind }) => kind))].toSorted()).toEqual([
      'bolt-circle',
      'bolt-head',
      'chain',
      'hub',
      'socket',
      'weld',
    ]);
    // No source gives a 428’s plate height: no circle for it.
    const vehicle = sprocket({ chain: '428', thickness: 7 }).value?.ghosts ?? [];
    expect(vehicle.some(({ id }) => id === 'chain.sides')).toBe(false);
  });

  test('a label is etched on the metal, or left out with a word', () => {
    expect(partOf({ label: 'CART 7' }).features.some(({ purpose }) => purpose === 'etch')).toBe(true);
    expect(finding({ label: 'THE WHOLE ORCHARD’S HAUL CART', labelHeight: 40 }, 'label-room').level).toBe(
      'caution',
    );
  });
});
