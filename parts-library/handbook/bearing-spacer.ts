// The spacer between two inner races: how long it has to be for the outer seats that it stands beside.

import type { Source } from './source.js';

export const bearingSpacerSource: Source = {
  title: 'Spacer between inner races',
  where:
    'outer seat distance + 0 to 0.1 mm, from micrometer readings; faces parallel, scale off, touching its own race only',
  certainty: 'common practice',
};

/** How much longer than the outer seat distance the spacer may be, mm. Shorter, and the bolt loads the balls sideways. */
export const bearingSpacerExcess = { least: 0, most: 0.1 } as const;

export interface SpacerLength {
  /** Shortest place of the spacer less the widest place of the seats, mm; below 0 the bearings are preloaded there. */
  readonly least: number;
  /** Longest place of the spacer less the narrowest place of the seats, mm. */
  readonly most: number;
  /** Every place of the spacer has to lie between these, mm; none does when `from` is above `to`. */
  readonly from: number;
  readonly to: number;
  /** Longest less shortest place: how far the faces are from parallel, mm. */
  readonly spread: number;
}

/**
 * Judges a spacer against the seats by their readings; the worst pair of places counts, since nobody knows how the
 * two will come to stand.
 *
 * @param seats distance between the faces that the outer races seat on, at several places, mm
 * @param spacer thickness of the spacer at several places, mm
 * @returns undefined without a reading of each
 * @example seats 5.02, 5.03 and spacer 5.07, 5.08: least 0.04, most 0.06, between 5.03 and 5.12
 */
export function bearingSpacer(seats: readonly number[], spacer: readonly number[]): SpacerLength | undefined {
  if (seats.length === 0 || spacer.length === 0) return undefined;
  const [narrow, wide] = [Math.min(...seats), Math.max(...seats)];
  const [short, long] = [Math.min(...spacer), Math.max(...spacer)];
  return {
    least: short - wide,
    most: long - narrow,
    from: wide + bearingSpacerExcess.least,
    to: narrow + bearingSpacerExcess.most,
    spread: long - short,
  };
}
