import { describe, expect, test } from 'vitest';
import {
  ansiToothForm,
  centreDistance,
  chainLength,
  chainLengthApprox,
  findChain,
  isoToothGap,
  listChains,
  maxHubDiameter,
  outsideDiameter,
  pitchDiameter,
  serviceLoad,
  sidePlateCircle,
  sourceOf,
  sprocketDiameters,
  sweptDiameter,
  toothThickness,
  wrapDegrees,
} from '../../parts-library/handbook/index.js';
import { chain, inch } from './rows.js';

describe('chain by number', () => {
  test.each([
    ['428', '428'],
    ['#40', '40'],
    ['ANSI 40', '40'],
    ['No. 41', '41'],
    ['08b', '08B'],
    ['08B-1', '08B'],
    ['ISO 08B', '08B'],
    ['530 chain', '530'],
    ['10a', '10A'],
  ])('%s is %s', (written, name) => {
    expect(chain(written).name).toBe(name);
  });

  test.each(['', '40H', '999', '08B-2', 'bicycle'])('“%s” is not known and lists what is', (written) => {
    const answer = findChain(written);
    expect(answer.found).toBe(false);
    if (!answer.found) expect(answer.known).toContain('428');
  });

  test('names are used once', () => {
    expect(new Set(listChains().map(({ name }) => name)).size).toBe(27);
  });

  // Published trade sizes: 40 has roller 7.92, 420 and 41 7.77, 428 8.51.
  test('40, 420 and 428 share a pitch and nothing else', () => {
    expect([chain('40'), chain('420'), chain('428')].map(({ pitch }) => pitch)).toEqual([12.7, 12.7, 12.7]);
    expect([chain('40'), chain('420'), chain('428')].map(({ roller }) => Number(roller.toFixed(2)))).toEqual([
      7.92, 7.77, 8.51,
    ]);
  });

  test('no source gives a 428 its tensile, pin or plate height, and none is borrowed from 08B or 40', () => {
    for (const name of ['415', '420', '428', '520', '525', '530']) {
      const { tensileNewtons, pin, plateHeight, plateThickness } = chain(name);
      expect([tensileNewtons, pin, plateHeight, plateThickness]).toEqual([
        undefined,
        undefined,
        undefined,
        undefined,
      ]);
      expect(serviceLoad(chain(name))).toBeUndefined();
      expect(sidePlateCircle(chain(name), 15)).toBeUndefined();
      expect(sweptDiameter(chain(name), 15)).toBeUndefined();
    }
  });

  test('428 lists the other widths that are printed for it', () => {
    expect(chain('428').otherWidths).toEqual([7.85, 7.94, 7.95]);
  });

  // Published: 41 chain 1500 lbf, one sixth is 250 lbf.
  test('a 41 may work at 250 lbf', () => {
    expect((serviceLoad(chain('41'))?.newtons ?? 0) / 4.4482216).toBeCloseTo(250, 4);
    expect((serviceLoad(chain('41'))?.neverNewtons ?? 0) / 4.4482216).toBeCloseTo(750, 4);
  });

  test('the certainty of a cell follows what was read', () => {
    expect(sourceOf(chain('08B'), 'tensileNewtons').certainty).toBe('published');
    expect(sourceOf(chain('10B'), 'tensileNewtons').certainty).toBe('from memory');
    expect(sourceOf(chain('06B'), 'pin').certainty).toBe('from memory');
    expect(sourceOf(chain('06B'), 'pitch').certainty).toBe('published');
    expect(sourceOf(chain('08A'), 'tensileNewtons').certainty).toBe('from memory');
    expect(sourceOf(chain('12A'), 'tensileNewtons').certainty).toBe('published');
    expect(sourceOf(chain('10A'), 'plateHeight').certainty).toBe('published');
    expect(sourceOf(chain('41'), 'plateHeight').certainty).toBe('from memory');
  });
});

describe('sprocket diameters', () => {
  // Formula list citing ASME B29.1-2011, worked in inches apart from this code: PD, OD, root, caliper, MHD.
  test.each([
    ['25', 17, 1.3605, 1.4874, 1.2305, 1.2247, 1.0574],
    ['35', 12, 1.4489, 1.6245, 1.2489, 1.2489, 0.9945],
    ['40', 15, 2.4049, 2.6523, 2.0929, 2.0797, 1.8223],
    ['41', 60, 9.5537, 9.8406, 9.2477, 9.2477, 9.0106],
    ['50', 13, 2.6116, 2.9107, 2.2116, 2.1926, 1.8807],
    ['520', 45, 8.9597, 9.3129, 8.5597, 8.5543, 8.2829],
    ['60', 17, 4.0816, 4.4621, 3.6126, 3.5952, 3.2321],
    ['80', 35, 11.1558, 11.7109, 10.5308, 10.5196, 10.0809],
  ])('%s, %d teeth', (name, teeth, pd, od, root, caliper, hub) => {
    const got = sprocketDiameters(chain(name), teeth);
    const inches = [got?.pitchDiameter, got?.outside, got?.root, got?.caliper, got?.maxHub].map(
      (mm) => (mm ?? 0) / 25.4,
    );
    [pd, od, root, caliper, hub].forEach((printed, index) => {
      expect(Math.abs((inches[index] ?? 0) - printed)).toBeLessThanOrEqual(0.00006);
    });
  });

  // Machinery's Handbook 31st ed. p. 2631 Table 10, printed to 1/64 in: inches.
  test.each([
    [0.5, 11, 1 + 11 / 64],
    [0.625, 11, 1 + 15 / 32],
    [0.75, 11, 1 + 49 / 64],
    [1, 11, 2 + 3 / 8],
    [0.5, 12, 1 + 21 / 64],
    [0.75, 12, 2 + 1 / 64],
    [1, 12, 2 + 45 / 64],
  ])('largest hub at pitch %d, %d teeth, is the handbook’s to 1/64', (pitch, teeth, printed) => {
    expect(Math.abs(maxHubDiameter(inch(pitch), teeth) / 25.4 - printed)).toBeLessThan(1 / 64);
  });

  // Published factor page: 25 teeth, PD factor 7.9787, OD factor 8.516.
  test('25 teeth have factors 7.9787 and 8.516', () => {
    expect(pitchDiameter(1, 25)).toBeCloseTo(7.9787, 4);
    expect(outsideDiameter(1, 25)).toBeCloseTo(8.516, 3);
  });

  // Published 1/2 × 1/8 plate wheels (roller 7.75): Dp to 0.1 as printed, De inside the ISO 606 limits.
  test.each([
    [8, 33.18, 37.2],
    [15, 61.09, 66.8],
    [20, 81.19, 86.9],
    [30, 121.5, 127.5],
  ])('the published %d-tooth plate wheel', (teeth, printedPitch, printedOutside) => {
    const got = sprocketDiameters({ ...chain('415'), roller: 7.75 }, teeth);
    expect(Math.abs((got?.pitchDiameter ?? 0) - printedPitch)).toBeLessThan(0.01);
    expect(printedOutside).toBeGreaterThan(got?.isoOutside.min ?? Infinity);
    expect(printedOutside).toBeLessThan(got?.isoOutside.max ?? 0);
  });

  // ISO 606 formulas worked apart from this code: 08B z 20, 06B z 15.
  test.each([
    ['08B', 20, 84.358, 88.549, 72.674],
    ['06B', 15, 47.972, 51.369, 39.463],
    ['520', 45, 232.728, 237.261, 217.417],
  ])('%s, %d teeth, ISO outside and root', (name, teeth, min, max, root) => {
    const got = sprocketDiameters(chain(name), teeth);
    expect(got?.isoOutside.min).toBeCloseTo(min, 2);
    expect(got?.isoOutside.max).toBeCloseTo(max, 2);
    expect(got?.root).toBeCloseTo(root, 2);
  });

  // 40 chain, 15 teeth, h = 0.95 P: side plates clear 1.877 in, beyond the largest hub 1.822.
  test('the side plates of a 40 on 15 teeth clear 1.877 in', () => {
    expect((sidePlateCircle(chain('40'), 15) ?? 0) / 25.4).toBeCloseTo(1.877, 3);
    expect((sweptDiameter(chain('40'), 15) ?? 0) / 25.4).toBeCloseTo(2.4049 + 0.475, 3);
  });

  // Published: 9 teeth vary by 6.0 %, 11 by 4.1 %, 17 by 1.7 %.
  test.each([
    [9, 6],
    [11, 4.1],
    [17, 1.7],
  ])('%d teeth vary the speed by %d %%', (teeth, percent) => {
    expect((sprocketDiameters(chain('40'), teeth)?.speedVariation ?? 0) * 100).toBeCloseTo(percent, 1);
  });

  // ASME B29.1 caliper tolerance: 0.003 + 0.001 P √N in, commercial 0.006 + 0.002 P √N; by hand for P 0.5, N 16.
  test('a 16-tooth 40 may be 0.005 in under, commercial 0.010', () => {
    const under = sprocketDiameters(chain('40'), 16)?.caliperUnder;
    expect((under?.precision ?? 0) / 25.4).toBeCloseTo(0.005, 6);
    expect((under?.commercial ?? 0) / 25.4).toBeCloseTo(0.01, 6);
  });

  test.each([0, 4, 12.5, NaN, -9])('%d teeth make no sprocket', (teeth) => {
    expect(sprocketDiameters(chain('40'), teeth)).toBeUndefined();
  });
});

describe('tooth form', () => {
  // Published worked sheet, P = 1, N = 28, Dr = 0.625 in.
  test.each([
    ['Ds', 0.6311],
    ['R', 0.3156],
    ['ac', 0.5],
    ['M', 0.3986],
    ['T', 0.3019],
    ['E', 0.8156],
    ['xy', 0.227],
    ['yz', 0.0844],
    ['ab', 0.875],
    ['W', 0.8695],
    ['V', 0.098],
    ['F', 0.5114],
    ['H', 0.3477],
    ['S', 0.5358],
  ] as const)('%s is %d in on the worked sheet', (letter, printed) => {
    const form = ansiToothForm({ pitch: 25.4, roller: 15.875, teeth: 28 });
    expect(Math.abs((form?.[letter] ?? 0) / 25.4 - printed)).toBeLessThanOrEqual(0.00006);
  });

  test('its angles are 37.1429° and 16°', () => {
    const form = ansiToothForm({ pitch: 25.4, roller: 15.875, teeth: 28 });
    expect(form?.A).toBeCloseTo(37.1429, 4);
    expect(form?.B).toBeCloseTo(16, 9);
  });

  // The construction closes: from the end of the straight along the topping radius one arrives at b.
  test.each([
    [25.4, 28, 15.875],
    [12.7, 15, 7.9248],
    [15.875, 45, 10.16],
    [9.525, 12, 5.08],
  ])('it closes for P %d, %d teeth', (pitch, teeth, roller) => {
    const form = ansiToothForm({ pitch, roller, teeth });
    expect(form).toBeDefined();
    if (form === undefined) return;
    const angle = ((form.A - form.B) * Math.PI) / 180;
    const along = { x: Math.cos(angle), y: -Math.sin(angle) };
    const y = { x: -form.M + form.E * along.x, y: form.T + form.E * along.y };
    const z = { x: y.x + form.yz * Math.sin(angle), y: y.y + form.yz * Math.cos(angle) };
    expect(z.x + form.F * along.x).toBeCloseTo(form.W, 9);
    expect(z.y + form.F * along.y).toBeCloseTo(-form.V, 9);
  });

  // Pointed outside diameters worked apart from this code: 2.7142 and 9.3541 in.
  test('pointed teeth reach 2.714 in on 15 teeth of 40, 9.354 on 45 of 520', () => {
    expect((sprocketDiameters(chain('40'), 15)?.outsidePointed ?? 0) / 25.4).toBeCloseTo(2.7142, 4);
    expect((sprocketDiameters(chain('520'), 45)?.outsidePointed ?? 0) / 25.4).toBeCloseTo(9.3541, 4);
  });

  // ISO 606 limits worked apart from this code.
  test.each([
    ['08B', 20, 4.298, 4.438, 22.466, 39.486, 115.5, 135.5],
    ['06B', 15, 3.207, 3.335, 12.954, 20.574, 114, 134],
    ['520', 45, 5.131, 5.28, 57.302, 179.222, 118, 138],
  ])('%s, %d teeth, gap limits', (name, teeth, riMin, riMax, reMin, reMax, alphaMin, alphaMax) => {
    const gap = isoToothGap({ ...chain(name), teeth });
    expect(gap.ri.min).toBeCloseTo(riMin, 3);
    expect(gap.ri.max).toBeCloseTo(riMax, 3);
    expect(gap.re.min).toBeCloseTo(reMin, 2);
    expect(gap.re.max).toBeCloseTo(reMax, 2);
    expect(gap.alpha.min).toBeCloseTo(alphaMin, 9);
    expect(gap.alpha.max).toBeCloseTo(alphaMax, 9);
  });
});

describe('tooth thickness', () => {
  // Published lecture table (nominal) and maker's tolerances, inches.
  test.each([
    ['35', 0.168, 0.141, 0.174],
    ['41', 0.227, 0.192, 0.233],
    ['40', 0.284, 0.249, 0.29],
    ['50', 0.343, 0.307, 0.35],
    ['60', 0.459, 0.423, 0.468],
    ['80', 0.575, 0.535, 0.59],
  ])('%s runs on a plate of %d in', (name, nominal, low, high) => {
    const got = toothThickness(chain(name));
    expect(Math.abs(got.nominal / 25.4 - nominal)).toBeLessThan(0.00085);
    expect(Math.abs((got.low ?? 0) / 25.4 - low)).toBeLessThan(0.00085);
    expect(Math.abs((got.high ?? 0) / 25.4 - high)).toBeLessThan(0.00085);
  });

  test('25 has a nominal and no published tolerance', () => {
    expect(toothThickness(chain('25')).low).toBeUndefined();
    expect(toothThickness(chain('25')).nominal / 25.4).toBeCloseTo(0.11, 3);
  });

  // Published DIN 8187 tooth-width table, mm.
  test.each([
    ['06B', 5.3],
    ['08B', 7.2],
    ['10B', 9.1],
    ['12B', 11.1],
    ['16B', 16.2],
  ])('%s has teeth %d wide', (name, printed) => {
    expect(Math.abs(toothThickness(chain(name)).nominal - printed)).toBeLessThan(0.075);
  });

  test('a 428 asks for about 7.2 mm', () => {
    expect(toothThickness(chain('428')).nominal).toBeCloseTo(7.21, 2);
    expect(toothThickness(chain('428')).source.certainty).toBe('common practice');
  });
});

describe('two sprockets', () => {
  // Published: 20/63 teeth, C 36 pitches, length 114.8; tangent-line figures worked apart from this code.
  test.each([
    [10, 60, 20, 78.1663, 78.2102],
    [12, 40, 30, 86.662, 86.6632],
    [13, 45, 40, 109.648, 109.649],
    [20, 63, 36, 114.801, 114.805],
  ])('%d to %d teeth at %d pitches', (small, large, centres, approx, exact) => {
    expect(chainLengthApprox(small, large, centres)).toBeCloseTo(approx, 3);
    expect(chainLength(small, large, centres)).toBeCloseTo(exact, 3);
  });

  test.each([
    [10, 60, 78, 19.8854],
    [12, 40, 86, 29.6646],
    [13, 45, 110, 40.1768],
    [20, 63, 114, 35.59],
  ])('%d to %d teeth with %d links', (small, large, links, centres) => {
    expect(centreDistance(small, large, links)).toBeCloseTo(centres, 3);
  });

  test('10 to 60 teeth at 19.885 pitches wrap 132.96°', () => {
    expect(wrapDegrees(10, 60, 19.8854)).toBeCloseTo(132.96, 2);
  });

  test('a chain too short to go round both has no centre distance', () => {
    expect(centreDistance(10, 60, 30)).toBeUndefined();
    expect(chainLength(10, 60, 5)).toBeUndefined();
    expect(wrapDegrees(10, 60, 5)).toBeUndefined();
  });
});
