// Stress and bending of a flat lever: a section with a hole in it, sideways load, twist, deflection.

import type { Source } from './source.js';

const sectionSource: Source = {
  title: 'Bending of a rectangular section with a hole',
  where: 'σ = 6 M h / [t (h³ − d³)]; at the hole’s edge 2 × 6 M d / [t (h³ − d³)] (Peterson); not opened',
  certainty: 'from memory',
};

/** A flat bar bent in its own plane. */
export interface LeverSection {
  /** Height in the plane of bending, mm. */
  readonly height: number;
  readonly thickness: number;
  /** Hole on the neutral axis, mm; 0 or left out for none. */
  readonly hole?: number;
}

export interface LeverStress {
  /** Second moment of area less the hole, mm⁴. */
  readonly secondMoment: number;
  /** At the outer edge, MPa. */
  readonly edge: number;
  /** At the hole's edge, twice the nominal stress there, MPa; 0 without a hole. */
  readonly holeEdge: number;
  readonly source: Source;
}

/**
 * Stress of a section bent in the plane of the plate.
 *
 * @param newtonMetres bending moment
 * @example leverStress(400, { height: 40, thickness: 10, hole: 10 }) // I 52 500, edge 152.4, hole edge 76.2
 */
export function leverStress(newtonMetres: number, section: LeverSection): LeverStress {
  const { height: h, thickness: t, hole: d = 0 } = section;
  const moment = Math.abs(newtonMetres) * 1000;
  const left = t * (h ** 3 - d ** 3);
  return {
    secondMoment: left / 12,
    edge: (6 * moment * h) / left,
    holeEdge: (2 * 6 * moment * d) / left,
    source: sectionSource,
  };
}

/**
 * Least height for a stress, without a hole: √(6 M / (t σ)), mm.
 *
 * @example leastLeverHeight(400, 10, 250 / 1.5) // 37.9
 */
export function leastLeverHeight(newtonMetres: number, thickness: number, megapascals: number): number {
  return Math.sqrt((6000 * Math.abs(newtonMetres)) / (thickness * megapascals));
}

/**
 * Bending across the thickness: 6 M / (h t²), MPa.
 *
 * @example sidewaysStress(40, 40, 10) // 60
 */
export function sidewaysStress(newtonMetres: number, height: number, thickness: number): number {
  return (6000 * Math.abs(newtonMetres)) / (height * thickness * thickness);
}

export const twistSource: Source = {
  title: 'Roark’s Formulas for Stress and Strain, torsion of a solid rectangle',
  where: 'τ = 3 T/(8 a b²) [1 + 0.6095 b/a + 0.8865 (b/a)² − 1.8023 (b/a)³ + 0.9100 (b/a)⁴]; not opened',
  certainty: 'from memory',
};

/**
 * Greatest shear of a solid rectangle in torsion, in the middle of its long side, MPa. `a` and `b` of the formula are
 * half the height and half the thickness.
 *
 * @example twistStress(20, 40, 10) // 17.7
 */
export function twistStress(newtonMetres: number, height: number, thickness: number): number {
  const a = Math.max(height, thickness) / 2;
  const b = Math.min(height, thickness) / 2;
  const r = b / a;
  const series = 1 + 0.6095 * r + 0.8865 * r ** 2 - 1.8023 * r ** 3 + 0.91 * r ** 4;
  return ((3000 * Math.abs(newtonMetres)) / (8 * a * b * b)) * series;
}

/**
 * Bending and shear together as one tension that yields the same: √(σ² + 3 τ²), MPa (von Mises).
 *
 * @example combinedStress(100, 50) // 132.3
 */
export const combinedStress = (bending: number, shear: number): number =>
  Math.hypot(bending, Math.sqrt(3) * shear);

export const deflectionSource: Source = {
  title: 'Deflection of a lever at its pad',
  where: 'F (L − a)² L / (3 E I), the rod’s pin taken as fixed; beam tables, not opened',
  certainty: 'from memory',
};

/** A lever of one section: pivot at 0, rod at `reaction`, pad at `length`, mm. */
export interface LeverBeam {
  readonly newtons: number;
  readonly length: number;
  readonly reaction: number;
  readonly modulusMegapascals: number;
  readonly secondMoment: number;
}

/**
 * How far the pad gives when the rod does not: F (L − a)² L / (3 E I), mm.
 *
 * @example leverDeflection({ newtons: 2000, length: 250, reaction: 50, modulusMegapascals: 200_000, secondMoment: 40 ** 3 * 10 / 12 }) // 0.625
 */
export function leverDeflection(beam: LeverBeam): number {
  const { newtons, length, reaction, modulusMegapascals, secondMoment } = beam;
  return (newtons * (length - reaction) ** 2 * length) / (3 * modulusMegapascals * secondMoment);
}

/** A slice of a tapered lever: its length along the arm, the moment in its middle, its second moment. */
export interface LeverSlice {
  readonly length: number;
  readonly newtonMetres: number;
  readonly secondMoment: number;
}

/**
 * The same for an arm that tapers: the work of bending, slice by slice (Castigliano): δ = Σ M² Δx / (F E I), mm.
 */
export function taperedDeflection(
  slices: readonly LeverSlice[],
  newtons: number,
  modulusMegapascals: number,
): number {
  const work = slices.reduce(
    (sum, { length, newtonMetres, secondMoment }) =>
      sum + ((newtonMetres * 1000) ** 2 * length) / secondMoment,
    0,
  );
  return work / (newtons * modulusMegapascals);
}

export const eyeSource: Source = {
  title: 'Stress concentration of a hole in a pulled strip',
  where: 'Kt = 2 + (1 − d/w)³ on the net area (Heywood); for load that repeats; not opened',
  certainty: 'from memory',
};

/**
 * Stress concentration of a central hole in a pulled strip, on the net area: 2 + (1 − d/w)³.
 *
 * @example holeConcentration(10, 40) // 2.42
 */
export const holeConcentration = (hole: number, width: number): number => 2 + (1 - hole / width) ** 3;
