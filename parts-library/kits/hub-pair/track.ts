// What the adapters do to the track: how far each side moves its wheel out, and what is faced off the plate for it.
import type { HubPairNumbers } from './numbers.js';

export type Side = 'left' | 'right';
export const SIDES: readonly Side[] = ['left', 'right'];

/** Faced off each side of the plate where nothing is asked of the track, mm. */
const USUAL_FACING = 1;

/**
 * Faced off each face of one side’s plate, mm: what is left of the plate over flange and spigot, shared by both faces.
 *
 * @example 16 thick, spigot 4, 9 wider: (16 − 4 − 9) ÷ 2 = 1.5
 */
export function facingOf(n: HubPairNumbers, side: Side): number {
  const wanted = side === 'left' ? n.widenLeft : n.widenRight;
  return wanted === undefined ? USUAL_FACING : (n.thickness.mm - n.spigot.mm - wanted.mm) / 2;
}

/** Hub’s face to wheel’s seat on a side, mm: how far it moves the wheel out. */
export const wideningOf = (n: HubPairNumbers, side: Side): number =>
  n.thickness.mm - n.spigot.mm - 2 * facingOf(n, side);

export const trackOf = (n: HubPairNumbers): number =>
  n.track.mm + wideningOf(n, 'left') + wideningOf(n, 'right');
