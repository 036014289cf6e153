// Each way of measuring a pattern turned into a circle; readings of one pair of holes are averaged here.

import type { Measure, Size, Tagged } from '../units/index.js';
import type { Contribution, Estimate } from './bolt-circle-combine.js';
import { fromCentres } from './bolt-circle-centres.js';
import type { Seated } from './bolt-circle-centres.js';
import { refuse, to } from './bolt-circle-problem.js';
import type { BoltCircleProblem, Outcome } from './bolt-circle-problem.js';

export interface ReadEstimates {
  readonly estimates: readonly Estimate[];
  readonly seated?: Seated;
  readonly holeDiameter?: number;
  readonly notes: readonly string[];
}

/** Centre distance of one pair of holes as one reading gives it. */
interface PairReading {
  readonly index: number;
  readonly step: number;
  readonly side: 'centres' | 'near' | 'far';
  readonly distance: number;
  readonly plusMinus?: number;
  readonly hole?: Size;
}

const positive = (value: number): boolean => Number.isFinite(value) && value > 0;
const badLimit = (limit: number | undefined): boolean =>
  limit !== undefined && !(Number.isFinite(limit) && limit >= 0);
const badSize = (size: Size): boolean => !positive(size.mm) || badLimit(size.plusMinus);
const pairName = (count: number, step: number): string =>
  step * 2 === count ? 'opposite holes' : step === 1 ? 'neighbouring holes' : `holes ${step} apart`;

/** Turn readings into circles, one per pair and way. */
export function estimatesOf(measure: Measure, count: number): Outcome<ReadEstimates> {
  if (!Number.isInteger(count) || count < 2) {
    return refuse('count', `A bolt circle needs two holes or more, in whole numbers; ${count} will not do.`);
  }
  if (measure.readings.length === 0) {
    return refuse(
      'readings',
      'Nothing was measured: give the circle, a distance between holes, or hole centres.',
    );
  }
  const estimates: Estimate[] = [];
  const pairs: PairReading[] = [];
  const notes: string[] = [];
  let seated: Seated | undefined;
  for (const [index, reading] of measure.readings.entries()) {
    const fault = faultOf(reading, index, count);
    if (fault !== undefined) return { ok: false, problem: fault };
    if (reading.way === 'circle') estimates.push(fromCircle(reading.diameter, reading.plusMinus));
    else if (reading.way === 'from-bore') estimates.push(fromBore(reading));
    else if (reading.way === 'centres') {
      const fit = fromCentres(reading, index, count);
      if (!fit.ok) return fit;
      estimates.push(fit.value.estimate);
      seated = fit.value.seated;
      notes.push(...fit.value.notes);
    } else pairs.push(pairOf(reading, index, count));
  }
  let holeDiameter: number | undefined;
  for (const step of [...new Set(pairs.map((pair) => pair.step))].toSorted(
    (first, second) => first - second,
  )) {
    const pair = fromPair(
      pairs.filter((reading) => reading.step === step),
      count,
      step,
    );
    if (!pair.ok) return pair;
    estimates.push(...pair.value.estimates);
    holeDiameter ??= pair.value.holeDiameter;
    notes.push(...pair.value.notes);
  }
  return {
    ok: true,
    value: {
      estimates,
      ...(seated === undefined ? {} : { seated }),
      ...(holeDiameter === undefined ? {} : { holeDiameter }),
      notes,
    },
  };
}

function faultOf(reading: Tagged, index: number, count: number): BoltCircleProblem | undefined {
  const field = (name: string): string => `readings.${index}.${name}`;
  if (badLimit(reading.plusMinus)) {
    return {
      field: field('plusMinus'),
      says: `A ± of ${reading.plusMinus} cannot be; give zero or more, or leave it out.`,
    };
  }
  if (reading.way === 'centres') return undefined;
  if (reading.way === 'circle') {
    return positive(reading.diameter)
      ? undefined
      : { field: field('diameter'), says: `A bolt circle of ${reading.diameter} mm cannot be.` };
  }
  if (!positive(reading.distance)) {
    return { field: field('distance'), says: `A distance of ${reading.distance} mm cannot be measured.` };
  }
  if ('hole' in reading && reading.hole !== undefined && badSize(reading.hole)) {
    return { field: field('hole'), says: 'A hole size is more than zero, and its ± zero or more.' };
  }
  if (reading.way === 'from-bore' && badSize(reading.bore)) {
    return { field: field('bore'), says: 'A bore is more than zero, and its ± zero or more.' };
  }
  if (reading.way === 'across' && count % 2 === 1) {
    return {
      field: field('way'),
      says: `${count} holes have none opposite each other; measure the widest pair, ${Math.floor(count / 2)} holes apart.`,
    };
  }
  if (
    (reading.way === 'steps' || reading.way === 'edges') &&
    (!Number.isInteger(reading.step) || reading.step < 1 || reading.step >= count)
  ) {
    return {
      field: field('step'),
      says: `Among ${count} holes two can be 1 to ${Math.floor(count / 2)} steps apart, not ${reading.step}.`,
    };
  }
  return undefined;
}

function fromCircle(diameter: number, plusMinus: number | undefined): Estimate {
  const what = 'bolt circle as given';
  return { what, diameter, ...(plusMinus === undefined ? {} : { parts: [{ what, plusMinus }] }) };
}

/** D = bore + 2 × (bore edge to hole's near edge) + hole. */
function fromBore(reading: Extract<Tagged, { way: 'from-bore' }>): Estimate {
  const { distance, plusMinus, bore, hole } = reading;
  const what = 'bore edge to hole edge';
  const estimate = { what, diameter: bore.mm + 2 * distance + hole.mm };
  if (plusMinus === undefined || bore.plusMinus === undefined || hole.plusMinus === undefined)
    return estimate;
  return {
    ...estimate,
    parts: [
      { what: `${what}, counted twice`, plusMinus: 2 * plusMinus },
      { what: 'bore', plusMinus: bore.plusMinus },
      { what: 'hole size', plusMinus: hole.plusMinus },
    ],
  };
}

function pairOf(
  reading: Extract<Tagged, { way: 'steps' | 'edges' | 'across' }>,
  index: number,
  count: number,
): PairReading {
  const step = reading.way === 'across' ? count / 2 : Math.min(reading.step, count - reading.step);
  const hole = reading.way === 'steps' ? undefined : reading.hole;
  return {
    index,
    step,
    side: reading.way === 'steps' ? 'centres' : reading.side,
    distance: reading.distance,
    ...(reading.plusMinus === undefined ? {} : { plusMinus: reading.plusMinus }),
    ...(hole === undefined ? {} : { hole }),
  };
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Mean of limits, or undefined when one is missing. */
function meanLimit(limits: readonly (number | undefined)[]): number | undefined {
  const given = limits.filter((limit) => limit !== undefined);
  return given.length < limits.length ? undefined : mean(given);
}

interface PairEstimates {
  readonly estimates: readonly Estimate[];
  readonly holeDiameter?: number;
  readonly notes: readonly string[];
}

/** One pair of holes measured one way or several: centre to centre, and edge to edge. */
function fromPair(readings: readonly PairReading[], count: number, step: number): Outcome<PairEstimates> {
  const factor = 1 / Math.sin((Math.PI * step) / count);
  const name = pairName(count, step);
  const estimates: Estimate[] = [];
  const centres = readings.filter(({ side }) => side === 'centres');
  const near = readings.filter(({ side }) => side === 'near');
  const far = readings.filter(({ side }) => side === 'far');
  const add = (
    what: string,
    distance: number,
    parts: readonly (readonly [string, number | undefined])[],
  ): void => {
    const contributions = parts.flatMap(([part, limit]): readonly Contribution[] =>
      limit === undefined ? [] : [{ what: part, plusMinus: limit * factor }],
    );
    const whole = contributions.length === parts.length;
    estimates.push({ what, diameter: distance * factor, ...(whole ? { parts: contributions } : {}) });
  };
  if (centres.length > 0) {
    const what = `${name}, centre to centre`;
    add(what, mean(centres.map(({ distance }) => distance)), [
      [what, meanLimit(centres.map(({ plusMinus }) => plusMinus))],
    ]);
  }
  if (near.length > 0 && far.length > 0) return bothSides(near, far, name, add, estimates);
  for (const { index, side, distance, plusMinus, hole } of [...near, ...far]) {
    if (hole === undefined) {
      const other = side === 'near' ? 'far' : 'near';
      return refuse(
        `readings.${index}.hole`,
        `Between ${side} edges the hole size is needed; or measure the ${other} edges of the same pair too.`,
      );
    }
    const apart = side === 'near' ? distance + hole.mm : distance - hole.mm;
    if (apart <= hole.mm) {
      return refuse(
        `readings.${index}.hole`,
        `${to(distance)} mm over the far edges of two ${to(hole.mm)} mm holes leaves them overlapping; check both.`,
      );
    }
    add(`${name}, ${side} edges`, apart, [
      [`${name}, ${side} edges`, plusMinus],
      ['hole size', hole.plusMinus],
    ]);
  }
  return { ok: true, value: { estimates, notes: [] } };
}

const half = (limit: number | undefined): number | undefined => (limit === undefined ? undefined : limit / 2);

/** Inside and outside of one pair: their mean is the centre distance, half their difference the hole. */
function bothSides(
  near: readonly PairReading[],
  far: readonly PairReading[],
  name: string,
  add: (what: string, distance: number, parts: readonly (readonly [string, number | undefined])[]) => void,
  estimates: readonly Estimate[],
): Outcome<PairEstimates> {
  const inside = mean(near.map(({ distance }) => distance));
  const outside = mean(far.map(({ distance }) => distance));
  const first = far[0];
  if (outside <= inside) {
    return refuse(
      `readings.${first?.index ?? 0}.distance`,
      `Over the far edges (${to(outside)}) must be more than between the near ones (${to(inside)}).`,
    );
  }
  const nearLimit = meanLimit(near.map(({ plusMinus }) => plusMinus));
  const farLimit = meanLimit(far.map(({ plusMinus }) => plusMinus));
  add(`${name}, inside and outside`, (inside + outside) / 2, [
    [`${name}, near edges, half`, half(nearLimit)],
    [`${name}, far edges, half`, half(farLimit)],
  ]);
  const holeDiameter = (outside - inside) / 2;
  const stated = [...near, ...far].find(({ hole }) => hole !== undefined)?.hole;
  const allowed = ((nearLimit ?? 0) + (farLimit ?? 0)) / 2 + (stated?.plusMinus ?? 0) + 0.05;
  const notes =
    stated !== undefined && Math.abs(stated.mm - holeDiameter) > allowed
      ? [
          `Inside and outside of the ${name} make the hole ${to(holeDiameter)} mm, not ${to(stated.mm)}; it cancels here, but look again.`,
        ]
      : [];
  return { ok: true, value: { estimates, holeDiameter, notes } };
}
