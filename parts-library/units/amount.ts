// Reads a whole entry of one quantity: an expression, perhaps with a ±, brought to the quantity's own unit.
import { here, isSign, readExpression, stop, stopAtToken } from './expression.js';
import type { Expression, Reader } from './expression.js';
import { tellProblem } from './problem.js';
import type { Fault } from './problem.js';
import { readTokens } from './tokens.js';
import type { Spellings, UnitRecord } from './tokens.js';
import type { Reading } from './types.js';

/** What a quantity needs to be read. */
export interface Quantity {
  /** Its name, such as `length`. */
  readonly what: string;
  readonly spellings: Spellings;
  /** Largest size that makes sense, in the quantity's own unit, and how it is said. */
  readonly most: number;
  readonly mostSaid: string;
  /** Examples of what is accepted. */
  readonly accepts: string;
}

/** An amount in the quantity's own unit, with its ± if one was typed. */
export interface Amount {
  readonly n: number;
  readonly plusMinus?: number;
}

export interface AmountOptions {
  /** The unit of a bare number. */
  readonly bareUnit: UnitRecord;
  readonly allowNegative: boolean;
  readonly plusMinus: boolean;
}

/** An amount before its unit is settled: the ± and its units are still apart from the nominal. */
export interface Unsettled {
  readonly nominal: Expression;
  readonly plusMinus?: Expression;
}

export type Outcome<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: Fault };

/** Longest text of one amount; nobody types a longer one. */
export const LONGEST_AMOUNT = 200;

/** Reads a text as one amount and nothing else. */
export function readAmount(text: string, quantity: Quantity, options: AmountOptions): Reading<Amount> {
  const outcome = readAmountWithin(text, 0, text.length, quantity, options);
  if (outcome.ok) return outcome;
  return { ok: false, problem: tellProblem(text, outcome.fault, quantity.accepts) };
}

/** Takes a number that is in the quantity's own unit already, with the same checks as a text. */
export function takeAmount(
  n: number,
  typed: string,
  quantity: Quantity,
  options: AmountOptions,
): Reading<Amount> {
  const unsettled: Unsettled = { nominal: { value: { kind: 'amount', n }, units: [] } };
  const outcome = settleAmount(unsettled, typed.length, quantity, options);
  if (outcome.ok) return outcome;
  return { ok: false, problem: tellProblem(typed, outcome.fault, quantity.accepts) };
}

/** Reads a text or takes a number (in the quantity's own unit) where no ± has a place. */
export function readPlain(
  input: string | number,
  quantity: Quantity,
  bareUnit: UnitRecord,
  allowNegative: boolean,
): Reading<number> {
  const options: AmountOptions = { bareUnit, allowNegative, plusMinus: false };
  const reading =
    typeof input === 'number'
      ? takeAmount(input, String(input), quantity, options)
      : readAmount(input, quantity, options);
  return reading.ok ? { ok: true, value: reading.value.n } : reading;
}

/** Reads the stretch `start` to `end` of a text as one amount; faults are placed in the whole text. */
export function readAmountWithin(
  text: string,
  start: number,
  end: number,
  quantity: Quantity,
  options: AmountOptions,
): Outcome<Amount> {
  const unsettled = parseAmount(text, start, end, quantity, options);
  return unsettled.ok ? settleAmount(unsettled.value, end, quantity, options) : unsettled;
}

/** Reads an amount without settling the unit of its bare numbers. */
export function parseAmount(
  text: string,
  start: number,
  end: number,
  quantity: Quantity,
  options: AmountOptions,
): Outcome<Unsettled> {
  if (end - start > LONGEST_AMOUNT) {
    const why = `longer than ${LONGEST_AMOUNT} characters`;
    return { ok: false, fault: { at: start, why } };
  }
  const tokens = readTokens(text, start, end, quantity.spellings, quantity.what);
  const reader: Reader = {
    tokens,
    bareUnit: options.bareUnit,
    what: quantity.what,
    at: 0,
    depth: 0,
    units: [],
  };
  const value = readEntry(reader, options.plusMinus);
  if (value !== undefined && reader.fault === undefined) return { ok: true, value };
  return { ok: false, fault: reader.fault ?? { at: start, why: 'nothing was read' } };
}

function readEntry(reader: Reader, plusMinus: boolean): Unsettled | undefined {
  if (here(reader).kind === 'end') return stop(reader, here(reader).start, `no ${reader.what} was typed`);
  const bracketed = plusMinus && isPlusMinusBracketed(reader);
  if (bracketed) reader.at += 1;
  const nominal = readExpression(reader);
  if (nominal === undefined) return undefined;
  let tolerance: Expression | undefined;
  if (isSign(here(reader), '±')) {
    if (!plusMinus) return stopAtToken(reader, 'a ± has no place here');
    reader.at += 1;
    tolerance = readExpression(reader);
    if (tolerance === undefined) return undefined;
  }
  const unsettled = tolerance === undefined ? { nominal } : { nominal, plusMinus: tolerance };
  const entry = bracketed ? closeBracket(reader, unsettled) : unsettled;
  if (entry === undefined) return undefined;
  const last = here(reader);
  if (last.kind === 'end') return entry;
  if (isSign(last, ')')) return stopAtToken(reader, 'no bracket was opened for it');
  if (last.kind === 'unit') return stopAtToken(reader, 'a second unit');
  if (isSign(last, '±')) return stopAtToken(reader, 'a second ±');
  return stopAtToken(reader, 'a sign was expected between two numbers');
}

// (57.15 ± 0.1) mm, the form NIST SP 811 section 7.7 prefers: a ± directly inside the first bracket.
function isPlusMinusBracketed(reader: Reader): boolean {
  if (!isSign(here(reader), '(')) return false;
  let depth = 0;
  for (const token of reader.tokens) {
    if (isSign(token, '(')) depth += 1;
    if (isSign(token, ')')) depth -= 1;
    if (depth === 0) return false;
    if (depth === 1 && isSign(token, '±')) return true;
  }
  return false;
}

function closeBracket(reader: Reader, inside: Unsettled): Unsettled | undefined {
  if (!isSign(here(reader), ')')) return stopAtToken(reader, 'a closing bracket was expected');
  reader.at += 1;
  const unit = here(reader);
  if (unit.kind !== 'unit') return inside;
  if (inside.nominal.value.kind === 'amount' || inside.plusMinus?.value.kind === 'amount')
    return stopAtToken(reader, 'what is in the brackets has a unit already');
  reader.at += 1;
  const nominal = withUnit(inside.nominal, unit.unit);
  return inside.plusMinus === undefined
    ? { nominal }
    : { nominal, plusMinus: withUnit(inside.plusMinus, unit.unit) };
}

function withUnit(expression: Expression, unit: UnitRecord): Expression {
  return { value: { kind: 'amount', n: expression.value.n * unit.factor }, units: [unit] };
}

/**
 * Settles the unit of bare numbers and checks the size.
 * Beside a ±, a bare number takes the unit of the other side (`57.15 ± 0.1 mm`, `2.25in ± 0.005`); where that
 * could be mistaken (`3.5 cm ± 0.1`, `1in + 3mm ± 0.1`) the ± must say its unit.
 * @param end where the entry ends in the text, the place of faults that concern the whole of it
 */
export function settleAmount(
  unsettled: Unsettled,
  end: number,
  quantity: Quantity,
  options: AmountOptions,
): Outcome<Amount> {
  const refuse = (why: string): Outcome<Amount> => ({ ok: false, fault: { at: end, why } });
  const { nominal, plusMinus } = unsettled;
  const nominalUnit = lentToNominal(plusMinus) ?? options.bareUnit;
  const plusMinusUnit = nominal.value.kind === 'bare' ? nominalUnit : lentToPlusMinus(nominal.units);
  if (nominal.value.kind === 'ratio' || plusMinus?.value.kind === 'ratio')
    return refuse(`a ${quantity.what} over a ${quantity.what} is a plain number, so it needs a unit`);
  const n = nominal.value.kind === 'bare' ? nominal.value.n * nominalUnit.factor : nominal.value.n;
  if (Number.isNaN(n)) return refuse('it does not come to a number');
  if (Math.abs(n) > quantity.most) return refuse(`more than ${quantity.mostSaid}`);
  if (n < 0 && !options.allowNegative) return refuse(`a negative ${quantity.what} has no meaning here`);
  // Adding zero turns -0 into 0.
  if (plusMinus === undefined) return { ok: true, value: { n: n + 0 } };
  if (plusMinus.value.kind === 'bare' && plusMinusUnit === undefined)
    return refuse('the unit of the ± is not plain, so write one after it');
  const tolerance = plusMinus.value.n * (plusMinus.value.kind === 'bare' ? (plusMinusUnit?.factor ?? 1) : 1);
  if (Number.isNaN(tolerance)) return refuse('the ± does not come to a number');
  if (tolerance > quantity.most) return refuse(`a ± of more than ${quantity.mostSaid}`);
  if (tolerance < 0) return refuse('the amount after ± must not be negative');
  return { ok: true, value: { n: n + 0, plusMinus: tolerance + 0 } };
}

/** The unit that the ± lends to a bare nominal, if it has just one and that one is used for sizes. */
export function lentToNominal(plusMinus: Expression | undefined): UnitRecord | undefined {
  const only = onlyUnit(plusMinus?.units ?? []);
  return only?.lends === undefined ? undefined : only;
}

function lentToPlusMinus(units: readonly UnitRecord[]): UnitRecord | undefined {
  const only = onlyUnit(units);
  return only?.lends === 'either' ? only : undefined;
}

// Feet with inches count as inches.
function onlyUnit(units: readonly UnitRecord[]): UnitRecord | undefined {
  const smallest = units.filter(
    (unit) => unit.followedBy === undefined || !units.includes(unit.followedBy.unit),
  );
  const [first] = smallest;
  return first !== undefined && smallest.every((unit) => unit === first) ? first : undefined;
}
