// Plate materials: yield and tensile strength by thickness, density, stiffness.

import { found, notFound } from './lookup.js';
import type { Lookup } from './lookup.js';
import type { Cited, Source } from './source.js';

export type MaterialFamily = 'carbon steel' | 'stainless steel' | 'aluminium';

/** Strength over a band of thickness, MPa; `over` excluded, `upTo` included, mm. */
export interface StrengthBand {
  readonly over: number;
  readonly upTo: number;
  /** Minimum yield (0.2 % proof), MPa. */
  readonly yieldMegapascals: number;
  /** Minimum tensile strength, MPa. */
  readonly tensileMegapascals: number;
}

export type MaterialField = 'bands' | 'kilogramsPerCubicMetre' | 'modulusMegapascals';

export interface Material extends Cited<MaterialField> {
  readonly name: string;
  readonly aliases: readonly string[];
  readonly family: MaterialFamily;
  readonly bands: readonly StrengthBand[];
  readonly kilogramsPerCubicMetre: number;
  readonly modulusMegapascals: number;
  /** What to know before trusting the figures. */
  readonly caution?: string;
}

const en10025: Source = {
  title: 'EN 10025-2',
  where: 'Table 7, public reprint of BS EN 10025-2',
  certainty: 'published',
};
const euroConstants: Source = {
  title: 'EN 1993-1-1',
  where: '3.2.6: 210 GPa, 7850 kg/m³',
  certainty: 'from memory',
};
const a36: Source = {
  title: 'ASTM A36',
  where: 'plate data sheets in public; Philpot, Mechanics of Materials, Table D.1b',
  certainty: 'published',
};
const a572: Source = { title: 'ASTM A572 Grade 50', where: 'public material tables', certainty: 'published' };
const a240: Source = {
  title: 'ASTM A240 type 304',
  where: 'not opened; the same minima are published for A193 B8 class 1',
  certainty: 'from memory',
};
const b209: Source = { title: 'ASTM B209', where: 'not opened', certainty: 'from memory' };
const welded: Source = {
  title: 'Aluminum Design Manual, welded-zone strengths',
  where: 'not opened, low confidence',
  certainty: 'from memory',
};
const unknownSteel: Source = {
  title: 'Steel of unknown grade',
  where: 'taken as the weakest structural plate in common use, S235',
  certainty: 'common practice',
};

const steel = { kilogramsPerCubicMetre: 7850, modulusMegapascals: 210_000, family: 'carbon steel' } as const;
const usSteel = { ...steel, modulusMegapascals: 200_000 } as const;

const band = (
  over: number,
  upTo: number,
  yieldMegapascals: number,
  tensileMegapascals: number,
): StrengthBand => ({ over, upTo, yieldMegapascals, tensileMegapascals });

/** The tensile strengths of EN 10025-2 change below 3 mm; 3 mm itself belongs to the thicker plate. */
const UNDER_3 = 2.9999;

const euro = { kilogramsPerCubicMetre: euroConstants, modulusMegapascals: euroConstants };

const materials: readonly Material[] = [
  {
    name: 'S235',
    aliases: ['S235JR', 'S235J2', 'ST37', 'FE360'],
    ...steel,
    bands: [band(0, UNDER_3, 235, 360), band(UNDER_3, 16, 235, 360), band(16, 40, 225, 360)],
    source: en10025,
    exceptions: euro,
  },
  {
    name: 'S275',
    aliases: ['S275JR', 'S275J2', 'ST44', 'FE430'],
    ...steel,
    bands: [band(0, UNDER_3, 275, 430), band(UNDER_3, 16, 275, 410), band(16, 40, 265, 410)],
    source: en10025,
    exceptions: euro,
  },
  {
    name: 'S355',
    aliases: ['S355JR', 'S355J2', 'S355J2+N', 'ST52', 'FE510'],
    ...steel,
    bands: [band(0, UNDER_3, 355, 510), band(UNDER_3, 16, 355, 470), band(16, 40, 345, 470)],
    source: en10025,
    exceptions: euro,
  },
  {
    name: 'A36',
    aliases: ['ASTM A36'],
    ...usSteel,
    bands: [band(0, 200, 250, 400)],
    source: a36,
  },
  {
    name: 'A572-50',
    aliases: ['A572', 'A572 GR 50', 'A572 GRADE 50', 'GRADE 50'],
    ...usSteel,
    bands: [band(0, 100, 345, 450)],
    source: a572,
  },
  {
    name: 'mild steel',
    aliases: ['MILD', 'STEEL', 'HOT ROLLED', 'HR', 'UNKNOWN STEEL', 'MS'],
    ...steel,
    bands: [band(0, 16, 235, 360), band(16, 40, 225, 360)],
    caution: 'Grade unknown: figures are those of S235.',
    source: unknownSteel,
    exceptions: euro,
  },
  {
    name: '304',
    aliases: ['1.4301', 'X5CrNi18-10', 'AISI 304', 'A2'],
    family: 'stainless steel',
    bands: [band(0, 100, 205, 515)],
    kilogramsPerCubicMetre: 8000,
    modulusMegapascals: 193_000,
    source: a240,
  },
  {
    name: '304L',
    aliases: ['1.4307', 'AISI 304L', 'stainless', 'stainless steel'],
    family: 'stainless steel',
    bands: [band(0, 100, 170, 485)],
    kilogramsPerCubicMetre: 8000,
    modulusMegapascals: 193_000,
    caution: 'Stainless of unknown grade takes these figures, the weaker of the 304 pair.',
    source: { title: 'ASTM A240 type 304L', where: 'not opened', certainty: 'from memory' },
  },
  {
    name: '6061-T6',
    aliases: ['6061', 'EN AW-6061', 'AW-6061'],
    family: 'aluminium',
    bands: [band(0, 100, 240, 290)],
    kilogramsPerCubicMetre: 2700,
    modulusMegapascals: 69_000,
    caution: 'Welding takes away most of the temper: use “6061-T6 welded” beside a weld.',
    source: b209,
  },
  {
    name: '6061-T6 welded',
    aliases: ['6061 WELDED'],
    family: 'aluminium',
    bands: [band(0, 100, 105, 165)],
    kilogramsPerCubicMetre: 2700,
    modulusMegapascals: 69_000,
    source: welded,
    exceptions: { kilogramsPerCubicMetre: b209, modulusMegapascals: b209 },
  },
  {
    name: '5052-H32',
    aliases: ['5052', 'EN AW-5052', 'AW-5052'],
    family: 'aluminium',
    bands: [band(0, 50, 160, 215)],
    kilogramsPerCubicMetre: 2680,
    modulusMegapascals: 70_000,
    source: b209,
  },
];

/** Every material known here. */
export function listMaterials(): readonly Material[] {
  return materials;
}

const tight = (name: string): string => name.toUpperCase().replace(/[\s_-]+/g, '');

/**
 * Find a material by its grade.
 *
 * @param written `S275`, `s 275 jr`, `A36`, `mild steel`, `6061-T6`
 * @example findMaterial('S275') // found: yield 275 MPa to 16 mm, 265 to 40
 */
export function findMaterial(written: string): Lookup<Material> {
  const asked = tight(written);
  const material = materials.find(({ name, aliases }) =>
    [name, ...aliases].some((known) => tight(known) === asked),
  );
  if (material !== undefined) return found(material);
  return notFound(
    written,
    'material',
    materials.map(({ name }) => name),
  );
}

/**
 * Strength of a material at a thickness.
 *
 * @param thickness mm
 * @returns undefined when the grade has no figures for that thickness
 * @example strengthAt(s275, 20)?.yieldMegapascals // 265
 */
export function strengthAt(material: Material, thickness: number): StrengthBand | undefined {
  return material.bands.find(({ over, upTo }) => thickness > over && thickness <= upTo);
}

/**
 * Mass of a square metre of plate.
 *
 * @param thickness mm
 * @returns kg/m²
 * @example kilogramsPerSquareMetre(s275, 6) // 47.1
 */
export function kilogramsPerSquareMetre(material: Material, thickness: number): number {
  return (material.kilogramsPerCubicMetre * thickness) / 1000;
}
