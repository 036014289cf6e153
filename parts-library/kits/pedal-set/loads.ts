// What the feet do to the pivots, for the standoffs that carry them.
import type { PedalSetNumbers } from './numbers.js';

/**
 * Push on a pivot between foot and what resists nearer to it: force × (long arm ÷ short arm − 1), N.
 *
 * @example 2000 N at 260 against a rod at 60: 2000 × (260 ÷ 60 − 1) = 6667 N, away from the base
 */
const pushOn = (newtons: number, long: number, short: number): number => newtons * Math.abs(long / short - 1);

/** The brake’s pivot at the proof load, the push rod resisting. */
export const brakePivot = (n: PedalSetNumbers): number => pushOn(n.proof.value, n.length.mm, n.rodRadius.mm);

/** The throttle’s pivot at its proof load, the forward stop resisting. */
export const throttlePivot = (n: PedalSetNumbers): number =>
  pushOn(n.throttleProof.value, n.length.mm, n.stopRadius.mm);

/** Turn that uses up the brake’s free play and stroke, as an arc about the pivot, degrees. */
export const brakeSwing = (n: PedalSetNumbers): number =>
  Math.min(90, (((n.stroke.mm + n.freePlay.mm) / n.rodRadius.mm) * 180) / Math.PI);
