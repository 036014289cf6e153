// Turns the place where reading stopped into a sentence that says how far it got and why.
import type { ReadProblem } from './types.js';

/** Where reading stopped (index into what was typed) and why, as the end of a sentence. */
export interface Fault {
  readonly at: number;
  readonly why: string;
}

const LONGEST_QUOTE = 24;

/**
 * Writes a problem for a fault.
 * @param typed the whole text as typed
 * @param fault where it stopped and why
 * @param accepts examples of what is accepted
 * @returns the problem; `readTo` leaves out blanks before the stop
 * @example tellProblem('35 mn', { at: 3, why: 'not a unit of length' }, '…').says
 * // "Read 35, then stopped at 'mn': not a unit of length."
 */
export function tellProblem(typed: string, fault: Fault, accepts: string): ReadProblem {
  const read = typed.slice(0, fault.at).trimEnd();
  const rest = typed.slice(fault.at).trim();
  const says =
    rest === ''
      ? `${read === '' ? 'Nothing to read' : `Read ${clipStart(read.trimStart())} to the end`}: ${fault.why}.`
      : read === ''
        ? `Stopped at the start, at '${clipEnd(rest)}': ${fault.why}.`
        : `Read ${clipStart(read.trimStart())}, then stopped at '${clipEnd(rest)}': ${fault.why}.`;
  return { typed, readTo: read.length, says, accepts };
}

// Clipping goes by code points so that half of a surrogate pair is never shown.
function clipEnd(rest: string): string {
  const word = rest.slice(0, 4 * LONGEST_QUOTE).split(/\s/u, 1)[0] ?? '';
  const points = Array.from(word);
  return points.length <= LONGEST_QUOTE ? word : `${points.slice(0, LONGEST_QUOTE).join('')}…`;
}

function clipStart(read: string): string {
  const points = Array.from(read.slice(-4 * LONGEST_QUOTE));
  return points.length <= LONGEST_QUOTE ? read : `…${points.slice(-LONGEST_QUOTE).join('')}`;
}
