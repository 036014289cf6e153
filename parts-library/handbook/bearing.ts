// A bolt pressing on its hole: bearing of the plate and tear-out toward the edge.

import type { Source } from './source.js';

export interface BearingQuestion {
  /** Bolt diameter, mm. */
  readonly bolt: number;
  /** Plate thickness, mm. */
  readonly thickness: number;
  /** Clear distance in the direction of the force, hole edge to plate edge or to the next hole, mm. */
  readonly clear: number;
  /** Plate tensile strength Fu, MPa. */
  readonly tensileMegapascals: number;
}

export interface Bearing {
  /** 1.2 lc t Fu, N. */
  readonly tearOutNewtons: number;
  /** 2.4 d t Fu, N. */
  readonly bearingNewtons: number;
  /** The lesser, per bolt, N. */
  readonly nominalNewtons: number;
  /** φ Rn, φ 0.75, N. */
  readonly designNewtons: number;
  /** Rn / Ω, Ω 2.00, N: against working loads. */
  readonly allowableNewtons: number;
  readonly governs: 'tear-out' | 'bearing';
  readonly source: Source;
}

/** Resistance factor and safety factor of bolts in bearing. */
const phi = 0.75;
const omega = 2;

/**
 * Bearing strength of a plate at one bolt: Rn = min(1.2 lc t Fu, 2.4 d t Fu), deformation of the hole mattering.
 *
 * @example bearing({bolt: 12, thickness: 6, clear: 13.25, tensileMegapascals: 360}).designNewtons // 25 758
 */
export function bearing({ bolt, thickness, clear, tensileMegapascals }: BearingQuestion): Bearing {
  const tearOutNewtons = 1.2 * Math.max(0, clear) * thickness * tensileMegapascals;
  const bearingNewtons = 2.4 * bolt * thickness * tensileMegapascals;
  const nominalNewtons = Math.min(tearOutNewtons, bearingNewtons);
  return {
    tearOutNewtons,
    bearingNewtons,
    nominalNewtons,
    designNewtons: phi * nominalNewtons,
    allowableNewtons: nominalNewtons / omega,
    governs: tearOutNewtons < bearingNewtons ? 'tear-out' : 'bearing',
    source: {
      title: 'AISC 360 J3.10, bearing and tear-out at bolt holes',
      where: 'Structural Steel Designer’s Handbook pp. 5.42–5.48 quoting AISC 2005; Ω 2.00 recalled',
      certainty: 'published',
    },
  };
}

/** Clear distance from a hole's edge to the plate's edge, mm: centre to edge less half the hole. */
export function clearToEdge(centreToEdge: number, hole: number): number {
  return centreToEdge - hole / 2;
}
