// Findings of a drawing that was read: what was mended, assumed or left out, and what to do about it.
import type { Source } from '../../handbook/index.js';
import type { Finding, Level } from '../../model/index.js';

const READ: Source = {
  title: 'Drawing as it was read',
  where: 'lines joined, doubles removed, contours nested; look at the print beside the drawing',
  certainty: 'common practice',
};

/** One finding of the import. */
export function heard(
  code: string,
  level: Level,
  title: string,
  says: string,
  more: Pick<Finding, 'field' | 'anchor' | 'value' | 'limit'> = {},
): Finding {
  return { code, level, stage: 'import', subject: {}, title, says, source: READ, ...more };
}

/** At most three decimals: `0.03`. */
export const short = (value: number): string => String(Number(value.toFixed(3)));

/** `1 gap`, `3 gaps`. */
export const some = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;
