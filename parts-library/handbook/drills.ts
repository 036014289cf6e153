// Twist drills: number, letter and fraction sizes, and the metric drills a shop can buy.

import { inches } from './inches.js';
import type { Source } from './source.js';

export interface Drill {
  /** `6.8 mm`, `#7`, `F`, `13/32`. */
  readonly name: string;
  readonly diameter: number;
  readonly system: 'metric' | 'number' | 'letter' | 'fraction';
  readonly source: Source;
}

const numberSizes: Source = {
  title: 'ASME B94.11M number and letter drills',
  where: 'the sizes used by the tap-drill and clearance tables are published; the rest not opened',
  certainty: 'from memory',
};
const plainSizes: Source = {
  title: 'Drill sizes by step',
  where: 'fractions by 1/64 in to 1 in; metric by 0.1 mm to 14 mm, by 0.5 mm to 25 mm',
  certainty: 'common practice',
};

/** #1 to #30, inches. */
const numbered: readonly number[] = [
  0.228, 0.221, 0.213, 0.209, 0.2055, 0.204, 0.201, 0.199, 0.196, 0.1935, 0.191, 0.189, 0.185, 0.182, 0.18,
  0.177, 0.173, 0.1695, 0.166, 0.161, 0.159, 0.157, 0.154, 0.152, 0.1495, 0.147, 0.144, 0.1405, 0.136, 0.1285,
];

/** A to Z, inches. */
const lettered: readonly number[] = [
  0.234, 0.238, 0.242, 0.246, 0.25, 0.257, 0.261, 0.266, 0.272, 0.277, 0.281, 0.29, 0.295, 0.302, 0.316,
  0.323, 0.332, 0.339, 0.348, 0.358, 0.368, 0.377, 0.386, 0.397, 0.404, 0.413,
];

/** Write sixty-fourths in lowest terms: 26 is `13/32`. */
function fraction(sixtyFourths: number): string {
  let top = sixtyFourths;
  let bottom = 64;
  while (top % 2 === 0 && bottom > 1) {
    top /= 2;
    bottom /= 2;
  }
  return bottom === 1 ? `${top}` : `${top}/${bottom}`;
}

const steps = (count: number, at: (step: number) => number): number[] =>
  Array.from({ length: count }, (_, step) => at(step));

const drills: readonly Drill[] = [
  ...steps(121, (step) => (20 + step) / 10).map((diameter) => metric(diameter)),
  ...steps(22, (step) => 14.5 + step / 2).map((diameter) => metric(diameter)),
  ...numbered.map((size, index): Drill => ({
    name: `#${index + 1}`,
    diameter: inches(size),
    system: 'number',
    source: numberSizes,
  })),
  ...lettered.map((size, index): Drill => ({
    name: String.fromCharCode(65 + index),
    diameter: inches(size),
    system: 'letter',
    source: numberSizes,
  })),
  ...steps(59, (step) => step + 6).map((size): Drill => ({
    name: fraction(size),
    diameter: inches(size / 64),
    system: 'fraction',
    source: plainSizes,
  })),
].toSorted((first, second) => first.diameter - second.diameter);

function metric(diameter: number): Drill {
  return { name: `${diameter} mm`, diameter, system: 'metric', source: plainSizes };
}

/** Every drill known here, by diameter, 2 to 25.4 mm. */
export function listDrills(): readonly Drill[] {
  return drills;
}

/**
 * The drill nearest to a diameter.
 *
 * @param diameter mm
 * @param among drills to choose from: all, or those the shop owns
 * @returns undefined when there is nothing to choose from
 * @example nearestDrill(6.78)?.name // 6.8 mm
 */
export function nearestDrill(diameter: number, among: readonly Drill[] = drills): Drill | undefined {
  return among.reduce<Drill | undefined>(
    (best, drill) =>
      best === undefined || Math.abs(drill.diameter - diameter) < Math.abs(best.diameter - diameter)
        ? drill
        : best,
    undefined,
  );
}
