// What a bolt carries: proof load, preload, tightening torque, breaking load, shear.

import type { BoltGrade } from './bolt-grades.js';
import { weakestSource } from './source.js';
import type { CitedNumber, Source } from './source.js';
import type { Thread } from './threads.js';

/**
 * Proof load Sp·As, N.
 *
 * @example proofLoad(m8, class88) // 21 228 (published rule; 21.2 kN)
 */
export function proofLoad(thread: Thread, grade: BoltGrade): number {
  return grade.proofMegapascals * thread.stressArea;
}

/** Breaking load Rm·As, N. */
export function breakingLoad(thread: Thread, grade: BoltGrade): number {
  return grade.tensileMegapascals * thread.stressArea;
}

/** A reusable joint is tightened to three quarters of its proof load. */
const preloadShare = 0.75;

const torqueSource: Source = {
  title: 'T = K D F, F = 0.75 Sp As',
  where: 'published torque–tension tables; Shigley; scatter ±25–30 %',
  certainty: 'published',
};

/** Nut factor K: dry, or lubricated or plated. */
export const nutFactor = { dry: 0.2, lubricated: 0.15 } as const;

/** Preload of a reusable joint 0.75 Sp As, N. */
export function preload(thread: Thread, grade: BoltGrade): number {
  return preloadShare * proofLoad(thread, grade);
}

/**
 * Tightening torque T = K D F, N·m.
 *
 * @example tighteningTorque(m10, class88, 'dry').value // 50.5
 */
export function tighteningTorque(
  thread: Thread,
  grade: BoltGrade,
  condition: keyof typeof nutFactor,
): CitedNumber {
  const value = (nutFactor[condition] * thread.diameter * preload(thread, grade)) / 1000;
  return { value, source: torqueSource };
}

/** Shear factor on tensile strength with the threads in the shear plane; the harder grades are less ductile. */
function shearFactor(grade: BoltGrade): number {
  return grade.name === '10.9' || grade.name === '12.9' || grade.name === 'SAE 8' ? 0.5 : 0.6;
}

/** Partial factor of a bolt in shear. */
const gammaM2 = 1.25;

export interface BoltShear {
  /** αv Rm As, per shear plane, N. */
  readonly characteristicNewtons: number;
  /** The same over 1.25, N: what to design to. */
  readonly designNewtons: number;
  readonly factor: number;
  readonly source: Source;
}

/**
 * Shear strength of a bolt per shear plane with its threads in the plane: αv Rm As / γM2, αv 0.6, and 0.5 for
 * 10.9, 12.9 and SAE 8; γM2 1.25.
 *
 * @example boltShear(m10, class88).designNewtons // 22 272
 */
export function boltShear(thread: Thread, grade: BoltGrade): BoltShear {
  const factor = shearFactor(grade);
  const characteristicNewtons = factor * grade.tensileMegapascals * thread.stressArea;
  return {
    characteristicNewtons,
    designNewtons: characteristicNewtons / gammaM2,
    factor,
    source: weakestSource(grade.source, {
      title: 'EN 1993-1-8 Table 3.4, shear resistance per shear plane',
      where: 'Fv,Rd = αv fub As / 1.25; 12.9 and SAE 8 taken as 10.9 by analogy; not opened',
      certainty: 'from memory',
    }),
  };
}
