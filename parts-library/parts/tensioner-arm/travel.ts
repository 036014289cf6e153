// How the idler moves over the swing, and how much chain that takes up.
import { findChain, idlerRun, pitchDiameter, type Chain, type IdlerRun } from '../../handbook/index.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import { roundText } from '../shared/words.js';
import type { TensionerArm } from './parameters.js';

export interface Travel {
  readonly chain: Chain;
  /** Radius of the idler where the chain's pitch line runs on it, and over everything that turns, mm. */
  readonly pitchRadius: number;
  readonly outerRadius: number;
  /** Square to the strand and along it, from end to end of the swing, mm. */
  readonly across: number;
  readonly along: number;
  readonly start: IdlerRun;
  readonly end: IdlerRun;
  /** Chain taken up over the swing, mm. */
  readonly takeUp: number;
}

const RADIANS = Math.PI / 180;

/** Radius of the idler's pitch line and of what sweeps round with the chain on it, mm. */
function radiiOf(p: TensionerArm, chain: Chain): { readonly pitch: number; readonly outer: number } {
  const height = chain.plateHeight ?? 0.95 * chain.pitch;
  const pitch = p.idler === 'sprocket' ? pitchDiameter(chain.pitch, p.teeth) / 2 : (p.roller.mm + height) / 2;
  return { pitch, outer: pitch + height / 2 };
}

/**
 * The idler's way: a chord of the arm's circle. The arm stands `chainAngle` off the strand in the middle of its swing,
 * so that the idler moves 2 a cos(angle) sin(swing ÷ 2) across the strand and 2 a sin(angle) sin(swing ÷ 2) along it.
 */
export function travelOf(p: TensionerArm): Resolved<Travel> {
  const found = findChain(p.chain);
  if (!found.found) return refusal('chain', found.says);
  const chain = found.row;
  const { pitch, outer } = radiiOf(p, chain);
  const chord = 2 * p.arm.mm * Math.sin((p.swing.value / 2) * RADIANS);
  const across = chord * Math.cos(p.chainAngle.value * RADIANS);
  const along = chord * Math.sin(p.chainAngle.value * RADIANS);
  const at = (press: number, place: number): IdlerRun | undefined =>
    idlerRun({ span: p.span.mm, at: place, radius: pitch, press });
  const start = at(p.press.mm, p.idlerAt.mm);
  const end = at(p.press.mm + across, p.idlerAt.mm + along);
  if (start === undefined || end === undefined) {
    return refusal(
      'idlerAt',
      `An idler ${roundText(p.idlerAt.mm)} mm from the end of a strand of ${roundText(p.span.mm)} mm does not stay inside it over its swing; nearer the middle, a smaller swing, or a smaller idler would do.`,
    );
  }
  return {
    ok: true,
    value: {
      chain,
      pitchRadius: pitch,
      outerRadius: outer,
      across,
      along,
      start,
      end,
      takeUp: end.extra - start.extra,
    },
  };
}
