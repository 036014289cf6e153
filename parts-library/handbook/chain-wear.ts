// When a roller chain is worn out: how much longer twelve pitches may have become.

import type { Source } from './source.js';

export const chainWearSource: Source = {
  title: 'Chain elongation limits',
  where:
    'chain makers’ maintenance guides: 2 % where the centres can be taken up, 0.7 to 1 % where they cannot; 3 % at most, and 200/N % on large sprockets',
  certainty: 'from memory',
};

/** Pitches measured at once, so that the caliper's error counts a twelfth; common practice. */
export const PITCHES_MEASURED = 12;

/**
 * Elongation of a chain from twelve pitches, as a share of 1.
 *
 * @param measured over twelve pitches under light tension, mm
 * @param pitch new, mm
 * @example chainElongation(154.7, 12.7) // 0.01509
 */
export function chainElongation(measured: number, pitch: number): number {
  return measured / (PITCHES_MEASURED * pitch) - 1;
}

export interface WearLimit {
  /** Replace here, a share of 1. */
  readonly replace: number;
  /** Beyond it the chain climbs the teeth of the large sprocket and may jump. */
  readonly never: number;
}

/**
 * Elongation at which a chain is replaced.
 *
 * @param largest teeth of the larger sprocket
 * @param adjustable true when centres or an idler take the slack up
 * @example wearLimit(48, true) // replace at 2 %, never beyond 3 %
 */
export function wearLimit(largest: number, adjustable: boolean): WearLimit {
  const never = Math.min(0.03, 2 / largest);
  return { replace: Math.min(adjustable ? 0.02 : 0.01, never), never };
}
