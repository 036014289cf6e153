// An idler pressed into a straight strand of chain: how much chain it takes up, and how far the chain wraps it.

import type { Source } from './source.js';

export const idlerSource: Source = {
  title: 'Idler in a straight strand',
  where: 'two tangents and the arc between them on the idler’s pitch circle',
  certainty: 'common practice',
};

export const idlerRules: Source = {
  title: 'Place of a chain idler',
  where:
    'chain makers’ guides: on the slack strand, at least three teeth in mesh, four pitches or more from the next sprocket',
  certainty: 'from memory',
};

/** Teeth of an idler sprocket that should be in mesh, and pitches it keeps from the next sprocket. */
export const IDLER_TEETH_IN_MESH = 3;
export const IDLER_PITCHES_AWAY = 4;

export interface IdlerQuestion {
  /** Free strand between the sprockets, mm. */
  readonly span: number;
  /** From one end of it to where the idler stands, along the strand, mm. */
  readonly at: number;
  /** Pitch radius of the idler, mm. */
  readonly radius: number;
  /** How far it presses the chain out of its straight line, mm. */
  readonly press: number;
}

export interface IdlerRun {
  /** Chain in the strand beyond its span, mm. */
  readonly extra: number;
  /** Degrees of the idler that the chain wraps. */
  readonly wrapDegrees: number;
}

/**
 * Extra chain and wrap of an idler that is pressed into a strand.
 *
 * @returns undefined when the idler stands outside the strand or reaches over an end of it
 * @example idlerRun({ span: 400, at: 200, radius: 30, press: 50 }): extra 12.46, wrap 28.6°
 */
export function idlerRun({ span, at, radius, press }: IdlerQuestion): IdlerRun | undefined {
  const middle = press - radius;
  const sides = [at, span - at].map((along) => {
    const reach = Math.hypot(along, middle);
    if (!(along > 0) || !(reach > radius)) return undefined;
    return {
      tangent: Math.sqrt(reach * reach - radius * radius),
      lean: Math.atan2(middle, along) + Math.asin(radius / reach),
    };
  });
  const [a, b] = sides;
  if (a === undefined || b === undefined || press < 0) return undefined;
  const wrap = a.lean + b.lean;
  return {
    extra: a.tangent + b.tangent + radius * wrap - span,
    wrapDegrees: (wrap * 180) / Math.PI,
  };
}

/**
 * Force of the chain on the idler: both strands pull at half the wrap, 2 T sin(wrap ÷ 2).
 *
 * @example idlerForce(1000, 60) // 1000
 */
export function idlerForce(tension: number, wrapDegrees: number): number {
  return 2 * tension * Math.sin((wrapDegrees * Math.PI) / 360);
}
