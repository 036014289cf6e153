// The answer of a table lookup: the row, or what was asked, what is wrong with it and what is known.

export interface Found<Row> {
  readonly found: true;
  readonly row: Row;
}

export interface NotFound {
  readonly found: false;
  /** What was asked for, as it was written. */
  readonly asked: string;
  /** One sentence: what is not known and what would do. */
  readonly says: string;
  /** Names that would have been found, the likeliest first. */
  readonly known: readonly string[];
}

export type Lookup<Row> = Found<Row> | NotFound;

/** Wrap a row that was found. */
export function found<Row>(row: Row): Found<Row> {
  return { found: true, row };
}

/** Longest name worth repeating back, characters. */
const longest = 60;

/**
 * Say that nothing was found and list what is known.
 *
 * @param asked what was asked, as written
 * @param kind the trade's word for what was looked for, e.g. `thread`
 * @param known the names that would do
 */
export function notFound(asked: string, kind: string, known: readonly string[]): NotFound {
  const echo = asked.length > longest ? `${asked.slice(0, longest)}…` : asked;
  return { found: false, asked, says: `No ${kind} “${echo}” here. Known: ${known.join(', ')}.`, known };
}
