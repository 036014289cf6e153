// What stands in the fields of plates on hand and of cutting speeds when a job changes its unit.
import { describe, expect, test } from 'vitest';
import { fieldEcho, fieldText } from '../../client/list/field-text.js';
import { findFamily, type Field } from '../../parts-library/parts/index.js';

function fieldOf(family: string, path: string): Field {
  const field = findFamily(family)?.fields.find((one) => one.path === path);
  if (field === undefined) throw new Error(`${family} has no field ${path}.`);
  return field;
}

describe('lists of lengths', () => {
  const plates = fieldOf('ring-spacer', 'plates');
  const typed = { typed: '6.35, 3 ×2', metric: '6.35 mm; 3 mm × 2', lengths: [] };

  test('stay as typed in the unit they were typed in', () => {
    expect(fieldText(plates, typed, 'mm')).toBe('6.35, 3 ×2');
  });

  test('are written with their unit in the other: 6.35 mm is a quarter inch, 3 mm 0.1181 in', () => {
    expect(fieldText(plates, typed, 'in')).toBe('0.25 in; 0.1181 in × 2');
    expect(fieldEcho(plates, typed)).toEqual(['6.35 mm; 3 mm × 2', '0.25 in; 0.1181 in × 2']);
  });
});

describe('speeds', () => {
  test('100 in/min typed bare in an inch job is 2540 mm/min in a metric one', () => {
    const speed = fieldOf('coupon-speed', 'speed');
    const value = { typed: '100', value: 2540 };
    expect(fieldText(speed, value, 'in')).toBe('100');
    expect(fieldText(speed, value, 'mm')).toBe('2540 mm/min');
  });
});
