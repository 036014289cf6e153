// Reads and writes times: seconds, milliseconds, and clock times such as 1:30.
import { readPlain } from './amount.js';
import type { Quantity } from './amount.js';
import { writeDecimal } from './decimals.js';
import { tellProblem } from './problem.js';
import { compileSpellings } from './tokens.js';
import type { UnitRecord } from './tokens.js';
import type { Reading } from './types.js';

const SECONDS_IN_HOUR = 3600;

const SECOND: UnitRecord = { name: 'seconds', factor: 1, spelled: ['s', 'sec', 'secs', 'second', 'seconds'] };

const MINUTE: UnitRecord = {
  name: 'minutes',
  factor: 60,
  spelled: ['min', 'mins', 'minute', 'minutes'],
  followedBy: { unit: SECOND, below: 60 },
};

const HOUR: UnitRecord = {
  name: 'hours',
  factor: SECONDS_IN_HOUR,
  spelled: ['h', 'hr', 'hrs', 'hour', 'hours'],
  followedBy: { unit: MINUTE, below: 60 },
};

const TIME: Quantity = {
  what: 'time',
  spellings: compileSpellings([
    SECOND,
    MINUTE,
    HOUR,
    { name: 'ms', factor: 0.001, spelled: ['ms', 'msec', 'millisecond', 'milliseconds'] },
  ]),
  most: 10_000 * SECONDS_IN_HOUR,
  mostSaid: '10 000 h',
  accepts: '0.5 s, 500 ms, 1:30, 1:02:30 or 1 min 30 s',
};

/**
 * Reads a time as typed; a bare number is in seconds, `1:30` is a minute and a half, `1:02:30` has hours.
 * @param input the text, or a number of seconds
 * @returns seconds, or the problem: not understood, negative, over 10 000 h
 * @example readTime('1:30') // 90
 */
export function readTime(input: string | number): Reading<number> {
  if (typeof input === 'string' && input.length <= 40) {
    const clock = /^\s*(\d+):(\d{1,2})(?::(\d{1,2}))?([.,]\d+)?\s*$/u.exec(input);
    if (clock !== null) return readClock(input, clock);
  }
  return readPlain(input, TIME, SECOND, false);
}

function readClock(typed: string, clock: RegExpExecArray): Reading<number> {
  const [, first = '', second = '', third, part = ''] = clock;
  const refuse = (at: number, why: string): Reading<number> => ({
    ok: false,
    problem: tellProblem(typed, { at, why }, TIME.accepts),
  });
  const afterFirst = typed.indexOf(':') + 1;
  for (const [field, at] of [
    [second, afterFirst],
    [third ?? '00', typed.lastIndexOf(':') + 1],
  ] as const) {
    if (field.length !== 2 || Number(field) > 59)
      return refuse(at, 'after a colon the field runs from 00 to 59');
  }
  const fraction = part === '' ? 0 : Number(`0.${part.slice(1)}`);
  const minutes = third === undefined ? Number(first) : Number(first) * 60 + Number(second);
  const seconds = minutes * 60 + Number(third ?? second) + fraction;
  return seconds > TIME.most
    ? refuse(typed.length, `more than ${TIME.mostSaid}`)
    : { ok: true, value: seconds };
}

/**
 * Writes a time in seconds, to three decimals unless told otherwise.
 * @throws RangeError if it is not finite
 * @example writeTime(90) // '90 s'
 */
export function writeTime(seconds: number, options: { readonly decimals?: number } = {}): string {
  return `${writeDecimal(seconds, options.decimals ?? 3)} s`;
}

/**
 * Writes a time as a clock shows it, to the nearest second: minutes and seconds, with hours from one hour on.
 * @throws RangeError if it is not finite
 * @example writeClock(90) // '1:30'
 * @example writeClock(3750) // '1:02:30'
 */
export function writeClock(seconds: number): string {
  if (!Number.isFinite(seconds)) throw new RangeError(`writeClock: ${seconds} is not a finite time`);
  const all = Math.round(Math.abs(seconds));
  const hours = Math.floor(all / SECONDS_IN_HOUR);
  const minutes = Math.floor((all % SECONDS_IN_HOUR) / 60);
  const rest = String(all % 60).padStart(2, '0');
  const sign = seconds < 0 && all > 0 ? '-' : '';
  return hours === 0
    ? `${sign}${minutes}:${rest}`
    : `${sign}${hours}:${String(minutes).padStart(2, '0')}:${rest}`;
}

/**
 * Writes a time both ways.
 * @throws RangeError if it is not finite
 * @example echoTime(90) // '90 s · 1:30'
 */
export function echoTime(seconds: number): string {
  return `${writeTime(seconds)} · ${writeClock(seconds)}`;
}
