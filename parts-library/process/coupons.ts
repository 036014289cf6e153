// Coupons: the ladders that are cut to find a shop's own figures, and what their readings come to.

import type { Source } from '../handbook/index.js';

export const couponSource: Source = {
  title: 'Building a cut chart from coupons',
  where:
    'an independent table maker’s published procedure: pierce, speed, height, voltage, kerf, check, holes',
  certainty: 'published',
};

/** Shares of the chart’s delay that a pierce ladder tries, and least step between rungs, s. */
const delayShares = [0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3];
const leastDelayStep = 0.1;
export const mostDelayRungs = delayShares.length;

const toHundredth = (value: number): number => Math.round(value * 100) / 100;

/**
 * Pierce delays of a ladder: 50, 75, 100, 125, 150, 200 % of the chart’s (then 250 and 300), at least 0.1 s apart.
 *
 * @param seconds the chart’s delay
 * @param count rungs, up to 8
 * @example delayRungs(0.5, 6) // 0.25, 0.38, 0.5, 0.63, 0.75, 1
 */
export function delayRungs(seconds: number, count: number): readonly number[] {
  const rungs: number[] = [];
  for (const share of delayShares.slice(0, count)) {
    const before = rungs.at(-1);
    const wanted = toHundredth(share * seconds);
    rungs.push(before === undefined ? wanted : Math.max(wanted, toHundredth(before + leastDelayStep)));
  }
  return rungs;
}

/**
 * Shares of chart speed in a speed ladder, slowest first, symmetrical about the chart’s.
 *
 * @param step share between lines: 0.05 round a shop’s own speed, 0.1 round a general chart’s
 * @param lines odd
 * @example speedShares(0.05, 7) // 0.85, 0.9, 0.95, 1, 1.05, 1.1, 1.15
 */
export function speedShares(step: number, lines: number): readonly number[] {
  return Array.from({ length: lines }, (_, index) => 1 + (index - (lines - 1) / 2) * step);
}

/**
 * Run-up that a torch needs to reach a speed: v² ÷ 2a, mm.
 *
 * @param speed mm/min
 * @param acceleration m/s²
 * @example runUp(8000, 1) // 8.9
 */
export function runUp(speed: number, acceleration: number): number {
  return (speed / 60) ** 2 / (2 * 1000 * acceleration);
}

/** Diameters of a hole ladder as multiples of the thickness. */
export const holeLadderMultiples = [1, 1.5, 2, 3] as const;

/** Shares of chart speed of a hole ladder, by how many rows are wanted. */
const holeRows: Readonly<Record<number, readonly number[]>> = {
  1: [0.6],
  2: [0.6, 0.8],
  3: [0.6, 0.7, 0.8],
  4: [0.5, 0.6, 0.7, 0.8],
  5: [0.5, 0.6, 0.7, 0.8, 1],
};

/**
 * Shares of chart speed that a hole ladder is cut at: 50, 60, 70, 80 and 100 %, or the middle ones of those.
 *
 * @example holeSpeedRows(3) // 0.6, 0.7, 0.8
 */
export function holeSpeedRows(rows: number): readonly number[] {
  return holeRows[rows] ?? [];
}

/** What the square and the window of a kerf coupon say. */
export interface KerfReading {
  /** Kerf from the outside: kerf set + nominal − measured, mm. */
  readonly outer: number;
  /** Kerf from the window: kerf set + measured − nominal, mm. */
  readonly inner: number;
  readonly kerf: number;
  readonly difference: number;
  /** Measured over nominal when the kerf is taken to be alike on both: what the axis moves for a millimetre asked. */
  readonly scale: number;
  /** The kerf once the scale is taken out, mm. */
  readonly scaledKerf: number;
}

/**
 * Kerf from a coupon that was cut with a kerf set already: outside k₀ + (P − M), window k₀ + (M − P), and their mean.
 * Square and window together part scale from kerf: M = s (P + k₀) − k outside, M = s (P − k₀) + k inside.
 *
 * @param coupon nominal square and window, measured ones, and the kerf the path was made with, mm; 0 when uncompensated
 * @example 100 and 45, 99.8 and 45.3, kerf set 1.5: 1.7 outside, 1.8 inside, 1.75
 */
export function kerfFromCoupon(coupon: {
  readonly square: number;
  readonly window: number;
  readonly measuredSquare: number;
  readonly measuredWindow: number;
  readonly kerfSet: number;
}): KerfReading {
  const { square, window, measuredSquare, measuredWindow, kerfSet } = coupon;
  const outer = kerfSet + square - measuredSquare;
  const inner = kerfSet + measuredWindow - window;
  const scale = (measuredSquare + measuredWindow) / (square + window);
  return {
    outer,
    inner,
    kerf: (outer + inner) / 2,
    difference: outer - inner,
    scale,
    scaledKerf: scale * (square + kerfSet) - measuredSquare,
  };
}

/** Readings along x and y that differ by more are scale, backlash, squareness or bevel, not kerf, mm. */
export const kerfAxesApart = 0.2;

/**
 * Kerf of a hole from its smallest measured diameter: the path’s diameter was nominal less the kerf set.
 *
 * @example holeKerfFrom(12, 11.8, 1.7) // path 10.3, so 1.5
 */
export function holeKerfFrom(nominal: number, measured: number, kerfSet: number): number {
  return measured - (nominal - kerfSet);
}

/**
 * Lean of a hole’s wall, degrees: the diameter changes by 2 t tan θ through the plate.
 *
 * @example holeTaper(12.42, 12, 6) // 2
 */
export function holeTaper(top: number, bottom: number, thickness: number): number {
  return (Math.atan(Math.abs(top - bottom) / (2 * thickness)) * 180) / Math.PI;
}

export const tabFitSource: Source = {
  title: 'Slot for a tab',
  where: 'tab + 0.3 to 0.5 mm on a calibrated kerf, and thickness × tan θ for the lean of the cut',
  certainty: 'from memory',
};

/** Lean of a usual cut, degrees. */
const usualLean = 2;

/**
 * Width of a slot that takes a tab: tab + 0.3 to 0.5 mm, and t tan θ at a lean of 2°.
 *
 * @param tab thickness of what goes in, mm
 * @param thickness plate with the slot, mm
 * @example slotForTab(6, 6) // 6.51 to 6.71
 */
export function slotForTab(
  tab: number,
  thickness: number,
): { readonly least: number; readonly most: number } {
  const lean = thickness * Math.tan((usualLean * Math.PI) / 180);
  return { least: tab + 0.3 + lean, most: tab + 0.5 + lean };
}
