// Fillet welds: how small and how large a leg may be, and what a length of it carries.

import type { Unit } from '../units/index.js';
import { inches, ksi } from './inches.js';
import type { Source } from './source.js';

export interface FilletLeg {
  readonly leg: number;
  readonly source: Source;
}

const j24: Source = {
  title: 'AISC 360 Table J2.4',
  where:
    'minimum fillet by the thinner part joined; two public reprints; Structural Steel Designer’s Handbook',
  certainty: 'published',
};
const j22b: Source = {
  title: 'AISC 360 J2.2b',
  where: 'maximum fillet along an edge; public reprint',
  certainty: 'published',
};

/** Thinner part up to, least leg, mm: 1/4 in plate counts with 6 mm, 1/2 in with 13, 3/4 in with 19. */
const least: readonly (readonly [upTo: number, metric: number, inch: number])[] = [
  [inches(1 / 4), 3, inches(1 / 8)],
  [13, 5, inches(3 / 16)],
  [inches(3 / 4), 6, inches(1 / 4)],
  [Infinity, 8, inches(5 / 16)],
];

/**
 * Least leg of a single-pass fillet for the thinner part joined, so that the plate does not chill it.
 *
 * @param thinner thickness of the thinner part, mm
 * @param unit which column of the table: millimetre legs or fractions of an inch
 * @example leastFilletLeg(10).leg // 5
 */
export function leastFilletLeg(thinner: number, unit: Unit = 'mm'): FilletLeg {
  const [, metric, inch] = least.find(([upTo]) => thinner <= upTo) ?? [Infinity, 8, inches(5 / 16)];
  return { leg: unit === 'mm' ? metric : inch, source: j24 };
}

/**
 * Largest leg along the edge of a plate: its thickness below 6 mm, else 2 mm less so that the edge stays visible.
 *
 * @param edge thickness of the plate whose edge is welded, mm
 * @example largestFilletLeg(8).leg // 6
 */
export function largestFilletLeg(edge: number): FilletLeg {
  return { leg: edge < 6 ? edge : edge - 2, source: j22b };
}

/** Least length of a fillet: four legs, mm. */
export function leastFilletLength(leg: number): FilletLeg {
  return { leg: 4 * leg, source: j22b };
}

/** Throat over leg of an equal-legged fillet, as the codes round it. */
export const throatOverLeg = 707 / 1000;

/** Tensile strength of E70 (490 MPa) weld metal, MPa: 70 ksi. */
export const e70Megapascals = ksi(70);

export interface FilletStrength {
  /** Nominal, N per mm. */
  readonly nominal: number;
  /** φ 0.75, N per mm. */
  readonly design: number;
  /** Ω 2.00, N per mm: against working loads. */
  readonly allowable: number;
  readonly source: Source;
}

const phi = 0.75;
const omega = 2;

/**
 * Strength of a fillet per millimetre of length: 0.60 FEXX × 0.707 leg × (1 + 0.5 sin^1.5 θ).
 *
 * @param leg mm
 * @param electrodeMegapascals weld metal tensile strength FEXX, MPa
 * @param degrees angle between load and weld, 0 along it; 0 for a hub in torsion
 * @example filletStrength(6, 490, 0).design // 935 N/mm
 */
export function filletStrength(leg: number, electrodeMegapascals: number, degrees = 0): FilletStrength {
  const bonus = 1 + 0.5 * Math.sin((degrees * Math.PI) / 180) ** 1.5;
  const nominal = 0.6 * electrodeMegapascals * throatOverLeg * leg * bonus;
  return {
    nominal,
    design: phi * nominal,
    allowable: nominal / omega,
    source: {
      title: 'AISC 360 J2.4, fillet weld strength',
      where: 'public AISC 360-22 weld page and lecture examples with E70; Ω 2.00 recalled',
      certainty: 'published',
    },
  };
}
