// Reads the distance of a measure and the clauses after it: hole size, bore size, steps apart.
import { readAmountWithin } from './amount.js';
import type { Outcome } from './amount.js';
import { LENGTH, lengthUnit } from './length.js';
import type { Size } from './measure-types.js';
import type { Unit } from './types.js';

export type ClauseName = 'hole' | 'bore' | 'step';

/** What stood after a tag. */
export interface Clauses {
  readonly distance: Size;
  readonly hole?: Size;
  readonly bore?: Size;
  readonly step?: number;
}

/** Why a size of zero is refused. */
export const NOTHING = 'a measured size must be more than nothing';

/** Why a ± beyond its size is refused: nothing can measure less than nothing. */
const VAGUE = 'the ± is larger than the size it belongs to';

/** More steps apart than any bolt pattern has holes. */
export const MOST_STEPS = 360;

/**
 * Reads `length {clause}` in the stretch `start` to `end`.
 * @param allowed the clauses this tag has; another one is a fault, and so is one given twice
 */
export function readClauses(
  typed: string,
  start: number,
  end: number,
  unit: Unit,
  allowed: readonly ClauseName[],
): Outcome<Clauses> {
  const marks = findClauses(typed, start, end);
  const distance = readSize(typed, start, marks[0]?.start ?? end, unit);
  if (!distance.ok) return distance;
  let clauses: Clauses = { distance: distance.value };
  for (const [index, mark] of marks.entries()) {
    const refuse = (why: string): Outcome<Clauses> => ({ ok: false, fault: { at: mark.start, why } });
    if (!allowed.includes(mark.name)) return refuse(`'${mark.name}' does not belong to this reading`);
    if (clauses[mark.name] !== undefined) return refuse(`'${mark.name}' is given twice`);
    const stop = marks[index + 1]?.start ?? end;
    const outcome =
      mark.name === 'step' ? readStep(typed, mark.end, stop) : readSize(typed, mark.end, stop, unit);
    if (!outcome.ok) return outcome;
    clauses = { ...clauses, [mark.name]: outcome.value };
  }
  return { ok: true, value: clauses };
}

interface Mark {
  readonly name: ClauseName;
  readonly start: number;
  readonly end: number;
}

function findClauses(typed: string, start: number, end: number): readonly Mark[] {
  const marks: Mark[] = [];
  for (const found of typed.slice(start, end).matchAll(/(?<!\p{L})(hole|bore|step)(?!\p{L})/giu)) {
    const word = found[0].toLowerCase();
    const name = word === 'hole' ? 'hole' : word === 'bore' ? 'bore' : 'step';
    marks.push({ name, start: start + found.index, end: start + found.index + word.length });
  }
  return marks;
}

function readSize(typed: string, start: number, end: number, unit: Unit): Outcome<Size> {
  const outcome = readAmountWithin(typed, start, end, LENGTH, {
    bareUnit: lengthUnit(unit),
    allowNegative: false,
    plusMinus: true,
  });
  if (!outcome.ok) return outcome;
  const { n, plusMinus } = outcome.value;
  if (n === 0) return { ok: false, fault: { at: end, why: NOTHING } };
  if (plusMinus !== undefined && plusMinus > n) return { ok: false, fault: { at: end, why: VAGUE } };
  return { ok: true, value: plusMinus === undefined ? { mm: n } : { mm: n, plusMinus } };
}

function readStep(typed: string, start: number, end: number): Outcome<number> {
  const digits = /^\s*(\d+)\s*$/u.exec(typed.slice(start, Math.min(end, start + 64)))?.[1];
  const step = Number(digits);
  if (digits !== undefined && step >= 1 && step <= MOST_STEPS) return { ok: true, value: step };
  return {
    ok: false,
    fault: { at: start, why: `a whole number of steps from 1 to ${MOST_STEPS} was expected` },
  };
}
