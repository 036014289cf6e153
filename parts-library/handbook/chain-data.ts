// Roller chain as printed: ANSI B29.1, ISO 606 B and A series, and the small-vehicle sizes 415 to 530.

import type { Source } from './source.js';

export const ansiChain: Source = {
  title: 'ASME B29.1 single strand roller chain',
  where: 'dimension tables in two public reprints that agree on every cell used',
  certainty: 'published',
};

/** 0.95 P for the roller link plate. */
export const ansiPlateHeight: Source = {
  title: 'ASME B29.1 roller chain',
  where: 'rule: roller link plate height at most 0.95 P, public reprints; computed',
  certainty: 'published',
};

export const ansi41PlateHeight: Source = {
  title: 'ASME B29.1 chain 41',
  where: 'plate height 0.390 in, lower than the 0.95 P of the general rule',
  certainty: 'from memory',
};

export const isoB: Source = {
  title: 'ISO 606 B series (BS 228, DIN 8187)',
  where:
    'pitch, roller, inner width from a public metric chain chart; pin, plate height, tensile from a public simplex chart',
  certainty: 'published',
};

export const isoBRemembered: Source = {
  title: 'ISO 606 B series',
  where: 'standard not opened; catalogues print values that differ by rounding',
  certainty: 'from memory',
};

export const isoA: Source = {
  title: 'ISO 606 A series',
  where: 'Table 1, standard not opened',
  certainty: 'from memory',
};

export const isoARead: Source = {
  title: 'ISO 606 A series',
  where: 'public single simplex chart, American series; agrees to rounding',
  certainty: 'published',
};

export const vehicleChain: Source = {
  title: 'Small-vehicle roller chain trade sizes',
  where:
    'pitch, roller and inner width from a dimension table, a chain guide Table 1.9 and a size guide in public',
  certainty: 'published',
};

/** Inches and lbf: name, pitch, roller, inner width, pin, plate thickness, minimum tensile. */
export type AnsiRow = readonly [
  name: string,
  pitch: number,
  roller: number,
  width: number,
  pin: number,
  plate: number,
  tensile: number,
];

export const ansiRows: readonly AnsiRow[] = [
  ['25', 0.25, 0.13, 0.125, 0.0905, 0.03, 780],
  ['35', 0.375, 0.2, 0.188, 0.141, 0.05, 1760],
  ['41', 0.5, 0.306, 0.25, 0.141, 0.05, 1500],
  ['40', 0.5, 0.312, 0.312, 0.156, 0.06, 3125],
  ['50', 0.625, 0.4, 0.375, 0.2, 0.08, 4880],
  ['60', 0.75, 0.469, 0.5, 0.234, 0.094, 7030],
  ['80', 1, 0.625, 0.625, 0.312, 0.125, 12500],
];

/** Millimetres and kN: name, pitch, roller max, inner width min, pin max, plate height max, minimum tensile. */
export type IsoRow = readonly [
  name: string,
  pitch: number,
  roller: number,
  width: number,
  pin: number,
  plateHeight: number,
  tensile: number,
];

export const isoBRows: readonly IsoRow[] = [
  ['04B', 6, 4, 2.8, 1.85, 5, 3],
  ['05B', 8, 5, 3, 2.31, 7.11, 4.4],
  ['06B', 9.525, 6.35, 5.72, 3.28, 8.26, 8.9],
  ['08B', 12.7, 8.51, 7.75, 4.45, 11.81, 17.8],
  ['10B', 15.875, 10.16, 9.65, 5.08, 14.73, 22.2],
  ['12B', 19.05, 12.07, 11.68, 5.72, 16.13, 28.9],
  ['16B', 25.4, 15.88, 17.02, 8.28, 21.08, 60],
];

/** B rows whose pin, plate height and tensile were not seen in print. */
export const isoBUnseen: readonly string[] = ['04B', '05B', '06B'];

/** B rows whose tensile is the remembered ISO figure, below the chart's 22.27, 28.94, 60.92 kN. */
export const isoBTensileRemembered: readonly string[] = ['10B', '12B', '16B'];

export const isoARows: readonly IsoRow[] = [
  ['04C', 6.35, 3.3, 3.1, 2.31, 6.02, 3.5],
  ['06C', 9.525, 5.08, 4.68, 3.6, 9.05, 7.9],
  ['085', 12.7, 7.77, 6.25, 3.6, 9.91, 6.7],
  ['08A', 12.7, 7.92, 7.85, 3.98, 12.07, 13.9],
  ['10A', 15.875, 10.16, 9.4, 5.09, 15.09, 21.8],
  ['12A', 19.05, 11.91, 12.57, 5.96, 18.1, 31.3],
  ['16A', 25.4, 15.88, 15.75, 7.94, 24.13, 55.6],
];

/** A rows that agree with a chart seen in public. */
export const isoASeen: readonly string[] = ['12A', '16A'];

/** Millimetres: name, pitch, roller, inner width. Pin, plate height and tensile: no source gives them. */
export type VehicleRow = readonly [name: string, pitch: number, roller: number, width: number];

export const vehicleRows: readonly VehicleRow[] = [
  ['415', 12.7, 7.77, 4.76],
  ['420', 12.7, 7.77, 6.35],
  ['428', 12.7, 8.51, 7.75],
  ['520', 15.875, 10.16, 6.35],
  ['525', 15.875, 10.16, 7.95],
  ['530', 15.875, 10.16, 9.53],
];

/** Widths that other sources print for the same trade number, mm: ask the user to measure. */
export const otherWidths: Readonly<Record<string, readonly number[]>> = {
  '415': [4.68, 4.88],
  '420': [6.25],
  '428': [7.85, 7.94, 7.95],
  '520': [6.25],
  '525': [7.85],
  '530': [9.4],
};
