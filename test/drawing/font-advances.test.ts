// The table of advances says what the font files say.
import { describe, expect, test } from 'vitest';
import { CHARACTERS, FACES } from '../../parts-library/drawing/font-advances.js';
import { readFaces } from '../tools/read-faces.js';

const files = readFaces();

describe('font advances', () => {
  test.each(files.faces)('every advance of $face is the one in its font file', ({ face, metrics }) => {
    const table = FACES[face];
    expect(Array.from(CHARACTERS)).toHaveLength(table.advances.length);
    expect(table.advances).toEqual(Array.from(CHARACTERS, (character) => metrics.advances.get(character)));
    expect(table).toMatchObject({
      unitsPerEm: metrics.unitsPerEm,
      ascent: metrics.ascent,
      descent: metrics.descent,
      capHeight: metrics.capHeight,
    });
  });

  test('the table covers what prints write', () => {
    for (const character of 'AZaz09Ø°±×·–—½¼¾″′µ²³éČž') expect(CHARACTERS).toContain(character);
  });

  test('Barlow has no diameter sign, no Greek and no inequality signs', () => {
    for (const character of '⌀πτσφ√≤≥') expect(CHARACTERS).not.toContain(character);
  });
});
