// Bending plate: allowance, deduction, smallest radius, holes and flanges beside the bend.

import type { CitedNumber, Source } from './source.js';

/** What one bend does to a flat length, mm. */
export interface Bend {
  /** Arc length on the neutral line. */
  readonly allowance: number;
  /** From the tangent to the mould line, outside (R + T) tan(A/2); R + T from 180° on. */
  readonly setback: number;
  /** What the outside legs lose: 2 setback − allowance. */
  readonly deduction: number;
  readonly source: Source;
}

const bendFormulas: Source = {
  title: 'Bend allowance BA = (π/180) A (R + K T)',
  where: 'US Navy sheet-metal course; FAA AMT Handbook U-channel example',
  certainty: 'published',
};

export interface BendQuestion {
  /** Rotation of the bend: 90 for a right angle (included angle is 180 less this). */
  readonly degrees: number;
  /** Inside radius, mm. */
  readonly radius: number;
  readonly thickness: number;
  /** Neutral line from the inside, a share of the thickness. */
  readonly kFactor: number;
}

/**
 * Allowance, setback and deduction of a bend.
 *
 * @example bend({degrees: 90, radius: 3, thickness: 3, kFactor: 0.4}) // 6.597, 6, 5.403
 */
export function bend({ degrees, radius, thickness, kFactor }: BendQuestion): Bend {
  const allowance = (Math.PI / 180) * degrees * (radius + kFactor * thickness);
  const setback = (radius + thickness) * (degrees < 180 ? Math.tan((degrees * Math.PI) / 360) : 1);
  return { allowance, setback, deduction: 2 * setback - allowance, source: bendFormulas };
}

/**
 * Flat length of legs measured outside: their sum less the deductions.
 *
 * @example flatLength([50, 40], [bend({degrees: 90, radius: 3, thickness: 3, kFactor: 0.4})]) // 84.597
 */
export function flatLength(outsideLegs: readonly number[], bends: readonly Bend[]): number {
  const sum = outsideLegs.reduce((total, leg) => total + leg, 0);
  return bends.reduce((total, { deduction }) => total - deduction, sum);
}

/** Soft: aluminium, soft steel; medium: mild plate; hard: spring, stainless. */
export type Temper = 'soft' | 'medium' | 'hard';

/** Inside radius over thickness up to; K soft, medium, hard. */
const airBend: readonly (readonly [upTo: number, soft: number, medium: number, hard: number])[] = [
  [1, 0.33, 0.38, 0.4],
  [3, 0.4, 0.43, 0.45],
  [Infinity, 0.5, 0.5, 0.5],
];

/**
 * K factor of an air bend by rule of thumb.
 *
 * @example airBendK(6, 3, 'medium').value // 0.43
 */
export function airBendK(radius: number, thickness: number, temper: Temper): CitedNumber {
  const ratio = radius / thickness;
  const row = airBend.find(([upTo]) => ratio <= upTo) ?? [Infinity, 0.5, 0.5, 0.5];
  const value = { soft: row[1], medium: row[2], hard: row[3] }[temper];
  return {
    value,
    source: {
      title: 'Air-bend K factor',
      where: 'fabricator’s published rules page; over 3 T recalled',
      certainty: ratio > 3 ? 'from memory' : 'published',
    },
  };
}

/** Smallest inside radius as multiples of the thickness, across and along the rolling direction. */
export interface MinRadius {
  readonly across: number;
  readonly along: number;
  readonly source: Source;
}

const minRadii: Readonly<Record<string, readonly [across: number, along: number]>> = {
  A36: [1.5, 2.25],
  'A572-50': [1.5, 2.25],
  S235: [1.5, 2.25],
  S275: [1.5, 2.25],
  S355: [1.5, 2.25],
  'mild steel': [1.5, 2.25],
  '304': [1, 1],
  '304L': [1, 1],
  '5052-H32': [1, 1.5],
  '6061-T6': [3, 4],
};

/** Low-carbon sheet bends tighter up to this, mm. */
const thinSheet = 3;

/**
 * Smallest inside bend radius, times the thickness.
 *
 * @param material name as the handbook lists it
 * @param thickness mm
 * @returns undefined for a material without a figure
 * @example minBendRadius('S275', 6)?.across // 1.5
 */
export function minBendRadius(material: string, thickness: number): MinRadius | undefined {
  const row = minRadii[material];
  if (row === undefined) return undefined;
  const lowCarbon = row[1] === 2.25 && material !== 'S355' && material !== 'A572-50';
  if (lowCarbon && thickness <= thinSheet) {
    return {
      across: Math.max(0.5, 0.8 / thickness),
      along: 1,
      source: {
        title: 'Smallest bend radius, low-carbon sheet',
        where: 'published stamping-die page: 0.5 T or 0.8 mm; along the grain recalled',
        certainty: 'published',
      },
    };
  }
  return {
    across: row[0],
    along: row[1],
    source: {
      title: 'Smallest bend radius',
      where:
        'ASTM A6 Appendix X4 for plate to 3/4 in, makers’ data for the rest; S grades by analogy; not opened',
      certainty: 'from memory',
    },
  };
}

/**
 * Least distance from a hole's edge to where the bend begins: 2.5 T + R.
 *
 * @example holeToBend(6, 6).value // 21
 */
export function holeToBend(thickness: number, radius: number): CitedNumber {
  return {
    value: 2.5 * thickness + radius,
    source: {
      title: 'Hole to bend 2.5 T + R',
      where: 'published rules run 2 T, 2.5 T + R, 3 T + R, from the bend line’s start',
      certainty: 'common practice',
    },
  };
}

/** V opening of an air bend: eight thicknesses, mm. */
export function vOpening(thickness: number): number {
  return 8 * thickness;
}

/**
 * Least outside flange for an air bend: 0.7 of the V opening (8 T).
 *
 * @param opening V opening, mm; 8 T when left out
 * @example minFlange(6).value // 33.6
 */
export function minFlange(thickness: number, opening: number = vOpening(thickness)): CitedNumber {
  return {
    value: 0.7 * opening,
    source: {
      title: 'Least flange 0.7 V',
      where: 'press-brake rule of thumb; published rules of 2 T + R to 3 T + R give less',
      certainty: 'from memory',
    },
  };
}
