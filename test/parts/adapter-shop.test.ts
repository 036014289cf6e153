// What is bought for an adapter plate and how it is drilled.
import { describe, expect, test } from 'vitest';
import { run } from './plate.js';

describe('hardware of an adapter plate', () => {
  const bolts = (parameters: Readonly<Record<string, unknown>>) =>
    run(parameters).value?.hardware.find(({ kind }) => kind === 'bolt');

  test('M8 through 6 and 8 mm want a grip of 14, and 5 of them', () => {
    const item = bolts({ boltedThickness: 8, thickness: 6, bolts: 5, bolt: 'M8' });
    expect(item?.quantity).toBe(5);
    expect(item?.says).toContain('Grip 14 mm');
    // Grip 14, two washers of 1.6 (ISO 7089), a nut of 8 (ISO 4032 6.8, locknut 8), some thread out: 30 is the next length of ISO 888.
    expect(item?.name).toBe('M8 × 30 hexagon bolt, 8.8');
  });

  test('without the bolted part’s thickness it says what it took', () => {
    expect(bolts({ thickness: 6 })?.says).toContain('taken to be 6 mm thick: measure it');
  });
});

test('a 6.8 drill at 25 m/min turns at 25000 ÷ (π × 6.8) = 1170, said to the nearest fifty', () => {
  const steps = run({ holes: 'tapped', bolt: 'M8' }).value?.steps ?? [];
  expect(steps.find(({ kind }) => kind === 'drill')?.says).toContain('at about 1150 rpm in mild steel');
});
