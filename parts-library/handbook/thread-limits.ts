// The slackest threads that still pass a gauge: limits of 6g/6H and 2A/2B, from the tolerance rules.

import { inches } from './inches.js';
import type { Source } from './source.js';
import type { Thread } from './threads.js';

/** The limits that decide stripping, mm. */
export interface ThreadLimits {
  /** Smallest bolt major diameter (Ds min). */
  readonly boltMajorMin: number;
  /** Smallest bolt pitch diameter (Es min). */
  readonly boltPitchMin: number;
  /** Largest tapped-hole minor diameter (Kn max). */
  readonly holeMinorMax: number;
  /** Largest tapped-hole pitch diameter (En max). */
  readonly holePitchMax: number;
  readonly classes: '6g/6H' | '2A/2B';
  readonly source: Source;
}

const iso965: Source = {
  title: 'ISO 965-1 limits, 6g/6H',
  where: 'fundamental deviation g and grade 6 tolerances, µm; not opened',
  certainty: 'from memory',
};
const b11: Source = {
  title: 'ASME B1.1 limits, 2A/2B',
  where: 'tolerance formulas, engagement of one diameter; not opened',
  certainty: 'from memory',
};

/** By pitch, µm: deviation g, major tolerance of the bolt Td, minor tolerance of the hole TD1. */
const byPitch: Readonly<Record<string, readonly [g: number, major: number, minor: number]>> = {
  '0.7': [22, 140, 180],
  '0.8': [24, 150, 200],
  '1': [26, 180, 236],
  '1.25': [28, 212, 265],
  '1.5': [32, 236, 300],
  '1.75': [34, 265, 335],
  '2': [38, 280, 375],
  '2.5': [42, 335, 450],
};

/** By diameter band and pitch, µm: pitch diameter tolerance of bolt Td2 and hole TD2. */
const pitchTolerance: readonly (readonly [
  upTo: number,
  byPitch: Readonly<Record<string, readonly [bolt: number, hole: number]>>,
])[] = [
  [5.6, { '0.7': [90, 118], '0.8': [95, 125] }],
  [11.2, { '1': [112, 150], '1.25': [118, 160], '1.5': [132, 180] }],
  [
    22.4,
    {
      '1': [118, 160],
      '1.25': [132, 180],
      '1.5': [140, 190],
      '1.75': [150, 200],
      '2': [160, 212],
      '2.5': [170, 224],
    },
  ],
];

function metricLimits(thread: Thread): ThreadLimits | undefined {
  const key = `${thread.pitch}`;
  const [g, major, minor] = byPitch[key] ?? [];
  const [bolt, hole] = pitchTolerance.find(([upTo]) => thread.diameter <= upTo)?.[1][key] ?? [];
  if (g === undefined || major === undefined || minor === undefined) return undefined;
  if (bolt === undefined || hole === undefined) return undefined;
  return {
    boltMajorMin: thread.diameter - (g + major) / 1000,
    boltPitchMin: thread.pitchDiameter - (g + bolt) / 1000,
    holeMinorMax: thread.minorInternal + minor / 1000,
    holePitchMax: thread.pitchDiameter + hole / 1000,
    classes: '6g/6H',
    source: iso965,
  };
}

const toPlaces = (value: number, places: number): number => Number(value.toFixed(places));

/**
 * Inches throughout, as the standard writes its formulas and prints its tables: tolerances and pitch diameters to
 * 0.0001, minor diameters of the hole to 0.001.
 */
function unifiedLimits(thread: Thread, perInch: number): ThreadLimits {
  const d = thread.diameter / 25.4;
  const p = 1 / perInch;
  const pitch2A = 0.0015 * d ** (1 / 3) + 0.0015 * Math.sqrt(d) + 0.015 * p ** (2 / 3);
  const allowance = toPlaces(0.3 * pitch2A, 4);
  const major2A = toPlaces(0.06 * p ** (2 / 3), 4);
  const coarseMinor = 0.25 * p - 0.4 * p * p;
  const smallMinor = 0.05 * p ** (2 / 3) + (0.03 * p) / d - 0.002;
  const minor2B = d < 0.25 ? Math.min(Math.max(smallMinor, coarseMinor), 0.394 * p) : coarseMinor;
  const pitchDiameter = toPlaces(thread.pitchDiameter / 25.4, 4);
  return {
    boltMajorMin: inches(d - allowance - major2A),
    boltPitchMin: inches(pitchDiameter - allowance - toPlaces(pitch2A, 4)),
    holeMinorMax: inches(toPlaces(thread.minorInternal / 25.4 + minor2B, 3)),
    holePitchMax: inches(pitchDiameter + toPlaces(1.3 * pitch2A, 4)),
    classes: '2A/2B',
    source: b11,
  };
}

/**
 * Limits of a thread: 6g/6H for metric, 2A/2B for unified.
 *
 * @returns undefined for a metric pitch whose tolerances are not listed here
 * @example threadLimits(m8)?.holeMinorMax // 6.912
 */
export function threadLimits(thread: Thread): ThreadLimits | undefined {
  return thread.threadsPerInch === undefined
    ? metricLimits(thread)
    : unifiedLimits(thread, thread.threadsPerInch);
}
