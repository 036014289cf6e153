// Reads a count of things: bolts, holes, parts.
import { readPlain } from './amount.js';
import type { Quantity } from './amount.js';
import { tellProblem } from './problem.js';
import type { Reading } from './types.js';

const COUNT: Quantity = {
  what: 'count',
  spellings: [],
  most: 1e9,
  mostSaid: '1 000 000 000',
  accepts: '6, 12 or 2*8',
};

const ONE = { name: 'count', factor: 1, spelled: [] };

// 0.1 * 30 is a count of three although binary arithmetic misses it by a hair.
const WHOLE_WITHIN = 1e-9;

/**
 * Reads a whole number, or an expression that comes to one.
 * @param input the text, or a number
 * @param options fewest and most that make sense (0 and 10 000 unless told otherwise)
 * @returns the count, or the problem: not understood, not whole, too few, too many
 * @example readCount('2*8') // 16
 */
export function readCount(
  input: string | number,
  options: { readonly least?: number; readonly most?: number } = {},
): Reading<number> {
  const { least = 0, most = 10_000 } = options;
  const reading = readPlain(input, COUNT, ONE, true);
  if (!reading.ok) return reading;
  const count = Math.round(reading.value) + 0;
  const why =
    Math.abs(count - reading.value) > WHOLE_WITHIN
      ? 'a whole number was expected'
      : count < least
        ? `fewer than ${least}`
        : count > most
          ? `more than ${most}`
          : undefined;
  if (why === undefined) return { ok: true, value: count };
  const typed = String(input);
  return { ok: false, problem: tellProblem(typed, { at: typed.length, why }, COUNT.accepts) };
}
