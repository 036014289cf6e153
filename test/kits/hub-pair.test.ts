// The hub pair of the orchard’s haul cart: two adapters from one set of numbers, withheld until somebody machines them.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runKit, startingShop } from '../../parts-library/job/index.js';
import { isCircle } from '../../parts-library/geometry/index.js';
import { isMark, isOpening, type Part } from '../../parts-library/model/index.js';
import { expectPlainWords, kitBench } from './in-a-job.js';

const { run, memberOf, partIn, findingIn, derivedIn, inJob, changed, byHand, rowOf, partOfRow } =
  kitBench('hub-pair');
const ROLES = ['adapter-left', 'adapter-right'];

/** Distances of the marks from the middle whose ids begin alike. */
const radii = (part: Part, start: string): readonly number[] =>
  part.features
    .filter(isMark)
    .filter(({ id }) => id.startsWith(start))
    .map(({ at }) => Math.hypot(at.x, at.y));

describe('release', () => {
  const stopsOf = (ran: ReturnType<typeof run>) =>
    ran.members.map(({ run: { findings } }) =>
      findings.filter(({ level }) => level === 'stop').map(({ code }) => code),
    );

  test('both are withheld until the one number that releases them is chosen', () => {
    expect(stopsOf(run())).toEqual([['machined-blank'], ['machined-blank']]);
    const released = run({ release: 'machined' });
    expect(stopsOf(released)).toEqual([[], []]);
    for (const role of ROLES) {
      const blank = memberOf(released, role).run.findings.find(({ code }) => code === 'machined-blank');
      expect(blank?.level).toBe('caution');
    }
  });
});

describe('the track', () => {
  // Worked by hand: 16 of plate, 1 faced off each side, a spigot of 4 standing: 16 − 2 − 4 = 10 from hub to wheel.
  test('900 becomes 920 with 16 mm plate on both sides', () => {
    const start = run();
    expect(derivedIn(start, 'track').value?.amount).toBe(920);
    expect(derivedIn(start, 'track').text).toContain('= 920 mm');
    // The part itself says the same of its side.
    for (const role of ROLES)
      expect(
        memberOf(start, role).run.value?.derived.find(({ id }) => id === 'flange')?.value?.amount,
      ).toBeCloseTo(10, 9);
  });

  test('9 wider on the left is faced for: (16 − 4 − 9) ÷ 2 = 1.5 off each side; the sides then differ by 1', () => {
    const uneven = run({ widenLeft: 9 });
    expect(derivedIn(uneven, 'track').value?.amount).toBe(919);
    expect(
      memberOf(uneven, 'adapter-left').run.value?.derived.find(({ id }) => id === 'flange')?.value?.amount,
    ).toBeCloseTo(9, 9);
    expect(findingIn(uneven, 'facing').value?.amount).toBeCloseTo(1.5, 9);
    expect(findingIn(uneven, 'sides')).toMatchObject({ level: 'caution', value: { amount: 1 } });
    expect(findingIn(run({ widenLeft: 9, widenRight: 9 }), 'sides').level).toBe('pass');
  });

  test('a plate too thin or too thick for its side stops, and that adapter is not made', () => {
    // (16 − 4 − 12) ÷ 2 = 0; (30 − 4 − 12) ÷ 2 = 7 off each side.
    const thin = run({ widenRight: 12 });
    const stop = thin.findings.find(({ level }) => level === 'stop');
    expect(stop).toMatchObject({ code: 'facing', field: 'widenRight', value: { amount: 0 } });
    // 12 of flange, 4 of spigot, 1 off each side.
    expect(stop?.says).toContain('18 mm');
    expect(thin.members.map(({ role }) => role)).toEqual(['adapter-left']);
    const thick = run({ thickness: 30, widenLeft: 12 });
    expect(findingIn(thick, 'facing')).toMatchObject({ level: 'stop', value: { amount: 7 } });
    // A plate that is all spigot: (5 − 8 − (5 − 8 − 2)) ÷ 2 = 1 is faced, but nothing remains: the part refuses.
    const none = run({ thickness: 5, spigot: 8 });
    expect(memberOf(none, 'adapter-left').run.findings).toMatchObject([
      { code: 'cannot-draw', level: 'stop', field: 'thickness' },
    ]);
  });

  test('each wheel stands as much further from its bearings as its side is wide', () => {
    expect(findingIn(run({ widenLeft: 9 }), 'track')).toMatchObject({ level: 'note', value: { amount: 10 } });
  });
});

describe('one number, both adapters', () => {
  test('patterns, pilots, studs, plate', () => {
    const pair = run({
      hubBolts: 4,
      hubCircle: 'circle 108',
      wheelBolts: 4,
      wheelCircle: 'circle 130',
      hubPilot: 60,
      thickness: 20,
      material: 'S275',
    });
    for (const role of ROLES) {
      const part = partIn(pair, role);
      expect(radii(part, 'pattern1.hole.').map((radius) => Number(radius.toFixed(6)))).toEqual([
        54, 54, 54, 54,
      ]);
      expect(radii(part, 'pattern2.hole.').map((radius) => Number(radius.toFixed(6)))).toEqual([
        65, 65, 65, 65,
      ]);
      // 4 mm are left in the bore on diameter: 60 − 4 = 56.
      const centre = part.features.filter(isOpening).map(({ contour }) => isCircle(contour)?.radius);
      expect(centre[0]).toBeCloseTo(28, 9);
      expect([part.thickness, part.material]).toEqual([20, 'S275']);
    }
  });

  test('a circle measured between neighbours is the same circle: five of 100 stand 58.779 apart', () => {
    // 100 × sin 36° = 58.7785.
    const pair = run({ hubCircle: 'adjacent 58.7785' });
    expect(radii(partIn(pair, 'adapter-right'), 'pattern1.hole.')[0]).toBeCloseTo(50, 3);
  });
});

describe('a side set by hand', () => {
  test('keeps it and shows it; the rest follows', () => {
    const set = byHand(inJob(), 'adapter-left', 'outside', '190');
    expect(rowOf(set, 'adapter-left').overrides).toEqual({ outside: '190' });
    const next = changed(set, { thickness: 20 });
    expect(rowOf(next, 'adapter-left').overrides).toEqual({ outside: '190' });
    expect(ROLES.map((role) => partOfRow(next, role).thickness)).toEqual([20, 20]);
  });
});

describe('random pairs', () => {
  const tenths = (min: number, max: number) =>
    fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
  const pairs = fc.record(
    {
      hubBolts: fc.constantFrom(4, 5, 6),
      hubCircle: tenths(90, 120).map((d) => `circle ${d}`),
      hubPilot: tenths(40, 66),
      wheelBolts: fc.constantFrom(4, 5, 6),
      wheelCircle: tenths(120, 170).map((d) => `circle ${d}`),
      thickness: fc.constantFrom('12', '16', '20', '25'),
      spigot: tenths(3, 6),
      widenLeft: fc.option(tenths(5, 20), { nil: undefined }),
      widenRight: fc.option(tenths(5, 20), { nil: undefined }),
      track: tenths(600, 1500),
      release: fc.constantFrom('withheld', 'machined'),
    },
    { requiredKeys: [] },
  );

  test('the track is what it was and both flanges; nothing withheld is written', () => {
    fc.assert(
      fc.property(pairs, (numbers) => {
        const ran = run(numbers);
        expectPlainWords(ran);
        const flanges = ran.members.map(
          ({ run: { value } }) => value?.derived.find(({ id }) => id === 'flange')?.value?.amount,
        );
        if (flanges.length === 2 && flanges.every((one) => one !== undefined))
          expect(derivedIn(ran, 'track').value?.amount).toBeCloseTo(
            (numbers.track ?? 900) + (flanges[0] ?? NaN) + (flanges[1] ?? NaN),
            6,
          );
        else expect(JSON.stringify([ran.findings, ran.members])).toContain('"level":"stop"');
        if (numbers.release !== 'machined')
          for (const { run: one } of ran.members)
            expect(
              one.findings.some(
                ({ level, code }) =>
                  level === 'stop' && (code === 'machined-blank' || code === 'cannot-draw'),
              ),
            ).toBe(true);
      }),
      { numRuns: process.env['FISHPLATE_LONG'] === '1' ? 600 : 60, seed: 20261125 },
    );
  }, 60_000);

  test('what cannot be read is named', () => {
    for (const field of ['hubCircle', 'hubPilot', 'wheelBolt', 'track', 'release']) {
      const answer = runKit('hub-pair', { [field]: 'much' }, 'mm', startingShop);
      expect(answer.ok ? [] : answer.problems.map((problem) => problem.field)).toEqual([field]);
    }
  });
});
