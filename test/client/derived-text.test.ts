// What follows from a reading, in both units.
import { describe, expect, it } from 'vitest';
import { writeDerived } from '../../client/list/derived-text.js';

describe('what follows from a reading', () => {
  it('is a size in both units, and the words of the family', () => {
    expect(
      writeDerived({
        id: 'circle',
        title: 'bolt circle',
        value: { amount: 114.3, unit: 'mm', plusMinus: 0.17 },
        text: '⌀114.3 mm ±0.17; 5 holes',
      }),
    ).toEqual(['gives bolt circle 114.3 mm ±0.17 = 4.5 in ±0.007', '⌀114.3 mm ±0.17; 5 holes']);
  });

  it('is the words alone when it is no length', () => {
    const value = { amount: 0.4, unit: '1' } as const;
    expect(writeDerived({ id: 'k', title: 'K factor', value, text: '0.4' })).toEqual(['gives K factor 0.4']);
  });
});
