// Reads an amount as people type it: sums, products, brackets, fractions, mixed numbers and units.
import type { Fault } from './problem.js';
import type { Token, UnitRecord } from './tokens.js';

/**
 * What an expression came to. A `bare` number has no unit yet and may take the job's; an `amount` is in the
 * quantity's own unit; a `ratio` is an amount divided by an amount and stays a plain number.
 */
export interface Value {
  readonly kind: 'bare' | 'amount' | 'ratio';
  readonly n: number;
}

/** What stood before or after a ±: its value and the units that went into it. */
export interface Expression {
  readonly value: Value;
  readonly units: readonly UnitRecord[];
}

/** Where the reader stands in the tokens; `fault` is set once, by the first thing that cannot be. */
export interface Reader {
  readonly tokens: readonly Token[];
  /** The unit a bare number takes when it is added to an amount. */
  readonly bareUnit: UnitRecord;
  /** The quantity's name, such as `length`. */
  readonly what: string;
  at: number;
  depth: number;
  units: UnitRecord[];
  fault?: Fault;
}

const DEEPEST_BRACKETS = 32;

/** The token where the reader stands. */
export function here(reader: Reader): Token {
  return tokenAt(reader.tokens, reader.at);
}

/** Sets the fault, unless one is set already, and gives up. */
export function stop(reader: Reader, at: number, why: string): undefined {
  reader.fault ??= { at, why };
  return undefined;
}

/** Whether the token is this sign. */
export function isSign(token: Token, sign: string): boolean {
  return token.kind === 'sign' && token.sign === sign;
}

/**
 * Reads one expression and leaves the reader at the first token that is not part of it.
 *
 *     sum      = product { ('+' | '-') product }
 *     product  = signed { ('*' | '/') signed }
 *     signed   = { '+' | '-' } term
 *     term     = '(' sum ')' [unit] | number [unit { number smaller-unit }]
 *     number   = whole ' ' n/d | whole '-' n/d | n/d | decimal        (fractions without blanks inside)
 *
 * - A tight hyphen between a whole number and a proper fraction joins them, with or without a unit:
 *   `1-3/8` is 1.375. A fraction is subtracted with blanks: `1 - 3/8` is 0.625.
 * - A fraction takes the unit that follows it as a whole: `1/2in` is half an inch.
 * - A bare number added to an amount takes the job's unit; as a factor or divisor it stays plain.
 * - Amount by amount is no amount of the same quantity: a fault. Amount over amount is a ratio, which may scale
 *   an amount or take a unit (`(10in/4in) mm`), but is not one by itself. A number over an amount is a fault.
 */
export function readExpression(reader: Reader): Expression | undefined {
  reader.units = [];
  const value = readSum(reader);
  return value === undefined ? undefined : { value, units: reader.units };
}

function readSum(reader: Reader): Value | undefined {
  let total = readProduct(reader);
  for (;;) {
    const token = here(reader);
    if (total === undefined || !(isSign(token, '+') || isSign(token, '-'))) return total;
    reader.at += 1;
    const from = here(reader).start;
    const next = readProduct(reader);
    if (next === undefined) return undefined;
    total = add(reader, total, next, isSign(token, '-') ? -1 : 1, from);
  }
}

function readProduct(reader: Reader): Value | undefined {
  let product = readSigned(reader);
  for (;;) {
    const token = here(reader);
    if (product === undefined || !(isSign(token, '*') || isSign(token, '/'))) return product;
    reader.at += 1;
    const from = here(reader).start;
    const next = readSigned(reader);
    if (next === undefined) return undefined;
    product = isSign(token, '*')
      ? multiply(reader, product, next, from)
      : divide(reader, product, next, from);
  }
}

function readSigned(reader: Reader): Value | undefined {
  let factor = 1;
  for (;;) {
    const token = here(reader);
    if (!(isSign(token, '+') || isSign(token, '-'))) break;
    if (isSign(token, '-')) factor = -factor;
    reader.at += 1;
  }
  const value = readTerm(reader);
  return value === undefined ? undefined : { kind: value.kind, n: factor * value.n };
}

function readTerm(reader: Reader): Value | undefined {
  const token = here(reader);
  if (isSign(token, '(')) return readBracket(reader);
  const number = readNumber(reader);
  if (number === undefined) return undefined;
  const next = here(reader);
  if (next.kind !== 'unit') return { kind: 'bare', n: number.n };
  reader.at += 1;
  reader.units.push(next.unit);
  return readSmaller(reader, next.unit, number.n * next.unit.factor, number.whole);
}

function readBracket(reader: Reader): Value | undefined {
  const open = here(reader);
  if (reader.depth >= DEEPEST_BRACKETS)
    return stop(reader, open.start, `brackets deeper than ${DEEPEST_BRACKETS}`);
  reader.depth += 1;
  reader.at += 1;
  const inside = readSum(reader);
  if (inside === undefined) return undefined;
  if (isSign(here(reader), '±')) return stopAtToken(reader, 'a ± stands only after the whole of the amount');
  if (!isSign(here(reader), ')')) return stopAtToken(reader, 'a closing bracket was expected');
  reader.at += 1;
  reader.depth -= 1;
  const next = here(reader);
  if (next.kind !== 'unit') return inside;
  if (inside.kind === 'amount') return stop(reader, next.start, 'what is in the brackets has a unit already');
  reader.at += 1;
  reader.units.push(next.unit);
  return { kind: 'amount', n: inside.n * next.unit.factor };
}

// Feet and inches, degrees and minutes: a whole number of the larger, then a number of the smaller.
function readSmaller(reader: Reader, unit: UnitRecord, amount: number, whole: boolean): Value | undefined {
  const smaller = unit.followedBy;
  const sum: Value = { kind: 'amount', n: amount };
  if (smaller === undefined || !whole) return sum;
  const start = reader.at;
  const hyphen = here(reader);
  const after = tokenAt(reader.tokens, start + 1);
  const joined = smaller.joined === true && isTightHyphen(tokenAt(reader.tokens, start - 1), hyphen, after);
  if (joined) reader.at += 1;
  const first = here(reader);
  if (first.kind !== 'number' && first.kind !== 'vulgar') {
    reader.at = start;
    return sum;
  }
  const number = readNumber(reader);
  if (number === undefined) return undefined;
  const next = here(reader);
  const named = next.kind === 'unit' && next.unit === smaller.unit;
  // 5' 6 without a mark is still five feet six: nothing else can follow a foot mark without a sign.
  const implied = smaller.joined === true && next.kind !== 'unit';
  if (!(named || implied) || (joined && number.n >= smaller.below)) {
    reader.at = start;
    return sum;
  }
  if (number.n >= smaller.below)
    return stop(
      reader,
      first.start,
      `after ${unit.name} the ${smaller.unit.name} must be below ${smaller.below}`,
    );
  if (named) reader.at += 1;
  reader.units.push(smaller.unit);
  return readSmaller(reader, smaller.unit, amount + number.n * smaller.unit.factor, number.whole);
}

interface PlainNumber {
  readonly n: number;
  readonly whole: boolean;
}

function readNumber(reader: Reader): PlainNumber | undefined {
  const first = here(reader);
  if (first.kind === 'vulgar') {
    reader.at += 1;
    return { n: first.value, whole: false };
  }
  if (first.kind !== 'number') return stopAtToken(reader, 'a number was expected');
  const mixed = mixedAt(reader.tokens, reader.at);
  if (mixed !== undefined) {
    if (mixed.fault !== undefined) return stop(reader, mixed.fault.at, mixed.fault.why);
    reader.at = mixed.next;
    return { n: first.value + mixed.part, whole: false };
  }
  const slash = tokenAt(reader.tokens, reader.at + 1);
  const below = tokenAt(reader.tokens, reader.at + 2);
  const after = tokenAt(reader.tokens, reader.at + 3);
  const fraction =
    isSign(slash, '/') &&
    below.kind === 'number' &&
    mixedAt(reader.tokens, reader.at + 2) === undefined &&
    ((first.whole && below.whole) || after.kind === 'unit');
  if (fraction) {
    if (below.value === 0) return stop(reader, below.start, 'a division by zero');
    reader.at += 3;
    return { n: first.value / below.value, whole: false };
  }
  reader.at += 1;
  return { n: first.value, whole: first.whole };
}

interface MixedPart {
  readonly part: number;
  readonly next: number;
  readonly fault?: Fault;
}

// The fraction of a mixed number whose whole part stands at `at`: `1 3/8`, `1-3/8`, `1⅜`, `1 ⅜`, `1-⅜`.
function mixedAt(tokens: readonly Token[], at: number): MixedPart | undefined {
  const whole = tokenAt(tokens, at);
  if (whole.kind !== 'number' || !whole.whole) return undefined;
  const hyphenated = isTightHyphen(whole, tokenAt(tokens, at + 1), tokenAt(tokens, at + 2));
  const from = hyphenated ? at + 2 : at + 1;
  const above = tokenAt(tokens, from);
  if (above.kind === 'vulgar') return { part: above.value, next: from + 1 };
  const slash = tokenAt(tokens, from + 1);
  const below = tokenAt(tokens, from + 2);
  const isFraction =
    above.kind === 'number' &&
    above.whole &&
    below.kind === 'number' &&
    below.whole &&
    isSign(slash, '/') &&
    above.end === slash.start &&
    slash.end === below.start;
  if (!isFraction) return undefined;
  const proper = above.value < below.value;
  // 10-9/2 cannot be a mixed number, so it is the subtraction it looks like; 10 9/2 is neither.
  if (hyphenated && !proper) return undefined;
  const next = from + 3;
  if (below.value === 0) return { part: 0, next, fault: { at: below.start, why: 'a division by zero' } };
  if (!proper) {
    const why = 'the fraction of a mixed number must be less than one';
    return { part: 0, next, fault: { at: above.start, why } };
  }
  return { part: above.value / below.value, next };
}

function isTightHyphen(before: Token, hyphen: Token, after: Token): boolean {
  return hyphen.kind === 'sign' && hyphen.hyphen && before.end === hyphen.start && hyphen.end === after.start;
}

function tokenAt(tokens: readonly Token[], at: number): Token {
  return tokens[Math.min(at, tokens.length - 1)] ?? { kind: 'end', start: 0, end: 0 };
}

/** Stops at the token where the reader stands, for its own reason if it is one that means nothing. */
export function stopAtToken(reader: Reader, why: string): undefined {
  const token = here(reader);
  return stop(reader, token.start, token.kind === 'fault' ? token.why : why);
}

function add(reader: Reader, a: Value, b: Value, factor: 1 | -1, from: number): Value | undefined {
  if (a.kind === b.kind) return { kind: a.kind, n: a.n + factor * b.n };
  if (a.kind === 'amount' || b.kind === 'amount') {
    if (a.kind === 'ratio' || b.kind === 'ratio')
      return stop(reader, from, `a ${reader.what} and a plain ratio cannot be added`);
    reader.units.push(reader.bareUnit);
    return { kind: 'amount', n: inOwnUnit(a, reader) + factor * inOwnUnit(b, reader) };
  }
  return { kind: 'ratio', n: a.n + factor * b.n };
}

function inOwnUnit(value: Value, reader: Reader): number {
  return value.kind === 'bare' ? value.n * reader.bareUnit.factor : value.n;
}

function multiply(reader: Reader, a: Value, b: Value, from: number): Value | undefined {
  if (a.kind === 'amount' && b.kind === 'amount')
    return stop(reader, from, `a ${reader.what} times a ${reader.what} is not a ${reader.what}`);
  const kind =
    a.kind === 'amount' || b.kind === 'amount'
      ? 'amount'
      : a.kind === 'ratio' || b.kind === 'ratio'
        ? 'ratio'
        : 'bare';
  return { kind, n: a.n * b.n };
}

function divide(reader: Reader, a: Value, b: Value, from: number): Value | undefined {
  if (b.n === 0) return stop(reader, from, 'a division by zero');
  if (b.kind === 'amount') {
    if (a.kind === 'amount') return { kind: 'ratio', n: a.n / b.n };
    return stop(reader, from, `a number divided by a ${reader.what} is not a ${reader.what}`);
  }
  const kind = a.kind === 'bare' && b.kind === 'ratio' ? 'ratio' : a.kind;
  return { kind, n: a.n / b.n };
}
