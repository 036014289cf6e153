// Metric threads M4 to M20 (coarse and fine) and unified threads #8 to 3/4 (UNC and UNF): the printed figures.
// Pitch and minor diameters follow from the basic profile and are computed in threads.ts.

import type { Source } from './source.js';

/** ISO 261/262 sizes with the coarse stress areas of ISO 898-1. */
export const metricCoarse: Source = {
  title: 'ISO 261/262 metric threads; stress areas of EN ISO 898-1',
  where:
    'coarse pitch ultimate-load table, public reprint of EN ISO 898-1; tap drills from a maker’s published chart',
  certainty: 'published',
};

export const metricFine: Source = {
  title: 'ISO 724 metric fine threads',
  where: 'basic dimensions of fine pitch threads, public reprint; tap drills from a maker’s published chart',
  certainty: 'published',
};

export const unifiedCoarse: Source = {
  title: 'Machinery’s Handbook, 31st ed.',
  where:
    'p. 1978 Table 4a (UNC diameters); stress areas Shigley 9th ed. Table 8-2; drills from a maker’s chart',
  certainty: 'published',
};

export const unifiedFine: Source = {
  title: 'Shigley’s Mechanical Engineering Design, 9th ed.',
  where: 'Table 8-2 (UNF stress areas); drills from a maker’s published chart',
  certainty: 'published',
};

/** The formulas reproduce every printed diameter we have seen, but the standards themselves were not opened. */
export const basicProfile: Source = {
  title: 'ISO 68-1 / ASME B1.1 basic profile',
  where: 'd2 = d − 0.649519 P, D1 = d − 1.082532 P, d3 = d − 1.226869 P (metric), d − 1.190785 P (UNR)',
  certainty: 'from memory',
};

export const stressAreaFormula: Source = {
  title: 'ISO 898-1 stress area',
  where:
    'As = π/4 (d − 0.9382 P)²; the reprint of the fine series shifts these rows, against its own diameters',
  certainty: 'from memory',
};

export const drillByPitch: Source = {
  title: 'Tap drill by pitch',
  where: 'drill = d − P',
  certainty: 'common practice',
};

export type Series = 'coarse' | 'fine';

/** Millimetres, mm². */
export type MetricRow = readonly [
  diameter: number,
  pitch: number,
  series: Series,
  stressArea: number,
  tapDrill: number,
];

export const metricRows: readonly MetricRow[] = [
  [4, 0.7, 'coarse', 8.78, 3.3],
  [5, 0.8, 'coarse', 14.2, 4.2],
  [6, 1, 'coarse', 20.1, 5],
  [8, 1.25, 'coarse', 36.6, 6.8],
  [8, 1, 'fine', 39.2, 7],
  [10, 1.5, 'coarse', 58, 8.5],
  [10, 1.25, 'fine', 61.2, 8.8],
  [10, 1, 'fine', 64.5, 9],
  [12, 1.75, 'coarse', 84.3, 10.3],
  [12, 1.5, 'fine', 88.1, 10.5],
  [12, 1.25, 'fine', 92.1, 10.8],
  [14, 2, 'coarse', 115, 12.1],
  [14, 1.5, 'fine', 125, 12.5],
  [16, 2, 'coarse', 157, 14],
  [16, 1.5, 'fine', 167, 14.5],
  [18, 2.5, 'coarse', 192, 15.5],
  [18, 2, 'fine', 204, 16],
  [18, 1.5, 'fine', 216, 16.5],
  [20, 2.5, 'coarse', 245, 17.5],
  [20, 2, 'fine', 258, 18],
  [20, 1.5, 'fine', 272, 18.5],
];

/** Rows whose stress area is the formula's, the reprint being one row out there. */
export const areaFromFormula: readonly string[] = ['M18x2', 'M18x1.5', 'M20x2', 'M20x1.5'];

/** Rows the drill chart leaves blank. */
export const drillFromPitch: readonly string[] = ['M20x2', 'M20x1.5'];

/** Inches, square inches; the drill by name and in inches. */
export type UnifiedRow = readonly [
  size: string,
  diameter: number,
  threadsPerInch: number,
  series: Series,
  stressArea: number,
  drillName: string,
  drill: number,
];

export const unifiedRows: readonly UnifiedRow[] = [
  ['#8', 0.164, 32, 'coarse', 0.014, '#29', 0.136],
  ['#8', 0.164, 36, 'fine', 0.01474, '#29', 0.136],
  ['#10', 0.19, 24, 'coarse', 0.0175, '#25', 0.1495],
  ['#10', 0.19, 32, 'fine', 0.02, '#21', 0.159],
  ['1/4', 0.25, 20, 'coarse', 0.0318, '#7', 0.201],
  ['1/4', 0.25, 28, 'fine', 0.0364, '#3', 0.213],
  ['5/16', 0.3125, 18, 'coarse', 0.0524, 'F', 0.257],
  ['5/16', 0.3125, 24, 'fine', 0.058, 'I', 0.272],
  ['3/8', 0.375, 16, 'coarse', 0.0775, '5/16', 0.3125],
  ['3/8', 0.375, 24, 'fine', 0.0878, 'Q', 0.332],
  ['7/16', 0.4375, 14, 'coarse', 0.1063, 'U', 0.368],
  ['7/16', 0.4375, 20, 'fine', 0.1187, '25/64', 25 / 64],
  ['1/2', 0.5, 13, 'coarse', 0.1419, '27/64', 27 / 64],
  ['1/2', 0.5, 20, 'fine', 0.1599, '29/64', 29 / 64],
  ['9/16', 0.5625, 12, 'coarse', 0.182, '31/64', 31 / 64],
  ['9/16', 0.5625, 18, 'fine', 0.203, '33/64', 33 / 64],
  ['5/8', 0.625, 11, 'coarse', 0.226, '17/32', 17 / 32],
  ['5/8', 0.625, 18, 'fine', 0.256, '37/64', 37 / 64],
  ['3/4', 0.75, 10, 'coarse', 0.334, '21/32', 21 / 32],
  ['3/4', 0.75, 16, 'fine', 0.373, '11/16', 11 / 16],
];
