// Length, centres, wrap, slack and take-up of a chain over two sprockets.
import { describe, expect, test } from 'vitest';
import { cart, figure, finding, numbersOf } from './drive.js';

describe('length and centres', () => {
  // Published forms (chain-length pages, 4π² as 39.6) and the tangent line, worked apart from this code. The paper
  // prints 114.8 pitches and C = 35.6 for 20 and 63 teeth, C 36, 114 links.
  test.each([
    [10, 60, '41', 20, 78.2102, 78, 252.54, 132.96],
    [12, 40, '40', 30, 86.6632, 86, 376.74, 162.78],
    [13, 45, '520', 40, 109.649, 110, 637.81, 165.48],
    [20, 63, '40', 36, 114.805, 114, 452.0, undefined],
  ])(
    '%d and %d teeth of %s at %d pitches',
    (motorTeeth, wheelTeeth, chain, pitches, exact, links, centres, wrap) => {
      const pitch = chain === '520' ? 15.875 : 12.7;
      const numbers = numbersOf({ motorTeeth, wheelTeeth, chain, centres: pitches * pitch });
      expect(figure(numbers, 'links')).toBe(links);
      expect(numbers.figures.find(({ id }) => id === 'links')?.formula).toContain(
        `${Number(exact.toFixed(3))} pitches`,
      );
      // 114 links: 35.59 pitches × 12.7 = 451.99.
      expect(figure(numbers, 'centres')).toBeCloseTo(centres, chain === '40' && links === 114 ? 1 : 2);
      if (wrap !== undefined) expect(figure(numbers, 'wrap')).toBeCloseTo(wrap, 2);
    },
  );

  test('the published 20 and 63 teeth with 114 links stand 35.6 pitches apart', () => {
    const numbers = numbersOf({ motorTeeth: 20, wheelTeeth: 63, chain: '40', links: 114 });
    expect(figure(numbers, 'centres') / 12.7).toBeCloseTo(35.6, 1);
  });

  test('the direction of the drive changes neither length nor centres', () => {
    const down = numbersOf({ motorTeeth: 12, wheelTeeth: 40, chain: '40', links: 86 });
    const up = numbersOf({ motorTeeth: 40, wheelTeeth: 12, chain: '40', links: 86 });
    expect(figure(up, 'centres')).toBe(figure(down, 'centres'));
    expect(figure(up, 'wrap')).toBe(figure(down, 'wrap'));
  });

  test('the even counts on both sides are offered, with the odd one between and how far the centres move', () => {
    const { linkChoices } = numbersOf({ motorTeeth: 12, wheelTeeth: 40, chain: '40', centres: 381 });
    expect(linkChoices.map(({ links }) => links)).toEqual([86, 87, 88]);
    // 376.74 − 381 = −4.26, as the table of centres has it.
    expect(linkChoices[0]?.moves).toBeCloseTo(-4.26, 2);
    expect(linkChoices[2]?.moves).toBeGreaterThan(0);
  });

  // The chain must reach round shafts that stay: 109.649 pitches want 110, 114.805 want 116, not the nearer 114.
  test('shafts that stay want the next even count up', () => {
    const fixed = { chain: '40', centres: 36 * 12.7, motorTeeth: 20, wheelTeeth: 63, tensioner: 'idler' };
    expect(figure(numbersOf(fixed), 'links')).toBe(116);
    expect(figure(numbersOf({ ...fixed, tensioner: 'slots' }), 'links')).toBe(114);
  });
});

describe('an odd count of links', () => {
  const odd = numbersOf({ motorTeeth: 12, wheelTeeth: 40, chain: '40', links: 87, centres: 381 });

  // A chain maker's page: offset links weaken the chain.
  test('wants an offset link, and even counts are offered instead', () => {
    expect(finding(odd, 'even-links')).toMatchObject({ level: 'caution', field: 'links' });
    expect(finding(odd, 'even-links').remedies?.map(({ change }) => change)).toEqual([
      [{ op: 'add', path: '/links', value: 86 }],
      [{ op: 'add', path: '/links', value: 88 }],
    ]);
  });

  test('is never what is proposed', () => {
    for (let centres = 300; centres < 340; centres += 1.7) {
      const numbers = numbersOf({ chain: '40', centres });
      expect(figure(numbers, 'links') % 2).toBe(0);
    }
  });
});

describe('what does not go', () => {
  test.each([
    ['sprockets that touch', { chain: '40', centres: 110, links: 48 }, 'centre-distance'],
    ['one sprocket inside the other', { chain: '40', centres: 60 }, 'chain-goes-round'],
    ['too few links', { chain: '40', links: 30 }, 'chain-goes-round'],
    [
      'a chain too short for where the shafts stand',
      { chain: '40', links: 86, centres: 381, wheelTeeth: 40 },
      'chain-slack',
    ],
  ])('%s is a stop', (_, drive, code) => {
    expect(finding(numbersOf(drive), code).level).toBe('stop');
  });

  test('a wrap under 120° is a caution', () => {
    // Public formula sheet: 120° at least. 9 and 90 teeth, close together, wrap less.
    const numbers = numbersOf({ chain: '40', motorTeeth: 9, wheelTeeth: 90, centres: 260 });
    expect(figure(numbers, 'wrap')).toBeLessThan(120);
    expect(finding(numbers, 'wrap').level).toBe('caution');
  });

  test.each([
    [25, 'note'],
    [40, 'pass'],
    [60, 'note'],
  ])('centres of %d pitches: %s', (pitches, level) => {
    // Usually 30 to 50 pitches (from memory).
    expect(finding(numbersOf({ chain: '40', centres: pitches * 12.7 }), 'centre-distance').level).toBe(level);
  });
});

describe('slack', () => {
  const at = (centres: number) =>
    numbersOf({ chain: '40', wheelTeeth: 40, links: 86, centres, tensioner: 'none' });

  // 86 links are straight at 376.74 (published forms). Each mm closer frees about 2 mm of chain: √(2 × 371 × 2) = 38 mm.
  test('of shafts one millimetre closer moves the loose strand by some 38 mm', () => {
    const { value } = finding(at(375.74), 'chain-slack');
    expect(value?.amount).toBeGreaterThan(36);
    expect(value?.amount).toBeLessThan(40);
    expect(finding(at(375.74), 'chain-slack').level).toBe('caution');
  });

  test.each([
    [376.73, 'caution', 'Too tight'],
    [376.68, 'pass', 'brakes or reverses'],
    [376.55, 'note', 'always pulls one way'],
    [374, 'caution', 'Too loose'],
  ])('at centres of %d: %s', (centres, level, words) => {
    const found = finding(at(centres), 'chain-slack');
    expect(found.level).toBe(level);
    expect(found.says).toContain(words);
  });

  // Worn chain is longer: 86 links, 1 % of 12.7 each, 10.9 mm more; the strand that was straight hangs.
  test('grows as the chain wears', () => {
    const worn = { chain: '40', wheelTeeth: 40, links: 86, centres: 376.68, twelvePitches: 153.924 };
    expect(figure(numbersOf(worn), 'wear')).toBeCloseTo(1, 6);
    const { value } = finding(numbersOf(worn), 'chain-slack');
    // √(2 × 371.9 × (10.9 + 0.1) + 11²) = 91.1
    expect(value?.amount).toBeGreaterThan(88);
    expect(value?.amount).toBeLessThan(94);
  });
});

describe('take-up', () => {
  // 2 % of 98 pitches of 12.7 is 24.9 mm of chain; both strands share it, so the centres move some half of it.
  test('of a moving motor is about half of what the chain grows by', () => {
    expect(figure(numbersOf(cart), 'take-up')).toBeGreaterThan(12.4);
    expect(figure(numbersOf(cart), 'take-up')).toBeLessThan(12.8);
    expect(finding(numbersOf(cart), 'take-up').level).toBe('pass');
    expect(finding(numbersOf({ ...cart, takeUp: '8' }), 'take-up').level).toBe('caution');
  });

  test('that is not given is told, nothing at all is a caution with what would do', () => {
    expect(finding(numbersOf({ ...cart, takeUp: undefined }), 'take-up').level).toBe('note');
    const none = finding(numbersOf({ ...cart, takeUp: undefined, tensioner: 'none' }), 'take-up');
    expect(none.level).toBe('caution');
    expect(none.remedies).toHaveLength(2);
  });

  // The idler bends the strand: ½ √(2 × 420 × 24.9 + 24.9²) = 73 mm.
  test('of an idler at mid-span is much longer', () => {
    const idler = numbersOf({ ...cart, takeUp: undefined, tensioner: 'idler', links: 98, centres: 425.5 });
    expect(figure(idler, 'take-up')).toBeGreaterThan(72);
    expect(figure(idler, 'take-up')).toBeLessThan(75);
  });
});
