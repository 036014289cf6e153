// A strip pulled along its length, with a hole in it: yield of the whole width, fracture beside the hole.

import type { Source } from './source.js';

export interface NetSectionQuestion {
  /** Width across the pull, mm. */
  readonly width: number;
  /** Hole in that width, mm. */
  readonly hole: number;
  /** mm. */
  readonly thickness: number;
  readonly yieldMegapascals: number;
  readonly tensileMegapascals: number;
}

export interface NetSection {
  /** 0.90 Fy Ag and 0.75 Fu An, N. */
  readonly grossDesignNewtons: number;
  readonly netDesignNewtons: number;
  /** The lesser of Fy Ag / 1.67 and Fu An / 2.00, N: against working loads. */
  readonly allowableNewtons: number;
  /** Width counted beside the hole, mm: the hole is taken 2 mm larger for its damaged edge. */
  readonly netWidth: number;
  readonly governs: 'gross' | 'net';
  readonly source: Source;
}

/** Taken off beside a hole for its damaged edge, mm (1/16 in). */
const holeDamage = 2;

/**
 * Tension strength of a strip with one hole: gross yield and net fracture.
 *
 * @example netSection({width: 40, hole: 13.5, thickness: 6, yieldMegapascals: 250, tensileMegapascals: 400}): 54.0 and 44.1 kN
 */
export function netSection(question: NetSectionQuestion): NetSection {
  const { width, hole, thickness, yieldMegapascals, tensileMegapascals } = question;
  const netWidth = Math.max(0, width - hole - holeDamage);
  const gross = yieldMegapascals * width * thickness;
  const net = tensileMegapascals * netWidth * thickness;
  return {
    grossDesignNewtons: 0.9 * gross,
    netDesignNewtons: 0.75 * net,
    allowableNewtons: Math.min(gross / 1.67, net / 2),
    netWidth,
    governs: gross / 1.67 < net / 2 ? 'gross' : 'net',
    source: {
      title: 'AISC 360 D2, tension members',
      where: '0.90 Fy Ag and 0.75 Fu An, Ω 1.67 and 2.00, hole + 2 mm (1/16 in); not opened',
      certainty: 'from memory',
    },
  };
}
