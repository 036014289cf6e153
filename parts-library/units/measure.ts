// Reads how a bolt pattern was measured: one tagged grammar for the page, the command line, the API and files.
import { readCentres } from './measure-centres.js';
import { MOST_STEPS, NOTHING, readClauses } from './measure-clauses.js';
import type { Clauses, ClauseName } from './measure-clauses.js';
import type { Outcome } from './amount.js';
import { readLength } from './length.js';
import { MEASURE_WAYS } from './measure-types.js';
import type { Measure, Tagged } from './measure-types.js';
import { tellProblem } from './problem.js';
import type { Reading, Unit } from './types.js';

const LONGEST_MEASURE = 20_000;
const MOST_READINGS = 64;

const ACCEPTS = MEASURE_WAYS.map((way) => way.example).join(' | ');

/** A stretch of the typed text. */
interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** What goes with a tag: its clauses, and the reading they make, or the clause that is missing for it. */
interface Tag {
  readonly clauses: readonly ClauseName[];
  readonly make: (clauses: Clauses) => Tagged | ClauseName;
}

/**
 * Reads a measured pattern.
 *
 *     measure  = reading { ';' reading }
 *     reading  = ['circle'] length
 *              | ('adjacent' | 'every-2nd' | 'every-3rd' | …) length
 *              | ('near-edges' | 'far-edges') length ['hole' length] ['step' k]
 *              | 'across' ['near-edges' | 'far-edges'] length ['hole' length]
 *              | 'from-bore' length 'bore' length 'hole' length
 *              | 'centres' point point point {point} ['±' length | unit]
 *     point    = '(' length (',' | ';') length ')'
 *
 * Lengths are those of `readLength`. The hole may be left out when both edges of the same pair are given.
 * Inside a point one comma parts x from y and the decimal mark is a point; with `;` between them a decimal comma
 * is read too. A unit after the list holds for the bare coordinates.
 * @param input the text, or a number of mm: the circle's diameter
 * @returns the readings in mm, or the problem. Whether they fit a pattern is for the handbook to say.
 * @example readMeasure('every-2nd 90.35', { unit: 'mm' }) // readings: [{ way: 'steps', step: 2, distance: 90.35 }]
 */
export function readMeasure(input: string | number, options: { readonly unit: Unit }): Reading<Measure> {
  if (typeof input === 'number') return readCircle(input);
  const typed = input;
  const refuse = (at: number, why: string): Reading<Measure> => ({
    ok: false,
    problem: tellProblem(typed, { at, why }, ACCEPTS),
  });
  if (typed.trim() === '') return refuse(typed.length, 'no measure was typed');
  if (typed.length > LONGEST_MEASURE) return refuse(0, `longer than ${LONGEST_MEASURE} characters`);
  const stretches = splitReadings(typed);
  if (stretches.length > MOST_READINGS) return refuse(0, `more than ${MOST_READINGS} readings`);
  const readings: Tagged[] = [];
  for (const stretch of stretches) {
    const outcome = readTagged(typed, stretch, options.unit);
    if (!outcome.ok) return refuse(outcome.fault.at, outcome.fault.why);
    readings.push(outcome.value);
  }
  for (const [index, reading] of readings.entries()) {
    const end = stretches[index]?.end ?? typed.length;
    if (lacksHole(reading, readings)) return refuse(end, holeAdvice(reading));
  }
  return { ok: true, value: { typed, readings } };
}

function readCircle(diameter: number): Reading<Measure> {
  const reading = readLength(diameter, { unit: 'mm' });
  if (!reading.ok) return { ok: false, problem: { ...reading.problem, accepts: ACCEPTS } };
  const { typed, mm } = reading.value;
  if (mm === 0)
    return { ok: false, problem: tellProblem(typed, { at: typed.length, why: NOTHING }, ACCEPTS) };
  return { ok: true, value: { typed, readings: [{ way: 'circle', diameter: mm }] } };
}

// Readings are parted by `;` outside brackets; a last empty one (a closing `;`) is let go.
function splitReadings(typed: string): readonly Stretch[] {
  const stretches: Stretch[] = [];
  let depth = 0;
  let start = 0;
  for (let at = 0; at < typed.length; at += 1) {
    const character = typed.charAt(at);
    if (character === '(') depth += 1;
    if (character === ')') depth = Math.max(0, depth - 1);
    if (character === ';' && depth === 0) {
      stretches.push({ start, end: at });
      start = at + 1;
    }
  }
  if (stretches.length === 0 || typed.slice(start).trim() !== '')
    stretches.push({ start, end: typed.length });
  return stretches;
}

function readTagged(typed: string, stretch: Stretch, unit: Unit): Outcome<Tagged> {
  const { end } = stretch;
  const blanks = typed.slice(stretch.start, end).search(/\S/u);
  if (blanks < 0) return { ok: false, fault: { at: stretch.start, why: 'a reading was expected before it' } };
  const start = stretch.start + blanks;
  const word = /^\p{L}[\p{L}\p{N}]*(?:-[\p{L}\p{N}]+)*/u.exec(
    typed.slice(start, Math.min(end, start + 64)),
  )?.[0];
  if (word === undefined) return readSimple(typed, start, end, unit, CIRCLE);
  const after = start + word.length;
  const name = word.toLowerCase();
  if (name === 'centres' || name === 'centers') return readCentres(typed, after, end, unit);
  if (name === 'across') return readAcross(typed, after, end, unit);
  const tag = TAGS.get(name) ?? stepsTag(name);
  if (typeof tag === 'string') return { ok: false, fault: { at: start, why: tag } };
  return readSimple(typed, after, end, unit, tag);
}

function readAcross(typed: string, start: number, end: number, unit: Unit): Outcome<Tagged> {
  const side = /^\s*(near|far)-edges(?![\p{L}\p{N}-])/iu.exec(typed.slice(start, Math.min(end, start + 64)));
  if (side === null) return readSimple(typed, start, end, unit, acrossTag('centres'));
  const tag = acrossTag(side[1]?.toLowerCase() === 'near' ? 'near' : 'far');
  return readSimple(typed, start + side[0].length, end, unit, tag);
}

function readSimple(typed: string, start: number, end: number, unit: Unit, tag: Tag): Outcome<Tagged> {
  const outcome = readClauses(typed, start, end, unit, tag.clauses);
  if (!outcome.ok) return outcome;
  const made = tag.make(outcome.value);
  if (typeof made !== 'string') return { ok: true, value: made };
  const why = `'${made}' and its size must follow, as in ${made} ${made === 'bore' ? '57.15' : '8.5'}`;
  return { ok: false, fault: { at: end, why } };
}

const CIRCLE: Tag = {
  clauses: [],
  make: ({ distance: { mm, ...rest } }) => ({ way: 'circle', diameter: mm, ...rest }),
};

const TAGS: ReadonlyMap<string, Tag> = new Map([
  ['circle', CIRCLE],
  ['adjacent', distanceTag(1)],
  ['near-edges', edgesTag('near')],
  ['far-edges', edgesTag('far')],
  ['from-bore', fromBoreTag()],
]);

function fromBoreTag(): Tag {
  return {
    clauses: ['bore', 'hole'],
    make: ({ distance: { mm, ...rest }, bore, hole }) => {
      if (bore === undefined) return 'bore';
      return hole === undefined ? 'hole' : { way: 'from-bore', distance: mm, ...rest, bore, hole };
    },
  };
}

function distanceTag(step: number): Tag {
  return {
    clauses: [],
    make: ({ distance: { mm, ...rest } }) => ({ way: 'steps', step, distance: mm, ...rest }),
  };
}

// every-2nd, every-3rd, every-4th …; the reason as text when it is none of them.
function stepsTag(name: string): Tag | string {
  const step = /^every-(\d{1,9})(?:st|nd|rd|th)?$/u.exec(name)?.[1];
  if (step === undefined) return 'not a way of measuring a pattern';
  if (Number(step) === 1) return `holes one step apart are 'adjacent'`;
  if (Number(step) < 1 || Number(step) > MOST_STEPS) return `steps run from 2 to ${MOST_STEPS}`;
  return distanceTag(Number(step));
}

function edgesTag(side: 'near' | 'far'): Tag {
  return {
    clauses: ['hole', 'step'],
    make: ({ distance: { mm, ...rest }, hole, step = 1 }) => ({
      way: 'edges',
      side,
      step,
      distance: mm,
      ...rest,
      ...(hole === undefined ? {} : { hole }),
    }),
  };
}

function acrossTag(side: 'centres' | 'near' | 'far'): Tag {
  return {
    clauses: side === 'centres' ? [] : ['hole'],
    make: ({ distance: { mm, ...rest }, hole }) => ({
      way: 'across',
      side,
      distance: mm,
      ...rest,
      ...(hole === undefined ? {} : { hole }),
    }),
  };
}

// An edge reading without its hole stands only beside the other edges of the same pair.
function lacksHole(reading: Tagged, readings: readonly Tagged[]): boolean {
  if (reading.way === 'edges') {
    const { side, step, hole } = reading;
    return (
      hole === undefined &&
      !readings.some((other) => other.way === 'edges' && other.step === step && other.side !== side)
    );
  }
  if (reading.way === 'across' && reading.side !== 'centres') {
    const other = reading.side === 'near' ? 'far' : 'near';
    return (
      reading.hole === undefined && !readings.some((pair) => pair.way === 'across' && pair.side === other)
    );
  }
  return false;
}

function holeAdvice(reading: Tagged): string {
  const near = 'side' in reading && reading.side === 'near';
  return `${near ? 'near' : 'far'} edges alone need the hole size, so add it, as in hole 8.5, or give the ${near ? 'far' : 'near'} edges of the same pair too`;
}
