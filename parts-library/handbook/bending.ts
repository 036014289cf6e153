// Bending plate: allowance, deduction, smallest radius, holes and flanges beside the bend.

import type { CitedNumber, Source } from './source.js';

export const bendSource: Source = {
  title: 'Bend allowance BA = (π/180) A (R + K T)',
  where: 'US Navy sheet-metal course; FAA AMT Handbook U-channel example',
  certainty: 'published',
};

/**
 * Bend allowance, the arc on the neutral line: (π/180) A (R + K T), mm.
 *
 * @param degrees rotation of the bend, 90 for a right angle (the included angle is 180 less this)
 * @param radius inside radius, mm
 * @param thickness mm
 * @param kFactor neutral line from the inside, a share of the thickness
 * @example bendAllowance(90, 3, 3, 0.4) // 6.597
 */
export function bendAllowance(degrees: number, radius: number, thickness: number, kFactor: number): number {
  return (Math.PI / 180) * degrees * (radius + kFactor * thickness);
}

/**
 * Outside setback, from the tangent to the mould line: (R + T) tan(A/2), mm; R + T from 180° on.
 *
 * @example outsideSetback(90, 3, 3) // 6
 */
export function outsideSetback(degrees: number, radius: number, thickness: number): number {
  return (radius + thickness) * (degrees < 180 ? Math.tan((degrees * Math.PI) / 360) : 1);
}

/**
 * Bend deduction, what two outside legs lose: 2 setbacks less the allowance, mm.
 *
 * @example bendDeduction(90, 3, 3, 0.4) // 5.403
 */
export function bendDeduction(degrees: number, radius: number, thickness: number, kFactor: number): number {
  return 2 * outsideSetback(degrees, radius, thickness) - bendAllowance(degrees, radius, thickness, kFactor);
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

/** Least inside radius, mm. */
export interface BendRadius {
  /** Bend line across the rolling direction. */
  readonly value: number;
  /** Bend line along it. */
  readonly along: number;
  readonly source: Source;
}

/** Times the thickness: across and along the rolling direction. */
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

const mildSteels: readonly string[] = ['A36', 'S235', 'S275', 'mild steel'];

/** Low-carbon sheet bends tighter up to this, mm. */
const thinSheet = 3;

/**
 * Least inside bend radius, mm.
 *
 * @param material name as the handbook lists it
 * @param thickness mm
 * @returns undefined for a material without a figure
 * @example leastBendRadius('S275', 6)?.value // 9
 */
export function leastBendRadius(material: string, thickness: number): BendRadius | undefined {
  const row = minRadii[material];
  if (row === undefined) return undefined;
  if (mildSteels.includes(material) && thickness <= thinSheet) {
    return {
      value: Math.max(0.5 * thickness, 0.8),
      along: thickness,
      source: {
        title: 'Least bend radius, low-carbon sheet',
        where: 'published stamping-die page: 0.5 T or 0.8 mm; along the grain recalled',
        certainty: 'published',
      },
    };
  }
  return {
    value: row[0] * thickness,
    along: row[1] * thickness,
    source: {
      title: 'Least bend radius',
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
