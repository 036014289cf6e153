// Sprocket diameters: pitch, outside, root, caliper, the largest hub beside the chain.

import type { Chain } from './chain.js';
import { inches } from './inches.js';
import type { Source } from './source.js';
import { ansiToothForm } from './tooth-form.js';

export const sprocketFormulas: Source = {
  title: 'ASME B29.1-2011 sprocket diameters',
  where:
    'formula list in public; JIS B 1801 construction page; Machinery’s Handbook 31st ed. p. 2631 Table 10',
  certainty: 'published',
};

export const isoSprocketFormulas: Source = {
  title: 'ISO 606 tip and root diameters',
  where: 'as implemented independently in five public sources',
  certainty: 'published',
};

export const plateClearance: Source = {
  title: 'Room under and over the chain’s side plates',
  where: 'P cot(180/N) − h and PD + h, from the plate height h of the chain',
  certainty: 'common practice',
};

const cot = (radians: number): number => 1 / Math.tan(radians);

/**
 * Pitch diameter P / sin(180/N).
 *
 * @param pitch mm
 * @param teeth whole number
 * @example pitchDiameter(12.7, 15) // 61.084
 */
export function pitchDiameter(pitch: number, teeth: number): number {
  return pitch / Math.sin(Math.PI / teeth);
}

/** Outside diameter, approximate: P (0.6 + cot(180/N)). */
export function outsideDiameter(pitch: number, teeth: number): number {
  return pitch * (0.6 + cot(Math.PI / teeth));
}

/**
 * Largest hub or groove beside the chain: P (cot(180/N) − 1) − 0.030 in. Nothing thicker than the tooth flange may
 * stand outside it.
 *
 * @example maxHubDiameter(12.7, 15) // 46.29 (1.8223 in)
 */
export function maxHubDiameter(pitch: number, teeth: number): number {
  return pitch * (cot(Math.PI / teeth) - 1) - inches(0.03);
}

/**
 * Circle that the inner edges of the chain's side plates keep outside of: P cot(180/N) − h.
 *
 * @returns undefined when no source gives the chain's plate height
 * @example sidePlateCircle(chain40, 15) // 47.68 (1.877 in)
 */
export function sidePlateCircle(chain: Chain, teeth: number): number | undefined {
  if (chain.plateHeight === undefined) return undefined;
  return chain.pitch * cot(Math.PI / teeth) - chain.plateHeight;
}

/** Diameter that the chain sweeps: PD + h. Undefined when the plate height is not known. */
export function sweptDiameter(chain: Chain, teeth: number): number | undefined {
  if (chain.plateHeight === undefined) return undefined;
  return pitchDiameter(chain.pitch, teeth) + chain.plateHeight;
}

export interface SprocketDiameters {
  readonly pitchDiameter: number;
  /** Approximate outside diameter. */
  readonly outside: number;
  /** Outside diameter with the teeth brought to a point; undefined where the tooth form does not close. */
  readonly outsidePointed: number | undefined;
  /** Bottom (root) diameter PD − roller. */
  readonly root: number;
  /** What a caliper reads across the gaps: the root on even teeth, PD cos(90/N) − roller on odd. */
  readonly caliper: number;
  /** Caliper tolerance, +0 and this much under, mm: precision and commercial. */
  readonly caliperUnder: { readonly precision: number; readonly commercial: number };
  readonly maxHub: number;
  readonly sidePlateCircle: number | undefined;
  readonly swept: number | undefined;
  /** ISO 606 limits of the outside diameter. */
  readonly isoOutside: { readonly min: number; readonly max: number };
  /** Chordal speed variation 1 − cos(180/N), a share of 1. */
  readonly speedVariation: number;
  readonly source: Source;
}

/**
 * Diameters of a sprocket, mm.
 *
 * @param chain the chain it runs with
 * @param teeth whole number, 5 or more (9 to 150 in the standards)
 * @returns undefined when the teeth are not a whole number of 5 or more
 * @example sprocketDiameters(chain40, 15)?.caliper // 52.82 (2.0797 in)
 */
export function sprocketDiameters(chain: Chain, teeth: number): SprocketDiameters | undefined {
  if (!Number.isInteger(teeth) || teeth < 5) return undefined;
  const { pitch, roller } = chain;
  const pd = pitchDiameter(pitch, teeth);
  const root = pd - roller;
  const under = (constant: number, perRoot: number): number =>
    inches(constant + perRoot * (pitch / 25.4) * Math.sqrt(teeth));
  return {
    pitchDiameter: pd,
    outside: outsideDiameter(pitch, teeth),
    outsidePointed: ansiToothForm({ pitch, roller, teeth })?.outsidePointed,
    root,
    caliper: teeth % 2 === 0 ? root : pd * Math.cos(Math.PI / 2 / teeth) - roller,
    caliperUnder: { precision: under(0.003, 0.001), commercial: under(0.006, 0.002) },
    maxHub: maxHubDiameter(pitch, teeth),
    sidePlateCircle: sidePlateCircle(chain, teeth),
    swept: sweptDiameter(chain, teeth),
    isoOutside: { min: pd + pitch * (1 - 1.6 / teeth) - roller, max: pd + 1.25 * pitch - roller },
    speedVariation: 1 - Math.cos(Math.PI / teeth),
    source: sprocketFormulas,
  };
}
