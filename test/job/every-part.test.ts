// What is asked of every part, whatever its family: tools on hand, bends that can be made, names that call for care.
import { describe, expect, test } from 'vitest';
import { runPart, startingShop, type ShopFacts } from '../../parts-library/job/index.js';

const run = (
  family: string,
  parameters: Readonly<Record<string, unknown>>,
  shop: ShopFacts = startingShop,
  name?: string,
) => runPart({ family, parameters, unit: 'mm', ...(name === undefined ? {} : { name }) }, shop);

const codes = (result: ReturnType<typeof run>): readonly string[] => result.findings.map(({ code }) => code);

describe('tools on hand', () => {
  test('a tapped M8 wants a 6.8 drill and an M8 tap, which a metric set holds', () => {
    const result = run('adapter-plate', { holes: 'tapped', bolt: 'M8' });
    expect(codes(result)).not.toContain('no-drill');
    expect(codes(result)).not.toContain('no-tap');
  });

  test('a tapped 3/8-16 has neither there: tap drill 5/16 in is 7.938 mm (ASME B1.1 chart drill)', () => {
    const result = run('adapter-plate', { holes: 'tapped', bolt: '3/8-16' });
    const tap = result.findings.find(({ code }) => code === 'no-tap');
    expect(tap?.level).toBe('caution');
    expect(tap?.title).toContain('3/8-16');
    const drill = result.findings.find(({ code }) => code === 'no-drill');
    expect(drill?.value?.amount).toBeCloseTo(7.938, 2);
    expect(drill?.says).toContain('The nearest is 8 mm');
  });

  test('a drill larger than the press takes is said', () => {
    const tools = { ...startingShop.tools, largestDrill: 6 };
    const drill = run(
      'adapter-plate',
      { holes: 'drill', bolt: 'M8' },
      { ...startingShop, tools },
    ).findings.find(({ code }) => code === 'no-drill');
    expect(drill).toMatchObject({ level: 'caution', limit: { amount: 6, unit: 'mm' } });
  });
});

describe('bends', () => {
  // F = 1.42 σ T² L ÷ 8 T (from memory), by hand: S275 to 40 mm has at least 410 MPa (EN 10025-2); T 3, L 40.
  test('40 mm of 3 mm S275 want 1.42 × 410 × 3 × 40 ÷ 8 = 8733 N', () => {
    const bend = run('bent-bracket', { width: 40, thickness: 3, material: 'S275' }).findings.find(
      ({ code }) => code === 'bend-force',
    );
    expect(bend?.level).toBe('pass');
    expect(bend?.value?.amount).toBeCloseTo(8733, 0);
  });

  test('a bend longer than the press takes, or stiffer than it has force for, is a caution', () => {
    const level = (bending: { readonly newtons: number; readonly longest: number }) =>
      run(
        'bent-bracket',
        { width: 40, thickness: 3, material: 'S275' },
        {
          ...startingShop,
          tools: { ...startingShop.tools, bending },
        },
      ).findings.find(({ code }) => code === 'bend-force')?.level;
    expect(level({ newtons: 100_000, longest: 39 })).toBe('caution');
    expect(level({ newtons: 8000, longest: 250 })).toBe('caution');
    expect(level({ newtons: 9500, longest: 250 })).toBe('pass');
  });
});

describe('names', () => {
  test.each([
    ['Brake pedal stop', 'use-brake'],
    ['Steering stop', 'use-steering'],
    ['Tow hitch gusset', 'use-tow'],
    ['Bin lifting eye', 'use-lift'],
    ['Lap belt anchor', 'use-belt'],
  ])('a part named “%s” has the caution to have it checked', (name, code) => {
    const finding = run('bent-bracket', {}, startingShop, name).findings.find((one) => one.code === code);
    expect(finding?.level).toBe('caution');
  });

  test('an ordinary name has none, and a family that has said it says it once', () => {
    expect(
      codes(run('bent-bracket', {}, startingShop, 'Lamp bracket')).filter((code) => code.startsWith('use-')),
    ).toEqual([]);
    const twice = run('adapter-plate', { use: 'brake' }, startingShop, 'Brake adapter');
    expect(codes(twice).filter((code) => code === 'use-brake')).toHaveLength(1);
  });
});
