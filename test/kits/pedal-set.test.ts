// The pedal set of the orchard’s haul cart: one set of numbers, the stack between its rails, arms and their standoffs.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundsOf, isCircle } from '../../parts-library/geometry/index.js';
import { isLine, isMark, isOpening, outlineOf, type Part } from '../../parts-library/model/index.js';
import { runKit, startingShop } from '../../parts-library/job/index.js';
import { expectPlainWords, kitBench } from './in-a-job.js';

const {
  run,
  memberOf,
  partIn,
  findingIn,
  derivedIn,
  inJob,
  changed,
  byHand,
  rowOf,
  partOfRow,
  findingsOver,
} = kitBench('pedal-set');

const openingOf = (part: Part, id: string) => {
  const feature = part.features.filter(isOpening).find((one) => one.id === id);
  return feature === undefined ? undefined : isCircle(feature.contour);
};
const STANDOFFS = [
  'left-brake-standoff',
  'right-brake-standoff',
  'left-throttle-standoff',
  'right-throttle-standoff',
];

describe('the members', () => {
  const start = run();

  test('are two arms, four standoffs, the base, three stop tabs and the cable stop', () => {
    expect(start.members.map(({ role, quantity }) => [role, quantity])).toEqual([
      ['brake-arm', 1],
      ['throttle-arm', 1],
      ...STANDOFFS.map((role) => [role, 1]),
      ['brake-base', 1],
      ['stop-tab', 3],
      ['cable-stop', 1],
    ]);
  });

  test('at the start nothing stops them, alone or together', () => {
    const all = [...start.findings, ...start.members.flatMap(({ run: { findings } }) => findings)];
    expect(all.filter(({ level }) => level === 'stop')).toEqual([]);
    expect(start.findings.filter(({ level }) => level === 'caution')).toEqual([]);
  });

  test('right standoffs are the mirror image of the left ones, and the kit sees when one is not', () => {
    expect(STANDOFFS.map((role) => partIn(start, role).mirrored ?? false)).toEqual([
      false,
      true,
      false,
      true,
    ]);
    expect(findingsOver(inJob()).filter(({ code }) => code === 'hands')).toEqual([]);
    const same = byHand(inJob(), 'right-brake-standoff', 'mirrored', 'no');
    expect(findingsOver(same).filter(({ code }) => code === 'hands')).toMatchObject([
      { level: 'caution', subject: { rowId: 'kit.right-brake-standoff' } },
    ]);
  });

  test('each pair of standoffs lists its pivot bolt once', () => {
    // Grip of the bolt: two standoffs of 8 and the gap of 50.5 between them.
    const bolts = STANDOFFS.map(
      (role) => memberOf(start, role).run.value?.hardware.filter(({ id }) => id === 'pin.bolt').length,
    );
    expect(bolts).toEqual([1, 0, 1, 0]);
  });
});

describe('the stack between the rails', () => {
  // Worked by hand. A foot of 73 on plate of 8 reaches 65 beyond its standoff. A pair is 8 + 50 + 0.5 + 8 = 66.5.
  // Between the pairs the brake’s foot needs 65, and 5 are kept free: 70. The pads, 60 wide, reach no further than the
  // pair. 65 + 66.5 + 70 + 66.5 + 0 = 268 of 278: 10 are left, 9 at the low limit of 277, as asked.
  test('tubes of 50 fill an opening of 278 ±1 but for 10', () => {
    const start = run();
    expect(derivedIn(start, 'tubes').value?.amount).toBe(50);
    expect(derivedIn(start, 'stack').value?.amount).toBe(268);
    expect(derivedIn(start, 'clearance').value?.amount).toBe(10);
    expect(findingIn(start, 'opening')).toMatchObject({ level: 'pass', value: { amount: 10, plusMinus: 1 } });
  });

  test('twenty more in the opening are ten more on each tube', () => {
    const wide = run({ opening: '298 ±1' });
    expect(derivedIn(wide, 'tubes').value?.amount).toBe(60);
    expect(derivedIn(wide, 'clearance').value?.amount).toBe(10);
  });

  test('with tubes that are given, what is left is told; less than nothing at the low limit stops', () => {
    // Tubes of 54: 268 + 2 × 4 = 276, 2 left, 1 at the low limit: less than 4 on both sides together.
    expect(findingIn(run({ tubeLength: 54 }), 'opening')).toMatchObject({
      level: 'caution',
      value: { amount: 2 },
    });
    // Tubes of 55: 278, 0 left, −1 at the low limit.
    const none = findingIn(run({ tubeLength: 55 }), 'opening');
    expect(none).toMatchObject({ level: 'stop', field: 'opening', value: { amount: 0 } });
    // Tubes of 30, pads of 40: 268 − 40 = 228, 50 left; (50 − 4) ÷ 2 = 23 longer would still go in.
    const loose = findingIn(run({ tubeLength: 30, padWidth: 40 }), 'opening');
    expect(loose).toMatchObject({ level: 'caution', value: { amount: 50 } });
    expect(loose.says).toContain('53 mm');
  });

  test('an opening too narrow for any tube stops', () => {
    // Tubes of 20: pairs of 36.5, and the throttle’s pad of 60 reaches 30 − 18.25 = 11.75 beyond its pair:
    // 65 + 36.5 + 70 + 36.5 + 11.75 = 219.75.
    const narrow = run({ opening: 200 });
    expect(derivedIn(narrow, 'stack').value?.amount).toBe(219.75);
    expect(findingIn(narrow, 'opening').level).toBe('stop');
  });

  test('welded standoffs need less: base 15 beyond the pair, at least 80 more than the cylinder’s bolts', () => {
    // Given tubes of 50: pair 66.5, base max(66.5 + 30, 57.2 + 80) = 137.2; (137.2 − 66.5) ÷ 2 = 35.35 beside it.
    // 35.35 + 66.5 + 40.35 + 66.5 = 208.7.
    const welded = run({ brakeFoot: 'weld', tubeLength: 50 });
    expect(derivedIn(welded, 'stack').value?.amount).toBeCloseTo(208.7, 9);
    expect(boundsOf(outlineOf(partIn(welded, 'brake-base')).contour).maxX).toBeCloseTo(68.6, 9);
  });

  test('a distance between the pairs that the feet do not have stops', () => {
    // Both feet: 65 + 65 = 130; 120 is 10 short.
    const overlap = findingIn(run({ between: 120, throttleFoot: 'bent', opening: 400 }), 'between');
    expect(overlap).toMatchObject({ level: 'stop', field: 'between', value: { amount: -10 } });
  });

  test('pads: arms 136.5 apart leave 76.5 between pads of 60; pads of 100 leave 36.5, and one shoe presses both', () => {
    expect(findingIn(run(), 'pads')).toMatchObject({ level: 'pass', value: { amount: 76.5 } });
    const wide = { opening: 400, tubeLength: 50 };
    expect(findingIn(run({ ...wide, padWidth: 100 }), 'pads')).toMatchObject({
      level: 'caution',
      field: 'padWidth',
      value: { amount: 36.5 },
    });
    // Spread by 10 each: 20 more. Folded pads lie wholly outside their arms: 136.5.
    expect(findingIn(run({ ...wide, padWidth: 100, spread: 10 }), 'pads').value?.amount).toBeCloseTo(56.5, 9);
    expect(findingIn(run({ ...wide, pad: 'folded' }), 'pads').value?.amount).toBeCloseTo(136.5, 9);
    // Pads of 140 overlap by 3.5.
    expect(findingIn(run({ ...wide, padWidth: 140 }), 'pads')).toMatchObject({
      level: 'stop',
      value: { amount: -3.5 },
    });
  });

  test('spread pads are bent away from each other: the brake’s arm is the other hand', () => {
    const spread = run({ pad: 'folded', spread: 15 });
    expect(partIn(spread, 'brake-arm').mirrored).toBe(true);
    expect(partIn(spread, 'throttle-arm').mirrored).toBeUndefined();
    expect(partIn(run(), 'brake-arm').mirrored).toBeUndefined();
  });

  test('a tube of 26 × 5 is reamed for M16, of 26 × 4 rocks on it, of 26 × 6 does not take it', () => {
    expect(findingIn(run(), 'tube-on-bolt')).toMatchObject({ level: 'note', value: { amount: 0 } });
    expect(findingIn(run({ tubeWall: 4.8 }), 'tube-on-bolt').level).toBe('pass');
    expect(findingIn(run({ tubeWall: 4 }), 'tube-on-bolt')).toMatchObject({
      level: 'caution',
      value: { amount: 2 },
    });
    expect(findingIn(run({ tubeWall: 6 }), 'tube-on-bolt')).toMatchObject({
      level: 'stop',
      value: { amount: -2 },
    });
  });
});

describe('one number, every part', () => {
  test('the pivot tube is in both arms, and standoffs and base leave it its length and play', () => {
    const set = run({ tubeOutside: 30, tubeWall: 7, opening: '298 ±1' });
    for (const role of ['brake-arm', 'throttle-arm']) {
      // Hole 0.2 larger than the tube, on diameter.
      expect(openingOf(partIn(set, role), 'pivot')?.radius).toBeCloseTo(15.1, 9);
      expect(memberOf(set, role).run.value?.hardware.find(({ id }) => id === 'pivot.tube')?.length).toBe(60);
    }
    // Inner faces of the feet’s ears 60.5 apart, bolts 73 − 16 = 57 beyond: 30.25 + 57 = 87.25 from the middle.
    expect(openingOf(partIn(set, 'brake-base'), 'ear.2.hole.1')?.centre.x).toBeCloseTo(87.25, 9);
    expect(partIn(set, 'brake-base').features.filter(({ id }) => id.startsWith('ear.'))).toHaveLength(4);
  });

  test('both pedals turn on one line: the throttle’s standoffs are higher by the base they do not stand on', () => {
    // Welded edge to pivot: 64 + 8, then 64 + 12.
    expect(openingOf(partIn(run(), 'left-throttle-standoff'), 'pivot')?.centre.y).toBeCloseTo(72, 9);
    expect(
      openingOf(partIn(run({ baseThickness: 12 }), 'left-throttle-standoff'), 'pivot')?.centre.y,
    ).toBeCloseTo(76, 9);
  });

  test('rod, cable and stop screws reach every part that holds them', () => {
    const set = run({ rodRadius: 66, cableRadius: 58, stopScrew: 'M10', tabThickness: 10 });
    const pin = (role: string) => {
      const mark = partIn(set, role)
        .features.filter(isMark)
        .find(({ id }) => id === 'pin.1');
      return mark === undefined ? undefined : Math.hypot(mark.at.x, mark.at.y);
    };
    expect(pin('brake-arm')).toBeCloseTo(66, 9);
    expect(pin('throttle-arm')).toBeCloseTo(58, 9);
    // The base’s ears stand 66 below the rod: their bolts 18 above and below that.
    expect(openingOf(partIn(set, 'brake-base'), 'ear.1.hole.1')?.centre.y).toBeCloseTo(-84, 9);
    const tab = partIn(set, 'stop-tab').features.filter(isMark)[0]?.hole;
    expect(tab).toMatchObject({ finish: 'tap', thread: 'M10' });
    expect(
      memberOf(set, 'throttle-arm').run.value?.hardware.find(({ id }) => id === 'stop.screws')?.name,
    ).toContain('M10');
  });

  test('material and thicknesses go where they are named', () => {
    const set = run({ material: 'S275', armThickness: 12, standoffThickness: 6 });
    expect(new Set(set.members.map(({ role }) => partIn(set, role).material))).toEqual(new Set(['S275']));
    expect(partIn(set, 'brake-arm').thickness).toBe(12);
    expect(STANDOFFS.map((role) => partIn(set, role).thickness)).toEqual([6, 6, 6, 6]);
  });

  test('a brake pivot at 2000 N, 260 against 60, is pushed away by 2000 × (260 ÷ 60 − 1) = 6667 N', () => {
    const set = run();
    expect(derivedIn(set, 'pivots').value?.amount).toBeCloseTo(6666.667, 3);
    // The throttle ends at its stop: 1000 × (260 ÷ 88 − 1) = 1955 N.
    expect(derivedIn(set, 'pivots').text).toContain('1955 N');
  });
});

describe('a member set by hand', () => {
  const set = byHand(inJob(), 'left-throttle-standoff', 'thickness', '10');

  test('shows that it is, keeps it, and follows in everything else', () => {
    expect(rowOf(set, 'left-throttle-standoff').overrides).toEqual({ thickness: '10' });
    const next = changed(set, { standoffThickness: 6, pivotHeight: 70 });
    expect(partOfRow(next, 'left-throttle-standoff').thickness).toBe(10);
    expect(openingOf(partOfRow(next, 'left-throttle-standoff'), 'pivot')?.centre.y).toBeCloseTo(78, 9);
    expect(partOfRow(next, 'right-throttle-standoff').thickness).toBe(6);
  });
});

describe('joints', () => {
  test('each foot of the brake meets the base on two M8, 2 × (9 − 8) mm of room', () => {
    // Clearance hole for M8, medium: 9 mm (ISO 273).
    const joints = run().findings.filter(({ code }) => code === 'joint');
    expect(joints.map(({ level, limit }) => [level, limit?.amount])).toEqual([
      ['pass', 2],
      ['pass', 2],
    ]);
  });

  test('their spacing is one number, and welded standoffs have no joint', () => {
    const wider = run({ footSpacing: 44 }).findings.filter(({ code }) => code === 'joint');
    expect(wider.map(({ level, value }) => [level, value?.amount])).toEqual([
      ['pass', 0],
      ['pass', 0],
    ]);
    const welded = run({ brakeFoot: 'weld' });
    expect(welded.findings.filter(({ code }) => code === 'joint')).toEqual([]);
    // Where the ears go is etched on the base instead.
    expect(
      partIn(welded, 'brake-base')
        .features.filter(isLine)
        .map(({ id }) => id),
    ).toContain('ear.1.inner');
  });
});

describe('random sets', () => {
  const tenths = (min: number, max: number) =>
    fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
  const sets = fc.record(
    {
      opening: tenths(180, 600),
      room: tenths(0, 30),
      tubeOutside: tenths(22, 34),
      tubeWall: tenths(3, 6),
      tubeLength: fc.option(tenths(20, 90), { nil: undefined }),
      sidePlay: tenths(0, 1),
      between: fc.option(tenths(10, 200), { nil: undefined }),
      pivotBolt: fc.constantFrom('M12', 'M16', '1/2-13'),
      length: tenths(220, 300),
      pad: fc.constantFrom('welded', 'folded', 'flat'),
      padWidth: tenths(40, 120),
      spread: fc.option(tenths(10, 20), { nil: undefined }),
      rodRadius: tenths(50, 70),
      brakeFoot: fc.constantFrom('bent', 'weld'),
      throttleFoot: fc.constantFrom('bent', 'weld'),
      pivotHeight: tenths(60, 90),
      standoffThickness: fc.constantFrom('6', '8', '10'),
      footDepth: tenths(60, 90),
      footSpacing: tenths(30, 44),
    },
    { requiredKeys: [] },
  );

  test('every part is drawn or a stop says why; the pieces of the stack and what is left make the opening', () => {
    const numRuns = process.env['FISHPLATE_LONG'] === '1' ? 600 : 40;
    let drawn = 0;
    let asked = 0;
    fc.assert(
      fc.property(sets, (numbers) => {
        const ran = run(numbers);
        expectPlainWords(ran);
        for (const { run: one } of ran.members) {
          asked += 1;
          if (one.value === undefined) expect(one.findings.some(({ level }) => level === 'stop')).toBe(true);
          else drawn += 1;
        }
        const [stack, left] = ['stack', 'clearance'].map((id) => derivedIn(ran, id).value?.amount ?? NaN);
        expect((stack ?? NaN) + (left ?? NaN)).toBeCloseTo(numbers.opening ?? 278, 9);
        expect(findingIn(ran, 'opening').level === 'stop').toBe(
          (left ?? NaN) - (numbers.opening === undefined ? 1 : 0) < 0,
        );
        for (const { level } of ran.findings.filter(({ code }) => code === 'joint'))
          expect(level).toBe('pass');
      }),
      { numRuns, seed: 20261125 },
    );
    expect(drawn / asked).toBeGreaterThan(0.8);
  }, 60_000);

  test('what cannot be read is named', () => {
    for (const field of ['opening', 'tubeOutside', 'length', 'footBolt', 'material']) {
      const answer = runKit('pedal-set', { [field]: 'much' }, 'mm', startingShop);
      expect(answer.ok ? [] : answer.problems.map((problem) => problem.field)).toEqual([field]);
    }
  });
});
