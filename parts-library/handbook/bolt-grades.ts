// Bolt grades: property classes 8.8, 10.9, 12.9 and SAE 2, 5, 8 with their strengths by size.

import { inches, ksi } from './inches.js';
import { found, notFound } from './lookup.js';
import type { Lookup } from './lookup.js';
import type { Source } from './source.js';
import type { Thread } from './threads.js';

/** The names listed here; `findGrade` reads them as people write them. */
export type GradeName = '8.8' | '10.9' | '12.9' | 'SAE 2' | 'SAE 5' | 'SAE 8';

/** One grade over a band of diameters; `over` excluded, `upTo` included, mm; stresses MPa. */
export interface BoltGrade {
  readonly name: GradeName;
  readonly over: number;
  readonly upTo: number;
  readonly proofMegapascals: number;
  readonly yieldMegapascals: number;
  readonly tensileMegapascals: number;
  readonly note?: string;
  readonly source: Source;
}

const iso898: Source = {
  title: 'ISO 898-1',
  where: 'mechanical properties, two public reprints',
  certainty: 'published',
};
const j429: Source = {
  title: 'SAE J429',
  where: 'university mechanical property reference after Shigley & Mischke 5th ed.',
  certainty: 'published',
};

const metric = (
  name: GradeName,
  over: number,
  upTo: number,
  proof: number,
  yieldStress: number,
  tensile: number,
): BoltGrade => ({
  name,
  over,
  upTo,
  proofMegapascals: proof,
  yieldMegapascals: yieldStress,
  tensileMegapascals: tensile,
  source: iso898,
});

/** Inches and ksi as printed. */
const sae = (
  name: GradeName,
  over: number,
  upTo: number,
  proof: number,
  yieldStress: number,
  tensile: number,
  note?: string,
): BoltGrade => ({
  name,
  over: inches(over),
  upTo: inches(upTo),
  proofMegapascals: ksi(proof),
  yieldMegapascals: ksi(yieldStress),
  tensileMegapascals: ksi(tensile),
  ...(note === undefined ? {} : { note }),
  source: j429,
});

const grades: readonly BoltGrade[] = [
  metric('8.8', 0, 16, 580, 640, 800),
  metric('8.8', 16, 39, 600, 660, 830),
  metric('10.9', 0, 39, 830, 940, 1040),
  metric('12.9', 0, 39, 970, 1100, 1220),
  sae('SAE 2', 0, 0.749, 55, 57, 74),
  sae('SAE 2', 0.749, 0.75, 55, 57, 74, 'One published torque table takes 3/4 in grade 2 at 33 ksi proof.'),
  sae('SAE 2', 0.75, 1.5, 33, 36, 60),
  sae('SAE 5', 0, 1, 85, 92, 120),
  sae('SAE 5', 1, 1.5, 74, 81, 105),
  sae('SAE 8', 0, 1.5, 120, 130, 150),
];

/** Every grade and its bands of size. */
export function listGrades(): readonly BoltGrade[] {
  return grades;
}

/**
 * Find the strengths of a bolt grade for a thread.
 *
 * @param written `8.8`, `10,9`, `grade 5`, `gr8`, `SAE 2`
 * @param thread its diameter chooses the band
 * @example findGrade('8.8', m8) // found: proof 580, yield 640, tensile 800 MPa
 */
export function findGrade(written: string, thread: Thread): Lookup<BoltGrade> {
  const bare = written
    .trim()
    .toLowerCase()
    .replace(',', '.')
    .replace(/^(sae|grade|gr\.?|class|cl\.?)+\s*(grade|gr\.?)?\s*/, '');
  const name = /^[258]$/.test(bare) ? `SAE ${bare}` : bare;
  const grade = grades.find(
    (row) => row.name === name && thread.diameter > row.over && thread.diameter <= row.upTo,
  );
  if (grade !== undefined) return found(grade);
  return notFound(written, 'bolt grade', [...new Set(grades.map((row) => row.name))]);
}
