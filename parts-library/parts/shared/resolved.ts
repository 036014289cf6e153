// Parameters worked out once for drawing, checks and print alike, or the field that stands in the way.
import { GeometryError } from '../../geometry/index.js';

export type Resolved<T> = { readonly ok: true; readonly value: T } | Refusal;

export interface Refusal {
  readonly ok: false;
  /** The parameter that a person would change. */
  readonly field: string;
  /** What does not go together, with its numbers, and what would do. */
  readonly says: string;
}

export const refusal = (field: string, says: string): Refusal => ({ ok: false, field, says });

/**
 * The same, known again for the same parameters object: five stages ask for it.
 * @param resolve may throw GeometryError, which becomes a refusal
 * @param field named for a shape that geometry refuses and no rule foresaw
 */
export function rememberResolved<P extends object, T>(
  resolve: (parameters: P) => Resolved<T>,
  field: string,
): (parameters: P) => Resolved<T> {
  const known = new WeakMap<P, Resolved<T>>();
  return (parameters) => {
    const before = known.get(parameters);
    if (before !== undefined) return before;
    let answer: Resolved<T>;
    try {
      answer = resolve(parameters);
    } catch (error) {
      if (!(error instanceof GeometryError)) throw error;
      answer = refusal(field, error.message);
    }
    known.set(parameters, answer);
    return answer;
  };
}
