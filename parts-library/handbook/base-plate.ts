// Thickness of a base plate beside a bolt that pulls it up from its tube.

import type { CitedNumber } from './source.js';

export interface BasePlateQuestion {
  /** Pull of one bolt, N. */
  readonly newtons: number;
  /** Bolt's centre to the face of the tube, mm. */
  readonly lever: number;
  /** Width of plate that bends with it, mm: twice the lever (45° to each side), or what there is. */
  readonly width: number;
  readonly yieldMegapascals: number;
}

/**
 * Least thickness of a plate that one bolt bends over the tube's face: T x against Fy b t²/4, Ω 1.67, so
 * t = √(4 × 1.67 T x/(b Fy)), mm.
 *
 * @example basePlateThickness({newtons: 10_000, lever: 30, width: 60, yieldMegapascals: 250}).value // 11.56
 */
export function basePlateThickness(question: BasePlateQuestion): CitedNumber {
  const { newtons, lever, width, yieldMegapascals } = question;
  return {
    value: Math.sqrt((4 * 1.67 * newtons * Math.max(0, lever)) / (width * yieldMegapascals)),
    source: {
      title: 'AISC Design Guide 1, base plates in uplift',
      where: 'plastic bending at the face of the column, load spread at 45°; Ω 1.67; not opened',
      certainty: 'from memory',
    },
  };
}
