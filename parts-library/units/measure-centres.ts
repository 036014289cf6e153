// Reads a list of measured hole centres: (x, y) (x, y) (x, y) ±0.05.
import { LONGEST_AMOUNT, parseAmount, settleAmount, lentToNominal } from './amount.js';
import type { AmountOptions, Outcome, Unsettled } from './amount.js';
import { LENGTH, lengthUnit } from './length.js';
import type { CentresReading } from './measure-types.js';
import { readTokens } from './tokens.js';
import type { UnitRecord } from './tokens.js';
import type { Unit } from './types.js';

const FEWEST_CENTRES = 3;
const MOST_CENTRES = 500;

interface Point {
  readonly x: Coordinate;
  readonly y: Coordinate;
}

interface Coordinate {
  readonly end: number;
  readonly unsettled: Unsettled;
}

/** Reads the stretch after the word `centres`; a unit or a ± with a unit at the end holds for bare coordinates. */
export function readCentres(typed: string, start: number, end: number, unit: Unit): Outcome<CentresReading> {
  const options: AmountOptions = { bareUnit: lengthUnit(unit), allowNegative: true, plusMinus: false };
  const points: Point[] = [];
  let at = skipBlanks(typed, start, end);
  while (at < end && typed.charAt(at) === '(') {
    if (points.length === MOST_CENTRES) return fault(at, `more than ${MOST_CENTRES} centres`);
    const close = closingBracket(typed, at, end);
    if (close === undefined) return fault(at, 'this bracket is not closed');
    const point = readPoint(typed, at + 1, close, options);
    if (!point.ok) return point;
    points.push(point.value);
    at = skipBlanks(typed, close + 1, end);
  }
  if (points.length < FEWEST_CENTRES) {
    const why = `${FEWEST_CENTRES} or more hole centres were expected, each as (x, y)`;
    return fault(at, why);
  }
  const tail = readTail(typed, at, end, options);
  if (!tail.ok) return tail;
  const { plusMinus, bareUnit } = tail.value;
  const centres: Array<{ readonly x: number; readonly y: number }> = [];
  for (const { x, y } of points) {
    const settledX = settleAmount(x.unsettled, x.end, LENGTH, { ...options, bareUnit });
    if (!settledX.ok) return settledX;
    const settledY = settleAmount(y.unsettled, y.end, LENGTH, { ...options, bareUnit });
    if (!settledY.ok) return settledY;
    centres.push({ x: settledX.value.n, y: settledY.value.n });
  }
  return {
    ok: true,
    value: { way: 'centres', centres, ...(plusMinus === undefined ? {} : { plusMinus }) },
  };
}

function readPoint(typed: string, start: number, end: number, options: AmountOptions): Outcome<Point> {
  const text = typed.slice(start, end);
  // With a semicolon between x and y, commas are decimal; without one, the only comma parts x from y.
  const mark = text.includes(';') ? ';' : ',';
  const marks = text.split(mark).length - 1;
  if (marks !== 1) {
    const why =
      marks === 0
        ? 'a point is (x, y)'
        : mark === ','
          ? 'more than one comma in a point, so write (0.5, 55.2) or (0,5; 55,2)'
          : 'a point has two coordinates, as (0,5; 55,2)';
    return fault(start, why);
  }
  const middle = start + text.indexOf(mark);
  const x = parseAmount(typed, start, middle, LENGTH, options);
  if (!x.ok) return x;
  const y = parseAmount(typed, middle + 1, end, LENGTH, options);
  if (!y.ok) return y;
  return {
    ok: true,
    value: { x: { end: middle, unsettled: x.value }, y: { end, unsettled: y.value } },
  };
}

interface Tail {
  readonly plusMinus?: number;
  readonly bareUnit: UnitRecord;
}

// What stands after the points: nothing, a unit, or a ± with or without its unit.
function readTail(typed: string, start: number, end: number, options: AmountOptions): Outcome<Tail> {
  const { bareUnit } = options;
  if (start >= end) return { ok: true, value: { bareUnit } };
  if (end - start > LONGEST_AMOUNT)
    return fault(start, `longer than ${LONGEST_AMOUNT} characters after the points`);
  const [first, second] = readTokens(typed, start, end, LENGTH.spellings, LENGTH.what);
  if (first?.kind === 'unit') {
    if (second?.kind === 'end') return { ok: true, value: { bareUnit: first.unit } };
    return fault(second?.start ?? end, 'nothing was expected after the unit, so write the ± before it');
  }
  if (!(first?.kind === 'sign' && first.sign === '±'))
    return fault(start, 'a point, a ± or a unit was expected');
  const expected: AmountOptions = { ...options, allowNegative: false };
  const tolerance = parseAmount(typed, first.end, end, LENGTH, expected);
  if (!tolerance.ok) return tolerance;
  const settled = settleAmount(tolerance.value, end, LENGTH, expected);
  if (!settled.ok) return settled;
  const lent = lentToNominal(tolerance.value.nominal) ?? bareUnit;
  return { ok: true, value: { plusMinus: settled.value.n, bareUnit: lent } };
}

function closingBracket(typed: string, open: number, end: number): number | undefined {
  let depth = 0;
  for (let at = open; at < end; at += 1) {
    const character = typed.charAt(at);
    if (character === '(') depth += 1;
    if (character === ')') depth -= 1;
    if (depth === 0) return at;
  }
  return undefined;
}

function skipBlanks(typed: string, start: number, end: number): number {
  const blanks = /^\s*/u.exec(typed.slice(start, end))?.[0] ?? '';
  return start + blanks.length;
}

function fault<T>(at: number, why: string): Outcome<T> {
  return { ok: false, fault: { at, why } };
}
