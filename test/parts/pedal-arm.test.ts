// The pedal arm: shape, movement, stops, and strength, against worked and published figures.
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, segmentsOf } from '../../parts-library/geometry/index.js';
import { runPart, startingShop, type PartRun } from '../../parts-library/job/index.js';
import { isLine, isMark, outlineOf, type Finding, type Part } from '../../parts-library/model/index.js';

type Parameters = Readonly<Record<string, unknown>>;

const pedal = (parameters: Parameters = {}, unit: 'mm' | 'in' = 'mm'): PartRun =>
  runPart({ family: 'pedal-arm', parameters, unit }, startingShop);

function raise(): never {
  throw new Error('The part was not drawn.');
}
const partOf = (parameters: Parameters): Part => pedal(parameters).value?.part ?? raise();
const outline = (parameters: Parameters) => outlineOf(partOf(parameters)).contour;
const finding = (parameters: Parameters, code: string): Finding | undefined =>
  pedal(parameters).findings.find((one) => one.code === code);
const derived = (parameters: Parameters, id: string): number | undefined =>
  pedal(parameters).value?.derived.find((one) => one.id === id)?.value.amount;

/** A bar of even height 40: boss 16.2 / 2 + 11.9 = 20, pad end 40 high, cut square. */
const EVEN_BAR = {
  profile: 'straight',
  pad: 'flat',
  tubeOutside: 16,
  tubeWall: 2,
  fit: 0.2,
  bossEdge: 11.9,
  headHeight: 40,
  stopRadius: 75,
} as const;

/** The handbook's worked arm: 2000 N at 250 mm, rod at 50, 40 × 10 of A36 with a 10 mm hole. */
const WORKED = {
  ...EVEN_BAR,
  length: 250,
  linkRadius: 50,
  linkPin: 10,
  anchorAlong: 50,
  anchorOff: -200,
  travel: 2,
  freePlay: 0.5,
  thickness: 10,
  material: 'A36',
  springs: 0,
  sideShare: 0,
  offCentre: 0,
} as const;

describe('the shape', () => {
  test('an even bar of 220 × 40 with a round boss and a square end', () => {
    // Worked by hand: 220 × 40 and half a circle of radius 20.
    expect(areaOf(outline({ ...EVEN_BAR, length: 220 }))).toBeCloseTo(220 * 40 + 200 * Math.PI, 6);
  });

  test('a dog-leg is made of tangent lines and true arcs: boss, knee, its inside corner, the pad’s end', () => {
    const contour = outline({ kneeHeight: 42, fillet: 17 });
    const radii = segmentsOf(contour).flatMap((one) =>
      one.kind === 'arc' ? [Number(one.radius.toFixed(3))] : [],
    );
    // Boss 30.2 / 2 + 13; knee 42 / 2; two inside corners of 17; pad's end 28 / 2.
    for (const radius of [28.1, 21, 17, 14]) expect(radii).toContain(radius);
    expect(contour.length).toBeLessThan(16);
  });

  test('a knee the other way turns it round: the same area', () => {
    const plain = { pad: 'flat', kneeAlong: 100 } as const;
    expect(areaOf(outline({ ...plain, kneeOff: 25 }))).toBeCloseTo(
      areaOf(outline({ ...plain, kneeOff: -25 })),
      6,
    );
  });

  test('a pin behind the pivot stands on a horn of its own, with the eye asked for', () => {
    const { minX } = boundsOf(outline({ ...EVEN_BAR, linkAngle: 180, linkRadius: 60, eye: 15 }));
    expect(minX).toBeCloseTo(-75, 9);
  });

  test('a stop tab reaches its distance and half its width', () => {
    const { minY } = boundsOf(
      outline({ ...EVEN_BAR, stopOn: 'tab', stopAngle: -90, stopRadius: 70, stopWidth: 20 }),
    );
    expect(minY).toBeCloseTo(-80, 9);
  });

  test('a folded pad stands on the foot’s side, as long and as wide as asked', () => {
    const { maxY } = boundsOf(outline({ pad: 'folded', padWidth: 60 }));
    // Head 14, corner 4, half a slot 1.5, 0.5 of straight edge, 60 of pad.
    expect(maxY).toBeCloseTo(80, 9);
  });

  test('a joggle adds J tan(A/2) to the flat, its lines J / sin A apart', () => {
    // 18 tan 15° = 4.823, 18 / sin 30° = 36, worked by hand.
    const joggled = { profile: 'straight', length: 240, jogOffset: 18, fold: 'scored' } as const;
    const added =
      boundsOf(outline(joggled)).maxX - boundsOf(outline({ ...joggled, jogOffset: undefined })).maxX;
    expect(added).toBeCloseTo(4.823, 3);
    const lines = partOf(joggled).features.filter(isLine);
    expect(lines.map(({ bend }) => bend?.direction)).toEqual(['up', 'down']);
    const [first = 0, second = 0] = lines.map(({ path }) => path.vertices[0]?.x);
    expect(second - first).toBeCloseTo(36, 9);
  });

  test('two spring holes on a throttle, one on a brake, and a row of pin holes: marks, not cuts', () => {
    const marks = (parameters: Parameters) =>
      partOf(parameters)
        .features.filter(isMark)
        .map(({ id }) => id);
    expect(marks({ use: 'throttle' })).toEqual(['pin.1', 'spring.1', 'spring.2']);
    expect(marks({})).toEqual(['pin.1', 'spring.1']);
    expect(marks({ linkHoles: 3, springs: 0, linkAngle: 160 })).toEqual(['pin.1', 'pin.2', 'pin.3']);
  });
});

describe('bends', () => {
  test('slots are the default: bites of the outline, no score, no pierce more', () => {
    const run = pedal({ pad: 'folded' });
    expect(run.value?.part.features.filter(isLine)).toEqual([]);
    expect(run.value?.figures.pierces).toBe(2);
    expect(finding({ pad: 'folded' }, 'slotted-bend')?.level).toBe('note');
  });

  test('a scored bend in the arm is a stop unless it is welded after, and the print says scoring does not repeat', () => {
    // Published groove depths T/3, T/2 welded after; strength left (1 − 2/8)² = 56 %.
    const scored = { pad: 'folded', fold: 'scored', groove: 2 } as const;
    const open = finding({ ...scored, weldedAfter: 'no' }, 'scored-bend');
    expect(open).toMatchObject({ level: 'stop', field: 'weldedAfter' });
    expect(open?.says).toContain('56 %');
    const welded = finding(scored, 'scored-bend');
    expect(welded?.level).toBe('caution');
    expect(welded?.title).toContain('not repeatable');
    expect(pedal({ ...scored, weldedAfter: 'no' }).findings[0]?.remedies?.[0]?.change).toEqual([
      { op: 'add', path: '/weldedAfter', value: 'yes' },
    ]);
    expect(finding({ pad: 'folded', weldedAfter: 'no' }, 'slotted-bend')?.level).toBe('stop');
  });

  test('a slot no wider than the kerf is a stop', () => {
    const run = runPart(
      {
        family: 'pedal-arm',
        parameters: { pad: 'folded', slotWidth: 2 },
        unit: 'mm',
        process: { kerf: 1.8 },
      },
      startingShop,
    );
    expect(run.findings.find(({ code }) => code === 'slotted-bend')).toMatchObject({
      level: 'stop',
      field: 'slotWidth',
    });
  });

  test('the folded pad as a shelf: 2000 N, 40 mm from a fold of 80 × 8, is 93.75 MPa', () => {
    // 6 M / (b t²) = 6 × 80 000 / (80 × 64), worked by hand; the foot 30 + 10 mm out.
    expect(finding({ pad: 'folded' }, 'pad-fold')?.value?.amount).toBeCloseTo(93.75, 6);
  });

  test('a spring hole in a bend is a stop', () => {
    const found = finding({ profile: 'straight', jogOffset: 18, jogAt: 120, springAt: 120 }, 'hole-to-bend');
    expect(found).toMatchObject({ level: 'stop', subject: { featureId: 'spring.1' } });
  });

  test('the other hand is the same outline with every bend the other way', () => {
    const scored = {
      profile: 'straight',
      length: 240,
      jogOffset: 18,
      fold: 'scored',
      pad: 'folded',
    } as const;
    const directions = (given: Readonly<Record<string, unknown>>) =>
      partOf(given)
        .features.filter(isLine)
        .flatMap(({ bend }) => (bend === undefined ? [] : [bend.direction]));
    expect(directions(scored)).toEqual(['up', 'up', 'down']);
    expect(directions({ ...scored, mirrored: 'yes' })).toEqual(['down', 'down', 'up']);
    expect(outline({ ...scored, mirrored: 'yes' })).toEqual(outline(scored));
    expect(partOf({ mirrored: 'yes' }).mirrored).toBe(true);
    expect(partOf({}).mirrored).toBeUndefined();
  });

  test('grip dimples are off; on a folded pad each is a mark and a start', () => {
    const on = { pad: 'folded', dimples: 'yes' } as const;
    const dimples = partOf(on).features.filter(({ id }) => id.startsWith('dimple.'));
    expect(dimples.length).toBeGreaterThan(8);
    expect(finding(on, 'dimples')?.title).toBe(
      `${dimples.length} grip dimples are ${dimples.length} starts of the torch`,
    );
    expect(finding({}, 'dimples')).toBeUndefined();
    expect(finding({ dimples: 'yes' }, 'dimples')?.title).toContain('not folded');
  });
});

describe('movement', () => {
  test('a cable from (30, 40) to a pin 30 mm out on the arm is pulled √(30² + 70²) − 40 in a quarter turn', () => {
    // Worked by hand: 76.158 − 40 = 36.158, of which 1 is slack.
    const cable = {
      use: 'clutch',
      profile: 'straight',
      linkRadius: 30,
      anchorAlong: 30,
      anchorOff: 40,
      travel: Math.sqrt(5800) - 41,
      freePlay: 1,
      springs: 0,
    } as const;
    expect(derived(cable, 'swing')).toBeCloseTo(90, 4);
    expect(finding(cable, 'stroke')).toMatchObject({ level: 'caution' });
  });

  test('ratio 5 at rest when the rod at 50 stands square to an arm of 250', () => {
    expect(derived(WORKED, 'ratio')).toBeCloseTo(5, 9);
    expect(finding(WORKED, 'lever-ratio')?.level).toBe('pass');
    expect(finding({ ...WORKED, linkRadius: 90, anchorAlong: 90 }, 'lever-ratio')?.level).toBe('note');
  });

  test('500 N at 5 to 1 into a 3/4 in bore is 8.77 MPa', () => {
    // Worked from the published rule F/(π/4 d²); see the master-cylinder table in the lever tests.
    expect(derived({ ...WORKED, bore: '3/4 in' }, 'pressure')).toBeCloseTo(8.77, 2);
    expect(derived({ ...WORKED, bore: '3/4 in', cylinders: 'two' }, 'pressure')).toBeCloseTo(4.386, 2);
    expect(derived({ use: 'throttle' }, 'pressure')).toBeUndefined();
  });

  test('far end on the wrong side, and a stroke past centre, are stops', () => {
    expect(finding({ anchorOff: 150, anchorAlong: 40 }, 'stroke')).toMatchObject({
      level: 'stop',
      field: 'anchorOff',
    });
    expect(finding({ use: 'throttle', anchorOff: -150, anchorAlong: 70 }, 'stroke')?.title).toContain(
      'slack',
    );
    expect(finding({ travel: 90 }, 'over-centre')).toMatchObject({ level: 'stop', field: 'travel' });
  });

  test('a brake rests on about 1 mm of free play', () => {
    // Common practice: the rest stop leaves about 1 mm at the push rod.
    const level = (parameters: Parameters) => finding(parameters, 'free-play')?.level;
    expect([0, 0.4, 1, 3].map((freePlay) => level({ freePlay }))).toEqual([
      'stop',
      'stop',
      'pass',
      'caution',
    ]);
    expect(level({ use: 'throttle', freePlay: 0 })).toBe('caution');
    expect(finding({ restStop: 'no' }, 'rest-stop')?.level).toBe('stop');
    expect(finding({ use: 'clutch', restStop: 'no' }, 'rest-stop')?.level).toBe('caution');
  });

  test('a forward stop on a brake must not act before the full stroke; a throttle has one at its full pull', () => {
    // Common practice: a working forward stop belongs to the throttle alone.
    const early = finding({ forwardStop: 20 }, 'forward-stop');
    expect(early).toMatchObject({ level: 'stop', field: 'forwardStop', limit: { amount: 23 } });
    expect(early?.remedies?.[0]?.change).toEqual([{ op: 'remove', path: '/forwardStop' }]);
    expect(finding({ forwardStop: 40 }, 'forward-stop')?.level).toBe('pass');
    expect(finding({}, 'forward-stop')).toBeUndefined();
    expect(finding({ use: 'throttle' }, 'forward-stop')?.level).toBe('pass');
    expect(finding({ use: 'throttle', forwardStop: 10 }, 'forward-stop')?.level).toBe('caution');
    expect(finding({ use: 'throttle', forwardStop: 60 }, 'forward-stop')?.says).toContain('before the stop');
    expect(finding({ use: 'clutch', forwardStop: 10 }, 'forward-stop')?.level).toBe('caution');
  });

  test('stop screws bear on the edges of an even bar: at (75, 20) at rest, swung with the arm forward', () => {
    const stops = (parameters: Parameters) =>
      pedal(parameters)
        .value?.derived.filter(({ id }) => id.startsWith('stop.'))
        .map(({ text }) => text);
    const texts = stops({ ...EVEN_BAR, length: 220, forwardStop: 30, travel: 5 }) ?? [];
    expect(texts[0]).toContain('tip at 75, 20 from the pivot, along -90°');
    // (75, −20) turned 30° clockwise: (75 cos 30 − 20 sin 30, −75 sin 30 − 20 cos 30), worked by hand.
    expect(texts[1]).toContain('tip at 54.95, -54.82');
  });

  test('a cable that leaves beside the rest stop wants a screw and a pin of room: 8 + 8', () => {
    // A bar of even height, the cable square to it at 70, the screw at 75: 5 apart, worked by hand.
    const close = { ...EVEN_BAR, use: 'throttle', anchorAlong: 70, anchorOff: 400, linkRadius: 70 } as const;
    const rest = pedal(close).findings.find(
      ({ code, title }) => code === 'stop-room' && title.includes('rest'),
    );
    expect(rest).toMatchObject({ level: 'caution', field: 'stopRadius', limit: { amount: 16 } });
    expect(rest?.value?.amount).toBeCloseTo(5, 6);
    expect(finding({}, 'stop-room')?.level).toBe('pass');
  });

  test('return springs: two on a throttle, each in its own hole', () => {
    const level = (springs: number) => finding({ use: 'throttle', springs }, 'return-springs')?.level;
    expect([0, 1, 2].map(level)).toEqual(['stop', 'caution', 'pass']);
    expect(finding({ springs: 0 }, 'return-springs')?.level).toBe('note');
  });
});

describe('strength', () => {
  test('the worked arm: 152.4 MPa at the rod’s hole, factor 1.64 on A36, rod 10 kN, pad gives 0.63 mm', () => {
    // Worked by hand from 6 M h/[t (h³ − d³)] and F (L − a)² L/(3 E I); the rod's lever changes by 0.1 % in its swing.
    const proof = finding(WORKED, 'proof-load');
    expect(proof?.value?.amount).toBeCloseTo(152.4, 1);
    expect(proof?.title).toContain('factor 1.64');
    expect(proof?.anchor?.x).toBeCloseTo(50, 6);
    expect(Math.abs((derived(WORKED, 'give') ?? 0) / 0.625 - 1)).toBeLessThan(0.02);
    const press = finding(WORKED, 'bearing');
    expect(Math.abs((press?.value?.amount ?? 0) / 10_000 - 1)).toBeLessThan(0.002);
    expect(finding({ ...WORKED, material: 'S355' }, 'proof-load')?.title).toContain('factor 2.32');
  });

  test('a sideways 10 % adds 60 MPa there: 6 × 40 000 / (30 × 10²) = 80 beside the hole', () => {
    // 40 N·m over 200 mm, on the 30 mm that the hole leaves; with the edge 152.4 + 80 = 232.4, and no twist.
    expect(finding({ ...WORKED, sideShare: 10 }, 'proof-load')?.value?.amount).toBeCloseTo(232.4, 1);
  });

  test('a foot 10 mm off the middle twists it by 20 N·m', () => {
    expect(finding({ ...WORKED, offCentre: 10 }, 'proof-load')?.says).toContain('twist 20 N·m');
  });

  test('a throttle carries the proof load on its forward stop: 2000 × (220 − 75) = 290 N·m there', () => {
    const throttle = {
      ...EVEN_BAR,
      use: 'throttle',
      length: 220,
      sideShare: 0,
      offCentre: 0,
      springs: 2,
      springAt: 150,
    } as const;
    const proof = finding(throttle, 'proof-load');
    // 6 × 290 000 / (8 × 40²), worked by hand.
    expect(proof?.value?.amount).toBeCloseTo(135.9, 1);
  });

  test('half the thickness is a stop, and an arm of more than eight thicknesses a caution', () => {
    expect(finding({ thickness: 3, material: 'S235' }, 'proof-load')?.level).toBe('stop');
    expect(finding({ thickness: 4 }, 'slender-arm')?.level).toBe('caution');
    expect(finding({}, 'slender-arm')?.level).toBe('pass');
  });

  test('a horn is bent by the rod at its root', () => {
    expect(
      finding({ linkAngle: 90, anchorAlong: 150, anchorOff: 44, linkRadius: 60 }, 'horn-root')?.level,
    ).not.toBeUndefined();
    expect(
      finding({ linkAngle: 90, anchorAlong: 150, anchorOff: 44, linkRadius: 60 }, 'eye-peak')?.level,
    ).toBe('note');
  });

  test('nothing that holds the arm: the proof load is not checked, and it says so', () => {
    expect(finding({ anchorOff: 150, anchorAlong: 40 }, 'proof-load')).toMatchObject({ level: 'note' });
  });
});

describe('pivot, pin and use', () => {
  test('the fillet is the least for the tube’s wall (AISC J2.4: 3 mm to 6 mm, 5 mm over)', () => {
    expect(finding({}, 'fillet-leg')).toMatchObject({ level: 'pass', limit: { amount: 3 } });
    expect(finding({ tubeWall: 7, tubeOutside: 40, weldLeg: 3 }, 'fillet-leg')).toMatchObject({
      level: 'caution',
      limit: { amount: 5 },
    });
  });

  test('a bush is pressed into a bored hole and is short; a tube as long as 1.5 bores is not', () => {
    const bushed = { pivot: 'bushed' } as const;
    expect(partOf(bushed).features.find(({ id }) => id === 'pivot')).toMatchObject({
      hole: { finish: 'bore', size: 34 },
    });
    expect(finding(bushed, 'bush-fit')?.title).toContain('34.025 mm');
    expect(finding(bushed, 'pivot-length')?.level).toBe('caution');
    expect(finding({ tubeLength: 33 }, 'pivot-length')?.level).toBe('pass');
    expect(finding({ tubeLength: 32 }, 'pivot-length')?.level).toBe('caution');
  });

  test('aluminium is not welded to a steel tube, stainless with care', () => {
    expect(finding({ material: '6061-T6' }, 'weldability')?.level).toBe('stop');
    expect(finding({ material: '304' }, 'weldability')?.level).toBe('caution');
    expect(finding({ material: '6061-T6', pivot: 'bushed' }, 'weldability')).toBeUndefined();
  });

  test('a cut pin hole too small for the torch offers to be marked', () => {
    const found = pedal({ linkMade: 'cut', linkPin: 5 }).findings.find(
      ({ code, subject }) => code === 'small-hole' && subject.featureId === 'pin.1',
    );
    expect(found).toMatchObject({ level: 'stop', field: 'linkMade' });
  });

  test('brake, throttle and clutch each ask for a qualified person', () => {
    for (const use of ['brake', 'throttle', 'clutch']) {
      expect(finding({ use }, `use-${use}`)).toMatchObject({ level: 'caution' });
      expect(finding({ use }, `use-${use}`)?.title).toContain('qualified person');
    }
  });

  test('what is bought and sawn: tube, clevis and pin, springs, stop screws, pad plate', () => {
    const list = pedal({ use: 'throttle' }).value?.hardware ?? [];
    expect(list.find(({ id }) => id === 'pivot.tube')).toMatchObject({ name: 'tube 30 × 4', length: 50 });
    expect(list.find(({ id }) => id === 'springs')?.quantity).toBe(2);
    expect(list.find(({ id }) => id === 'stop.screws')).toMatchObject({
      name: 'M8 hexagon screw, full thread',
      quantity: 2,
    });
    expect(list.find(({ id }) => id === 'pad.plate')).toMatchObject({ name: 'flat 60 × 6', length: 80 });
    expect(list.map(({ kind }) => kind)).toEqual(expect.arrayContaining(['clevis', 'pin']));
  });

  test('holes are reamed after all welding', () => {
    const kinds = pedal({}).value?.steps.map(({ kind }) => kind) ?? [];
    expect(kinds.lastIndexOf('ream')).toBeGreaterThan(kinds.lastIndexOf('weld'));
    expect(kinds[0]).toBe('deburr');
  });
});

describe('what cannot be drawn names its field', () => {
  test.each<readonly [string, Parameters]>([
    ['tubeWall', { tubeOutside: 16, tubeWall: 8 }],
    ['groove', { pad: 'folded', fold: 'scored', groove: 8 }],
    ['stopRadius', { stopRadius: 250 }],
    ['springAt', { springAt: 400 }],
    ['jogOffset', { jogOffset: 80 }],
    ['jogAt', { jogOffset: 10, jogAt: 60 }],
    ['bridge', { pad: 'folded', bridge: 75 }],
    ['length', { profile: 'straight', length: 60, bossEdge: 60, tubeOutside: 80, stopOn: 'tab', springs: 0 }],
    ['kneeAlong', { kneeAlong: 200, kneeOff: 10 }],
    ['linkAngle', { eye: 40 }],
    ['stopAngle', { stopOn: 'tab', stopAngle: 10, stopRadius: 60 }],
    ['padLength', { pad: 'folded', kneeOff: 60, kneeAlong: 170, padLength: 40, kneeHeight: 60, fillet: 2 }],
  ])('%s', (field, parameters) => {
    const { value, findings, problems } = pedal(parameters);
    expect(problems).toEqual([]);
    expect(value?.part.name).toBeUndefined();
    expect(findings[0]).toMatchObject({ code: 'cannot-draw', level: 'stop', field });
  });

  test('an inside corner without room is drawn smaller, and told', () => {
    expect(finding({ fillet: 100 }, 'inside-corner')).toMatchObject({ field: 'fillet' });
    expect(finding({}, 'inside-corner')).toBeUndefined();
  });

  test('a label without room is left out, and told', () => {
    expect(finding({ label: 'ORCHARD HAUL CART NUMBER ONE' }, 'label-room')?.level).toBe('caution');
    expect(finding({ label: 'BRAKE' }, 'label-room')).toBeUndefined();
  });
});
