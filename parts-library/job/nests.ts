// Nests as stored data: one unplaced part is a nest of one at the origin, and a digest tells when it is stale.
import type { Part } from '../model/index.js';
import type { Nest, Placement } from '../plate/index.js';
import { digestOf } from './canonical.js';

/**
 * Digest of everything that decides where one unplaced part lies: its features, plate material and thickness.
 * Names and quantity do not move a single part.
 */
export function nestInputsOf(part: Part): string {
  const { features, material, thickness, mirrored } = part;
  return digestOf({ features, material, thickness, mirrored });
}

/** The one copy of an unplaced part: at the origin, not turned. */
export function placementOfOne(rowId: string): Placement {
  return {
    id: `${rowId}.0`,
    rowId,
    copy: 0,
    at: { x: 0, y: 0 },
    turnDegrees: 0,
    mirrored: false,
    locked: false,
  };
}

/**
 * A nest of one copy at the origin, not turned: the cut file of a single part takes the same path as a plate's.
 * @param rowId the row whose part it is
 */
export function makeNest(rowId: string, part: Part): Nest & { readonly placements: readonly [Placement] } {
  return { id: `${rowId}.nest`, placements: [placementOfOne(rowId)], inputs: nestInputsOf(part) };
}

/** True when a nest was made from something else than what stands now: shown, never exported, never silently redone. */
export function isStale(nest: Nest, inputsNow: string): boolean {
  return nest.inputs !== inputsNow;
}
