// Plates, remnants, placements and nests: the words that arranging and cutting share.
import type { Contour, Point } from '../geometry/index.js';

/** A full sheet or an offcut in the rack, lengths in mm, origin at its lower left corner. */
export interface Plate {
  readonly id: string;
  readonly name: string;
  readonly kind: 'full' | 'remnant';
  readonly outline: Contour;
  /** Holes, clamps and bad zones where nothing may lie, clockwise. */
  readonly blocked: readonly Contour[];
  readonly material: string;
  readonly thickness: number;
  readonly count: number;
}

/** Where one copy of a part lies: first mirrored about its y axis (if so), then turned, then moved. */
export interface Placement {
  readonly id: string;
  readonly rowId: string;
  /** Which of the row's copies, from 0. */
  readonly copy: number;
  readonly at: Point;
  readonly turnDegrees: number;
  readonly mirrored: boolean;
  readonly locked: boolean;
}

/**
 * An arrangement as stored. `inputs` is the digest of everything it was computed from; when that differs from
 * today's digest the nest is stale: shown, never exported, never silently redone.
 */
export interface Nest {
  readonly id: string;
  /** Absent for one unplaced part, which is a nest of one at the origin. */
  readonly plateId?: string;
  readonly placements: readonly Placement[];
  readonly inputs: string;
}
