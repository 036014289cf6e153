// Forces of a pedal on its base: lever, rod, pivot, and what they bend the plate with.
import type { PedalBase } from './parameters.js';

export interface PedalForces {
  /** Long arm over short arm. */
  readonly ratio: number;
  /** Push of the rod on the cylinder, N; the pivot's push is the rest, the other way. */
  readonly rod: number;
  readonly pivot: number;
}

/**
 * Moments about the pivot: rod = foot × reach ÷ drop. On a standing or hanging pedal alike the foot lies beyond the rod,
 * so the pivot is pushed back by rod − foot.
 *
 * @example 2000 N at 250 mm, rod at 50: ratio 5, rod 10 kN, pivot 8 kN
 */
export function pedalForces(p: PedalBase): PedalForces {
  const ratio = p.padReach.mm / p.pivotDrop.mm;
  const rod = p.footForce.value * ratio;
  return { ratio, rod, pivot: rod - p.footForce.value };
}

export interface PlateMoment {
  /** Greatest bending moment, N·mm, and where on the plate, y in mm. */
  readonly moment: number;
  readonly at: number;
}

/**
 * Greatest moment in the plate as a beam on its two rows of bolts, or as a cantilever from its welded edge; loaded by the
 * rod at y = 0 and by the pivot, the other way, at `pivotY`.
 *
 * @param rows y of the lower and the upper row; the same twice for a welded edge
 * @example rows at −100 and 40, rod 8333 N, pivot 6333 N at −60: 165 714 N·mm under the rod
 */
export function plateMoment(
  forces: PedalForces,
  pivotY: number,
  rows: readonly [low: number, high: number],
): PlateMoment {
  const [low, high] = rows;
  const loads = [
    { at: 0, force: forces.rod },
    { at: pivotY, force: -forces.pivot },
  ];
  if (high - low < 1e-9) {
    const moment = Math.abs(loads.reduce((sum, { at, force }) => sum + force * (at - low), 0));
    return { moment, at: low };
  }
  // Reaction of the lower row; then the moment is linear between loads and greatest under one of them or over a row.
  const lowReaction = loads.reduce((sum, { at, force }) => sum + force * (high - at), 0) / (high - low);
  const highReaction = loads.reduce((sum, { at, force }) => sum + force * (at - low), 0) / (high - low);
  const momentAt = (y: number): number =>
    lowReaction * Math.max(0, y - low) +
    highReaction * Math.max(0, y - high) -
    loads.reduce((sum, { at, force }) => sum + force * Math.max(0, y - at), 0);
  return [low, 0, pivotY, high]
    .map((at) => ({ at, moment: Math.abs(momentAt(at)) }))
    .reduce((a, b) => (b.moment > a.moment + 1e-6 ? b : a));
}
