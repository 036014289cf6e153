// Round holes under the torch: the smallest worth cutting, their speed and their kerf.

import type { Source } from '../handbook/index.js';

export type HoleJudgement = 'drill' | 'rough' | 'test first' | 'normal';

export interface HoleVerdict {
  readonly verdict: HoleJudgement;
  /** What to do, in a few words. */
  readonly says: string;
  /** The bound that decided it, mm: the one it falls short of, or for a normal hole the one it meets. */
  readonly limit: number;
  /** Smallest hole that can be cut at all here, mm. */
  readonly smallest: number;
  readonly formula: string;
  readonly source: Source;
}

const thicknessFloor: Source = {
  title: 'Smallest plasma hole: one thickness',
  where: 'published plasma cutting primer: hole method for 37 mm down to the material thickness',
  certainty: 'published',
};
const pierceFloor: Source = {
  title: 'Smallest plasma hole: four kerfs',
  where: 'a pierce up to 3 kerfs wide has to fit inside the cut circle with metal to spare',
  certainty: 'common practice',
};
const oneAndAHalf: Source = {
  title: 'Smallest plasma hole for a bolt: 1.5 thicknesses',
  where: 'contract cutter’s published plasma design guideline',
  certainty: 'published',
};
const twice: Source = {
  title: 'Plain bolt holes from two thicknesses up',
  where: 'shop experience with air plasma',
  certainty: 'from memory',
};

const to = (value: number): string => `${Math.round(value * 100) / 100}`;

/**
 * Whether a round hole can be cut, and how well. Below the thickness or four kerfs: mark and drill. Below 1.5
 * thicknesses: rough, out of round and tapered. Below two: test first. From two up: a normal bolt hole.
 *
 * @param diameter finished hole, mm
 * @param thickness plate, mm
 * @param kerf mm
 * @example holeVerdict(8, 6, 1.6).verdict // 'rough' (9 wanted)
 */
export function holeVerdict(diameter: number, thickness: number, kerf: number): HoleVerdict {
  const smallest = Math.max(thickness, 4 * kerf);
  if (diameter < smallest) {
    return {
      verdict: 'drill',
      says: 'centre mark and drill',
      limit: smallest,
      smallest,
      formula: `${to(diameter)} < max(t, 4 k) = max(${to(thickness)}, 4 × ${to(kerf)}) = ${to(smallest)}`,
      source: 4 * kerf > thickness ? pierceFloor : thicknessFloor,
    };
  }
  if (diameter < 1.5 * thickness) {
    return {
      verdict: 'rough',
      says: 'rough clearance only, tapered and out of round',
      limit: 1.5 * thickness,
      smallest,
      formula: `${to(diameter)} < 1.5 t = 1.5 × ${to(thickness)} = ${to(1.5 * thickness)}`,
      source: oneAndAHalf,
    };
  }
  const comfortable = Math.max(2 * thickness, smallest);
  if (diameter < comfortable) {
    return {
      verdict: 'test first',
      says: 'usable with hole settings; cut a test hole first',
      limit: 2 * thickness,
      smallest,
      formula: `${to(diameter)} < 2 t = 2 × ${to(thickness)} = ${to(2 * thickness)}`,
      source: oneAndAHalf,
    };
  }
  return {
    verdict: 'normal',
    says: 'a normal hole with hole settings',
    limit: comfortable,
    smallest,
    formula: `${to(diameter)} ≥ max(2 t, 4 k) = max(${to(2 * thickness)}, ${to(4 * kerf)})`,
    source: twice,
  };
}

/** Above this diameter a hole is an ordinary contour; below it is cut from its centre with hole settings, mm. */
export const largestHoleByMethod = 37;

/** Corners of the hole speed factor: diameter mm, share of chart speed. */
const speedShare: readonly (readonly [diameter: number, share: number])[] = [
  [12.5, 0.6],
  [largestHoleByMethod, 0.7],
  [75, 1],
];

export const holeSpeedSource: Source = {
  title: 'Hole speed',
  where:
    'published plasma cutting primer: 60 to 70 % of chart speed up to 37 mm; the ramp to full speed at 75 mm is ours',
  certainty: 'published',
};

/**
 * Share of chart speed for a round hole: 0.60 to 12.5 mm, 0.70 at 37 mm, 1 from 75 mm, straight between.
 *
 * @param diameter finished hole, mm
 * @example holeSpeedFactor(37) // 0.7
 */
export function holeSpeedFactor(diameter: number): number {
  const [first, ...rest] = speedShare;
  if (first === undefined || diameter <= first[0]) return first?.[1] ?? 1;
  let [from, low] = first;
  for (const [until, high] of rest) {
    if (diameter <= until) return low + ((high - low) * (diameter - from)) / (until - from);
    [from, low] = [until, high];
  }
  return low;
}

/** A machine may slow further for a hole, never below this share: the arc would wander and the kerf open. */
export const holeSpeedFloor = 0.5;

export interface HoleKerf {
  readonly kerf: number;
  readonly plusMinus: number;
  readonly source: Source;
}

/** Kerf in a small hole over the straight kerf, before a hole ladder was cut. */
const holeKerfFactor = { low: 1.05, start: 1.075, high: 1.1 };

/**
 * Kerf of small round holes, wider than on straight cuts: 1.05 to 1.10 times, started at 1.075.
 *
 * @param kerf straight kerf, mm
 * @param plusMinus its half range, mm
 * @example holeKerf(1.6, 0.3) // 1.72 ±0.36
 */
export function holeKerf(kerf: number, plusMinus: number): HoleKerf {
  const half = (holeKerfFactor.high - holeKerfFactor.low) / 2;
  return {
    kerf: holeKerfFactor.start * kerf,
    plusMinus: holeKerfFactor.high * plusMinus + half * kerf,
    source: {
      title: 'Hole kerf',
      where: '1.05 to 1.10 × straight kerf; a hole ladder gives the shop’s own',
      certainty: 'from memory',
    },
  };
}
