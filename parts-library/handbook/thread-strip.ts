// Whether the thread strips before the bolt breaks, and how much engagement would do.

import type { Source } from './source.js';
import { threadLimits } from './thread-limits.js';
import type { Thread } from './threads.js';

/** tan 30°, as the standard writes it. */
const tan30 = 0.57735;

/** Shear strength as a share of tensile strength. Sources run 0.5 to 0.6. */
export const shearOverTensile = 0.577;

/** Shear areas per millimetre of engagement, mm²/mm. */
export interface ShearAreas {
  /** The bolt's own thread (AS), cut off at the hole's minor diameter. */
  readonly bolt: number;
  /** The tapped hole's thread (AN), cut off at the bolt's major diameter. */
  readonly plate: number;
}

const h28: Source = {
  title: 'FED-STD-H28/2B thread shear areas',
  where: 'definitions from a public reprint; expressions and 6g/6H, 2A/2B limits recalled',
  certainty: 'from memory',
};

/**
 * Shear areas of the slackest threads that pass the gauges, per millimetre of engagement.
 *
 * @returns undefined when the limits of the thread are not known here
 * @example shearAreas(m8) // {bolt: 12.16, plate: 16.83}
 */
export function shearAreas(thread: Thread): ShearAreas | undefined {
  const limits = threadLimits(thread);
  if (limits === undefined) return undefined;
  const { boltMajorMin, boltPitchMin, holeMinorMax, holePitchMax } = limits;
  const half = thread.pitch / 2;
  return {
    bolt: ((Math.PI * holeMinorMax) / thread.pitch) * (half + tan30 * (boltPitchMin - holeMinorMax)),
    plate: ((Math.PI * boltMajorMin) / thread.pitch) * (half + tan30 * (boltMajorMin - holePitchMax)),
  };
}

/**
 * Engagement at which a bolt and a plate of one strength break and strip together: 2 As over the bolt's shear
 * area per length.
 *
 * @returns mm, or undefined when the limits are not known
 * @example equalStrengthEngagement(halfThirteen) // 9.25 (0.364 in)
 */
export function equalStrengthEngagement(thread: Thread): number | undefined {
  const areas = shearAreas(thread);
  return areas && (2 * thread.stressArea) / areas.bolt;
}

export interface StripStrength {
  /** Pull that strips the bolt's thread, N. */
  readonly boltThreadNewtons: number;
  /** Pull that strips the plate's thread, N. */
  readonly plateThreadNewtons: number;
  /** Pull that breaks the bolt, N. */
  readonly boltBreaksNewtons: number;
  /** The least of the three, N, and which it is. */
  readonly newtons: number;
  readonly governs: 'bolt thread' | 'plate thread' | 'bolt breaks';
  /** Engagement at which the bolt breaks before either thread strips, mm. */
  readonly engagementNeeded: number;
  readonly source: Source;
}

/**
 * Strength of a tapped joint: which gives way first.
 *
 * @param thread the thread
 * @param engagement full threads in the plate, mm (thickness less chamfers)
 * @param boltTensile bolt tensile strength Rm, MPa
 * @param plateTensile plate tensile strength Rm, MPa
 * @returns undefined when the limits of the thread are not known
 * @example stripStrength(m8, 6, 800, 360)?.governs // plate thread; 8.4 mm would break the bolt
 */
export function stripStrength(
  thread: Thread,
  engagement: number,
  boltTensile: number,
  plateTensile: number,
): StripStrength | undefined {
  const areas = shearAreas(thread);
  if (areas === undefined) return undefined;
  const boltPerMillimetre = areas.bolt * shearOverTensile * boltTensile;
  const platePerMillimetre = areas.plate * shearOverTensile * plateTensile;
  const boltBreaksNewtons = boltTensile * thread.stressArea;
  const boltThreadNewtons = boltPerMillimetre * engagement;
  const plateThreadNewtons = platePerMillimetre * engagement;
  const newtons = Math.min(boltThreadNewtons, plateThreadNewtons, boltBreaksNewtons);
  const governs =
    newtons === boltBreaksNewtons
      ? 'bolt breaks'
      : newtons === plateThreadNewtons
        ? 'plate thread'
        : 'bolt thread';
  return {
    boltThreadNewtons,
    plateThreadNewtons,
    boltBreaksNewtons,
    newtons,
    governs,
    engagementNeeded: boltBreaksNewtons / Math.min(boltPerMillimetre, platePerMillimetre),
    source: h28,
  };
}
