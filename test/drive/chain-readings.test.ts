// Which chain it is, from a caliper: width, roller, twelve pitches; and how worn.
import { describe, expect, test } from 'vitest';
import { listChains } from '../../parts-library/handbook/index.js';
import { figure, finding, numbersOf } from './drive.js';

const names = (drive: object) =>
  numbersOf(drive)
    .candidates.filter(({ fits }) => fits)
    .map(({ name }) => name);

describe('a chain from readings', () => {
  // Sizes as printed in public dimension tables, mm; inches × 25.4.
  test.each([
    ['40', { innerWidth: '0.312 in', roller: '0.312 in', twelvePitches: '6 in' }],
    ['41', { innerWidth: '1/4 in', roller: '0.306 in', twelvePitches: '6 in' }],
    ['08B', { innerWidth: '7.75', roller: '8.51', twelvePitches: '152.4' }],
    ['35', { innerWidth: '0.188 in', roller: '0.2 in', twelvePitches: '4.5 in' }],
    ['60', { innerWidth: '1/2 in', roller: '0.469 in', twelvePitches: '9 in' }],
    ['415', { innerWidth: '4.76', roller: '7.77', twelvePitches: '152.4' }],
    ['525', { innerWidth: '7.95', roller: '10.16', twelvePitches: '190.5' }],
  ])('%s is among the likeliest two of its own sizes', (name, readings) => {
    expect(names(readings).slice(0, 2)).toContain(name);
  });

  test('every chain of the handbook fits its own printed sizes', () => {
    for (const { name, innerWidth, roller, pitch } of listChains()) {
      expect(names({ innerWidth, roller, twelvePitches: 12 * pitch })).toContain(name);
    }
  });

  // Published trade notes: 40 (roller 7.92) and 428 (roller 8.51) are not interchangeable.
  test('40 and 428 are told apart by the roller', () => {
    expect(names({ innerWidth: '7.8', roller: '8.5 ±0.05', twelvePitches: '152.6' })).not.toContain('40');
    expect(names({ innerWidth: '7.9', roller: '7.9 ±0.05', twelvePitches: '152.6' })).not.toContain('428');
  });

  // Published trade notes: 50 and 530 share pitch, roller and width; 41, 420 and 085 roller and width.
  test.each([
    [{ innerWidth: '9.5', roller: '10.15', twelvePitches: '190.6' }, ['50', '530']],
    [{ innerWidth: '6.3', roller: '7.77', twelvePitches: '152.5' }, ['41', '420', '085']],
  ])('chains that interchange are named together', (readings, alike) => {
    const found = finding(numbersOf(readings), 'chain-identified');
    expect(found.level).toBe('note');
    for (const name of alike) expect(found.title).toContain(name);
    expect(found.remedies?.length).toBeGreaterThanOrEqual(alike.length);
  });

  test('a worn 12.7 pitch is still no 15.875', () => {
    expect(names({ innerWidth: '7.8', roller: '8.5', twelvePitches: '156.5' })).toEqual(
      expect.arrayContaining(['08B', '428']),
    );
  });

  test('one reading alone leaves several, and says what to measure', () => {
    const numbers = numbersOf({ twelvePitches: '152.4' });
    expect(numbers.candidates.length).toBeGreaterThan(5);
    expect(finding(numbers, 'chain-identified').says).toContain('inner width');
  });

  test('a wide ± leaves more of them', () => {
    const close = names({ innerWidth: '7.0 ±0.01', roller: '7.8', twelvePitches: '152.4' });
    const loose = names({ innerWidth: '7.0 ±0.8', roller: '7.8', twelvePitches: '152.4' });
    expect(loose.length).toBeGreaterThan(close.length);
  });

  test('sizes of no chain say so and show the nearest', () => {
    const numbers = numbersOf({ innerWidth: '30', roller: '5', twelvePitches: '300' });
    expect(finding(numbers, 'chain-identified').level).toBe('caution');
    expect(numbers.candidates).toHaveLength(3);
    expect(numbers.chain).toBeUndefined();
  });

  test('a named chain that the readings contradict is a caution, with the chain they fit', () => {
    const numbers = numbersOf({ chain: '40', innerWidth: '7.8', roller: '8.5', twelvePitches: '152.6' });
    expect(numbers.chain).toEqual({ name: '40', from: 'name' });
    const found = finding(numbers, 'chain-readings');
    expect(found.level).toBe('caution');
    expect(found.remedies?.map(({ says }) => says)).toContain('Take 08B');
  });

  test('a named chain that they agree with passes', () => {
    expect(finding(numbersOf({ chain: '428', roller: '8.5' }), 'chain-readings').level).toBe('pass');
  });
});

describe('wear over twelve pitches', () => {
  // 12 × 12.7 = 152.4 by hand. Limits from chain makers' guides (from memory): 2 % with take-up, 1 % without, 3 % never.
  test.each([
    ['152.5', 'slots', 'pass'],
    ['154.2', 'slots', 'note'],
    ['155.6', 'slots', 'caution'],
    ['154.2', 'none', 'caution'],
    ['157.1', 'slots', 'stop'],
  ])('%s mm, kept tight by %s: %s', (twelvePitches, tensioner, level) => {
    const numbers = numbersOf({ chain: '40', twelvePitches, tensioner });
    expect(finding(numbers, 'chain-wear').level).toBe(level);
  });

  test('is 0.79 % at 153.6, known to what the reading is', () => {
    const numbers = numbersOf({ chain: '40', twelvePitches: '153.6 ±0.3' });
    // 1.2 ÷ 152.4 = 0.787 %; 0.3 ÷ 152.4 = 0.197 %.
    expect(figure(numbers, 'wear')).toBeCloseTo(0.787, 3);
    expect(finding(numbers, 'chain-wear').value?.plusMinus).toBeCloseTo(0.197, 3);
  });

  test('whose ± reaches the limit is no pass', () => {
    const numbers = numbersOf({ chain: '40', twelvePitches: '155.2 ±0.4' });
    expect(finding(numbers, 'chain-wear').says).toContain('±');
    expect(finding(numbers, 'chain-wear').level).toBe('caution');
  });
});
