// Where a figure comes from and how far to trust it: the citation that travels with every handbook row.

/**
 * How a figure is known. `published`: seen in a public copy of the named source. `common practice`: a shop rule
 * without one owner. `from memory`: recalled or derived, the source itself not opened; check before relying on it.
 */
export type Certainty = 'published' | 'common practice' | 'from memory';

/** A citation: what was read, where in it, and how certain it is. */
export interface Source {
  readonly title: string;
  readonly where: string;
  readonly certainty: Certainty;
}

/**
 * A row of a table with its citation. Fields that rest on something weaker (or stronger) than the rest of the row
 * carry their own citation under `exceptions`.
 */
export interface Cited<Field extends string = never> {
  readonly source: Source;
  readonly exceptions?: Readonly<Partial<Record<Field, Source>>>;
}

/** A single figure with its citation. */
export interface CitedNumber {
  readonly value: number;
  readonly source: Source;
}

/**
 * The citation of one field of a row: its own where it has one, else the row's.
 *
 * @example sourceOf(chain('08B'), 'tensileNewtons').certainty // 'published'
 */
export function sourceOf<Field extends string>(row: Cited<Field>, field: Field): Source {
  return row.exceptions?.[field] ?? row.source;
}

const order: readonly Certainty[] = ['published', 'common practice', 'from memory'];

/**
 * The weakest of several citations: a result is no more certain than its least certain input.
 *
 * @example weakestSource(published, remembered) // remembered
 */
export function weakestSource(first: Source, ...others: readonly Source[]): Source {
  return others.reduce(
    (weakest, next) => (order.indexOf(next.certainty) > order.indexOf(weakest.certainty) ? next : weakest),
    first,
  );
}
