// The generic air-plasma starting chart: values for planning and the first coupon. The shop's own chart wins.
// Speeds mm/min, lengths mm, seconds. An empty pierce delay (null) means the class cannot pierce that plate.

import type { ChartMaterial } from './chart.js';

/** Thickness, quality start, production ceiling, kerf, pierce seconds, edge start advised. */
export type StartingRow = readonly [
  thickness: number,
  start: number,
  ceiling: number,
  kerf: number,
  pierceSeconds: number | null,
  edgeStart: boolean,
];

export interface StartingBlock {
  readonly processClass: string;
  readonly material: ChartMaterial;
  readonly rows: readonly StartingRow[];
}

export const startingBlocks: readonly StartingBlock[] = [
  {
    processClass: 'air-30A',
    material: 'mild steel',
    rows: [
      [1.5, 4800, 5800, 1.22, 0.0, false],
      [2, 3000, 3700, 1.25, 0.1, false],
      [3, 1950, 2500, 1.3, 0.2, false],
      [4, 1150, 1500, 1.35, 0.4, false],
      [5, 820, 1100, 1.4, 0.5, false],
      [6, 600, 820, 1.45, 0.6, false],
      [8, 360, 500, 1.55, null, true],
    ],
  },
  {
    processClass: 'air-45A',
    material: 'mild steel',
    rows: [
      [1.5, 8000, 9600, 1.38, 0.1, false],
      [2, 5600, 7000, 1.4, 0.2, false],
      [3, 3400, 4500, 1.45, 0.3, false],
      [4, 2400, 3200, 1.5, 0.4, false],
      [5, 1850, 2450, 1.55, 0.4, false],
      [6, 1450, 1950, 1.6, 0.5, false],
      [8, 950, 1250, 1.7, 0.6, false],
      [10, 650, 850, 1.8, 0.9, false],
      [12, 480, 620, 1.9, 1.2, true],
    ],
  },
  {
    processClass: 'air-65A',
    material: 'mild steel',
    rows: [
      [2, 6600, 8000, 1.65, 0.1, false],
      [3, 5200, 6500, 1.7, 0.1, false],
      [4, 4000, 5200, 1.75, 0.2, false],
      [5, 3100, 4000, 1.8, 0.3, false],
      [6, 2500, 3250, 1.85, 0.5, false],
      [8, 1600, 2100, 1.95, 0.5, false],
      [10, 1100, 1400, 2.05, 0.7, false],
      [12, 790, 1050, 2.15, 1.2, false],
      [16, 480, 620, 2.35, 2.0, true],
    ],
  },
  {
    processClass: 'air-85A',
    material: 'mild steel',
    rows: [
      [3, 6800, 8500, 1.9, 0.1, false],
      [4, 5500, 6900, 1.95, 0.2, false],
      [5, 4400, 5500, 2.0, 0.2, false],
      [6, 3600, 4500, 2.05, 0.2, false],
      [8, 2450, 3050, 2.15, 0.5, false],
      [10, 1700, 2100, 2.25, 0.5, false],
      [12, 1300, 1600, 2.35, 0.7, false],
      [16, 840, 1000, 2.55, 1.0, false],
    ],
  },
  {
    processClass: 'air-105A',
    material: 'mild steel',
    rows: [
      [5, 5100, 6400, 2.25, 0.4, false],
      [6, 4300, 5400, 2.3, 0.5, false],
      [8, 3100, 3900, 2.4, 0.5, false],
      [10, 2250, 2800, 2.5, 0.5, false],
      [12, 1700, 2150, 2.6, 0.8, false],
      [16, 1100, 1350, 2.8, 1.0, false],
    ],
  },
  {
    processClass: 'air-30A',
    material: 'stainless',
    rows: [
      [1.5, 3950, 4750, 1.32, 0.0, false],
      [2, 2450, 3050, 1.35, 0.1, false],
      [3, 1600, 2050, 1.4, 0.2, false],
      [4, 940, 1250, 1.45, 0.4, false],
      [5, 670, 900, 1.5, 0.5, false],
      [6, 490, 670, 1.55, 0.6, false],
    ],
  },
  {
    processClass: 'air-45A',
    material: 'stainless',
    rows: [
      [1.5, 6550, 7850, 1.48, 0.1, false],
      [2, 4600, 5750, 1.5, 0.2, false],
      [3, 2800, 3700, 1.55, 0.3, false],
      [4, 1950, 2600, 1.6, 0.4, false],
      [5, 1500, 2000, 1.65, 0.4, false],
      [6, 1200, 1600, 1.7, 0.5, false],
      [8, 780, 1000, 1.8, 0.6, false],
      [10, 530, 700, 1.9, 0.9, false],
      [12, 390, 510, 2.0, 1.2, true],
    ],
  },
  {
    processClass: 'air-65A',
    material: 'stainless',
    rows: [
      [2, 6250, 7600, 1.75, 0.1, false],
      [3, 4950, 6200, 1.8, 0.1, false],
      [4, 3800, 4950, 1.85, 0.2, false],
      [5, 2750, 3500, 1.9, 0.3, false],
      [6, 2200, 2850, 1.95, 0.5, false],
      [8, 1300, 1700, 2.05, 0.5, false],
      [10, 890, 1150, 2.15, 0.7, false],
      [12, 650, 840, 2.25, 1.2, false],
    ],
  },
  {
    processClass: 'air-85A',
    material: 'stainless',
    rows: [
      [3, 6450, 8100, 2.0, 0.1, false],
      [4, 5200, 6550, 2.05, 0.2, false],
      [5, 3850, 4850, 2.1, 0.2, false],
      [6, 3150, 3950, 2.15, 0.2, false],
      [8, 2000, 2500, 2.25, 0.5, false],
      [10, 1400, 1700, 2.35, 0.5, false],
      [12, 1050, 1300, 2.45, 0.7, false],
    ],
  },
  {
    processClass: 'air-105A',
    material: 'stainless',
    rows: [
      [5, 4500, 5650, 2.35, 0.4, false],
      [6, 3800, 4750, 2.4, 0.5, false],
      [8, 2550, 3200, 2.5, 0.5, false],
      [10, 1850, 2300, 2.6, 0.5, false],
      [12, 1400, 1750, 2.7, 0.8, false],
    ],
  },
  {
    processClass: 'air-30A',
    material: 'aluminium',
    rows: [
      [1.5, 5300, 6400, 1.32, 0.0, false],
      [2, 3300, 4050, 1.35, 0.1, false],
      [3, 1650, 2100, 1.4, 0.2, false],
      [4, 980, 1300, 1.45, 0.4, false],
      [5, 700, 940, 1.5, 0.5, false],
      [6, 510, 700, 1.55, 0.6, false],
    ],
  },
  {
    processClass: 'air-45A',
    material: 'aluminium',
    rows: [
      [1.5, 8800, 10550, 1.48, 0.1, false],
      [2, 6150, 7700, 1.5, 0.2, false],
      [3, 2900, 3800, 1.55, 0.3, false],
      [4, 2050, 2700, 1.6, 0.4, false],
      [5, 1550, 2100, 1.65, 0.4, false],
      [6, 1250, 1650, 1.7, 0.5, false],
      [8, 620, 810, 1.8, 0.6, false],
      [10, 420, 550, 1.9, 0.9, false],
      [12, 310, 400, 2.0, 1.2, true],
    ],
  },
  {
    processClass: 'air-65A',
    material: 'aluminium',
    rows: [
      [2, 6600, 8000, 1.75, 0.1, false],
      [3, 5200, 6500, 1.8, 0.1, false],
      [4, 4000, 5200, 1.85, 0.2, false],
      [5, 3100, 4000, 1.9, 0.3, false],
      [6, 2500, 3250, 1.95, 0.5, false],
      [8, 1600, 2100, 2.05, 0.5, false],
      [10, 1100, 1400, 2.15, 0.7, false],
      [12, 790, 1050, 2.25, 1.2, false],
    ],
  },
  {
    processClass: 'air-85A',
    material: 'aluminium',
    rows: [
      [3, 6800, 8500, 2.0, 0.1, false],
      [4, 5500, 6900, 2.05, 0.2, false],
      [5, 4400, 5500, 2.1, 0.2, false],
      [6, 3600, 4500, 2.15, 0.2, false],
      [8, 2450, 3050, 2.25, 0.5, false],
      [10, 1700, 2100, 2.35, 0.5, false],
      [12, 1300, 1600, 2.45, 0.7, false],
    ],
  },
  {
    processClass: 'air-105A',
    material: 'aluminium',
    rows: [
      [5, 5100, 6400, 2.35, 0.4, false],
      [6, 4300, 5400, 2.4, 0.5, false],
      [8, 3100, 3900, 2.5, 0.5, false],
      [10, 2250, 2800, 2.6, 0.5, false],
      [12, 1700, 2150, 2.7, 0.8, false],
    ],
  },
];
