// The bent bracket: flat length, bend line, holes clear of the bend.
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, isCircle } from '../../parts-library/geometry/index.js';
import { runPart, startingShop } from '../../parts-library/job/index.js';
import { isLine, isOpening, outlineOf } from '../../parts-library/model/index.js';

const bracket = (parameters: Readonly<Record<string, unknown>>) =>
  runPart({ family: 'bent-bracket', parameters, unit: 'mm' }, startingShop);

/** Bend in 3 mm plate, inside radius 3, K 0.4. */
const MOTOR_BRACKET = {
  legA: 50,
  legB: 40,
  width: 40,
  radius: 3,
  thickness: 3,
  kFactor: 0.4,
  bolt: 'M5',
  holeA: 15,
  holeB: 12,
};

describe('bent bracket', () => {
  test('legs of 50 and 40 outside in 3 mm, R 3, K 0.4 are 84.597 flat', () => {
    // Bend allowance BA = (π/180) A (R + K T) = 6.597, setback 6 (US Navy sheet-metal course, published): 90 − 12 + 6.597.
    const { value } = bracket(MOTOR_BRACKET);
    const { minX, maxX } = boundsOf(outlineOf(value?.part ?? raise()).contour);
    expect(maxX - minX).toBeCloseTo(84.597, 3);
  });

  test('the bend line stands in the middle of the bent zone: 50 − 6 + 6.597 / 2', () => {
    const bend = (bracket(MOTOR_BRACKET).value?.part ?? raise()).features.find(({ id }) => id === 'bend.1');
    expect(bend !== undefined && isLine(bend) ? bend.path.vertices[0]?.x : undefined).toBeCloseTo(47.2987, 3);
    expect(bend).toMatchObject({ purpose: 'score', bend: { degrees: 90, radius: 3, direction: 'up' } });
  });

  test('holes keep their distance from their own end', () => {
    const part = bracket(MOTOR_BRACKET).value?.part ?? raise();
    const xs = part.features.filter(isOpening).map(({ contour }) => isCircle(contour)?.centre.x);
    expect(xs[0]).toBeCloseTo(15, 9);
    expect(xs[1]).toBeCloseTo(84.5973 - 12, 3);
  });

  test('a hole nearer to the bend than 2.5 T + R is a caution, one in the bend a stop', () => {
    // Published rules run 2 T, 2.5 T + R, 3 T + R; the middle one is taken: 10.5 mm.
    const level = (holeA: number) =>
      bracket({ ...MOTOR_BRACKET, holeA }).findings.find(
        ({ code, subject }) => code === 'hole-to-bend' && subject.featureId === 'legA.hole.1',
      );
    expect(level(15)).toMatchObject({ level: 'pass', limit: { amount: 10.5 } });
    expect(level(35)).toMatchObject({ level: 'caution' });
    expect(level(43)).toMatchObject({ level: 'stop' });
  });

  test.each([
    ['0.6', 'K factor is 0.6 ("0.6"); accepted is 0.25 to 0.5.'],
    ['soft', 'K factor is "soft", which is not a number. Accepted: a decimal number, 0.25 to 0.5.'],
  ])('a K factor of %s is told with its bounds', (kFactor, says) => {
    expect(bracket({ ...MOTOR_BRACKET, kFactor }).problems).toEqual([{ field: 'kFactor', says }]);
  });

  test('a leg that the bend eats up names the leg', () => {
    const { findings, value } = bracket({ ...MOTOR_BRACKET, legB: 10, radius: 12 });
    expect(value).toBeUndefined();
    expect(findings[0]).toMatchObject({ level: 'stop', field: 'legB' });
  });
});

describe('U, Z and hat', () => {
  const flatLength = (parameters: Readonly<Record<string, unknown>>): number => {
    const { minX, maxX } = boundsOf(outlineOf(bracket(parameters).value?.part ?? raise()).contour);
    return maxX - minX;
  };
  const bends = (parameters: Readonly<Record<string, unknown>>) =>
    (bracket(parameters).value?.part ?? raise()).features
      .filter(isLine)
      .map(({ bend, path }) => [bend?.direction, path.vertices[0]?.x ?? 0] as const);

  test('a U-channel of 1 × 2 × 1 in, T 0.04, R 0.16, K 0.447: flats 0.8, 1.6, 0.8', () => {
    // FAA AMT Handbook U-channel example (published): setback 0.2, flats 0.8, 1.6, 0.8; K 0.447 stands for the
    // empirical allowance (0.01743 R + 0.0078 T) 90 and gives (π/2)(0.16 + 0.447 × 0.04) = 0.2794 in, worked by hand.
    const channel = {
      profile: 'U',
      legA: '1 in',
      middle: '2 in',
      legB: '1 in',
      radius: '0.16 in',
      thickness: '0.04 in',
      kFactor: 0.447,
      holesA: 0,
      holesB: 0,
      width: '2 in',
    };
    expect(flatLength(channel) / 25.4).toBeCloseTo(0.8 + 1.6 + 0.8 + 2 * 0.2794, 3);
  });

  test('a Z in 3 mm, R 3, K 0.4: its bends go up and down, each leg less a setback of 6 a bend', () => {
    // 50 − 6, 6.597, 40 − 12, 6.597, 30 − 6.
    const z = { ...MOTOR_BRACKET, profile: 'Z', middle: 40, legB: 30, holesB: 0 };
    expect(flatLength(z)).toBeCloseTo(44 + 6.5973 + 28 + 6.5973 + 24, 3);
    expect(bends(z).map(([direction]) => direction)).toEqual(['up', 'down']);
    expect(bends(z)[1]?.[1]).toBeCloseTo(44 + 6.5973 + 28 + 6.5973 / 2, 3);
  });

  test('a hat has four bends, up, down, down, up, and is symmetrical', () => {
    const hat = { ...MOTOR_BRACKET, profile: 'hat', flange: 30, legA: 40, middle: 60, legB: 40 };
    const length = flatLength(hat);
    expect(bends(hat).map(([direction]) => direction)).toEqual(['up', 'down', 'down', 'up']);
    const [a = 0, b = 0, c = 0, d = 0] = bends(hat).map(([, x]) => x);
    expect(a + d).toBeCloseTo(length, 9);
    expect(b + c).toBeCloseTo(length, 9);
    // 24 + 28 + 48 + 28 + 24 straight and four bends.
    expect(length).toBeCloseTo(152 + 4 * 6.5973, 3);
  });

  test('the folded ghost holds as much metal as its legs and bends: area of the profile', () => {
    const run = bracket({ ...MOTOR_BRACKET, profile: 'U', middle: 60 });
    const folded = run.value?.ghosts.find(({ id }) => id === 'folded');
    const contour = folded !== undefined && 'contour' in folded.shape ? folded.shape.contour : raise();
    // Straights 44, 48, 34 by 3 mm, and two quarter rings of R 3 to 6: π/4 (36 − 9) each.
    expect(areaOf(contour)).toBeCloseTo((44 + 48 + 34) * 3 + 2 * (Math.PI / 4) * 27, 6);
  });

  test('legs that run into each other when folded are a stop', () => {
    const { findings } = bracket({
      ...MOTOR_BRACKET,
      profile: 'U',
      legA: 60,
      middle: 30,
      legB: 60,
      bend: '140',
      radius: 1,
    });
    expect(findings.find(({ code }) => code === 'folds-into-itself')?.level).toBe('stop');
  });
});

describe('how it is bent', () => {
  test('a measured allowance wins over the K factor', () => {
    const { value } = bracket({ ...MOTOR_BRACKET, allowance: 6 });
    expect(value?.derived.find(({ id }) => id === 'flat')?.value.amount).toBeCloseTo(44 + 6 + 34, 9);
  });

  test('a scored bend in a loaded bracket is a stop unless it is welded after', () => {
    // Common practice: T/3 stays a bend, T/2 is welded after; strength left ((T − g)/T)².
    const scored = { ...MOTOR_BRACKET, made: 'scored', groove: 1.2 };
    const of = (more: object) =>
      bracket({ ...scored, ...more }).findings.find(({ code }) => code === 'scored-bend');
    expect(of({ weldedAfter: 'no' })?.level).toBe('stop');
    expect(of({ weldedAfter: 'no', loaded: 'no' })?.level).toBe('caution');
    expect(of({})?.level).toBe('caution');
    expect(of({})?.says).toContain('36 %');
    expect(bracket({ ...scored, groove: 3 }).findings[0]).toMatchObject({ level: 'stop', field: 'groove' });
  });

  test('a leg shorter than 0.7 of eight thicknesses slips into the V: 16.8 mm for 3 mm', () => {
    // Press-brake rule of thumb (from memory): least flange 0.7 V, V 8 T.
    const found = (legB: number) =>
      bracket({ ...MOTOR_BRACKET, legB, holesB: 0 }).findings.find(({ code }) => code === 'least-flange');
    expect(found(15)).toMatchObject({ level: 'caution', field: 'legB' });
    expect(found(15)?.limit?.amount).toBeCloseTo(16.8, 9);
    expect(found(40)?.level).toBe('pass');
  });

  test('a narrower last leg gets reliefs one thickness wide and T + R deep', () => {
    const part = bracket({ ...MOTOR_BRACKET, lastWidth: 20 }).value?.part ?? raise();
    const { contour } = outlineOf(part);
    expect(contour).toHaveLength(12);
    const begins = 47.2987 - 6.5973 / 2;
    const ys = contour.filter(({ x }) => Math.abs(x - (begins - 6)) < 1e-3).map(({ y }) => Math.abs(y));
    expect(ys.sort((a, b) => a - b)).toEqual([10, 10, 13, 13]);
  });
});

function raise(): never {
  throw new Error('The part was not drawn.');
}
