// What is found about an adapter plate, with the numbers that a person can redo by hand and where each rule is from.
import { describe, expect, test } from 'vitest';
import { isCircle } from '../../parts-library/geometry/index.js';
import { isOpening, outlineOf } from '../../parts-library/model/index.js';
import { CART_ADAPTER, draw, finding, run } from './plate.js';

describe('findings carry numbers that can be redone by hand', () => {
  test('edge distance 20 for M10 is two diameters; 14 is less than 1.5 d and a caution; 9 less than d and a stop', () => {
    expect(finding(CART_ADAPTER, 'edge-distance')).toMatchObject({ level: 'pass', value: { amount: 20 } });
    expect(finding({ ...CART_ADAPTER, outside: 138 }, 'edge-distance')).toMatchObject({ level: 'caution' });
    expect(finding({ ...CART_ADAPTER, outside: 128 }, 'edge-distance')).toMatchObject({ level: 'stop' });
  });

  test('bolts outside the plate are a stop, marks as well as holes', () => {
    for (const holes of ['drill', 'clearance']) {
      const { findings } = run({ ...CART_ADAPTER, holes, outside: 90 });
      expect(findings.filter(({ level }) => level === 'stop').length).toBeGreaterThan(0);
    }
    expect(finding({ ...CART_ADAPTER, outside: 90 }, 'edge-distance').title).toMatch(/off the plate/);
  });

  test('AISC 360-16 Table J3.4: a 1/2 in bolt wants 3/4 in of edge', () => {
    const parameters = {
      bolts: 4,
      boltCircle: '5 in',
      bolt: '1/2-13',
      edge: '0.7 in',
      thickness: '3/8 in',
      hub: '2 in',
    };
    expect(finding(parameters, 'edge-distance')).toMatchObject({
      level: 'caution',
      limit: { amount: 19.05 },
    });
  });

  test('thread: M8 8.8 in 6 mm S235 wants 8.4 mm of engagement', () => {
    // FED-STD-H28/2B expressions, 6g/6H limits (from memory): Le 8.4 mm to break an 8.8 bolt in S235, Rm 360.
    const found = finding(
      { ...CART_ADAPTER, bolt: 'M8', holes: 'tapped', material: 'S235' },
      'thread-engagement',
    );
    expect(found.limit?.amount).toBeCloseTo(8.4, 1);
    expect(found.level).toBe('note');
  });

  test('bolt shear: 300 N·m on six bolts at ⌀110 is 909 N each', () => {
    expect(finding({ ...CART_ADAPTER, torque: 300 }, 'bolt-shear').value?.amount).toBeCloseTo(
      300 / (6 * 0.055),
      6,
    );
  });

  test('weld: Shigley 9-45, r 25, leg 6, 2 kN·m, one side, is 120 MPa', () => {
    // Shigley's Mechanical Engineering Design 10th ed., problem 9-45: 120 MPa.
    const parameters = { ...CART_ADAPTER, hub: 50, weldLeg: 6, weldSides: 'one', torque: 2000 };
    expect(finding(parameters, 'hub-weld').value?.amount).toBeCloseTo(120.06, 1);
  });

  test('fillet leg: AISC Table J2.4 wants 5 mm on 8 mm plate', () => {
    expect(finding({ ...CART_ADAPTER, thickness: 8, weldLeg: 3 }, 'fillet-leg')).toMatchObject({
      level: 'caution',
      limit: { amount: 5 },
    });
  });

  test('chain room: 40 chain, 15 teeth, largest hub 1.822 in; a 50 mm plate runs into the side plates', () => {
    // ASME B29.1 maximum hub diameter, published formula and handbook table: 1.8223 in = 46.29 mm.
    const parameters = {
      bolts: 3,
      boltCircle: 30,
      bolt: 'M5',
      outside: 50,
      thickness: 6,
      chain: '40',
      teeth: 15,
      centre: 'none',
    };
    // Side plates: P cot(180/15) − 0.95 P = 1.877 in, computed beside the largest hub of 1.822 in.
    const stop = finding(parameters, 'chain-room');
    expect(stop.level).toBe('stop');
    expect((stop.limit?.amount ?? 0) / 25.4).toBeCloseTo(1.877, 3);
    const caution = finding({ ...parameters, outside: 47 }, 'chain-room');
    expect(caution.level).toBe('caution');
    expect((caution.limit?.amount ?? 0) / 25.4).toBeCloseTo(1.8223, 4);
  });

  test('chain pull: 10 lbf·ft on 10 teeth of 41 is 148.3 lbf against 250 lbf; 40 lbf·ft is over', () => {
    // Roller chain maker's engineering guide (published): service load one sixth of minimum tensile, 1500 lbf for 41.
    const base = { bolts: 3, boltCircle: 25, bolt: 'M4', chain: '41', teeth: 10, centre: 'none' };
    const light = finding({ ...base, torque: '10 lbf·ft' }, 'chain-pull');
    expect((light.value?.amount ?? 0) / 4.4482216152605).toBeCloseTo(148.3, 1);
    expect((light.limit?.amount ?? 0) / 4.4482216152605).toBeCloseTo(250, 3);
    expect(light.level).toBe('pass');
    expect(finding({ ...base, torque: '40 lbf·ft' }, 'chain-pull').level).toBe('caution');
  });

  test('chain pull on 428: unknown, since no source gives its strength, and no sister size is used', () => {
    const found = finding({ ...CART_ADAPTER, chain: '428', teeth: 50, torque: 180 }, 'chain-pull');
    expect(found).toMatchObject({ level: 'note' });
    expect(found.title).toMatch(/unknown/);
    expect(found.limit).toBeUndefined();
  });

  test('pull comes from the worse of torque and tyre grip', () => {
    const parameters = {
      ...CART_ADAPTER,
      chain: '40',
      teeth: 50,
      torque: 10,
      gripMass: 200,
      tyreDiameter: 500,
    };
    // 0.8 × 200 kg × 9.80665 × 0.25 m = 392.27 N·m; 40 chain on 50 teeth: PD 12.7/sin 3.6° = 202.26 mm.
    expect(finding(parameters, 'chain-pull').value?.amount).toBeCloseTo((2 * 392.266) / 0.202261, 0);
  });

  test('bolt-up, fixed fastener: M10 tapped, bolted hole 10.5, circle ±0.17', () => {
    // ASME Y14.5 Appendix B (from memory): (10.5 − 10)/2 = 0.25 of room; ±0.17 on diameter is 0.085 on radius.
    const parameters = {
      bolts: 5,
      boltCircle: 'adjacent 55.84±0.1',
      bolt: 'M10',
      holes: 'tapped',
      hub: 45,
      boltedHole: 10.5,
    };
    const found = finding(parameters, 'bolt-up');
    expect(found.limit?.amount).toBeCloseTo(0.25, 12);
    // Hand-drilled drift 0.5 (common practice, worst of 0.3 to 0.5): 0.085 + 0.5.
    expect(found.value?.amount).toBeCloseTo(0.5851, 3);
    expect(found.level).toBe('caution');
  });

  test('a bolted hole smaller than the bolt is a stop', () => {
    expect(finding({ ...CART_ADAPTER, holes: 'tapped', boltedHole: 9.8 }, 'bolt-up').level).toBe('stop');
  });

  test('the bolted part must clear hub and both legs: 57.15 + 2 × 3 + 1 = 64.15', () => {
    expect(finding({ ...CART_ADAPTER, boltedBore: 64 }, 'seat')).toMatchObject({
      level: 'stop',
      limit: { amount: 64.15 },
    });
    // Welded on the far face only, the hub alone comes through: 57.15 + 1.
    expect(finding({ ...CART_ADAPTER, boltedBore: 60, weldSides: 'one' }, 'seat')).toMatchObject({
      level: 'pass',
      limit: { amount: 58.15 },
    });
    expect(finding({ ...CART_ADAPTER, boltedBore: 57, weldSides: 'one' }, 'seat').level).toBe('caution');
    expect(finding({ ...CART_ADAPTER, boltedBore: 65 }, 'seat').level).toBe('pass');
  });

  test('a hole too small for the torch is a stop whose remedy is a centre mark', () => {
    const found = finding({ ...CART_ADAPTER, bolt: 'M5', holes: 'clearance' }, 'small-hole');
    expect(found.level).toBe('stop');
    expect(found.remedies?.[0]?.change).toEqual([{ op: 'add', path: '/holes', value: 'drill' }]);
    expect(
      run({ ...CART_ADAPTER, bolt: 'M5', holes: 'drill' }).findings.some(({ level }) => level === 'stop'),
    ).toBe(false);
  });

  test('the widest pair would measure five holes better: ±0.105 instead of ±0.170', () => {
    // dD = ds / sin(180 k/n): published bolt-circle factors 1.0515 and 1.7013.
    const found = finding({ bolts: 5, boltCircle: 'adjacent 55.84±0.1', bolt: 'M8', hub: 45 }, 'better-pair');
    expect(found.value?.amount).toBeCloseTo(0.1701, 4);
    expect(found.limit?.amount).toBeCloseTo(0.1051, 4);
  });

  test('a usual size is suggested and never snapped to', () => {
    const { value } = run({ bolts: 5, boltCircle: 'circle 114.1', bolt: 'M12', hub: 40, thickness: 8 });
    const found = finding(
      { bolts: 5, boltCircle: 'circle 114.1', bolt: 'M12', hub: 40, thickness: 8 },
      'usual-circle',
    );
    expect(found.limit?.amount).toBeCloseTo(114.3, 9);
    const hole = value?.part.features.filter(isOpening).find(({ id }) => id === 'pattern1.hole.1');
    expect(isCircle(hole?.contour ?? outlineOf(draw(CART_ADAPTER)).contour)?.centre.y).toBeCloseTo(57.05, 9);
  });

  test('brake and steering parts carry their caution', () => {
    expect(finding({ ...CART_ADAPTER, use: 'brake' }, 'use-brake').level).toBe('caution');
    expect(finding({ ...CART_ADAPTER, use: 'steering' }, 'use-steering').level).toBe('caution');
  });

  test('a keyed bore in a round plate is far from its outside: 11.5 mm is left beside the keyway’s bolts', () => {
    const parameters = {
      bolts: 4,
      boltCircle: 80,
      bolt: 'M8',
      thickness: 8,
      bore: 25,
      keyway: 'metric',
      torque: 60,
    };
    const web = finding(parameters, 'web');
    expect(web.level).not.toBe('stop');
    // Bolts 9 mm on ⌀80 in ⌀112 or more: 16 − 4.5 to the outside at the least edge distance of 2 d.
    expect(web.value?.amount).toBeGreaterThan(11);
    expect(web.value?.amount).toBeLessThan(15);
  });

  test('a hub larger than the bore is a stop however the bore is made', () => {
    for (const centre of ['slip-to-weld', 'bore-after', 'turned', undefined]) {
      expect(finding({ ...CART_ADAPTER, hub: 50, bore: 48, centre }, 'bore-fit').level).toBe('stop');
    }
    expect(finding({ ...CART_ADAPTER, hub: 50, bore: 49.9 }, 'bore-fit').level).toBe('caution');
  });

  test('a turned bore takes the hub as measured, with no clearance of its own, and H7 to the thousandth', () => {
    // ISO 286 H7 over 50 to 80: +0.030, 0 (published).
    const found = finding({ ...CART_ADAPTER, fit: undefined, centre: 'turned' }, 'bore-fit');
    expect(found.title).toContain('57.15 mm to 57.18 mm');
  });

  test('a steel hub does not weld to aluminium, and stainless wants its own filler', () => {
    expect(finding({ ...CART_ADAPTER, material: '6061-T6' }, 'weldability').level).toBe('stop');
    expect(finding({ ...CART_ADAPTER, material: '304' }, 'weldability').level).toBe('caution');
    expect(finding({ ...CART_ADAPTER, material: '6061-T6' }, 'material').says).toMatch(/temper/);
  });

  test('tyre grip loads the bolts without a chain: 0.8 × 300 kg × g × 0.25 m = 588 N·m beats 400', () => {
    const parameters = { ...CART_ADAPTER, torque: 400, gripMass: 300, tyreDiameter: 500 };
    expect(finding(parameters, 'bolt-shear').value?.amount).toBeCloseTo(588.4 / (6 * 0.055), 0);
  });

  test('teeth without a chain are said to be unchecked, in the one note of what could not be checked', () => {
    const found = finding({ ...CART_ADAPTER, teeth: 40 }, 'not-checked');
    expect(found.title).toMatch(/^Not checked: .*the chain beside the plate/);
    expect(
      run({ ...CART_ADAPTER, teeth: 40 }).findings.filter(({ code }) => code === 'not-checked'),
    ).toHaveLength(1);
  });

  test('a keyway asked for beside a hub is not dropped in silence', () => {
    expect(finding({ ...CART_ADAPTER, keyway: 'metric' }, 'keyway').level).toBe('caution');
  });

  test('edge distance counts the bore as well as the outside: bolts on ⌀40 round a 24 mm bore have 0.8 d', () => {
    const parameters = { bolts: 4, boltCircle: 40, bolt: 'M10', thickness: 6, bore: 24, outside: 90 };
    expect(finding(parameters, 'edge-distance')).toMatchObject({ level: 'stop', value: { amount: 8 } });
  });

  test('studs or tapped holes in the bolted part leave only this plate’s hole to give: (13.5 − 12)/2', () => {
    const parameters = {
      bolts: 5,
      boltCircle: 'circle 114.3±0.1',
      bolt: 'M12x1.5',
      boltedBy: 'stud',
      thickness: 8,
      hub: 50,
    };
    expect(finding(parameters, 'bolt-up').limit?.amount).toBeCloseTo(0.75, 9);
    expect(finding({ ...parameters, holes: 'tapped' }, 'bolt-up').level).toBe('stop');
  });

  test('an inch job welds inch legs: AISC Table J2.4, 1/8 in on 1/4 in plate', () => {
    const { findings } = run({ bolts: 4, boltCircle: '4', bolt: '3/8-16', hub: '2', thickness: '1/4' }, 'in');
    expect(findings.find(({ code }) => code === 'fillet-leg')?.value?.amount).toBeCloseTo(3.175, 9);
  });

  test('two patterns whose heads meet are a stop; inner heads under the bolted part a caution', () => {
    const two = { bolts: 4, boltCircle: 100, bolt: 'M10', hub: 30, thickness: 6 };
    const near = { ...two, pattern2: { bolts: 4, boltCircle: 66, bolt: 'M8' } };
    expect(finding(near, 'heads-of-both-patterns').level).toBe('stop');
    const under = {
      ...two,
      boltedBore: 60,
      pattern2: { bolts: 4, boltCircle: 66, bolt: 'M8', clocking: '45' },
    };
    expect(finding(under, 'heads-under-bolted-part').level).toBe('caution');
  });

  test('a keyway in 6 mm plate under 200 N·m crushes: 4T/(D h L) = 762 MPa', () => {
    // Machine design textbooks (common practice): 4 × 200000 / (25 × 7 × 6) = 761.9.
    const found = finding(
      { ...CART_ADAPTER, hub: undefined, bore: 25, keyway: 'metric', torque: 200 },
      'keyway',
    );
    expect(found.value?.amount).toBeCloseTo(761.9, 1);
    expect(found.level).toBe('stop');
  });

  test('every finding names its source and certainty, and nothing is called safe', () => {
    for (const parameters of [
      CART_ADAPTER,
      { ...CART_ADAPTER, chain: '40', teeth: 50, torque: 100, use: 'brake' },
    ]) {
      for (const { source, says, title } of run(parameters).findings) {
        expect(source.title).not.toBe('');
        expect(['published', 'common practice', 'from memory']).toContain(source.certainty);
        expect(`${title} ${says}`).not.toMatch(/\b(is|are) safe\b/i);
      }
    }
  });
});

describe('readings of one circle that contradict each other', () => {
  // Five holes adjacent 20 lie on 20 / sin 36° = 34.026, not on 95; M8 has 1 mm of play in its 9 mm hole (ISO 273).
  const FIVE = { bolts: 5, bolt: 'M8', hub: 10, outside: 150 };
  test.each([
    ['circle 95; adjacent 20', 'stop', 95 - 34.0260323],
    ['circle 95 ±0.1; adjacent 20 ±0.1', 'stop', 95 - 34.0260323 - 0.1 - 0.1701302],
    ['circle 95; circle 95.8', 'caution', 0.8],
  ])('%s is a %s', (boltCircle, level, apart) => {
    const told = finding({ ...FIVE, boltCircle }, 'readings-disagree');
    expect(told).toMatchObject({ level, field: 'boltCircle' });
    expect(told.value?.amount).toBeCloseTo(apart, 5);
  });

  test('readings that agree within their ± are not told off', () => {
    const parameters = { ...FIVE, boltCircle: 'circle 95 ±0.5; adjacent 56 ±0.2' };
    expect(run(parameters).findings.map(({ code }) => code)).not.toContain('readings-disagree');
  });
});
