// Several circles from several pairs of holes brought to one, with its ± and what made it.

/** What a reading or a hole size puts into the circle's ±, mm of diameter. */
export interface Contribution {
  readonly what: string;
  readonly plusMinus: number;
}

/** A circle from one pair of holes (or one other way), with what its ± is made of. */
export interface Estimate {
  readonly what: string;
  readonly diameter: number;
  /** Absent when a reading it rests on had no ±. */
  readonly parts?: readonly Contribution[];
}

export interface Combined {
  readonly diameter: number;
  readonly plusMinus?: number;
  readonly contributions: readonly Contribution[];
  /** How far the circles lie apart beyond what their ± allow, mm; where a ± is missing, how far they lie apart. */
  readonly disagreement: number;
  readonly notes: readonly string[];
}

/** A reading typed as exact still weighs no more than one good to a micrometre. */
const finest = 1e-3;

const total = (parts: readonly Contribution[]): number =>
  parts.reduce((sum, part) => sum + part.plusMinus, 0);
const to = (value: number): string => value.toFixed(3);

/**
 * The mean of the circles, weighed by 1/±². When all of them agree within their limits the true circle lies within
 * each, so the ± is what the tightest allows, seen from the mean; when they do not, one limit is wrong and the ±
 * is widened to reach every reading.
 */
export function combineEstimates(estimates: readonly Estimate[]): Combined {
  const known = estimates.flatMap(({ parts, ...rest }) =>
    parts === undefined ? [] : [{ ...rest, parts, limit: total(parts) }],
  );
  if (known.length < estimates.length || known.length === 0) {
    const diameter = estimates.reduce((sum, estimate) => sum + estimate.diameter, 0) / estimates.length;
    const circles = estimates.map((estimate) => estimate.diameter);
    return {
      diameter,
      contributions: known.flatMap(({ parts }) => parts),
      disagreement: Math.max(...circles) - Math.min(...circles),
      notes: spread(estimates, diameter),
    };
  }
  const weights = known.map(({ limit }) => 1 / Math.max(limit, finest) ** 2);
  const sum = weights.reduce((all, weight) => all + weight, 0);
  const weighed = known.map((estimate, index) => ({ ...estimate, weight: (weights[index] ?? 0) / sum }));
  const diameter = weighed.reduce((all, { weight, diameter: one }) => all + weight * one, 0);
  const contributions = weighed.flatMap(({ weight, parts }) =>
    parts.map(({ what, plusMinus }) => ({ what, plusMinus: weight * plusMinus })),
  );
  const low = Math.max(...known.map((estimate) => estimate.diameter - estimate.limit));
  const high = Math.min(...known.map((estimate) => estimate.diameter + estimate.limit));
  const away = known.map((estimate) => Math.abs(estimate.diameter - diameter));
  const sumOfLimits = total(contributions);
  if (low <= high + 1e-9) {
    const tightest = Math.min(...known.map(({ limit }, index) => limit + (away[index] ?? 0)));
    return {
      diameter,
      plusMinus: Math.min(sumOfLimits, tightest),
      contributions,
      disagreement: 0,
      notes: [],
    };
  }
  return {
    diameter,
    plusMinus: Math.max(sumOfLimits, ...away),
    contributions,
    disagreement: low - high,
    notes: [
      `The readings disagree by ${to(low - high)} mm more than their ± allow (${known
        .map((estimate) => `${estimate.what} gives ${to(estimate.diameter)}`)
        .join(', ')}): measure again.`,
    ],
  };
}

function spread(estimates: readonly Estimate[], diameter: number): readonly string[] {
  if (estimates.length < 2) return [];
  const far = Math.max(...estimates.map((estimate) => Math.abs(estimate.diameter - diameter)));
  return [`The readings lie up to ${to(far)} mm from their mean.`];
}
