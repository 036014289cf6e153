// Texts in inputs: what was typed stays while it means the same, and a change of unit keeps the size.
import { describe, expect, it } from 'vitest';
import { fieldEcho, fieldText } from '../../client/list/field-text.js';
import { findFamily, type Field } from '../../parts-library/parts/index.js';

function field(path: string): Field {
  const found = findFamily('adapter-plate')?.fields.find((one) => one.path === path);
  if (found === undefined) throw new Error(`The adapter plate has no field ${path}.`);
  return found;
}

describe('texts in inputs', () => {
  it('35 typed in a metric job stays as typed, and is 1.378 in when the job turns to inches', () => {
    const entry = { typed: '35', mm: 35 };
    expect(fieldText(field('hub'), entry, 'mm')).toBe('35');
    expect(fieldText(field('hub'), entry, 'in')).toBe('1.378 in');
  });

  it('a text that carries its unit stays as typed in either kind of job', () => {
    const entry = { typed: '1-3/8"', mm: 34.925 };
    expect(fieldText(field('hub'), entry, 'mm')).toBe('1-3/8"');
    expect(fieldText(field('hub'), entry, 'in')).toBe('1-3/8"');
  });

  it('a ± goes along when the unit changes', () => {
    expect(fieldText(field('hub'), { typed: '25.4±0.127', mm: 25.4, plusMinus: 0.127 }, 'in')).toBe(
      '1±0.005 in',
    );
  });

  it('a measured pattern keeps its way of measuring when the unit changes', () => {
    const entry = { typed: 'adjacent 50.8', metric: 'adjacent 50.8 mm', measure: {} };
    expect(fieldText(field('boltCircle'), entry, 'mm')).toBe('adjacent 50.8');
    expect(fieldText(field('boltCircle'), entry, 'in')).toBe('adjacent 2 in');
  });

  it('echoes a length in both units', () => {
    expect(fieldEcho(field('hub'), { typed: '35', mm: 35 })).toEqual(['35 mm', '1.378 in']);
    expect(fieldEcho(field('hub'), { typed: '25.4±0.127', mm: 25.4, plusMinus: 0.127 })).toEqual([
      '25.4 mm ±0.127 mm',
      '1 in ±0.005 in',
    ]);
  });

  it('echoes a torque in both units', () => {
    expect(fieldEcho(field('torque'), { typed: '180', value: 180 })).toEqual(['180 N·m', '132.76 lbf·ft']);
  });

  it('shows the way in which holes are made, or their diameter', () => {
    expect(fieldText(field('holes'), { kind: 'tapped' }, 'mm')).toBe('tapped');
    expect(fieldText(field('holes'), { kind: 'plain', diameter: { typed: '11', mm: 11 } }, 'mm')).toBe('11');
  });
});
