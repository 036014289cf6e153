// Sprocket teeth: the ANSI (Type II) construction and the limits of the ISO 606 gap.

import { inches } from './inches.js';
import type { Source } from './source.js';

export interface ToothQuestion {
  readonly pitch: number;
  readonly roller: number;
  readonly teeth: number;
}

/** The construction's own letters, mm and degrees. */
export interface AnsiToothForm {
  /** Seating curve diameter and radius. */
  readonly Ds: number;
  readonly R: number;
  readonly A: number;
  readonly B: number;
  readonly ac: number;
  readonly M: number;
  readonly T: number;
  /** Working curve radius and its chord. */
  readonly E: number;
  readonly xy: number;
  readonly yz: number;
  readonly ab: number;
  readonly W: number;
  readonly V: number;
  /** Topping curve radius. */
  readonly F: number;
  readonly H: number;
  readonly S: number;
  /** P cot(180/N) + 2 H. */
  readonly outsidePointed: number;
  readonly source: Source;
}

export const ansiToothSource: Source = {
  title: 'ANSI Type II tooth form',
  where: 'JIS B 1801 S-tooth construction; a published worked sheet, P = 1, N = 28, Dr = 0.625 in',
  certainty: 'published',
};

const sin = (degrees: number): number => Math.sin((degrees * Math.PI) / 180);
const cos = (degrees: number): number => Math.cos((degrees * Math.PI) / 180);

/**
 * The ANSI Type II tooth, mm.
 *
 * @returns undefined where the topping curve does not reach the pitch line (H is not real)
 * @example ansiToothForm({pitch: 25.4, roller: 15.875, teeth: 28})?.F // 12.989 (0.5114 in)
 */
export function ansiToothForm({ pitch, roller, teeth }: ToothQuestion): AnsiToothForm | undefined {
  const A = 35 + 60 / teeth;
  const B = 18 - 56 / teeth;
  const Ds = 1.005 * roller + inches(0.003);
  const F = roller * (0.8 * cos(B) + 1.4 * cos(17 - 64 / teeth) - 1.3025) - inches(0.0015);
  const squared = F * F - (1.4 * roller - pitch / 2) ** 2;
  if (!(squared >= 0)) return undefined;
  const H = Math.sqrt(squared);
  return {
    Ds,
    R: Ds / 2,
    A,
    B,
    ac: 0.8 * roller,
    M: 0.8 * roller * cos(A),
    T: 0.8 * roller * sin(A),
    E: 1.3025 * roller + inches(0.0015),
    xy: (2.605 * roller + inches(0.003)) * sin(9 - 28 / teeth),
    yz: roller * (1.4 * sin(17 - 64 / teeth) - 0.8 * sin(B)),
    ab: 1.4 * roller,
    W: 1.4 * roller * cos(180 / teeth),
    V: 1.4 * roller * sin(180 / teeth),
    F,
    H,
    S: (pitch / 2) * cos(180 / teeth) + H * sin(180 / teeth),
    outsidePointed: pitch / Math.tan(Math.PI / teeth) + 2 * H,
    source: ansiToothSource,
  };
}

interface Limits {
  readonly min: number;
  readonly max: number;
}

export interface IsoToothGap {
  /** Roller seating radius. */
  readonly ri: Limits;
  /** Flank radius. */
  readonly re: Limits;
  /** Roller seating angle, degrees. */
  readonly alpha: Limits;
  readonly source: Source;
}

/**
 * ISO 606 limits of the tooth gap, mm and degrees. The largest gap pairs the greatest seating radius with the
 * smallest angle.
 *
 * @example isoToothGap({pitch: 12.7, roller: 8.51, teeth: 20}).ri // 4.298 to 4.438
 */
export function isoToothGap({ roller, teeth }: ToothQuestion): IsoToothGap {
  return {
    ri: { min: 0.505 * roller, max: 0.505 * roller + 0.069 * Math.cbrt(roller) },
    re: { min: 0.12 * roller * (teeth + 2), max: 0.008 * roller * (teeth * teeth + 180) },
    alpha: { min: 120 - 90 / teeth, max: 140 - 90 / teeth },
    source: {
      title: 'ISO 606 tooth gap',
      where: 'limits as implemented independently in five public sources',
      certainty: 'published',
    },
  };
}
