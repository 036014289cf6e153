// The sizes of a bearing spacer: readings as lists, and the bore when it was left out.
import type { Entry } from '../fields/index.js';
import type { BearingSpacer } from './parameters.js';

/** Room on diameter round the shaft when no bore is given, mm. */
const BORE_ROOM = 1;

export const seatsOf = (p: BearingSpacer): readonly Entry[] => [p.seat1, p.seat2, p.seat3];
export const facesOf = (p: BearingSpacer): readonly Entry[] => [p.face1, p.face2, p.face3, p.face4];

export const boreOf = (p: BearingSpacer): number => p.bore?.mm ?? p.shaft.mm + BORE_ROOM;

/** Mean of the ring’s readings, mm. */
export function thicknessOf(p: BearingSpacer): number {
  const faces = facesOf(p);
  return faces.reduce((sum, { mm }) => sum + mm, 0) / faces.length;
}
