// The stack across the rails: brake pair, throttle pair, what reaches beside them, and what is left of the opening.
import type { PedalSetNumbers } from './numbers.js';

export interface PedalStack {
  /** Sawn length of each pivot tube, mm. */
  readonly tube: number;
  /** Inside of one standoff to inside of the other of a pair, mm. */
  readonly gap: number;
  /** Over both standoffs of a pair, mm. */
  readonly pair: number;
  readonly baseWidth: number;
  /** What reaches beyond the outer standoffs, toward the left and the right rail, mm. */
  readonly left: number;
  readonly right: number;
  readonly between: number;
  /** What feet and base need between the two pairs, mm. */
  readonly betweenLeast: number;
  readonly total: number;
  /** Opening less the stack, at the measured opening and at its low limit, mm. */
  readonly clearance: number;
  readonly leastClearance: number;
  /** Middle of one arm to middle of the other, and free room between the pads, mm. */
  readonly pitch: number;
  readonly padRoom: number;
}

/** Free between what stands on one pair’s side and on the other’s, for weld and wrench, mm. */
export const BETWEEN_ROOM = 5;
/** A welded standoff stands this far inside the base’s edge, room for its fillet and a washer, mm. */
const WELD_MARGIN = 15;
/** Beside each of the cylinder’s bolts, for its flange and the base’s own bolts, mm. */
const CYLINDER_MARGIN = 40;

/** Tubes that fill an opening: shortest that keeps a pad from rocking, longest that makes sense, and the step; mm. */
const SHORTEST = 20;
const LONGEST = 90;
const STEP = 0.5;

/** Where a pad’s outer edge stands from its arm’s middle, mm: a folded pad lies wholly on the outer side. */
const padOuter = (n: PedalSetNumbers): number =>
  (n.spread?.mm ?? 0) + (n.pad === 'folded' ? n.padWidth.mm : n.padWidth.mm / 2);

/** The stack with tubes of one length, mm. */
function stackWith(n: PedalSetNumbers, tube: number): PedalStack {
  const thickness = n.standoffThickness.mm;
  const gap = tube + n.sidePlay.mm;
  const pair = gap + 2 * thickness;
  const baseWidth = Math.max(
    n.brakeFoot === 'bent' ? gap + 2 * n.footDepth.mm : pair + 2 * WELD_MARGIN,
    n.cylinderSpacing.mm + 2 * CYLINDER_MARGIN,
  );
  const brakeReach = (baseWidth - pair) / 2;
  const throttleReach = n.throttleFoot === 'bent' ? n.footDepth.mm - thickness : 0;
  const padReach = padOuter(n) - pair / 2;
  const left = Math.max(brakeReach, padReach, 0);
  const right = Math.max(throttleReach, padReach, 0);
  const betweenLeast = Math.max(brakeReach, 0) + throttleReach;
  const between = n.between?.mm ?? betweenLeast + BETWEEN_ROOM;
  const total = left + pair + between + pair + right;
  const clearance = n.opening.mm - total;
  const pitch = pair + between;
  return {
    tube,
    gap,
    pair,
    baseWidth,
    left,
    right,
    between,
    betweenLeast,
    total,
    clearance,
    leastClearance: clearance - (n.opening.plusMinus ?? 0),
    pitch,
    padRoom: pitch + 2 * (padOuter(n) - n.padWidth.mm),
  };
}

/**
 * The stack of a set. Without a tube length, the longest tubes are taken that leave the wanted room to both rails at the
 * low limit of the opening.
 *
 * @example 278 ±1 open, 4.5 to each rail, standoffs of 8, feet of 73, play 0.5: two tubes of 50, 268 in all, 10 left
 */
export function stackOf(n: PedalSetNumbers): PedalStack {
  if (n.tubeLength !== undefined) return stackWith(n, n.tubeLength.mm);
  const steps = Math.round((LONGEST - SHORTEST) / STEP);
  for (let step = 0; step < steps; step += 1) {
    const stack = stackWith(n, LONGEST - step * STEP);
    if (stack.leastClearance >= 2 * n.room.mm - 1e-9) return stack;
  }
  return stackWith(n, SHORTEST);
}
