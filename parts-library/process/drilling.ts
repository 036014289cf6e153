// Holes drilled by hand in cut plate: how far they wander and how large a pilot may be cut.

import type { Source } from '../handbook/index.js';

/** How far a hole drilled by hand from a punched mark ends up from the mark, mm. */
export const drillDrift: { readonly low: number; readonly high: number; readonly source: Source } = {
  low: 0.3,
  high: 0.5,
  source: {
    title: 'Hand-drilled hole position',
    where: '±0.3 to 0.5 mm from a punched mark',
    certainty: 'common practice',
  },
};

/** The hard skin of a plasma cut, taken as 1.5 mm a side so that the drill's lips run outside it, mm of diameter. */
const hardSkin = 3;

export const pilotSource: Source = {
  title: 'Pilot under a drilled hole',
  where: 'drill less 3 mm: the lips run outside the hard edge of the cut pilot',
  certainty: 'common practice',
};

/**
 * Largest pilot that may be cut under a drilled hole: the drill less 3 mm.
 *
 * @param drill mm
 * @returns undefined when nothing would be left: drill from a centre mark
 * @example pilotDiameter(17.5) // 14.5
 */
export function pilotDiameter(drill: number): number | undefined {
  return drill > hardSkin ? drill - hardSkin : undefined;
}
