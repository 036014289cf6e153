// Parallel keys as printed: DIN 6885-1 (ISO 773) and ASME B17.1.

import type { Source } from './source.js';

export const din6885: Source = {
  title: 'DIN 6885-1 / ISO 773 parallel keys',
  where: 'public reprint of the table; width tolerance N9 shaft, JS9 hub',
  certainty: 'published',
};

export const b171: Source = {
  title: 'ANSI B17.1 Table 1',
  where: 'two public reprints; keyseat control S and T reproduce the published depth table',
  certainty: 'published',
};

/** mm: shaft over, to, width, height, depth in shaft, depth in hub, depth tolerance. */
export const metricKeys: readonly (readonly [
  over: number,
  upTo: number,
  width: number,
  height: number,
  shaftDepth: number,
  hubDepth: number,
  plus: number,
])[] = [
  [6, 8, 2, 2, 1.2, 1, 0.1],
  [8, 10, 3, 3, 1.8, 1.4, 0.1],
  [10, 12, 4, 4, 2.5, 1.8, 0.1],
  [12, 17, 5, 5, 3, 2.3, 0.1],
  [17, 22, 6, 6, 3.5, 2.8, 0.1],
  [22, 30, 8, 7, 4, 3.3, 0.2],
  [30, 38, 10, 8, 5, 3.3, 0.2],
  [38, 44, 12, 8, 5, 3.3, 0.2],
  [44, 50, 14, 9, 5.5, 3.8, 0.2],
  [50, 58, 16, 10, 6, 4.3, 0.2],
];

/** Inches, square keys: shaft over, to, width. */
export const inchKeys: readonly (readonly [over: number, upTo: number, width: number])[] = [
  [5 / 16, 7 / 16, 3 / 32],
  [7 / 16, 9 / 16, 1 / 8],
  [9 / 16, 7 / 8, 3 / 16],
  [7 / 8, 5 / 4, 1 / 4],
  [5 / 4, 11 / 8, 5 / 16],
  [11 / 8, 7 / 4, 3 / 8],
  [7 / 4, 9 / 4, 1 / 2],
  [9 / 4, 11 / 4, 5 / 8],
];
