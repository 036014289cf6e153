// Bolted slots: what friction alone holds, since a slot gives the bolt nothing to bear on along its length.

import type { BoltGrade } from './bolt-grades.js';
import { preload } from './bolt-strength.js';
import type { Source } from './source.js';
import type { Thread } from './threads.js';

/** Friction of clean steel on steel as a shop may count on it; AISC’s class A surface (clean mill scale) has 0.30. */
export const jointFriction = 0.2;

const slipSource: Source = {
  title: 'Slip of a bolted joint: bolts × friction × preload',
  where: 'friction 0.2 counted, AISC 360 J3.8 class A has 0.30; preload scatters ±25–30 %',
  certainty: 'from memory',
};

/** What a clamped joint holds before it slips. */
export interface SlipLoad {
  readonly newtons: number;
  readonly preloadNewtons: number;
  readonly friction: number;
  readonly source: Source;
}

/**
 * Load at which a joint with one friction face slips: n μ F, preload F = 0.75 Sp As.
 *
 * @param count bolts that clamp it
 * @example slipLoad(m8, class88, 4).newtons // 4 × 0.2 × 15 921 = 12 737
 */
export function slipLoad(thread: Thread, grade: BoltGrade, count: number): SlipLoad {
  const preloadNewtons = preload(thread, grade);
  return {
    newtons: count * jointFriction * preloadNewtons,
    preloadNewtons,
    friction: jointFriction,
    source: slipSource,
  };
}
