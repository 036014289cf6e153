// Plate and sheet as it is sold: metric, inch and gauge thicknesses.

import { inches } from './inches.js';
import type { MaterialFamily } from './materials.js';
import type { Source } from './source.js';

export type ThicknessSystem = 'metric' | 'inch' | 'gauge';

export interface StockThickness {
  /** `6 mm`, `1/4 in`, `10 ga steel`. */
  readonly name: string;
  readonly thickness: number;
  readonly system: ThicknessSystem;
  /** Gauges differ between materials; absent where the size is sold in all. */
  readonly family?: MaterialFamily | 'galvanised steel';
  readonly source: Source;
}

const preferred: Source = {
  title: 'Preferred plate thicknesses',
  where: 'metric and inch plate as stocked',
  certainty: 'common practice',
};
const gauges: Source = {
  title: 'Sheet gauge thicknesses',
  where: 'Manufacturers’ Standard Gauge and its neighbours, four public charts',
  certainty: 'published',
};
const gauge15: Source = { title: 'Sheet gauge thicknesses', where: '15 ga', certainty: 'from memory' };

const metric: readonly number[] = [1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 16, 20, 25];

const inch: readonly (readonly [name: string, value: number])[] = [
  ['1/8', 1 / 8],
  ['3/16', 3 / 16],
  ['1/4', 1 / 4],
  ['5/16', 5 / 16],
  ['3/8', 3 / 8],
  ['7/16', 7 / 16],
  ['1/2', 1 / 2],
  ['9/16', 9 / 16],
  ['5/8', 5 / 8],
  ['3/4', 3 / 4],
  ['1', 1],
];

/** Gauge number; inches of steel, stainless, aluminium (Brown & Sharpe), galvanised. */
const gauge: readonly (readonly [
  number: number,
  steel: number,
  stainless: number,
  aluminium: number,
  galvanised?: number,
])[] = [
  [7, 0.1793, 0.1875, 0.1443],
  [8, 0.1644, 0.1719, 0.1285, 0.1681],
  [9, 0.1495, 0.1562, 0.1144, 0.1532],
  [10, 0.1345, 0.1406, 0.1019, 0.1382],
  [11, 0.1196, 0.125, 0.0907, 0.1233],
  [12, 0.1046, 0.1094, 0.0808, 0.1084],
  [13, 0.0897, 0.0937, 0.072, 0.0934],
  [14, 0.0747, 0.0781, 0.0641, 0.0785],
  [15, 0.0673, 0.0703, 0.0571, 0.071],
  [16, 0.0598, 0.0625, 0.0508, 0.0635],
];

const gaugeRow = (
  number: number,
  family: NonNullable<StockThickness['family']>,
  word: string,
  value: number,
): StockThickness => ({
  name: `${number} ga ${word}`,
  thickness: inches(value),
  system: 'gauge',
  family,
  source: number === 15 && (word === 'stainless' || word === 'galvanised') ? gauge15 : gauges,
});

const thicknesses: readonly StockThickness[] = [
  ...metric.map((thickness): StockThickness => ({
    name: `${thickness} mm`,
    thickness,
    system: 'metric',
    source: preferred,
  })),
  ...inch.map(([name, value]): StockThickness => ({
    name: `${name} in`,
    thickness: inches(value),
    system: 'inch',
    source: preferred,
  })),
  ...gauge.flatMap(([number, steel, stainless, aluminium, galvanised]) => [
    gaugeRow(number, 'carbon steel', 'steel', steel),
    gaugeRow(number, 'stainless steel', 'stainless', stainless),
    gaugeRow(number, 'aluminium', 'aluminium', aluminium),
    ...(galvanised === undefined ? [] : [gaugeRow(number, 'galvanised steel', 'galvanised', galvanised)]),
  ]),
];

/** Every stock thickness known here, or those of one system. */
export function listThicknesses(system?: ThicknessSystem): readonly StockThickness[] {
  return system === undefined ? thicknesses : thicknesses.filter((row) => row.system === system);
}

/**
 * The stock thickness nearest to a measured one.
 *
 * @param measured mm
 * @param system of which system; all when left out
 * @param family only gauges of this material (and metric and inch plate)
 * @example nearestThickness(6.1, 'metric').name // 6 mm
 */
export function nearestThickness(
  measured: number,
  system?: ThicknessSystem,
  family?: MaterialFamily,
): StockThickness | undefined {
  return listThicknesses(system)
    .filter((row) => row.family === undefined || family === undefined || row.family === family)
    .toSorted(
      (first, second) => Math.abs(first.thickness - measured) - Math.abs(second.thickness - measured),
    )[0];
}
