import { describe, expect, test } from 'vitest';
import {
  airBendK,
  allowableWeldShear,
  bendAllowance,
  bendDeduction,
  e70Megapascals,
  filletStrength,
  findKey,
  holeToBend,
  hubWeldStress,
  keyseatControl,
  keyStress,
  largestFilletLeg,
  leastBendRadius,
  leastFilletLeg,
  leastFilletLength,
  minFlange,
  outsideSetback,
} from '../../parts-library/handbook/index.js';
import { inch, row } from './rows.js';

const kipPerInch = 4448.2216 / 25.4;

describe('fillet welds', () => {
  // AISC Table J2.4 by the thinner part; J2.2b along an edge.
  test.each([
    [3, 3],
    [6, 3],
    [6.35, 3],
    [8, 5],
    [12.7, 5],
    [13, 5],
    [16, 6],
    [19.05, 6],
    [25, 8],
  ])('%d mm plate asks for a leg of %d', (thinner, leg) => {
    expect(leastFilletLeg(thinner).leg).toBe(leg);
  });

  test('along the edge of 5 mm the leg may be 5, of 8 mm 6; the weld at least four legs long', () => {
    expect(largestFilletLeg(5).leg).toBe(5);
    expect(largestFilletLeg(8).leg).toBe(6);
    expect(leastFilletLength(6).leg).toBe(24);
  });

  // AISC Manual (from memory): E70, per 1/16 in of leg 1.392 kip/in design, 0.928 allowable.
  test('E70 carries 1.392 kip/in per sixteenth, 0.928 allowable', () => {
    const got = filletStrength(inch(1 / 16), e70Megapascals);
    expect(got.design / kipPerInch).toBeCloseTo(1.392, 3);
    expect(got.allowable / kipPerInch).toBeCloseTo(0.928, 3);
  });

  // Published lecture: 3/4 fillet 8 in long, 133.62 kip; 3/16 nominal 20 in, 111.35 kip.
  test('a 3/4 fillet 8 in long carries 133.62 kip; 20 in of 3/16 111.35 nominal', () => {
    expect((filletStrength(inch(3 / 4), e70Megapascals).design / kipPerInch) * 8).toBeCloseTo(133.62, 2);
    expect((filletStrength(inch(3 / 16), e70Megapascals).nominal / kipPerInch) * 20).toBeCloseTo(111.35, 2);
  });

  // AISC J2.4: 1 + 0.5 sin^1.5 45° = 1.2973; across the weld 1.5.
  test('a load at 45° gains 1.297, across the weld 1.5', () => {
    const along = filletStrength(6, 490).nominal;
    expect(filletStrength(6, 490, 45).nominal / along).toBeCloseTo(1.2973, 4);
    expect(filletStrength(6, 490, 90).nominal / along).toBeCloseTo(1.5, 9);
  });

  test('a 6 mm fillet of 490 MPa metal carries 935 N/mm', () => {
    expect(filletStrength(6, 490).design).toBeCloseTo(935.4, 1);
  });
});

describe('a weld round a hub', () => {
  // Shigley 10th ed. problem 9-45: r 25, h 6, 2 kN·m, 120 MPa.
  test('25 radius, 6 leg, 2 kN·m is 120 MPa', () => {
    expect(hubWeldStress({ radius: 25, leg: 6, sides: 1, newtonMetres: 2000 }).torsion).toBeCloseTo(
      120.06,
      2,
    );
  });

  // Shigley problem 9-8: r 4 cm, Ju 402 cm³.
  test('unit polar moment at 40 mm is 402 cm³', () => {
    expect(hubWeldStress({ radius: 40, leg: 5, sides: 1, newtonMetres: 1 }).unitPolar / 1000).toBeCloseTo(
      402.1,
      1,
    );
  });

  // By hand: 250 N·m on a 31.75 hub with 5 mm one side is 44.66 MPa; 0.3 × 490 = 147 MPa allows 822.8 N·m.
  test('a 31.75 hub with a 5 mm fillet holds 823 N·m at 147 MPa', () => {
    const got = hubWeldStress({ radius: 31.75 / 2, leg: 5, sides: 1, newtonMetres: 250 });
    expect(got.torsion).toBeCloseTo(44.66, 2);
    expect((250 * allowableWeldShear(490)) / got.torsion).toBeCloseTo(822.8, 0);
  });

  // By hand, r 20, throat 3.535: I = π r³ × 3.535, 100 N·m bends 22.51 MPa; 5 kN shears 11.26 MPa on 444.2 mm².
  test('bending stands square to torsion and shear', () => {
    const got = hubWeldStress({
      radius: 20,
      leg: 5,
      sides: 1,
      newtonMetres: 200,
      bendingNewtonMetres: 100,
      shearNewtons: 5000,
    });
    expect(got.bending).toBeCloseTo(22.51, 2);
    expect(got.shear).toBeCloseTo(11.26, 2);
    expect(got.torsion).toBeCloseTo(22.51, 2);
    expect(got.combined).toBeCloseTo(Math.sqrt(33.77 ** 2 + 22.51 ** 2), 1);
  });

  test('two welds halve every stress', () => {
    const question = { radius: 20, leg: 5, newtonMetres: 200, bendingNewtonMetres: 100, shearNewtons: 5000 };
    expect(hubWeldStress({ ...question, sides: 2 }).combined).toBeCloseTo(
      hubWeldStress({ ...question, sides: 1 }).combined / 2,
      9,
    );
  });
});

describe('bending', () => {
  // US Navy course, FAA handbook example and hand arithmetic: A, R, T, K, BA, OSSB, BD.
  test.each([
    [90, 0.16, 0.04, 0.5, 0.2827, 0.2, 0.1173],
    [90, 0.16, 0.04, 0.447, 0.2794, 0.2, 0.1206],
    [90, 0.125, 0.125, 0.4074, 0.2763, 0.25, 0.2237],
    [90, 3, 3, 0.4, 6.5973, 6, 5.4027],
    [45, 3, 3, 0.4, 3.2987, 2.4853, 1.6719],
    [120, 3, 3, 0.4, 8.7965, 10.3923, 11.9882],
    [90, 6, 6, 0.42, 13.3832, 12, 10.6168],
  ])('%d° over %d in %d, K %d', (degrees, radius, thickness, kFactor, allowance, setback, deduction) => {
    expect(bendAllowance(degrees, radius, thickness, kFactor)).toBeCloseTo(allowance, 3);
    expect(outsideSetback(degrees, radius, thickness)).toBeCloseTo(setback, 4);
    expect(bendDeduction(degrees, radius, thickness, kFactor)).toBeCloseTo(deduction, 3);
  });

  test('legs of 50 and 40 in 3 mm lie flat at 84.597', () => {
    expect(50 + 40 - bendDeduction(90, 3, 3, 0.4)).toBeCloseTo(84.597, 3);
  });

  test('a fold right back has a setback of R + T', () => {
    expect(outsideSetback(180, 3, 3)).toBe(6);
  });

  // Fabricator's published K table.
  test('K of an air bend', () => {
    expect(airBendK(3, 3, 'medium').value).toBe(0.38);
    expect(airBendK(6, 3, 'soft').value).toBe(0.4);
    expect(airBendK(12, 3, 'hard').value).toBe(0.5);
    expect(airBendK(12, 3, 'hard').source.certainty).toBe('from memory');
  });

  // ASTM A6 X4 from memory 1.5 T and 2.25 T; published 0.5 T or 0.8 mm for thin low-carbon sheet.
  test('least radius', () => {
    expect(leastBendRadius('S275', 6)).toMatchObject({ value: 9, along: 13.5 });
    expect(leastBendRadius('S275', 1.5)).toMatchObject({ value: 0.8, along: 1.5 });
    expect(leastBendRadius('S355', 3)?.value).toBe(4.5);
    expect(leastBendRadius('6061-T6', 3)?.value).toBe(9);
    expect(leastBendRadius('6061-T6 welded', 3)).toBeUndefined();
  });

  // 2.5 T + R; 0.7 of a V of 8 T.
  test('holes stay 21 from a bend of 6 in 6, flanges are 33.6 or more', () => {
    expect(holeToBend(6, 6).value).toBe(21);
    expect(minFlange(6).value).toBeCloseTo(33.6, 9);
    expect(minFlange(6, 40).value).toBeCloseTo(28, 9);
  });
});

describe('keys', () => {
  // DIN 6885-1 public reprint.
  test.each([
    [8, 2, 2, 1.2, 1],
    [12, 4, 4, 2.5, 1.8],
    [25, 8, 7, 4, 3.3],
    [30, 8, 7, 4, 3.3],
    [30.1, 10, 8, 5, 3.3],
    [50, 14, 9, 5.5, 3.8],
  ])('a %d shaft has a %d x %d key', (shaft, width, height, shaftDepth, hubDepth) => {
    expect(row(findKey(shaft, 'metric'))).toMatchObject({ width, height, shaftDepth, hubDepth });
  });

  // Public reprint of ANSI B17.1: D, W, S, T inches.
  test.each([
    [0.5, 0.125, 0.43, 0.56],
    [0.625, 0.1875, 0.517, 0.709],
    [0.75, 0.1875, 0.644, 0.837],
    [1, 0.25, 0.859, 1.114],
    [1.25, 0.25, 1.112, 1.367],
  ])('%d in with %d: S %d, T %d', (shaft, width, S, T) => {
    const control = keyseatControl(inch(shaft), inch(width), inch(width));
    expect(Math.abs(control.S / 25.4 - S)).toBeLessThan(0.0006);
    expect(Math.abs(control.T / 25.4 - T)).toBeLessThan(0.0006);
  });

  test('a 3/4 in shaft has a 3/16 square key, and its hub reads T across bore and keyway', () => {
    const key = row(findKey(inch(0.75), 'inch'));
    expect(key.name).toBe('3/16 in square');
    expect((inch(0.75) + key.hubDepth) / 25.4).toBeCloseTo(0.837, 3);
    expect((inch(0.75) - key.shaftDepth) / 25.4).toBeCloseTo(0.644, 3);
  });

  test('a 100 mm shaft is outside the tables', () => {
    expect(findKey(100, 'metric').found).toBe(false);
    expect(findKey(100, 'inch').found).toBe(false);
    expect(findKey(6, 'metric').found).toBe(false);
  });

  // By hand: 3/4 shaft, 3/16 × 1-1/2 key, 1000 lbf-in: 9481 psi shear, 18963 psi crushing.
  test('1000 lbf-in on 3/16 × 1-1/2 in 3/4 is 9481 psi shear, 18 963 crushing', () => {
    const side = inch(3 / 16);
    const got = keyStress(112.984829, inch(0.75), { width: side, height: side }, inch(1.5));
    expect(got.shear / 0.006894757).toBeCloseTo(9481, 0);
    expect(got.crushing / 0.006894757).toBeCloseTo(18963, 0);
  });
});
