// Clearance holes for bolts in three fits, metric and inch.

import { inches } from './inches.js';
import { found, notFound } from './lookup.js';
import type { Lookup } from './lookup.js';
import type { Source } from './source.js';
import type { Thread } from './threads.js';

export type ClearanceFit = 'close' | 'normal' | 'loose';

export interface ClearanceHole {
  /** `M10`, `3/8`. */
  readonly size: string;
  readonly fit: ClearanceFit;
  readonly diameter: number;
  /** The drill that makes it, by name. */
  readonly drill: string;
  /** ISO tolerance class of the hole: H12, H13, H14. */
  readonly toleranceClass: 'H12' | 'H13' | 'H14';
  readonly source: Source;
}

const iso273: Source = {
  title: 'ISO 273 (ASME B18.2.8 metric)',
  where: 'public reprint; fine, medium and coarse series',
  certainty: 'published',
};
const iso273Single: Source = {
  title: 'ISO 273',
  where: 'M18 from one public list only, a list that departs from the standard at other sizes',
  certainty: 'published',
};
const b1828: Source = {
  title: 'ASME B18.2.8-1999 (R2017)',
  where: 'Machinery’s Handbook 31st ed. pp. 1741, 1743',
  certainty: 'published',
};

/** ISO 273, mm: close (H12), normal (H13), loose (H14). */
const metric: Readonly<Record<string, readonly [close: number, normal: number, loose: number]>> = {
  M4: [4.3, 4.5, 4.8],
  M5: [5.3, 5.5, 5.8],
  M6: [6.4, 6.6, 7],
  M8: [8.4, 9, 10],
  M10: [10.5, 11, 12],
  M12: [13, 13.5, 14.5],
  M14: [15, 15.5, 16.5],
  M16: [17, 17.5, 18.5],
  M18: [19, 20, 21],
  M20: [21, 22, 24],
};

type Drilled = readonly [drill: string, diameter: number];

/** ASME B18.2.8, drill and inches. 9/16 is not in its list. */
const inch: Readonly<Record<string, readonly [close: Drilled, normal: Drilled, loose: Drilled]>> = {
  '#8': [
    ['#15', 0.18],
    ['#9', 0.196],
    ['#3', 0.213],
  ],
  '#10': [
    ['#5', 0.2055],
    ['#2', 0.221],
    ['B', 0.238],
  ],
  '1/4': [
    ['17/64', 17 / 64],
    ['9/32', 9 / 32],
    ['19/64', 19 / 64],
  ],
  '5/16': [
    ['21/64', 21 / 64],
    ['11/32', 11 / 32],
    ['23/64', 23 / 64],
  ],
  '3/8': [
    ['25/64', 25 / 64],
    ['13/32', 13 / 32],
    ['27/64', 27 / 64],
  ],
  '7/16': [
    ['29/64', 29 / 64],
    ['15/32', 15 / 32],
    ['31/64', 31 / 64],
  ],
  '1/2': [
    ['17/32', 17 / 32],
    ['9/16', 9 / 16],
    ['39/64', 39 / 64],
  ],
  '5/8': [
    ['21/32', 21 / 32],
    ['11/16', 11 / 16],
    ['47/64', 47 / 64],
  ],
  '3/4': [
    ['25/32', 25 / 32],
    ['13/16', 13 / 16],
    ['29/32', 29 / 32],
  ],
};

const fits: readonly ClearanceFit[] = ['close', 'normal', 'loose'];
const classes = ['H12', 'H13', 'H14'] as const;

/**
 * The clearance hole for a bolt.
 *
 * @param thread the bolt's thread; its nominal size decides
 * @param fit close, normal or loose
 * @returns the hole, or which sizes have one
 * @example clearanceHole(m10, 'normal') // found: 11
 */
export function clearanceHole(thread: Thread, fit: ClearanceFit): Lookup<ClearanceHole> {
  const column = fits.indexOf(fit);
  const toleranceClass = classes[column] ?? 'H13';
  const diameter = metric[thread.size]?.[column];
  if (diameter !== undefined) {
    const source = thread.size === 'M18' ? iso273Single : iso273;
    return found({ size: thread.size, fit, diameter, drill: `${diameter} mm`, toleranceClass, source });
  }
  const drilled = inch[thread.size]?.[column];
  if (drilled !== undefined) {
    const [drill, size] = drilled;
    return found({ size: thread.size, fit, diameter: inches(size), drill, toleranceClass, source: b1828 });
  }
  return notFound(thread.size, 'clearance hole for', [...Object.keys(metric), ...Object.keys(inch)]);
}
