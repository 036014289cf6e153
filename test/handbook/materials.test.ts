import { describe, expect, test } from 'vitest';
import {
  findMaterial,
  kilogramsPerSquareMetre,
  listMaterials,
  listThicknesses,
  nearestThickness,
  sourceOf,
  strengthAt,
} from '../../parts-library/handbook/index.js';
import { inch, material } from './rows.js';

describe('materials', () => {
  test.each([
    ['S275', 'S275'],
    ['s 275 jr', 'S275'],
    ['a36', 'A36'],
    ['A572 Gr 50', 'A572-50'],
    ['mild steel', 'mild steel'],
    ['6061', '6061-T6'],
    ['1.4301', '304'],
    ['stainless', '304L'],
    ['5052 h32', '5052-H32'],
  ])('%s is %s', (written, name) => {
    expect(material(written).name).toBe(name);
  });

  test('an unknown grade lists the known ones', () => {
    const answer = findMaterial('unobtainium');
    expect(answer.found).toBe(false);
    if (!answer.found) expect(answer.known).toContain('S355');
  });

  // EN 10025-2 Table 7, public reprint: yield to 16 mm and to 40 mm, tensile minimum.
  test.each([
    ['S235', 6, 235, 360],
    ['S235', 20, 225, 360],
    ['S275', 6, 275, 410],
    ['S275', 16, 275, 410],
    ['S275', 16.1, 265, 410],
    ['S355', 12, 355, 470],
    ['S355', 25, 345, 470],
    ['S275', 2, 275, 430],
    // EN 10025-2 table 7 (from memory): the higher tensile strength is for less than 3 mm.
    ['S275', 3, 275, 410],
  ])('%s %d mm yields at %d and breaks at %d MPa', (name, thickness, yieldStress, tensile) => {
    const strength = strengthAt(material(name), thickness);
    expect(strength?.yieldMegapascals).toBe(yieldStress);
    expect(strength?.tensileMegapascals).toBe(tensile);
  });

  test('60 mm of S275 is outside the table', () => {
    expect(strengthAt(material('S275'), 60)).toBeUndefined();
  });

  test('every material has strength at 1.5 to 16 mm and no band overlaps another', () => {
    for (const row of listMaterials()) {
      for (const thickness of [1.5, 3, 6, 10, 16]) expect(strengthAt(row, thickness), row.name).toBeDefined();
      row.bands.forEach((band, index) => {
        if (index > 0) expect(band.over, row.name).toBe(row.bands[index - 1]?.upTo);
        expect(band.yieldMegapascals).toBeLessThan(band.tensileMegapascals);
      });
    }
  });

  test('strength of S275 is published, its density remembered', () => {
    expect(sourceOf(material('S275'), 'bands').certainty).toBe('published');
    expect(sourceOf(material('S275'), 'kilogramsPerCubicMetre').certainty).toBe('from memory');
  });

  // 7850 kg/m³ by hand: 6 mm 47.1, 10 mm 78.5 kg/m²; 1/4 in 10.21 lb/ft² (0.2836 lb/in³, published).
  test('6 mm of steel is 47.1 kg/m², 10 mm 78.5, 1/4 in 10.21 lb/ft²', () => {
    expect(kilogramsPerSquareMetre(material('S275'), 6)).toBeCloseTo(47.1, 9);
    expect(kilogramsPerSquareMetre(material('S275'), 10)).toBeCloseTo(78.5, 9);
    expect(kilogramsPerSquareMetre(material('A36'), 6.35) * 0.204816).toBeCloseTo(10.21, 2);
  });
});

describe('stock thicknesses', () => {
  test('a plate measured 6.1 is 6 mm in metric stock, 6.3 is 1/4 in', () => {
    expect(nearestThickness(6.1, 'metric')?.name).toBe('6 mm');
    expect(nearestThickness(6.3)?.name).toBe('1/4 in');
  });

  // Published gauge charts, inches: 11 ga steel 0.1196, 10 ga 0.1345, 14 ga aluminium 0.0641, 10 ga stainless 0.1406.
  test.each([
    ['11 ga steel', 0.1196],
    ['10 ga steel', 0.1345],
    ['14 ga aluminium', 0.0641],
    ['10 ga stainless', 0.1406],
  ])('%s is %d in', (name, size) => {
    expect(listThicknesses('gauge').find((row) => row.name === name)?.thickness).toBeCloseTo(inch(size), 6);
  });

  test('3.04 mm of aluminium is not 11 gauge steel', () => {
    expect(nearestThickness(3.04, 'gauge', 'aluminium')?.name).toBe('9 ga aluminium');
    expect(nearestThickness(3.04, 'gauge', 'carbon steel')?.name).toBe('11 ga steel');
  });

  test('names are used once', () => {
    const names = listThicknesses().map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });
});
