// Bolt circles met often, mm and inch: the nearest one is offered beside a measured circle, never put in its place.

import { inches } from './inches.js';
import type { Source } from './source.js';

export interface UsualCircle {
  readonly diameter: number;
  /** As it is said: `114.3 (4 1/2 in)`, `110`. */
  readonly name: string;
  readonly unit: 'mm' | 'in';
  readonly source: Source;
}

const usual: Source = {
  title: 'Bolt circles in common use',
  where: 'wheels and hubs, machine flanges, motor faces',
  certainty: 'common practice',
};

const millimetres: readonly number[] = [
  31.5, 40, 50, 58, 60, 63, 65, 70, 75, 80, 84, 85, 90, 95, 98, 100, 105, 108, 110, 112, 115, 118, 120, 125,
  127, 130, 135, 140, 145, 150, 160, 165, 170, 180, 200, 205, 210, 215, 220, 225, 240, 250, 265, 275, 300,
];

const wholeInches: readonly (readonly [value: number, name: string])[] = [
  [1.5, '1 1/2'],
  [1.75, '1 3/4'],
  [2, '2'],
  [2.25, '2 1/4'],
  [2.5, '2 1/2'],
  [2.75, '2 3/4'],
  [3, '3'],
  [3.25, '3 1/4'],
  [3.5, '3 1/2'],
  [3.75, '3 3/4'],
  [4, '4'],
  [4.25, '4 1/4'],
  [4.5, '4 1/2'],
  [4.75, '4 3/4'],
  [5, '5'],
  [5.25, '5 1/4'],
  [5.5, '5 1/2'],
  [5.875, '5 7/8'],
  [6, '6'],
  [6.5, '6 1/2'],
  [7, '7'],
  [7.25, '7 1/4'],
  [8, '8'],
  [8.5, '8 1/2'],
  [9, '9'],
  [10, '10'],
];

/** Usual circles, smallest first. */
export const usualCircles: readonly UsualCircle[] = [
  ...millimetres.map((diameter): UsualCircle => ({
    diameter,
    name: `${diameter}`,
    unit: 'mm',
    source: usual,
  })),
  ...wholeInches.map(([value, name]): UsualCircle => ({
    diameter: inches(value),
    name: `${inches(value)} (${name} in)`,
    unit: 'in',
    source: usual,
  })),
].toSorted((first, second) => first.diameter - second.diameter);

export interface NearUsual {
  readonly circle: UsualCircle;
  /** Usual less measured, mm. */
  readonly away: number;
  /** True when the measured range reaches it. */
  readonly within: boolean;
}

/** A circle further than this from every usual one is its own size, mm. */
const reach = 1.5;

/**
 * Usual circles near a measured one, nearest first: all that its ± reaches, else the nearest alone.
 *
 * @param diameter mm
 * @param plusMinus of the measured circle, mm
 * @returns empty when none is near
 * @example usualNear(114.27, 0.1)[0]?.circle.name // 114.3 (4 1/2 in)
 */
export function usualNear(diameter: number, plusMinus = 0): readonly NearUsual[] {
  const near = usualCircles
    .map((circle) => ({
      circle,
      away: circle.diameter - diameter,
      within: Math.abs(circle.diameter - diameter) <= plusMinus,
    }))
    .filter(({ away, within }) => within || Math.abs(away) <= reach)
    .toSorted((first, second) => Math.abs(first.away) - Math.abs(second.away));
  const reached = near.filter(({ within }) => within);
  return reached.length > 0 ? reached : near.slice(0, 1);
}
