// Facts of a drive: road speed, grades, grip, slack and wear of a chain.
import { describe, expect, test } from 'vitest';
import {
  chainElongation,
  chordalVariation,
  drivenLoad,
  excessOf,
  findGround,
  gradeByForce,
  gradeByGrip,
  gradeForce,
  idlerTravel,
  listGrounds,
  movementOf,
  roadSpeed,
  rollingRadius,
  sagOf,
  tipBackGrade,
  WALL,
  wearLimit,
} from '../../parts-library/handbook/index.js';

const POUND_FORCE = 4.4482216152605;

describe('road speed', () => {
  // mph = rpm D ÷ 336.135 with D in inches, a published rule: 600 rpm on 18 in is 32.13 mph, 51.71 km/h.
  test('600 rpm on an 18 in tyre is 51.71 km/h', () => {
    expect(roadSpeed(600, 18 * 25.4)).toBeCloseTo(51.71, 2);
    expect(roadSpeed(600, 18 * 25.4) / 1.609344).toBeCloseTo(32.13, 2);
  });

  // From memory, textbook rule: a third of the squash off. 203 − 12 ÷ 3 = 199, by hand.
  test('a 203 mm tyre that stands on 191 rolls as 199', () => {
    expect(rollingRadius(203, 191)).toBe(199);
  });
});

describe('a grade', () => {
  // From memory, a university design course's drive-wheel example: 35 lb, rolling 0.01, 2°: 0.35 lb and 1.2 lb.
  test('of 2° takes 1.2 lbf of grade and 0.35 lbf of rolling from 35 lbf', () => {
    const twoDegrees = Math.tan((2 * Math.PI) / 180);
    const weight = 35 * POUND_FORCE;
    const grade = gradeForce(weight, twoDegrees, 0) / POUND_FORCE;
    expect(grade).toBeCloseTo(1.2, 1);
    expect(gradeForce(weight, twoDegrees, 0.01) / POUND_FORCE - grade).toBeCloseTo(0.35, 2);
  });

  // Mechanics: half the weight holds it on 30°, where sin θ = 0.5 and tan θ = 0.57735.
  test('of 30° takes half the weight', () => {
    expect(gradeByForce(500, 1000, 0)).toBeCloseTo(0.57735, 5);
    expect(gradeForce(1000, 0.57735027, 0)).toBeCloseTo(500, 5);
  });

  test('that a force climbs takes that force', () => {
    for (const force of [60, 200, 700]) {
      expect(gradeForce(1000, gradeByForce(force, 1000, 0.05), 0.05)).toBeCloseTo(force, 6);
    }
  });

  test('cannot be climbed by less than the rolling resistance, and more than the weight climbs a wall', () => {
    expect(gradeByForce(40, 1000, 0.05)).toBeLessThan(0);
    expect(gradeByForce(1100, 1000, 0.05)).toBe(WALL);
  });
});

describe('grip on a grade', () => {
  // Textbook statics: a block slides where tan θ = μ.
  test('of 0.6 under all wheels holds 60 %', () => {
    expect(gradeByGrip(0.6, 0, { share: 1, height: 0, axle: 'all' })).toBeCloseTo(0.6, 12);
  });

  // From memory, an engineering reference page: 2000 kg on four wheels alike, μ 0.5: 2452 N on each (g = 9.81).
  test('0.5 under a quarter of 2000 kg is 2452 N', () => {
    const quarter = drivenLoad(2000 * 9.81, 0, { share: 0.25, height: 0, axle: 'rear' });
    expect(0.5 * quarter).toBeCloseTo(2452.5, 6);
  });

  // Textbook tractive-effort formula for the rear axle, F = μ W (l1 − f h) ÷ L ÷ (1 − μ h ÷ L), worked by hand with
  // W 20 020 N, L 2.794 m, l1 1.27 m, h 0.508 m, μ 0.6, f 0.02: 12 012 × 0.450909 ÷ 0.890909 = 6079.6 N; for the front
  // axle, F = μ W (l2 + f h) ÷ L ÷ (1 + μ h ÷ L) with l2 1.524 m: 12 012 × 0.549091 ÷ 1.109091 = 5946.9 N. Less the
  // rolling resistance of 400.4 N that is what climbs.
  test.each([
    ['rear', 1.27 / 2.794, 6079.6],
    ['front', 1.524 / 2.794, 5946.9],
  ] as const)('at the %s axle agrees with the tractive effort of the textbook', (axle, share, effort) => {
    const weight = 20_020;
    const grade = gradeByGrip(0.6, 0.02, { share, height: 0.508 / 2.794, axle });
    // The textbook's angles are small: its grade force is W tan θ.
    expect(grade * weight).toBeCloseTo(effort - 0.02 * weight, 0);
  });

  // By moments: past the point where the front wheels lift the rear ones carry everything, and hold to μ − f.
  test('never holds more than when the driven wheels carry everything', () => {
    expect(gradeByGrip(0.9, 0.05, { share: 0.7, height: 0.9, axle: 'rear' })).toBeCloseTo(0.85, 12);
    expect(gradeByGrip(1.2, 0.05, { share: 0.7, height: 0.9, axle: 'rear' })).toBeCloseTo(1.15, 12);
  });

  test('of the rear wheels grows uphill by what the front wheels lose', () => {
    const rear = { share: 0.6, height: 0.4, axle: 'rear' } as const;
    const front = { share: 0.4, height: 0.4, axle: 'front' } as const;
    const square = 1000 * Math.cos(Math.atan(0.3));
    expect(drivenLoad(1000, 0.3, rear) + drivenLoad(1000, 0.3, front)).toBeCloseTo(square, 9);
    expect(drivenLoad(1000, 0.3, rear)).toBeGreaterThan(0.6 * square);
    // Steeper than where it tips, the rear wheels carry all of it and no more.
    expect(drivenLoad(1000, 2, rear)).toBeCloseTo(1000 * Math.cos(Math.atan(2)), 9);
  });

  // By moments: the mass centre 0.4 L ahead of the rear axle and 0.4 L high stands over it at 45°.
  test('ends at 45° where the mass centre stands as high as it lies ahead of the rear axle', () => {
    expect(tipBackGrade(0.6, 0.4)).toBeCloseTo(1, 12);
  });
});

describe('ground', () => {
  // From memory, automotive and ground-vehicle tables: rolled gravel 0.02, unpaved road 0.05; gravel grips 0.6.
  test('gravel rolls at 0.02 and grips at 0.6, an unpaved road rolls at 0.05', () => {
    expect(findGround('gravel')).toMatchObject({ rolling: 0.02, grip: 0.6 });
    expect(findGround('earth')?.rolling).toBe(0.05);
  });

  test('wet never grips better than dry', () => {
    const grip = (name: 'earth' | 'wet-earth' | 'grass' | 'wet-grass') => findGround(name)?.grip ?? 0;
    expect(grip('wet-earth')).toBeLessThan(grip('earth'));
    expect(grip('wet-grass')).toBeLessThan(grip('grass'));
    expect(new Set(listGrounds().map(({ name }) => name)).size).toBe(7);
  });
});

describe('a chain', () => {
  // Published note on sprocket pitch diameter: 9 teeth 6.0 %, 11 teeth 4.1 %, 17 teeth 1.7 %.
  test.each([
    [9, 6.0],
    [11, 4.1],
    [17, 1.7],
  ])('on %d teeth swings its speed by %d %%', (teeth, percent) => {
    expect(chordalVariation(teeth) * 100).toBeCloseTo(percent, 1);
  });

  // By hand: 12 × 12.7 = 152.4; 2 % of it is 3.048.
  test('of 12.7 mm pitch that measures 155.448 over twelve is worn by 2 %', () => {
    expect(chainElongation(155.448, 12.7)).toBeCloseTo(0.02, 12);
  });

  // From memory, chain makers' guides: 2 % with take-up, 1 % without, 3 % at most, 200/N % on large sprockets.
  test('is replaced at 2 %, at 1 % without take-up, sooner on very large sprockets', () => {
    expect(wearLimit(48, true)).toEqual({ replace: 0.02, never: 0.03 });
    expect(wearLimit(48, false)).toEqual({ replace: 0.01, never: 0.03 });
    expect(wearLimit(120, true).never).toBeCloseTo(0.016667, 6);
    expect(wearLimit(120, true).replace).toBeCloseTo(0.016667, 6);
  });

  // First term of the parabola's length: excess = 8 s² ÷ (3 span). 8 × 47.4342² ÷ 3000 = 6.
  test('6 mm longer than a span of 1000 sags 47.4', () => {
    expect(sagOf(1000, 6)).toBeCloseTo(47.4342, 4);
    expect(sagOf(1000, -1)).toBe(0);
  });

  // Two right triangles by Pythagoras: legs 200 and 5 make 200.0625 each, 0.1250 more than 400 together.
  test('0.125 mm longer than 400 moves 10 mm at its middle, half of it to each side', () => {
    expect(movementOf(400, 0.12498)).toBeCloseTo(10, 3);
    expect(idlerTravel(400, 0.12498)).toBeCloseTo(5, 3);
    expect(excessOf(400, movementOf(400, 0.7))).toBeCloseTo(0.7, 9);
  });
});
