// How near to an edge and to each other bolt holes may be.

import { inches } from './inches.js';
import type { CitedNumber, Source } from './source.js';
import type { ThreadSystem } from './threads.js';

const aiscMetric: Source = {
  title: 'AISC 360-16 Table J3.4M',
  where:
    'centre of hole to edge, all edges; p. 16.1-131 reprint; less allowed, not below 1 d, where tear-out passes',
  certainty: 'published',
};
const aiscInch: Source = {
  title: 'AISC 360-16 Table J3.4',
  where:
    'centre of hole to edge, all edges; p. 16.1-131 reprint; less allowed, not below 1 d, where tear-out passes',
  certainty: 'published',
};
const shopEdge: Source = {
  title: 'Edge distance',
  where: '1.5 to 2 bolt diameters, centre to edge; below the sizes of the AISC table',
  certainty: 'common practice',
};

/** Bolt diameter and least edge distance, mm. */
const metricTable: readonly (readonly [bolt: number, edge: number])[] = [
  [16, 22],
  [20, 26],
  [22, 28],
  [24, 30],
  [27, 34],
  [30, 38],
  [36, 46],
];

/** Bolt diameter and least edge distance, inches. */
const inchTable: readonly (readonly [bolt: number, edge: number])[] = [
  [1 / 2, 3 / 4],
  [5 / 8, 7 / 8],
  [3 / 4, 1],
  [7 / 8, 9 / 8],
  [1, 5 / 4],
  [9 / 8, 3 / 2],
  [5 / 4, 13 / 8],
];

const same = (first: number, second: number): boolean => Math.abs(first - second) < 1e-3;

/**
 * Least distance from a hole's centre to an edge: the AISC table where it has the size, else 1.5 bolt diameters.
 *
 * @param diameter bolt, mm
 * @param system of the bolt, which table is read
 * @example minEdgeDistance(12.7, 'unified').value // 19.05 (3/4 in)
 */
export function minEdgeDistance(diameter: number, system: ThreadSystem): CitedNumber {
  const metricRow = metricTable.find(([bolt]) => same(bolt, diameter));
  if (system === 'metric' && metricRow !== undefined) return { value: metricRow[1], source: aiscMetric };
  const inchRow = inchTable.find(([bolt]) => same(inches(bolt), diameter));
  if (system === 'unified' && inchRow !== undefined) return { value: inches(inchRow[1]), source: aiscInch };
  return { value: 1.5 * diameter, source: shopEdge };
}

/**
 * Edge distance a shop likes: two bolt diameters.
 *
 * @example goodEdgeDistance(10).value // 20
 */
export function goodEdgeDistance(diameter: number): CitedNumber {
  return { value: 2 * diameter, source: shopEdge };
}

/**
 * Least distance from a hole's centre to an edge whatever the strength: one bolt diameter.
 */
export function floorEdgeDistance(diameter: number): CitedNumber {
  return { value: diameter, source: aiscMetric };
}

const spacing: Source = {
  title: 'AISC 360, J3.3',
  where: 'spacing at least 2-2/3 d, preferably 3 d; Structural Steel Designer’s Handbook pp. 5.42–5.48',
  certainty: 'published',
};

/** Hole spacing, centre to centre: least 2-2/3 d and preferred 3 d, mm. */
export function holeSpacing(diameter: number): {
  readonly min: number;
  readonly preferred: number;
  readonly source: Source;
} {
  return { min: (8 / 3) * diameter, preferred: 3 * diameter, source: spacing };
}

/**
 * Furthest a bolt may stand from an edge (12 t, 6 in) and from the next bolt (24 t, 12 in), so that the plates stay
 * closed, mm.
 */
export function maxSpacing(thickness: number): {
  readonly edge: number;
  readonly spacing: number;
  readonly source: Source;
} {
  return {
    edge: Math.min(12 * thickness, inches(6)),
    spacing: Math.min(24 * thickness, inches(12)),
    source: {
      title: 'AISC 360-16, J3.5',
      where: 'edge 12 t and 6 in, spacing 24 t and 12 in; p. 16.1-131 reprint',
      certainty: 'published',
    },
  };
}

/**
 * Least web of metal between two openings, or an opening and the outside: one thickness and 3 mm.
 *
 * @example minWeb(6).value // 6
 */
export function minWeb(thickness: number): CitedNumber {
  return {
    value: Math.max(thickness, 3),
    source: {
      title: 'Web between cuts',
      where: 'at least one thickness and 3 mm; published cutting guidelines ask 1.5 thicknesses',
      certainty: 'common practice',
    },
  };
}

/** Web between plasma holes, and hole to edge, that a cutter’s guideline asks for: 1.5 thicknesses. */
export function goodWeb(thickness: number): CitedNumber {
  return {
    value: 1.5 * thickness,
    source: {
      title: 'Web between plasma cuts',
      where: 'contract cutter’s published design guideline: 1.5 t',
      certainty: 'published',
    },
  };
}
