// What a part amounts to at its finished size: net area, edge length, mass.
import { areaOf, lengthOf } from '../geometry/index.js';
import { isCut } from '../model/index.js';
import type { Part } from '../model/index.js';

/**
 * Area of metal that is left, mm2: the outline less every opening.
 *
 * @example a ring of 150 outside and 57.35 inside: pi/4 (150^2 - 57.35^2) = 15088.29
 */
export const netArea = (part: Part): number =>
  // Outlines run counter-clockwise and openings clockwise, so the signed areas add up to the metal.
  part.features.filter(isCut).reduce((sum, { contour }) => sum + areaOf(contour), 0);

/**
 * Length of all finished edges, mm: outline and openings.
 *
 * @example the same ring: pi (150 + 57.35) = 651.41
 */
export const perimeterOf = (part: Part): number =>
  part.features.filter(isCut).reduce((sum, { contour }) => sum + lengthOf(contour), 0);

/** Cubic metres in a cubic millimetre. */
const CUBIC_METRES = 1e-9;

/**
 * Mass of one copy, kg: net area times thickness times density.
 *
 * @param density kg/m3, 7850 for structural steel
 * @example the same ring, 6 mm, 7850 kg/m3: 15088.29 x 6 x 7850e-9 = 0.7107
 */
export const massOf = (part: Part, density: number): number =>
  netArea(part) * part.thickness * CUBIC_METRES * density;
