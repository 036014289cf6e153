// Bolt heads, nuts, washers, countersinks and the room a socket needs.

import { inches } from './inches.js';
import { found, notFound } from './lookup.js';
import type { Lookup } from './lookup.js';
import { weakestSource } from './source.js';
import type { Cited, CitedNumber, Source } from './source.js';
import type { Thread } from './threads.js';

export type HeadField = 'headHeight' | 'countersinkDiameter' | 'largeWasherOutside';

/** Sizes of hexagon heads and what goes under them, mm. */
export interface BoltHead extends Cited<HeadField> {
  readonly size: string;
  /** Hex bolt or cap screw across flats; absent where the size is not made (#8, #10). */
  readonly headAcrossFlats?: number;
  readonly nutAcrossFlats: number;
  /** Across flats of older hex bolts still in the bin (DIN 931: M10, M12, M14 are 1 mm larger). */
  readonly olderAcrossFlats?: number;
  readonly headHeight?: number;
  /** Plain washer: ISO 7089, or SAE for inch bolts. */
  readonly washerOutside: number;
  readonly washerThickness?: number;
  /** ISO 7093 large washer, or USS for inch bolts. */
  readonly largeWasherOutside?: number;
  /** Countersunk head diameter and its angle: 90° metric, 82° inch. */
  readonly countersinkDiameter?: number;
  readonly countersinkDegrees: 90 | 82;
}

const metricHeads: Source = {
  title: 'ISO 4014/4032, ISO 7089, ISO 7093, ISO 10642',
  where: 'public fastener parameter lists; washer thickness is the maximum',
  certainty: 'published',
};
const inchHeads: Source = {
  title: 'ASME B18.2.1, B18.2.2; SAE and USS washers',
  where: 'public reprints of hex cap screw, hex nut and washer charts',
  certainty: 'published',
};
const headHeights: Source = {
  title: 'ISO 4014 and ASME B18.2.1 head heights',
  where: 'nominal k; not opened',
  certainty: 'from memory',
};
const flatHeads: Source = {
  title: 'ASME B18.3 flat head, 82°',
  where: 'theoretical sharp diameter; not opened',
  certainty: 'from memory',
};
const flatHead8: Source = {
  title: 'ASME B18.3 flat head, 82°',
  where: 'size #8, public maker’s chart',
  certainty: 'published',
};

/** mm: hex across flats, older hex, head height, washer outside, washer thickness, large washer, countersunk head. */
type MetricHead = readonly [
  flats: number,
  older: number,
  height: number,
  washer: number,
  thick: number,
  large: number,
  countersunk?: number,
];

const metric: Readonly<Record<string, MetricHead>> = {
  M4: [7, 7, 2.8, 9, 0.9, 12, 8],
  M5: [8, 8, 3.5, 10, 1.1, 15, 10],
  M6: [10, 10, 4, 12, 1.8, 18, 12],
  M8: [13, 13, 5.3, 16, 1.8, 24, 16],
  M10: [16, 17, 6.4, 20, 2.2, 30, 20],
  M12: [18, 19, 7.5, 24, 2.7, 37, 24],
  M14: [21, 22, 8.8, 28, 2.7, 44],
  M16: [24, 24, 10, 30, 3.3, 50, 30],
  M18: [27, 27, 11.5, 34, 3.3, 56],
  M20: [30, 30, 12.5, 37, 3.3, 60, 36],
};

/** Inches: cap screw and nut across flats, head height, SAE and USS washer outside, 82° head. */
type InchHead = readonly [
  flats: number | null,
  nut: number,
  height: number | null,
  sae: number,
  uss: number | null,
  countersunk: number | null,
];

const inch: Readonly<Record<string, InchHead>> = {
  '#8': [null, 11 / 32, null, 7 / 16, null, 0.359],
  '#10': [null, 3 / 8, null, 1 / 2, null, 0.411],
  '1/4': [7 / 16, 7 / 16, 5 / 32, 5 / 8, 0.734, 0.531],
  '5/16': [1 / 2, 1 / 2, 13 / 64, 11 / 16, 7 / 8, 0.656],
  '3/8': [9 / 16, 9 / 16, 15 / 64, 13 / 16, 1, 0.781],
  '7/16': [5 / 8, 11 / 16, 9 / 32, 15 / 16, 1.25, 0.844],
  '1/2': [3 / 4, 3 / 4, 5 / 16, 17 / 16, 1.375, 0.938],
  '9/16': [13 / 16, 7 / 8, 23 / 64, 37 / 32, 47 / 32, null],
  '5/8': [15 / 16, 15 / 16, 25 / 64, 21 / 16, 1.75, 1.188],
  '3/4': [9 / 8, 9 / 8, 15 / 32, 47 / 32, 2, 1.438],
};

function metricHead(size: string, row: MetricHead): BoltHead {
  const [flats, older, headHeight, washerOutside, washerThickness, largeWasherOutside, countersunk] = row;
  return {
    size,
    headAcrossFlats: flats,
    nutAcrossFlats: flats,
    ...(older === flats ? {} : { olderAcrossFlats: older }),
    headHeight,
    washerOutside,
    washerThickness,
    largeWasherOutside,
    ...(countersunk === undefined ? {} : { countersinkDiameter: countersunk }),
    countersinkDegrees: 90,
    source: metricHeads,
    exceptions: { headHeight: headHeights },
  };
}

function inchHead(size: string, [flats, nut, height, sae, uss, countersunk]: InchHead): BoltHead {
  return {
    size,
    ...(flats === null ? {} : { headAcrossFlats: inches(flats) }),
    nutAcrossFlats: inches(nut),
    ...(height === null ? {} : { headHeight: inches(height) }),
    washerOutside: inches(sae),
    ...(uss === null ? {} : { largeWasherOutside: inches(uss) }),
    ...(countersunk === null ? {} : { countersinkDiameter: inches(countersunk) }),
    countersinkDegrees: 82,
    source: inchHeads,
    exceptions: { headHeight: headHeights, countersinkDiameter: size === '#8' ? flatHead8 : flatHeads },
  };
}

/**
 * Head, nut and washer sizes for a thread.
 *
 * @example boltHead(m10) // found: 16 across flats, washer 20
 */
export function boltHead(thread: Thread): Lookup<BoltHead> {
  const metricRow = metric[thread.size];
  if (metricRow !== undefined) return found(metricHead(thread.size, metricRow));
  const inchRow = inch[thread.size];
  if (inchRow !== undefined) return found(inchHead(thread.size, inchRow));
  return notFound(thread.size, 'bolt head for', [...Object.keys(metric), ...Object.keys(inch)]);
}

/** A hexagon measures 2/√3 of its flats across the corners. */
const cornersPerFlats = 2 / Math.sqrt(3);

/**
 * Outside diameter of a six-point hand socket for a hexagon: 1.3 times across flats plus 2 mm. Sockets differ;
 * measure the one that will be used.
 *
 * @param acrossFlats mm
 * @example socketOutside(16).value // 22.8
 */
export function socketOutside(acrossFlats: number): CitedNumber {
  return {
    value: 1.3 * acrossFlats + 2,
    source: {
      title: 'Hand socket outside diameter',
      where: '1.3 × across flats + 2 mm, low confidence: measure the socket',
      certainty: 'from memory',
    },
  };
}

/** The room that a bolt, its nut, its washer and the socket take around a hole, mm. */
export interface BoltEnvelope {
  /** The larger of head and nut: either may sit on the crowded side. */
  readonly acrossFlats: CitedNumber;
  readonly acrossCorners: CitedNumber;
  readonly washerOutside: CitedNumber;
  readonly socketOutside: CitedNumber;
}

/**
 * What stands around a bolt hole: the larger of head and nut, the plain washer (ISO 7089 or SAE), the socket.
 *
 * @example boltEnvelope(m10) // found: 16, 18.48, 20, 22.8
 */
export function boltEnvelope(thread: Thread): Lookup<BoltEnvelope> {
  const head = boltHead(thread);
  if (!head.found) return head;
  const { source, nutAcrossFlats, headAcrossFlats, washerOutside } = head.row;
  const flats = Math.max(nutAcrossFlats, headAcrossFlats ?? 0);
  const socket = socketOutside(flats);
  return found({
    acrossFlats: { value: flats, source },
    acrossCorners: { value: flats * cornersPerFlats, source },
    washerOutside: { value: washerOutside, source },
    socketOutside: { value: socket.value, source: weakestSource(source, socket.source) },
  });
}

/**
 * Depth of the cone of a countersunk head: the plate must be thicker.
 *
 * @param headDiameter mm
 * @param holeDiameter mm
 * @param degrees included angle
 * @example countersinkDepth(20, 10, 90) // 5
 */
export function countersinkDepth(headDiameter: number, holeDiameter: number, degrees: number): number {
  return (headDiameter - holeDiameter) / 2 / Math.tan((degrees * Math.PI) / 360);
}
