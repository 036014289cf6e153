// The wheel-hub adapter: withheld by default, studs and pilots when released, nuts and sockets with room.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { containsContour, findFaults, isCircle } from '../../parts-library/geometry/index.js';
import { partFiles, printOf, runPart, startingShop } from '../../parts-library/job/index.js';
import { isCut, isMark, isOpening, outlineOf, type Finding } from '../../parts-library/model/index.js';

type Parameters = Readonly<Record<string, unknown>>;

const adapter = (parameters: Parameters, unit: 'mm' | 'in' = 'mm') =>
  runPart({ family: 'wheel-hub-adapter', parameters, unit }, startingShop);

const finding = (parameters: Parameters, code: string, field?: string): Finding =>
  adapter(parameters).findings.find(
    (one) => one.code === code && (field === undefined || one.field === field),
  ) ?? raise(code);

const hardware = (parameters: Parameters, id: string) =>
  adapter(parameters).value?.hardware.find((item) => item.id === id) ?? raise(id);

describe('release', () => {
  test('by default files are withheld, and nothing but the release stands in the way', () => {
    const run = adapter({});
    expect(run.findings.filter(({ level }) => level === 'stop').map(({ code }) => code)).toEqual([
      'machined-blank',
    ]);
    expect(partFiles(run, {}).ok).toBe(false);
    expect(partFiles(adapter({ release: 'machined' }), {}).ok).toBe(true);
  });

  test('the print carries fits on both sides, seats, runout, studs, allowances, and who checks it', () => {
    // ISO 286, published: H7 over 50 to 80 mm +0.030; f7 over 50 to 80 mm −0.030, −0.060.
    const print = (printOf(adapter({ release: 'machined' })) ?? raise('print'))
      .replaceAll(/<[^>]*>/g, ' ')
      .replaceAll(/\s+/g, ' ')
      .replaceAll('Ø', '⌀');
    for (const words of [
      'cut ⌀52, turn ⌀56 H7 (56 to 56.03)',
      'turn spigot ⌀72 f7 (71.94 to 71.97), 4 high',
      't 16, face to 10 between seats',
      'seats flat, parallel 0.03 mm',
      'rim ⌀330: runout 0.3 mm at most',
      '5 × ream ⌀14 for M12x1.5',
      'studs 10.9, 25 out',
      'have a qualified person check it',
      'Hub-centric',
    ]) {
      expect(print).toContain(words);
    }
  });

  test('seats: 16 mm less 1 a side and a spigot of 4 are 10 apart, and the track grows 20', () => {
    expect(adapter({}).value?.derived.find(({ id }) => id === 'flange')?.value.amount).toBeCloseTo(10, 9);
    expect(finding({}, 'wheel-offset').title).toContain('20 mm');
    expect(
      adapter({ wheelPilot: 'hub' }).value?.derived.find(({ id }) => id === 'flange')?.value.amount,
    ).toBeCloseTo(14, 9);
  });

  test('the bore leaves the table 4 mm undersize', () => {
    const centre = adapter({}).value?.part.features.find(({ id }) => id === 'centre');
    expect(centre !== undefined && isCut(centre) ? isCircle(centre.contour)?.radius : 0).toBeCloseTo(26, 9);
  });
});

describe('studs', () => {
  test('stud holes are marks, reamed to the press or tapped, never cut', () => {
    const holes = (parameters: Parameters) =>
      (adapter(parameters).value?.part.features ?? [])
        .filter(isMark)
        .filter(({ id }) => id.startsWith('pattern2'))
        .map(({ hole }) => hole);
    expect(holes({})[0]?.finish).toBe('ream');
    expect(holes({ knurl: 14.3, press: 0.1 })[0]?.size).toBeCloseTo(14.2, 9);
    // Tap drill of M12x1.5: 10.5, published charts.
    expect(holes({ studs: 'threaded' })[0]).toMatchObject({ finish: 'tap', size: 10.5, thread: 'M12x1.5' });
  });

  test('a nut wants one diameter of stud, and is a stop below 0.8', () => {
    // Common practice. Stud 25 out, wheel 8 thick: 17 in the nut, 11.3 turns of 1.5.
    expect(finding({}, 'stud-thread')).toMatchObject({ level: 'pass', value: { amount: 17 } });
    expect(finding({}, 'stud-thread').says).toContain('11.3 turns');
    expect(finding({ studLength: 19 }, 'stud-thread').level).toBe('caution');
    expect(finding({ studLength: 17 }, 'stud-thread').level).toBe('stop');
    expect(finding({ studLength: 6 }, 'stud-thread').level).toBe('stop');
  });

  test('M8 of 8.8 screwed into S235 wants 8.4 mm of it, and gets what machining leaves', () => {
    // FED-STD-H28/2B areas, 6g/6H: to break an 8.8 M8 (29.28 kN) in Rm 360 takes 8.4 mm.
    const m8 = {
      studs: 'threaded',
      studGrade: '8.8',
      material: 'S235',
      thickness: 12,
      pattern2: { bolt: 'M8' },
    };
    const { limit, value, level, remedies, field } = finding(m8, 'thread-engagement');
    expect(limit?.amount).toBeCloseTo(8.4, 1);
    expect(value?.amount).toBeCloseTo(6, 9);
    expect(level).toBe('note');
    expect([remedies, field]).toEqual([undefined, 'studs']);
  });

  test('a weak tapped plate is a caution without a remedy that this family has no field for', () => {
    const thin = {
      studs: 'threaded',
      studGrade: '12.9',
      material: '5052-H32',
      thickness: 10,
    };
    expect(finding(thin, 'thread-engagement')).toMatchObject({ level: 'caution', field: 'studs' });
    expect(finding(thin, 'thread-engagement').remedies).toBeUndefined();
  });

  test('pressed studs want three quarters of a diameter of plate', () => {
    expect(finding({ thickness: 14 }, 'stud-press')).toMatchObject({
      level: 'caution',
      limit: { amount: 9 },
    });
    expect(finding({}, 'stud-press').level).toBe('pass');
  });

  test('screwed studs want a diameter of plate', () => {
    // Common practice: 1 d in steel. Flange 10 under M12, 14 with the hub’s own pilot and no spigot.
    expect(finding({ studs: 'threaded' }, 'stud-screwed')).toMatchObject({
      level: 'caution',
      limit: { amount: 12 },
    });
    expect(finding({ studs: 'threaded', wheelPilot: 'hub' }, 'stud-screwed').level).toBe('pass');
  });

  test('stud heads under the hub’s flange are a caution', () => {
    // 139.7/2 − 1.6 × 12/2 − flange/2: 60.25 less half the flange.
    expect(finding({ hubFlange: 118 }, 'stud-heads').value?.amount).toBeCloseTo(1.25, 9);
    expect(finding({ hubFlange: 118 }, 'stud-heads').level).toBe('pass');
    expect(finding({ hubFlange: 124 }, 'stud-heads').level).toBe('caution');
    expect(finding({ hubFlange: 124, studHead: 15 }, 'stud-heads').level).toBe('pass');
  });
});

describe('hub nuts', () => {
  test('between the studs they have room, in line with them they have not', () => {
    // Radii 50 and 69.85 in line: 19.85 − 6 = 13.85; 60 on the hub leaves 3.85 under a washer’s 10.
    expect(finding({}, 'nuts-beside-studs').level).toBe('pass');
    const inLine = { clocking: -90, boltCircle: 'circle 120' };
    expect(finding(inLine, 'nuts-beside-studs').value?.amount).toBeCloseTo(69.85 - 60 - 6, 9);
    expect(finding(inLine, 'nuts-beside-studs').level).toBe('stop');
  });

  test('the remedy turns them to the middle between the studs', () => {
    const inLine = { clocking: -90, boltCircle: 'circle 120' };
    const change = finding(inLine, 'nuts-beside-studs').remedies?.[0]?.change[0];
    // Five and five: half of 72°.
    expect(change).toMatchObject({ path: '/clocking', value: '-54' });
    expect(finding({ ...inLine, clocking: -54 }, 'nuts-beside-studs').level).toBe('pass');
    // Four and five fall together every 18°; half of it is the most there is.
    const fourOnFive = finding({ ...inLine, bolts: 4 }, 'nuts-beside-studs').remedies?.[0]?.change[0];
    expect(fourOnFive).toMatchObject({ value: '-81' });
  });

  test('a nut beside the spigot: circle 100 and a wheel’s bore of 82 leave 9 under a washer of 10', () => {
    const near = finding({ pattern2: { boltedBore: 82 } }, 'nuts-beside-pilot');
    expect(near.level).toBe('stop');
    expect(near.value?.amount).toBeCloseTo(9, 9);
  });

  test('nuts proud of the wheel’s seat want pockets, and hold the wheel off when those are too shallow', () => {
    // Washer 2.2, nut 8.4, two threads 3: 13.6 over the seat.
    expect(finding({}, 'nuts-under-wheel')).toMatchObject({ level: 'caution', field: 'pocket' });
    expect(finding({}, 'nuts-under-wheel').value?.amount).toBeCloseTo(13.6, 9);
    expect(finding({ pocket: 10 }, 'nuts-under-wheel').level).toBe('stop');
    expect(finding({ pocket: 14 }, 'nuts-under-wheel').level).toBe('pass');
    expect(finding({ sink: 4, pocket: 10 }, 'nuts-under-wheel').level).toBe('pass');
  });

  test('counterbore and cone leave half a diameter', () => {
    // Cone 60°: (15 − 11)/2 ÷ tan 30° = 3.464 deep.
    expect(finding({ hubSeat: 'cone' }, 'under-nuts').value?.amount).toBeCloseTo(10 - 3.464, 3);
    expect(finding({ sink: 6 }, 'under-nuts').level).toBe('caution');
    expect(finding({ sink: 8 }, 'under-nuts').level).toBe('stop');
  });

  test('studs of the hub take nuts, threads and holes take bolts', () => {
    // T = K D F, published: M10 8.8 dry 50.5 N·m.
    expect(hardware({}, 'hub.nuts').says).toContain('50.5 N·m');
    expect(hardware({}, 'hub.nuts').says).toContain('23.6 mm');
    expect(hardware({ boltedBy: 'thread' }, 'hub.bolts').name).toMatch(/^M10 × \d+ hexagon bolt, 8.8$/);
    // 10 + 10 grip, washers 4.4, nut 8.4, threads 3: 35.8, so 40.
    expect(hardware({ boltedBy: 'hole' }, 'hub.bolts').name).toContain('M10 × 40');
    expect(hardware({ boltedBy: 'thread', hubSeat: 'cone' }, 'hub.bolts').name).toContain(
      'bolt with 60° cone',
    );
    expect(hardware({}, 'studs').name).toBe('M12x1.5 × 35 wheel stud, knurl ⌀14.1, 10.9');
    expect(hardware({ seat: 'flat' }, 'wheel.nuts').name).toContain('flat seat');
  });
});

describe('what centres the wheel', () => {
  test('flat seats and no pilot are a stop, cones alone a caution', () => {
    expect(finding({ wheelPilot: 'studs', seat: 'flat' }, 'wheel-centring').level).toBe('stop');
    expect(finding({ wheelPilot: 'studs', seat: 'cone' }, 'wheel-centring').level).toBe('caution');
  });

  test('a spigot needs a wall round the hub’s pilot: (72 − 56)/2 = 8', () => {
    expect(finding({}, 'pilot-shoulder')).toMatchObject({ level: 'pass', value: { amount: 8 } });
    expect(finding({ hubPilot: 66 }, 'pilot-shoulder').level).toBe('caution');
    expect(finding({ hubPilot: 70 }, 'pilot-shoulder').level).toBe('stop');
    expect(finding({ spigot: 1.5 }, 'pilot-shoulder')).toMatchObject({ level: 'stop', field: 'spigot' });
  });

  test('the hub’s own pilot has to fit the wheel and reach 2 mm into it', () => {
    const through = { wheelPilot: 'hub', hubPilot: 71.9, boltCircle: 'circle 105' };
    expect(finding(through, 'wheel-centring').level).toBe('caution');
    expect(finding({ ...through, hubPilotHeight: 18 }, 'wheel-centring').level).toBe('pass');
    expect(finding({ ...through, hubPilotHeight: 15 }, 'wheel-centring').level).toBe('stop');
    expect(finding({ ...through, hubPilot: 70, hubPilotHeight: 18 }, 'wheel-centring').level).toBe('stop');
  });

  test('runout at the rim: 0.03 × 330/139.7 + 0.02 × 330/100 = 0.137', () => {
    expect(finding({ hubRunout: 0.02 }, 'runout').value?.amount).toBeCloseTo(0.1369, 4);
    expect(finding({ hubRunout: 0.1 }, 'runout').level).toBe('caution');
  });

  test('a wheel’s face that hangs over the adapter is a caution', () => {
    expect(finding({ wheelPad: 200 }, 'wheel-seat').level).toBe('caution');
    expect(finding({ wheelPad: 180 }, 'wheel-seat').level).toBe('pass');
  });
});

describe('loads', () => {
  const CORNER = { wheelMass: 150, tyreDiameter: 500 };

  test('a tyre that slides sideways pulls 1685 N on one of five studs', () => {
    // M = 0.8 × 150 × 9.80665 × 0.25 = 294.2 N·m; F = 2 M/(n R) = 588.4 ÷ (5 × 0.06985) = 1684.7 N, plane statics.
    expect(finding(CORNER, 'joint-opening', 'pattern2.bolt').value?.amount).toBeCloseTo(1684.7, 0);
    const heavy = { ...CORNER, wheelMass: 10000 };
    expect(finding(heavy, 'joint-opening', 'pattern2.bolt').level).toBe('stop');
  });

  test('brake torque shears both patterns: 1000 N·m ÷ (5 × 0.05) = 4000 N on the hub’s bolts', () => {
    expect(finding({ torque: 1000 }, 'bolt-shear', 'bolt').value?.amount).toBeCloseTo(4000, 6);
    expect(finding({ torque: 1000 }, 'bolt-shear', 'pattern2.bolt').value?.amount).toBeCloseTo(2863.3, 1);
  });

  test('M16 studs want 22 mm to the edge', () => {
    // AISC 360-16 Table J3.4M, published: 16 mm bolt, 22 mm.
    const m16 = { pattern2: { bolt: 'M16x1.5' }, knurl: 18.1, outside: 139.7 + 42 };
    expect(finding(m16, 'edge-distance', 'outside')).toBeDefined();
    const edges = adapter(m16).findings.filter(({ code }) => code === 'edge-distance');
    expect(edges.find(({ level }) => level === 'caution')?.limit?.amount).toBe(22);
  });

  test('wheel holes are weighed against studs that stand fixed', () => {
    // Hole 13 over M12 leaves 0.5; a stud hole drilled from a mark drifts up to 0.5.
    const up = finding({ pattern2: { boltedHole: 13 } }, 'bolt-up', 'pattern2.boltedHole');
    expect(up.says).toContain('fixed fastener');
    expect(up.limit?.amount).toBeCloseTo(0.5, 9);
  });
});

describe('what cannot be drawn names the field', () => {
  test.each([
    ['thickness', { thickness: 6 }],
    ['sink', { sink: 12 }],
    ['hubSeat', { hubSeat: 'cone', hubCone: 40 }],
    ['boreAllowance', { hubPilot: 10, boreAllowance: 12 }],
    ['outside', { outside: 50 }],
    ['knurl', { knurl: 11 }],
    ['holes', { bolt: '9/16-12' }],
    ['boltCircle', { boltCircle: 'circle 2500' }],
    ['pattern2.boltCircle', { pattern2: { boltCircle: 'adjacent 1600' } }],
  ])('%s %j', (field, parameters) => {
    const { value, findings } = adapter(parameters);
    expect(value).toBeUndefined();
    expect(findings[0]).toMatchObject({ code: 'cannot-draw', level: 'stop', field });
  });
});

const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
const runs = process.env['FISHPLATE_LONG'] === '1' ? 1000 : 60;

describe('random adapters', () => {
  const adapters = fc.record(
    {
      bolts: fc.integer({ min: 3, max: 8 }),
      boltCircle: tenths(80, 200).map((d) => `circle ${d}±0.1`),
      bolt: fc.constantFrom('M8', 'M10', 'M12', '3/8-16', '1/2-20'),
      holes: fc.constantFrom('clearance', 'tapped', 'drill'),
      boltedBy: fc.constantFrom('hole', 'thread', 'stud'),
      hubPilot: tenths(30, 70),
      hubSeat: fc.constantFrom('flat', 'cone'),
      sink: fc.constantFrom(0, 3),
      pattern2: fc.record({
        bolts: fc.integer({ min: 3, max: 8 }),
        boltCircle: tenths(90, 220).map((d) => `circle ${d}`),
        bolt: fc.constantFrom('M10', 'M12x1.5', '1/2-20', '9/16-18'),
        boltedBore: tenths(50, 110),
      }),
      wheelPilot: fc.constantFrom('spigot', 'hub', 'studs'),
      seat: fc.constantFrom('cone', 'flat'),
      studs: fc.constantFrom('pressed', 'threaded'),
      knurl: fc.constantFrom(14.1, 16),
      thickness: fc.constantFrom('12', '16', '20', '5/8 in'),
      torque: fc.constantFrom(200, 3000, undefined),
      label: fc.constantFrom('HUB', undefined),
    },
    { requiredKeys: ['boltCircle', 'pattern2'] },
  );

  test('contours are sound and openings lie inside, or a stop says why; no figure is missing', () => {
    let drawn = 0;
    fc.assert(
      fc.property(adapters, (parameters) => {
        const { problems, findings, value } = adapter({ release: 'machined', ...parameters });
        for (const { says, title } of findings)
          expect(`${title} ${says}`).not.toMatch(/NaN|undefined|Infinity/);
        const stopped = problems.length > 0 || findings.some(({ level }) => level === 'stop');
        if (value === undefined) {
          expect(stopped).toBe(true);
          return;
        }
        drawn += 1;
        for (const { contour } of value.part.features.filter(isCut)) expect(findFaults(contour)).toEqual([]);
        if (stopped) return;
        const outline = outlineOf(value.part).contour;
        for (const { contour } of value.part.features.filter(isOpening))
          expect(containsContour(outline, contour)).toBe(true);
        expect(JSON.stringify([value.steps, value.hardware, value.dimensions])).not.toMatch(/NaN|undefined/);
      }),
      { numRuns: runs, seed: 20261125 },
    );
    expect(drawn / runs).toBeGreaterThan(0.6);
  });

  test('whatever is put in a field, reading answers and never throws', () => {
    const anything = fc.oneof(fc.string(), fc.double(), fc.constant(null), fc.object());
    const field = fc.constantFrom('bolts', 'boltCircle', 'pattern2', 'knurl', 'release', 'sink', '__proto__');
    fc.assert(
      fc.property(fc.dictionary(field, anything), (parameters) => {
        const { problems, value, findings } = adapter(parameters);
        expect(
          value !== undefined || problems.length > 0 || findings.some(({ level }) => level === 'stop'),
        ).toBe(true);
      }),
      { numRuns: runs, seed: 20261125 },
    );
  });
});

function raise(what: string): never {
  throw new Error(`No ${what}.`);
}
