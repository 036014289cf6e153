// The jigs that hold the orchard cart's frame corners while they are tacked.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, containsPoint, isCircle, lengthOf } from '../../parts-library/geometry/index.js';
import { isCut, isOpening, outlineOf } from '../../parts-library/model/index.js';
import { drawAtRandom, familyOf, sizes, takeAnything } from './sound.js';

const { run, part, finding, opening, refused } = familyOf('tack-jig');

const derived = (parameters: Readonly<Record<string, unknown>>, id: string): number =>
  run(parameters).value?.derived.find((one) => one.id === id)?.value.amount ?? NaN;

const middleOf = (parameters: Readonly<Record<string, unknown>>, id: string) => {
  const { minX, maxX, minY, maxY } = boundsOf(opening(parameters, id).contour);
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
};

describe('the bed', () => {
  test('slots are stop + clearance + t tan θ: 6.51 × 25.51 for 6 × 25 in 6 mm plate', () => {
    // Shop rule (common practice): 6 + 0.3 + 6 × 0.034921 = 6.5095.
    expect(derived({}, 'slot')).toBeCloseTo(6.5095, 4);
    const { minX, maxX, minY, maxY } = boundsOf(opening({ relief: 0 }, 'stop.a.1').contour);
    expect(maxX - minX).toBeCloseTo(25.5095, 4);
    expect(maxY - minY).toBeCloseTo(6.5095, 4);
  });

  test('stops stand with their faces on the outer side of the tubes, wedge stops a wedge off the inner side', () => {
    expect(middleOf({}, 'stop.a.1').y).toBeCloseTo(-3, 9);
    expect(middleOf({}, 'stop.b.2').x).toBeCloseTo(-3, 9);
    expect(middleOf({ tubeA: 50, wedgeGap: 8 }, 'wedge.a').y).toBeCloseTo(50 + 8 + 3, 9);
    expect(middleOf({ tubeB: 30, wedgeGap: 8 }, 'wedge.b').x).toBeCloseTo(30 + 8 + 3, 9);
  });

  test('at 60° the second leg’s stops lie on a line 3 mm outside of a ray at 60°', () => {
    const { x, y } = middleOf({ angle: 60, relief: 0 }, 'stop.b.2');
    // Distance from the ray (cos 60°, sin 60°), on its outer, left-hand side.
    expect(y * 0.5 - x * (Math.sqrt(3) / 2)).toBeCloseTo(3, 6);
  });

  test('the opening is drawn about the mitre: 56.57 long for two tubes of 40, and the room on both ends', () => {
    // 40 √2 = 56.57, and 2 × 10.
    const circle = isCircle(opening({}, 'weld.opening').contour);
    expect(2 * (circle?.radius ?? 0)).toBeCloseTo(76.569, 3);
    expect(circle?.centre.x).toBeCloseTo(20, 9);
  });

  test('an L leaves the corner between the legs open, a full bed fills it', () => {
    const between = { x: 200, y: 200 };
    expect(containsPoint(outlineOf(part({ shape: 'L' })).contour, between)).toBe('outside');
    expect(containsPoint(outlineOf(part({ shape: 'full' })).contour, between)).toBe('inside');
  });

  test('straps hold each tube from both sides', () => {
    const straps = (clamps: number) =>
      part({ clamps }).features.filter(({ id }) => id.startsWith('strap')).length;
    expect([0, 1, 2].map(straps)).toEqual([0, 4, 8]);
    // Washer 16 for M8 (ISO 7089, published): 8 + 2 off the tube.
    const hole = part({ clamps: 1 })
      .features.filter(isOpening)
      .find(({ id }) => id === 'strap.a.1.outer');
    expect(isCircle(hole?.contour ?? raise())?.centre.y).toBeCloseTo(-10, 9);
  });

  test('all slots have a lead-in, and keep it off the sides that locate', () => {
    const { findings, value } = run({});
    expect(findings.filter(({ level }) => level === 'stop')).toEqual([]);
    expect(value?.plan.contours).toHaveLength(12);
    expect(opening({}, 'wedge.b').edges?.map(({ role }) => role)).toEqual(['mating', 'mating']);
  });
});

describe('the square', () => {
  const SQUARE = { kind: 'square', legA: 300, legB: 300, tip: 60, corner: 0, weldRoom: 20, clamps: 0 };

  test('its area: a square less the half beyond the ends and the bite', () => {
    // Worked by hand: pentagon (0,0) (300,0) (300,60) (60,300) (0,300): 90000 − 240²/2 = 61200; bite π 20²/4 = 314.16.
    expect(areaOf(outlineOf(part(SQUARE)).contour)).toBeCloseTo(61200 - 100 * Math.PI, 6);
    expect(lengthOf(outlineOf(part(SQUARE)).contour)).toBeCloseTo(
      2 * 280 + 120 + 240 * Math.SQRT2 + 10 * Math.PI,
      6,
    );
  });

  test('the two edges on the tubes are kept clean', () => {
    const outline = part(SQUARE).features.filter(isCut)[0];
    expect(outline?.edges).toHaveLength(2);
    expect(outline?.edges?.every(({ role }) => role === 'mating')).toBe(true);
  });

  test('clamp openings keep their land to the edge', () => {
    const { minY } = boundsOf(opening({ kind: 'square', clamps: 1, clampLand: 15 }, 'clamp.a.1').contour);
    expect(minY).toBeCloseTo(15, 9);
  });

  test('opened for shrinkage it holds that much more', () => {
    const edge = outlineOf(part({ ...SQUARE, preset: 1 })).contour;
    const far = edge.reduce((a, b) => (b.y > a.y ? b : a));
    // The second edge leans 1° outwards: its end is at 300 × sin 1° = 5.236 left of the corner.
    expect(Math.min(...edge.map(({ x }) => x))).toBeCloseTo(-5.236, 3);
    expect(far.y).toBeGreaterThan(299);
  });
});

describe('how true it holds', () => {
  test('300 and 400 make 500 across', () => {
    // Pythagoras; 360 and 360 at 60° make an equilateral triangle.
    expect(derived({ legA: 400, legB: 300 }, 'diagonal')).toBeCloseTo(500, 9);
    expect(derived({ angle: 60 }, 'diagonal')).toBeCloseTo(360, 9);
  });

  test('a square of 300 with a bite of 20: twice atan(1.2/280) is 29′, class B wants 45′', () => {
    // ISO 9013 class 2 for 280 mm in 6 mm plate ±1.1 (published): 2 × atan(1.1/280) = 0.4502°; ISO 13920 (from memory).
    const square = finding({ kind: 'square', legA: 300, legB: 300, weldRoom: 20 }, 'squareness');
    expect(square.value?.amount).toBeCloseTo(0.4502, 3);
    expect(square.limit?.amount).toBeCloseTo(0.75, 9);
    expect(square.level).toBe('note');
    expect(finding({ kind: 'square', legA: 150, legB: 150, weldRoom: 20 }, 'squareness').level).toBe(
      'caution',
    );
  });

  test('more clearance lets the stops lean further', () => {
    const held = (clearance: number) => finding({ clearance }, 'squareness').value?.amount ?? NaN;
    // atan is straight here: 0.7 mm more over the same span on both legs.
    const span = derived({}, 'span');
    expect(held(1) - held(0.3)).toBeCloseTo(2 * (0.7 / span) * (180 / Math.PI), 2);
  });

  test('room for the wedge, for the weld, and a word on shrinkage and old tubes', () => {
    expect(finding({ wedgeGap: 2 }, 'wedge-room').level).toBe('caution');
    expect(finding({}, 'wedge-room').level).toBe('pass');
    expect(finding({ weldRoom: 0 }, 'weld-room').level).toBe('caution');
    expect(finding({}, 'weld-room').level).toBe('pass');
    expect(finding({}, 'shrinkage').level).toBe('note');
    expect(finding({ preset: 0.5 }, 'shrinkage').level).toBe('pass');
    expect(finding({}, 'old-tube').field).toBe('tubeA');
  });

  test('thin stops want an eye to pierce in', () => {
    expect(finding({ stop: 4, relief: 1 }, 'slot-width')).toMatchObject({ level: 'stop', field: 'eye' });
    expect(run({ stop: 4, relief: 1, eye: 9 }).findings.filter(({ level }) => level === 'stop')).toEqual([]);
  });

  test('stops and wedges are on the saw list', () => {
    // 6 mm plate and two thirds of 40: 32.67, sawn 33.
    const items = run({}).value?.hardware ?? [];
    expect(items.find(({ id }) => id === 'stops')).toMatchObject({ quantity: 6, length: 33 });
    expect(items.find(({ id }) => id === 'straps.bolts')?.name).toBe('M8 × 65 hexagon bolt, 8.8');
  });
});

describe('what cannot be drawn names its field', () => {
  test.each([
    ['relief', { relief: 3 }],
    ['eye', { eye: 24 }],
    ['near', { near: 60 }],
    ['legA', { legA: 160 }],
    ['legB', { legB: 160 }],
    ['legB', { near: 100, legB: 170 }],
    ['clamps', { clamps: 2, legA: 170, legB: 170, clampBolt: 'M20', thickness: 3 }],
    ['corner', { corner: 60 }],
    ['legA', { kind: 'square', legA: 60, weldRoom: 50 }],
    ['tip', { kind: 'square', tip: 400 }],
    ['corner', { kind: 'square', corner: 40 }],
    ['clampOpening', { kind: 'square', clampOpening: 140, legA: 200, legB: 200 }],
  ])('%s', (field, parameters) => {
    expect(refused(parameters)).toMatchObject({ drawn: false, field });
  });
});

describe('random jigs', () => {
  test('are sound, or say why not', () => {
    const jigs = fc.record(
      {
        kind: fc.constantFrom('bed', 'square'),
        angle: sizes(45, 135),
        preset: sizes(-2, 2),
        joint: fc.constantFrom('mitre', 'butt'),
        tubeA: sizes(20, 80),
        tubeB: sizes(20, 80),
        legA: sizes(200, 600),
        legB: sizes(200, 600),
        weldRoom: sizes(0, 25),
        stop: fc.constantFrom(4, 6, 8, 10),
        stopWidth: sizes(15, 40),
        clearance: sizes(0, 1),
        relief: fc.constantFrom(0, 1, 1.5, 2),
        eye: fc.constantFrom(undefined, undefined, 10),
        wedgeGap: sizes(0, 15),
        near: fc.constantFrom(undefined, undefined, 130),
        clamps: fc.integer({ min: 0, max: 2 }),
        clampHoles: fc.constantFrom('clearance', 'tapped', 'drill', '11'),
        clampOpening: sizes(20, 50),
        tip: sizes(40, 90),
        shape: fc.constantFrom('L', 'full'),
        corner: sizes(0, 20),
        thickness: fc.constantFrom(4, 6, 8, 10),
        label: fc.constantFrom(undefined, 'FRAME 90'),
      },
      { requiredKeys: [] },
    );
    expect(drawAtRandom('tack-jig', jigs)).toBeGreaterThan(0.4);
  });

  test('take anything without throwing', () => {
    takeAnything('tack-jig', [
      'kind',
      'angle',
      'tubeA',
      'legA',
      'weldRoom',
      'stop',
      'near',
      'clamps',
      'tip',
      'eye',
    ]);
  });
});

function raise(): never {
  throw new Error('The hole was not drawn.');
}
