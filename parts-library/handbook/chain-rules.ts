// Rules of a chain drive's layout: centres, wrap, teeth.

import type { Source } from './source.js';

export const centresSource: Source = {
  title: 'Centre distance of a chain drive',
  where: 'usually 30 to 50 pitches; at least half of both outside diameters together',
  certainty: 'from memory',
};

/** Usual centre distance in pitches. */
export const USUAL_CENTRES = { least: 30, most: 50 } as const;

export const wrapSource: Source = {
  title: 'Wrap of the small sprocket',
  where: '180° − 2a, at least 120°; public formula sheet on sprockets',
  certainty: 'published',
};

/** Least wrap of the small sprocket, degrees. */
export const LEAST_WRAP = 120;

export const evenLinksSource: Source = {
  title: 'Even number of links',
  where: 'a chain maker’s page: offset links weaken the chain; keep an even count',
  certainty: 'published',
};

export const chordalSource: Source = {
  title: 'Chordal speed variation',
  where:
    '1 − cos(180°/N), public note on sprocket pitch diameter; 17 teeth 1.7 %, 11 teeth 4.1 %, 9 teeth 6 %',
  certainty: 'published',
};

/** Teeth from which the chain runs smoothly; fewer pulse. */
export const SMOOTH_TEETH = 17;

/** Fewest teeth that the standards know. */
export const FEWEST_TEETH = 9;

/**
 * How much the chain's speed swings with each tooth, a share of 1.
 * @example chordalVariation(11) // 0.0405
 */
export function chordalVariation(teeth: number): number {
  return 1 - Math.cos(Math.PI / teeth);
}
