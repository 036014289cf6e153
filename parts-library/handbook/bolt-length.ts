// How long a bolt has to be: what it clamps, its washers, its nut and a little thread to see, rounded up to stock.

import { boltHead } from './heads.js';
import { inches } from './inches.js';
import { found, notFound } from './lookup.js';
import type { Lookup } from './lookup.js';
import type { Source } from './source.js';
import type { Thread } from './threads.js';

/** Nut heights, greatest, mm (ISO 4032 style 1; ASME B18.2.2 nominal). */
const nutHeights: Readonly<Record<string, number>> = {
  M4: 3.2,
  M5: 4.7,
  M6: 5.2,
  M8: 6.8,
  M10: 8.4,
  M12: 10.8,
  M14: 12.8,
  M16: 14.8,
  M18: 15.8,
  M20: 18,
  '#8': inches(1 / 8),
  '#10': inches(1 / 8),
  '1/4': inches(7 / 32),
  '5/16': inches(17 / 64),
  '3/8': inches(21 / 64),
  '7/16': inches(3 / 8),
  '1/2': inches(7 / 16),
  '9/16': inches(31 / 64),
  '5/8': inches(35 / 64),
  '3/4': inches(41 / 64),
};

/** Nominal lengths of ISO 888 as stocked, mm. */
const metricLengths = [
  8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 90, 100, 110, 120, 130, 140, 150, 160,
  180, 200, 220, 240, 260, 280, 300,
];

const lengthSource: Source = {
  title: 'Bolt length: grip, washers, nut and two threads to see',
  where: 'ISO 4032 and ASME B18.2.2 nut heights, ISO 888 lengths; not opened',
  certainty: 'from memory',
};

/** Threads that stand out of the nut. */
const threadsToSee = 2;

/** Inch bolts come in eighths to one inch and in quarters from there, as fractions of 64 for the name. */
function inchLength(least: number): { readonly length: number; readonly name: string } {
  const step = least <= inches(1) ? 1 / 8 : 1 / 4;
  const eighths = Math.ceil((least / 25.4 - 1e-9) / step) * step * 8;
  const whole = Math.floor(eighths / 8);
  const rest = eighths - 8 * whole;
  const [over, under] = rest % 4 === 0 ? [rest / 4, 2] : rest % 2 === 0 ? [rest / 2, 4] : [rest, 8];
  const fraction = rest === 0 ? '' : `${over}/${under}`;
  return {
    length: inches(eighths / 8),
    name: `${whole === 0 ? '' : whole}${whole > 0 && rest > 0 ? '-' : ''}${fraction} in`,
  };
}

export interface BoltLength {
  /** Stock length under the head, mm. */
  readonly length: number;
  /** As it is asked for after the thread: `25` or `1-1/4 in`. */
  readonly name: string;
  /** Least length that would do, mm. */
  readonly least: number;
  /** Height of the nut, mm; 0 into a tapped hole. */
  readonly nut: number;
  /** Washers counted, and the thickness of each, mm. */
  readonly washers: number;
  readonly washer: number;
  readonly source: Source;
}

/**
 * Length of a bolt through a grip with a washer under head and nut, or into a thread with one under its head.
 *
 * @param grip what is clamped, mm; for a tapped hole what lies before the thread
 * @param into engaged thread of a tapped hole, mm; left out for a nut
 * @example boltLength(m8, 12): 12 + 2 × 1.8 + 6.8 + 2 × 1.25 = 24.9, so 25
 */
export function boltLength(thread: Thread, grip: number, into?: number): Lookup<BoltLength> {
  const head = boltHead(thread);
  const nutHeight = nutHeights[thread.size];
  if (!head.found || nutHeight === undefined)
    return notFound(thread.size, 'nut height for', Object.keys(nutHeights));
  // SAE washers run close to the metric ones of their size; a fifth of the bolt is on the thick side.
  const washer = head.row.washerThickness ?? thread.diameter / 5;
  const washers = into === undefined ? 2 : 1;
  const nut = into === undefined ? nutHeight : 0;
  const least = grip + washers * washer + (into ?? nut + threadsToSee * thread.pitch);
  const stock =
    thread.system === 'unified'
      ? inchLength(least)
      : (() => {
          const length = metricLengths.find((one) => one >= least - 1e-9) ?? 20 * Math.ceil(least / 20);
          return { length, name: String(length) };
        })();
  return found({ ...stock, least, nut, washers, washer, source: lengthSource });
}
