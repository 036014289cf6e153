// Ratio, speed, pull and climbing of a drive, and what other sprockets do to them.
import { describe, expect, test } from 'vitest';
import { cart, figure, finding, numbersOf, refused } from './drive.js';

const POUND_FORCE = 4.4482216152605;

describe('speed', () => {
  // Published rule: 600 rpm on 18 in is 51.71 km/h.
  test('of a wheel at 600 rpm on an 18 in tyre is 51.71 km/h', () => {
    expect(figure(numbersOf({ wheelSpeed: '600 rpm', tyreDiameter: '18 in' }), 'road-speed')).toBeCloseTo(
      51.71,
      2,
    );
  });

  test('from the motor is the same through 12 and 48 teeth at 2400 rpm', () => {
    const numbers = numbersOf({ motorSpeed: '2400 rpm', tyreDiameter: '18 in' });
    expect(figure(numbers, 'ratio')).toBe(4);
    expect(figure(numbers, 'road-speed')).toBeCloseTo(51.71, 2);
  });

  test('is in mph in an inch job', () => {
    const { figures } = numbersOf({ wheelSpeed: '600', tyreDiameter: '18' }, 'in');
    expect(figures.find(({ id }) => id === 'road-speed')?.text).toBe('32.1 mph');
  });

  // v = p n rpm ÷ 60 (published): 12.7 × 12 × 1500 ÷ 60 000 = 3.81 m/s.
  test('of a 12.7 chain on 12 teeth at 1500 rpm is 3.81 m/s', () => {
    expect(figure(numbersOf({ chain: '40', motorSpeed: 1500 }), 'chain-speed')).toBeCloseTo(3.81, 9);
  });

  test('through a 5 : 1 gearbox is a fifth', () => {
    const numbers = numbersOf({ motorSpeed: 3000, reduction: 5, tyreDiameter: 400 });
    expect(figure(numbers, 'ratio')).toBe(20);
    expect(figure(numbers, 'wheel-speed')).toBe(150);
  });

  test('counted at the wheel and at the motor has to agree', () => {
    const both = (wheelSpeed: number) =>
      finding(numbersOf({ motorSpeed: 1400, wheelSpeed, tyreDiameter: 400 }), 'speeds-agree').level;
    expect(both(350)).toBe('pass');
    expect(both(300)).toBe('caution');
  });

  test('a tyre pressed far down is short of air, an impossible one is refused', () => {
    expect(finding(numbersOf({ ...cart, loadedRadius: 170 }), 'loaded-radius').level).toBe('caution');
    expect(refused({ tyreDiameter: 400, loadedRadius: 201 })['loadedRadius']).toContain('200 mm');
  });
});

describe('chain pull', () => {
  // Worked by hand from F = 2 T ÷ PD: 10 lbf·ft on 10 teeth of 41 (PD 1.6180 in) is 148.3 lbf; 1500 lbf ÷ 6 = 250 lbf.
  test('of 10 lbf·ft on ten teeth of 41 is 148.3 lbf and passes', () => {
    const numbers = numbersOf({ chain: '41', motorTeeth: 10, motorTorque: '10 lbf·ft' });
    expect(figure(numbers, 'chain-pull') / POUND_FORCE).toBeCloseTo(148.3, 1);
    expect(finding(numbers, 'chain-strength').level).toBe('pass');
    // 1500 ÷ 148.3 = 10.11
    expect(finding(numbers, 'chain-strength').value?.amount).toBeCloseTo(10.11, 2);
  });

  test('of 40 lbf·ft there is 593 lbf and does not; 60 lbf·ft is above one half', () => {
    const at = (motorTorque: string) => numbersOf({ chain: '41', motorTeeth: 10, motorTorque });
    expect(figure(at('40 lbf·ft'), 'chain-pull') / POUND_FORCE).toBeCloseTo(593.3, 1);
    expect(finding(at('40 lbf·ft'), 'chain-strength').level).toBe('caution');
    expect(finding(at('60 lbf·ft'), 'chain-strength').level).toBe('stop');
  });

  test('of a chain whose strength no source gives says how strong it has to be', () => {
    const found = finding(numbersOf({ chain: '428', motorTorque: '38 N·m' }), 'chain-strength');
    expect(found.level).toBe('note');
    // 2 × 38 ÷ 0.04907 m = 1549 N; six times is 9293 N.
    expect(found.says).toContain('9293 N');
  });
});

describe('the hill', () => {
  // By hand: 310 × 9.80665 = 3040.06 N; tan θ 0.18: sin 0.177152, cos 0.984183; 538.56 + 0.05 × 2991.97 = 688.15 N.
  test('of 18 % asks 688 N of a 310 kg cart on earth', () => {
    expect(figure(numbersOf(cart), 'grade-force')).toBeCloseTo(688.15, 1);
    expect(figure(numbersOf(cart), 'hold-force')).toBeCloseTo(538.55, 1);
  });

  // 38 × 4 × 0.94 = 142.88 N·m on 191 mm: 748.06 N.
  test('is met with 748 N at the ground', () => {
    expect(figure(numbersOf(cart), 'wheel-torque')).toBeCloseTo(142.88, 9);
    expect(figure(numbersOf(cart), 'ground-pull')).toBeCloseTo(748.06, 2);
    expect(finding(numbersOf(cart), 'hill-torque').level).toBe('caution');
  });

  test.each([
    [{ grade: '10 %' }, 'hill-torque', 'pass'],
    [{ grade: '25 %' }, 'hill-torque', 'stop'],
    [{ steadyTorque: '37 N·m' }, 'hill-heat', 'pass'],
    [{}, 'hill-heat', 'caution'],
    [{}, 'hill-grip', 'pass'],
    [{ ground: 'wet-grass', drivenMass: '120 kg' }, 'hill-grip', 'stop'],
    [{ ground: 'wet-grass', grade: '7 %' }, 'hill-grip', 'caution'],
    [{}, 'tips-back', 'pass'],
    [{ massHeight: '1200' }, 'tips-back', 'caution'],
    [{ massHeight: '1200', drivenMass: '260 kg' }, 'tips-back', 'stop'],
  ])('with %o: %s is a %s', (change, code, level) => {
    expect(finding(numbersOf({ ...cart, ...change }), code).level).toBe(level);
  });

  test('grip and torque agree with the steepest grade that they give', () => {
    const steepest = figure(numbersOf(cart), 'grade-torque');
    const at = (grade: number) => finding(numbersOf({ ...cart, grade }), 'hill-torque').level;
    expect([at(steepest - 0.01), at(steepest + 0.01)]).toEqual(['caution', 'stop']);
    const slippery = { ...cart, ground: 'wet-grass' };
    const held = figure(numbersOf(slippery), 'grade-grip');
    const grip = (grade: number) => finding(numbersOf({ ...slippery, grade }), 'hill-grip').level;
    expect([grip(held - 0.01), grip(held + 0.01)]).toEqual(['caution', 'stop']);
  });

  test('of a remedy is then climbed with torque to spare', () => {
    const found = finding(numbersOf(cart), 'hill-torque');
    const [first] = found.remedies ?? [];
    expect(first?.change).toEqual([{ op: 'add', path: '/wheelTeeth', value: 53 }]);
    expect(finding(numbersOf({ ...cart, wheelTeeth: 53 }), 'hill-torque').level).toBe('pass');
  });
});

describe('another sprocket', () => {
  test('with one tooth fewer in front slows by a twelfth and pulls by a eleventh more', () => {
    const { changes } = numbersOf(cart);
    const now = changes[0];
    const eleven = changes.find(({ motorTeeth }) => motorTeeth === 11);
    expect(now).toMatchObject({ motorTeeth: 12, wheelTeeth: 48, speed: 1 });
    expect(eleven?.speed).toBeCloseTo(11 / 12, 12);
    expect((eleven?.groundNewtons ?? 0) / (now?.groundNewtons ?? 1)).toBeCloseTo(12 / 11, 12);
  });

  // Published forms: 12 and 40 teeth with 86 links stand at 376.74; 10 and 60 with 78 at 252.54.
  test('moves the centres of the same chain to where the tables have them', () => {
    const numbers = numbersOf({ chain: '40', motorTeeth: 13, wheelTeeth: 40, links: 86, motorOthers: '12' });
    expect(numbers.changes[1]?.sameLinks?.centres).toBeCloseTo(376.74, 2);
    const steep = numbersOf({ chain: '41', motorTeeth: 10, wheelTeeth: 54, links: 78, wheelOthers: '60' });
    expect(steep.changes[1]?.sameLinks?.centres).toBeCloseTo(252.54, 2);
  });

  test('keeps the centres with another even chain', () => {
    for (const { sameCentres } of numbersOf(cart).changes) {
      expect((sameCentres?.links ?? 1) % 2).toBe(0);
      // Two links are one pitch of centres, so the nearest even count is within half of that and a little.
      expect(Math.abs((sameCentres?.centres ?? 0) - 425.56)).toBeLessThan(12.7 * 0.55);
    }
  });

  test('says whether the hill is still climbed', () => {
    const { changes } = numbersOf({ ...cart, grade: '19 %' });
    const climbs = new Map(changes.map((one) => [`${one.motorTeeth}/${one.wheelTeeth}`, one.climbs]));
    expect(climbs.get('12/48')).toBe(true);
    expect(climbs.get('13/48')).toBe(false);
    expect(climbs.get('11/48')).toBe(true);
  });

  test('from two lists is tried in every pair, each once', () => {
    const { changes } = numbersOf({ motorOthers: '10, 11 12', wheelOthers: '48;54' });
    expect(changes.map((one) => `${one.motorTeeth}/${one.wheelTeeth}`)).toEqual([
      '12/48',
      '10/48',
      '11/48',
      '12/54',
      '10/54',
      '11/54',
    ]);
  });

  test('with a counted wheel speed turns the wheel as the motor then would', () => {
    const { changes } = numbersOf({ wheelSpeed: 350, tyreDiameter: 400, motorOthers: '6' });
    expect((changes[1]?.roadSpeed ?? 0) / (changes[0]?.roadSpeed ?? 1)).toBeCloseTo(0.5, 12);
  });
});
