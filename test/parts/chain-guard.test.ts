// The guard over the orchard cart's drive chain: what it covers, what a finger reaches, how it is held.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, containsPoint, isCircle, lengthOf } from '../../parts-library/geometry/index.js';
import { isLine, isOpening, outlineOf } from '../../parts-library/model/index.js';
import { drawAtRandom, familyOf, sizes, takeAnything } from './sound.js';

const { run, part, finding, opening, refused } = familyOf('chain-guard');

const BARE = { tabsAbove: 0, tabsBelow: 0, window: 'none', axleLarge: 0, takeUp: 0 } as const;

describe('what it covers', () => {
  test('two equal sprockets: a belt of pitch radius, half a link plate and room', () => {
    // 40 chain, 15 teeth: PD 61.084 (published 2.4049 in), plates 0.95 × 12.7 = 12.065 (ASME B29.1, published):
    // 30.542 + 6.033 + 16 = 52.575; length 2 × 376 + 2 π 52.575.
    const { contour } = outlineOf(part({ ...BARE, small: 15, large: 15 }));
    expect(lengthOf(contour)).toBeCloseTo(2 * 376 + 2 * Math.PI * 52.5746, 2);
  });

  test('12 and 40 teeth, 376 apart: 531.5 less the take-up over all', () => {
    // PD = 12.7 ÷ sin(15°) = 49.069 and ÷ sin(4.5°) = 161.867: 24.534 + 80.934 + 12.065 + 32 + 376 (worked by hand).
    const { minX, maxX } = boundsOf(outlineOf(part(BARE)).contour);
    expect(maxX - minX).toBeCloseTo(525.533, 2);
    const slides = boundsOf(outlineOf(part({ ...BARE, takeUp: 12 })).contour);
    expect(slides.minX).toBeCloseTo(minX - 6, 6);
    expect(slides.maxX).toBeCloseTo(maxX, 6);
  });

  test('tabs stand on the straight edges: each adds its length to the way round, twice less its corners', () => {
    const plain = areaOf(outlineOf(part(BARE)).contour);
    const tabbed = areaOf(outlineOf(part({ ...BARE, tabsAbove: 2, root: 0 })).contour);
    // 30 × 28 less two corners of 7.5: (4 − π)/4 × 2 × 56.25 = 24.14; worked by hand.
    expect(tabbed - plain).toBeCloseTo(2 * (840 - 24.1427), 2);
    const rooted = areaOf(outlineOf(part({ ...BARE, tabsAbove: 2, root: 3 })).contour);
    // Two roots of 3 add (4 − π)/4 × 9 each.
    expect(rooted - tabbed).toBeCloseTo(4 * (1 - Math.PI / 4) * 9, 6);
  });

  test('every hole stands in the middle of its tab', () => {
    const guard = part({});
    const holes = guard.features.filter(isOpening).filter(({ id }) => id.startsWith('tab'));
    expect(holes).toHaveLength(3);
    for (const { contour } of holes) {
      const { centre } = isCircle(contour) ?? { centre: { x: NaN, y: NaN } };
      expect(containsPoint(outlineOf(guard).contour, centre)).toBe('inside');
      expect(containsPoint(outlineOf(part(BARE)).contour, centre)).toBe('outside');
    }
  });

  test('the chain behind it is as long as the drive’s own formula says', () => {
    // Published example: 20 and 63 teeth at 36 pitches are 114.8 links.
    const links = run({ small: 20, large: 63, centres: 36 * 12.7, window: 'none' }).value?.derived.find(
      ({ id }) => id === 'links',
    );
    expect(links?.value.amount).toBeCloseTo(114.8, 1);
  });
});

describe('fingers', () => {
  test('slots of 8 want the chain 20 mm behind, of 10 already 80', () => {
    // ISO 13857 Table 4 (from memory).
    expect(finding({}, 'finger-safe', 'opening')).toMatchObject({ level: 'pass', limit: { amount: 20 } });
    const wide = finding({ opening: 10 }, 'finger-safe', 'opening');
    expect(wide).toMatchObject({ level: 'stop', limit: { amount: 80 } });
    expect(wide.remedies?.[0]?.change).toEqual([{ op: 'add', path: '/opening', value: 8 }]);
    expect(finding({ opening: 10, behind: 80 }, 'finger-safe', 'opening').level).toBe('pass');
  });

  test('a round hole keeps a finger out better than a slot as wide', () => {
    expect(finding({ window: 'round', opening: 10 }, 'finger-safe', 'opening').level).toBe('pass');
    expect(finding({ window: 'round', opening: 8, behind: 5 }, 'finger-safe', 'opening').level).toBe('pass');
    expect(finding({ behind: 15 }, 'finger-safe', 'opening').level).toBe('stop');
  });

  test('the gap round a shaft counts as a slot, at one end of the take-up where it slides', () => {
    const gaps = (parameters: Readonly<Record<string, unknown>>) =>
      run(parameters).findings.filter(({ code, field }) => code === 'finger-safe' && field === 'axleRoom');
    expect(gaps({}).map(({ level }) => level)).toEqual(['pass']);
    const sliding = gaps({ axleSmall: 20 }).find(({ subject }) => subject.featureId === 'axle.small');
    // 8/2 + 12 = 16 mm: 120 mm wanted.
    expect(sliding).toMatchObject({ level: 'stop', limit: { amount: 120 } });
    expect(gaps({ axleSmall: 20, takeUp: 0 }).every(({ level }) => level === 'pass')).toBe(true);
  });

  test('the loose strand stays behind the plate: 3 % of the span on either side', () => {
    // Slack 6 % at the most (makers’ guides, from memory): 0.06 × 376 ÷ 2 = 11.28.
    expect(finding({}, 'strand-room')).toMatchObject({ level: 'pass' });
    expect(finding({}, 'strand-room').limit?.amount).toBeCloseTo(11.28, 9);
    expect(finding({ room: 8 }, 'strand-room').level).toBe('caution');
    expect(finding({ room: 0, window: 'none' }, 'strand-room').level).toBe('stop');
  });

  test('three bolts hold it, none is a stop', () => {
    expect(finding({}, 'guard-held').level).toBe('pass');
    expect(finding({ tabsBelow: 0 }, 'guard-held')).toMatchObject({ level: 'caution' });
    expect(finding({ tabsAbove: 0, tabsBelow: 0 }, 'guard-held').level).toBe('stop');
  });
});

describe('windows', () => {
  test('slots stand over the lower strand, their ends at the chain’s outer side', () => {
    const { minX, maxX, minY, maxY } = boundsOf(opening({}, 'window.3').contour);
    expect(maxX - minX).toBeCloseTo(8, 9);
    expect(maxY - minY).toBeCloseTo(45, 9);
    expect((minX + maxX) / 2).toBeCloseTo(188, 9);
    // Half way along, the pitch line of a strand between radii 24.534 and 80.934 lies at their mean over cos a,
    // a = asin(56.399/376) = 8.627°: 52.734/0.98869 = 53.337; 6.033 more to the plates' outer side.
    expect(minY).toBeCloseTo(-(53.337 + 6.0325), 2);
  });

  test('they go where they are put', () => {
    const { minY, maxY } = boundsOf(opening({ windowUp: 10, windowAt: 60 }, 'window.3').contour);
    expect((minY + maxY) / 2).toBeCloseTo(10, 9);
    expect(
      isCircle(opening({ window: 'round', openings: 1, windowUp: 0 }, 'window.1').contour)?.centre,
    ).toEqual({
      x: 188,
      y: 0,
    });
  });
});

describe('bent tabs', () => {
  const BENT = { tabsAre: 'bent', tabLength: 34 } as const;

  test('a leg of 34 in 2 mm, R 3, K 0.4 with a root of 3 is 3 + 5.969 + 34 − 5 = 37.969 in the flat', () => {
    // BA = (π/180) 90 (3 + 0.4 × 2) = 5.969, setback 5 (US Navy sheet-metal course, published).
    const { value } = run(BENT);
    expect(value?.derived.find(({ id }) => id === 'tab')?.value.amount).toBeCloseTo(37.969, 3);
    const bends = value?.part.features.filter(isLine).filter(({ bend }) => bend !== undefined) ?? [];
    expect(bends).toHaveLength(3);
    expect(bends[0]?.bend).toEqual({ degrees: 90, radius: 3, direction: 'down' });
  });

  test('hole edge to bend: 29 − 13 − 3.3 = 12.7 against 2.5 T + R = 8', () => {
    // Straight leg 34 − 5 = 29; published rules run 2 T to 3 T + R, the middle one is taken.
    const gap = finding(BENT, 'hole-to-bend');
    expect(gap.value?.amount).toBeCloseTo(12.7, 6);
    expect(gap).toMatchObject({ level: 'pass', limit: { amount: 8 } });
    expect(finding({ ...BENT, tabLength: 26 }, 'hole-to-bend').level).toBe('caution');
  });

  test('radius and leg are held against what bends', () => {
    // Least flange 0.7 × 8 T (from memory): 11.2 mm for 2 mm.
    expect(finding(BENT, 'least-flange').limit?.amount).toBeCloseTo(11.2, 9);
    expect(finding({ ...BENT, bendRadius: 0.5 }, 'bend-radius').level).toBe('caution');
    const kinds = run(BENT).value?.steps.map(({ kind }) => kind) ?? [];
    expect(kinds.filter((kind) => kind === 'bend')).toHaveLength(3);
  });

  test('flat tabs stand on spacers, bent ones on the frame', () => {
    // 35 + 3 + 2 + 2 × 1.8 + 5.2 + 2 = 50.8 → 55; 3 + 2 + 10.8 = 15.8 → 16.
    const bolts = (parameters: Readonly<Record<string, unknown>>) =>
      run(parameters).value?.hardware.find(({ id }) => id === 'tabs.bolts')?.name;
    expect(bolts({})).toBe('M6 × 55 hexagon bolt, 8.8');
    expect(bolts(BENT)).toBe('M6 × 16 hexagon bolt, 8.8');
    expect(run({}).value?.hardware.find(({ id }) => id === 'spacers')).toMatchObject({
      quantity: 3,
      length: 35,
    });
  });
});

describe('what cannot be drawn names its field', () => {
  test.each([
    ['centres', { centres: 100 }],
    ['tabsAbove', { tabsAbove: 4, tabWidth: 90 }],
    ['tabsBelow', { tabsAbove: 0, tabsBelow: 4, tabWidth: 90 }],
    ['tabLength', { tabsAre: 'bent', tabLength: 15 }],
    ['tabHole', { tabHole: 28 }],
    ['root', { root: 20 }],
    ['pitch', { pitch: 7 }],
    ['slotLength', { slotLength: 8 }],
    ['windowAt', { windowAt: 0, windowUp: 200 }],
    ['axleLarge', { axleLarge: 220 }],
    ['axleSmall', { axleSmall: 100 }],
  ])('%s', (field, parameters) => {
    expect(refused(parameters)).toMatchObject({ drawn: false, field });
  });
});

describe('random guards', () => {
  test('are sound, or say why not', () => {
    const guards = fc.record(
      {
        chain: fc.constantFrom('35', '40', '428', '08B', '520'),
        small: fc.integer({ min: 9, max: 25 }),
        large: fc.integer({ min: 9, max: 70 }),
        centres: sizes(200, 700),
        takeUp: sizes(0, 30),
        room: sizes(0, 40),
        behind: sizes(5, 100),
        axleSmall: fc.constantFrom(0, 15, 25),
        axleLarge: fc.constantFrom(0, 25, 40),
        tabsAre: fc.constantFrom('flat', 'bent'),
        tabsAbove: fc.integer({ min: 0, max: 4 }),
        tabsBelow: fc.integer({ min: 0, max: 4 }),
        tabWidth: sizes(15, 50),
        tabLength: sizes(15, 50),
        tabHole: sizes(6, 20),
        bolt: fc.constantFrom('M5', 'M6', 'M8', '1/4-20'),
        holes: fc.constantFrom('clearance', 'drill', 'tapped', '7'),
        root: sizes(0, 8),
        window: fc.constantFrom('slots', 'round', 'none'),
        opening: sizes(5, 20),
        slotLength: sizes(20, 70),
        windowAt: fc.integer({ min: 20, max: 80 }),
        windowUp: fc.option(sizes(-60, 60), { nil: undefined }),
        thickness: fc.constantFrom(1.5, 2, 3, 4),
        label: fc.constantFrom(undefined, 'GUARD'),
      },
      { requiredKeys: [] },
    );
    expect(drawAtRandom('chain-guard', guards)).toBeGreaterThan(0.4);
  });

  test('take anything without throwing', () => {
    takeAnything('chain-guard', [
      'chain',
      'small',
      'large',
      'centres',
      'takeUp',
      'tabsAre',
      'root',
      'window',
      'windowUp',
      'pitch',
    ]);
  });
});
