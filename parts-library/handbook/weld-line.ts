// Straight fillets treated as lines: what each millimetre carries under pull, shear and bending.

import type { Source } from './source.js';

export interface WeldLineQuestion {
  /** Length of each fillet, mm. */
  readonly length: number;
  /** One fillet, or one on each face of the plate. */
  readonly sides: 1 | 2;
  /** Pull square to the edge, in the plane of the plate, N. */
  readonly away: number;
  /** Force along the edge, N. */
  readonly along: number;
  /** Moment in the plane of the plate about the middle of the edge, N·mm. */
  readonly moment: number;
  /** Moment that folds the plate over, about the edge itself, N·mm. */
  readonly folding?: number;
  /** Between the two fillets, mm: the plate's thickness. */
  readonly apart: number;
}

export interface WeldLine {
  /** N per mm of fillet at its worst end: the parts and their resultant. */
  readonly pull: number;
  readonly bending: number;
  readonly shear: number;
  readonly folding: number;
  readonly combined: number;
  readonly source: Source;
}

/**
 * Force per millimetre of `sides` equal fillets of one length. As lines their second moment is n L³/12, so bending
 * gives 6 M/(n L²) at the ends; what folds the plate over is a couple between the two fillets, M/(L t). A single fillet
 * has no couple: it is taken over its throat alone and comes out as Infinity.
 *
 * @example two fillets of 50 mm, 2000 N square to the edge and 20 000 N·mm: 20 + 24 = 44 N/mm
 */
export function weldLine(question: WeldLineQuestion): WeldLine {
  const { length, sides, apart } = question;
  const pull = Math.abs(question.away) / (sides * length);
  const bending = (6 * Math.abs(question.moment)) / (sides * length * length);
  const shear = Math.abs(question.along) / (sides * length);
  const turning = Math.abs(question.folding ?? 0);
  const folding = turning === 0 ? 0 : sides === 2 ? turning / (length * apart) : Infinity;
  return {
    pull,
    bending,
    shear,
    folding,
    combined: Math.hypot(pull + bending + folding, shear),
    source: {
      title: 'Shigley’s Mechanical Engineering Design, welds treated as lines',
      where: 'Table 9-2: unit second moment d³/12 a line, d³/6 the pair; not opened, follows from ∫y² dy',
      certainty: 'from memory',
    },
  };
}
