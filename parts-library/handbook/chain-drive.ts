// Two sprockets and a chain: links, centre distance, wrap.

import type { Source } from './source.js';

export const chainLengthSource: Source = {
  title: 'Chain length and centre distance',
  where: 'approximate forms published on two reference pages; exact by the tangent line',
  certainty: 'published',
};

const radius = (teeth: number): number => 1 / (2 * Math.sin(Math.PI / teeth));

/**
 * Chain length in pitches by the common approximation 2C + (N+n)/2 + (N−n)²/(4π²C).
 *
 * @param small teeth of the small sprocket
 * @param large teeth of the large one
 * @param centres centre distance in pitches
 */
export function chainLengthApprox(small: number, large: number, centres: number): number {
  return 2 * centres + (large + small) / 2 + (large - small) ** 2 / (4 * Math.PI ** 2 * centres);
}

/**
 * Chain length in pitches along the tangent lines and the pitch circles.
 *
 * @returns undefined when one sprocket would swallow the other
 * @example chainLength(13, 45, 40) // 109.649
 */
export function chainLength(small: number, large: number, centres: number): number | undefined {
  const step = radius(large) - radius(small);
  if (!(centres > Math.abs(step))) return undefined;
  const lean = Math.asin(step / centres);
  return 2 * centres * Math.cos(lean) + large * (0.5 + lean / Math.PI) + small * (0.5 - lean / Math.PI);
}

/**
 * Degrees of the small sprocket that the chain wraps; 120 or more wanted.
 *
 * @returns undefined when one sprocket would swallow the other
 * @example wrapDegrees(13, 45, 40.1768) // 165.48
 */
export function wrapDegrees(small: number, large: number, centres: number): number | undefined {
  const step = radius(large) - radius(small);
  if (!(centres > Math.abs(step))) return undefined;
  return 180 - (2 * Math.asin(step / centres) * 180) / Math.PI;
}

/**
 * Centre distance in pitches at which a chain of a number of links is just straight, by halving.
 *
 * @param links whole number, even for a chain without an offset link
 * @returns undefined when the chain is too short to go round both
 * @example centreDistance(13, 45, 110) // 40.1768 pitches
 */
export function centreDistance(small: number, large: number, links: number): number | undefined {
  let low = Math.abs(radius(large) - radius(small)) * (1 + 1e-12);
  let high = links;
  const least = chainLength(small, large, low);
  if (least === undefined || least > links) return undefined;
  for (let step = 0; step < 200 && high - low > 1e-12 * high; step += 1) {
    const middle = (low + high) / 2;
    if ((chainLength(small, large, middle) ?? 0) < links) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
