// Wheel on the road: what one turn of a tyre rolls, and the speed that goes with it.

import type { Source } from './source.js';

/** km/h from rpm and mm: 1e6 mm in a km, 60 minutes in an hour, π per diameter: 1e6 / (60 π). */
const KMH_DIVISOR = 1e6 / (60 * Math.PI);

export const roadSpeedSource: Source = {
  title: 'Road speed from wheel speed and rolling diameter',
  where: 'km/h = rpm × D ÷ 5305.16 with D in mm; mph = rpm × D ÷ 336.135 with D in inches; geometry',
  certainty: 'common practice',
};

/**
 * Road speed of a wheel that rolls without slip.
 *
 * @param rpm turns of the wheel a minute
 * @param diameter rolling diameter, mm
 * @returns km/h
 * @example roadSpeed(600, 457.2) // 51.71 (18 in tyre, 32.13 mph)
 */
export function roadSpeed(rpm: number, diameter: number): number {
  return (rpm * diameter) / KMH_DIVISOR;
}

export const rollingRadiusSource: Source = {
  title: 'Effective rolling radius of a pneumatic tyre',
  where: 'textbook rule: free radius less one third of the squash; the tread shortens where it touches',
  certainty: 'from memory',
};

/**
 * What a loaded tyre rolls as: free radius less a third of the squash.
 *
 * @param free half the outside diameter without load, mm
 * @param loaded axle centre to floor under load, mm
 * @example rollingRadius(203, 194) // 200
 */
export function rollingRadius(free: number, loaded: number): number {
  return free - (free - loaded) / 3;
}
