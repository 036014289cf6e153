// Lead-ins and the room they take: length, pierce crater, clearances and the space between parts.

import type { Source } from '../handbook/index.js';

export const leadRule: Source = {
  title: 'Lead-in length max(1.0 t, 3 k, 4 mm)',
  where: 'a pierce is up to 3 kerfs wide; published guides ask 1.5 to 3 kerfs, one at least 6 mm for plasma',
  certainty: 'common practice',
};

/**
 * Radius of the crater a pierce leaves: 1.5 kerfs.
 *
 * @example pierceRadius(1.6) // 2.4
 */
export function pierceRadius(kerf: number): number {
  return 1.5 * kerf;
}

/**
 * Lead-in length: max(1.0 t, 3 k, 4 mm), and never less than the crater's radius plus 1 mm.
 *
 * @param thickness mm
 * @param kerf mm
 * @example leadInLength(6, 1.6) // 6
 */
export function leadInLength(thickness: number, kerf: number): number {
  return Math.max(thickness, 3 * kerf, 4, leadInFloor(kerf));
}

/** Shortest lead-in where there is less room: the crater's radius plus 1 mm. Shorter, and the feature is refused. */
export function leadInFloor(kerf: number): number {
  return pierceRadius(kerf) + 1;
}

/** Distances a pierce keeps, mm. */
export interface PierceClearance {
  /** From the pierce to the finished edge it leads to. */
  readonly finishedEdge: number;
  /** To a neighbouring part's edge or the sheet's. */
  readonly neighbour: number;
  /** To an earlier cut. */
  readonly earlierKerf: number;
  /** Spatter on top that can lift the torch or foul a probe. */
  readonly spatter: number;
  readonly source: Source;
}

/**
 * Distances that a pierce keeps.
 *
 * @example pierceClearance(6, 1.6) // 6 to the edge, 4.2 to a neighbour, 3.2 to an earlier cut
 */
export function pierceClearance(thickness: number, kerf: number): PierceClearance {
  return {
    finishedEdge: leadInLength(thickness, kerf),
    neighbour: pierceRadius(kerf) + kerf / 2 + 1,
    earlierKerf: 2 * kerf,
    spatter: Math.max(3, 0.75 * thickness),
    source: leadRule,
  };
}

/** Room between parts and round the plate, mm. */
export interface PartSpacing {
  /** Finished edge to finished edge, no lead-in between them. */
  readonly parts: number;
  /** With a lead-in between them. */
  readonly withLead: number;
  /** To the plate's edge; more under clamps. */
  readonly plateEdge: number;
  readonly source: Source;
}

/**
 * Room between parts: max(5 mm, t); where a lead-in lies between them at least its length plus the crater; 10 mm
 * or as much to the plate's edge.
 *
 * @example partSpacing(6, 1.6) // 6, 8.4 with a lead-in, 10 at the edge
 */
export function partSpacing(thickness: number, kerf: number): PartSpacing {
  const parts = Math.max(5, thickness);
  const withLead = Math.max(parts, leadInLength(thickness, kerf) + pierceRadius(kerf));
  return {
    parts,
    withLead,
    plateEdge: Math.max(10, parts),
    source: {
      title: 'Part spacing',
      where: 'contract cutter’s published guideline: at least 5 mm; one thickness and the lead-in are ours',
      certainty: 'common practice',
    },
  };
}

/** Smallest inside corner the torch can leave: half the kerf, mm. */
export function smallestInsideRadius(kerf: number): number {
  return kerf / 2;
}
