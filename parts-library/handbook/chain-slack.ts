// Slack of a chain: how far its loose strand moves at the middle, and how much chain makes it move so.

import type { Source } from './source.js';

export const chainSlackSource: Source = {
  title: 'Slack of the loose strand',
  where:
    'chain association’s maintenance guide: total movement at mid-span 4 to 6 % of the span, 2 to 3 % where the drive is vertical, brakes or reverses',
  certainty: 'from memory',
};

export const chainSagSource: Source = {
  title: 'Sag of a chain strand',
  where: 'sag = √(0.375 × span × excess), as chain engineering manuals have it; first term of the parabola',
  certainty: 'from memory',
};

/** Total movement at mid-span as shares of the span: least, most of a drive that brakes or reverses, most of any. */
export const SLACK = { least: 0.02, reversing: 0.03, most: 0.06 } as const;

/**
 * How far a strand hangs below the straight line between the sprockets.
 *
 * @param span tangent length between the sprockets, mm
 * @param excess chain in the strand beyond the span, mm
 * @example sagOf(1000, 6) // 47.4
 */
export function sagOf(span: number, excess: number): number {
  return Math.sqrt(0.375 * span * Math.max(excess, 0));
}

/**
 * Total movement of a strand's middle, pushed one way and pulled the other until it is straight on both sides:
 * √(2 span excess + excess²).
 *
 * @example movementOf(400, 0.125) // 10.0: 2.5 % of the span
 */
export function movementOf(span: number, excess: number): number {
  const more = Math.max(excess, 0);
  return Math.sqrt(2 * span * more + more * more);
}

/** The excess of chain at which a strand moves so far: √(span² + movement²) − span. */
export function excessOf(span: number, movement: number): number {
  return Math.hypot(span, movement) - span;
}

/** How far an idler pushes the middle of a strand aside to take its excess up: half the movement, mm. */
export function idlerTravel(span: number, excess: number): number {
  return movementOf(span, excess) / 2;
}
