// Notes on how a bolt circle was measured: its own ±, the pair that would give less, the nearest usual size.
import { bestReading, clearanceHole, usualNear, type BoltCircle, type Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { Tagged } from '../units/index.js';
import type { BoltPattern } from './bolt-holes.js';
import type { Facts } from './facts.js';
import { digits, found, judge, quantity } from './findings.js';

/** A caliper reading without a stated ± is taken as good to this, mm. */
const USUAL_READING = 0.1;

/** Sizes closer than a caliper tells apart are the same, mm. */
const SAME_SIZE = 0.01;
/** How near to a usual size a circle given as such must be to be worth a word, mm. */
const HAIR = 0.3;

const USUAL_SIZES: Source = {
  title: 'Usual bolt circles',
  where: 'common sizes of wheels, hubs and sprockets; suggested, never taken by itself',
  certainty: 'common practice',
};

/** How far the holes lie from an even pattern, when their centres were measured. */
function checkPlaces(pattern: BoltPattern, circle: BoltCircle, facts: Facts): readonly Finding[] {
  if (circle.holes === undefined || circle.holes.length === 0) return [];
  const worst = circle.holes.reduce((a, b) => (Math.abs(b.error) > Math.abs(a.error) ? b : a));
  const list = circle.holes
    .map(({ error }, index) => `${index + 1}: ${facts.format.length(error)}`)
    .join(', ');
  return [
    found({
      code: 'hole-places',
      level: circle.evenlySpaced ? 'note' : 'caution',
      field: `${pattern.fieldPrefix}boltCircle`,
      title: circle.evenlySpaced
        ? `Measured centres lie within ${facts.format.length(Math.abs(worst.error))} of an even circle`
        : `Odd clocking kept: holes up to ${facts.format.length(Math.abs(worst.error))} from even places`,
      says: `Least-squares circle ⌀${facts.format.length(circle.diameter)}; distance of each hole from its even place: ${list}.`,
      value: quantity(Math.abs(worst.error), 'mm'),
      source: circle.source,
    }),
  ];
}

/** The pair that would measure the circle best, said when another was measured. */
function checkPair(
  pattern: BoltPattern,
  circle: BoltCircle,
  readings: readonly Tagged[],
  facts: Facts,
): readonly Finding[] {
  const reading = readings[0];
  if (
    reading === undefined ||
    reading.way === 'circle' ||
    reading.way === 'centres' ||
    reading.way === 'from-bore'
  )
    return [];
  const step = reading.way === 'across' ? Math.floor(pattern.count / 2) : reading.step;
  const chord = Math.sin((Math.PI * step) / pattern.count);
  // The circle's own ± when it has one, so that this note never contradicts it; else a usual caliper reading's.
  const now = circle.plusMinus ?? USUAL_READING / chord;
  const best = bestReading(pattern.count, now * chord);
  const improves = now - best.plusMinus > 0.005;
  const stated =
    circle.plusMinus === undefined ? `a reading of ±${USUAL_READING} mm (no ± was given)` : `this ±`;
  return [
    found({
      code: 'better-pair',
      level: improves ? 'note' : 'pass',
      field: `${pattern.fieldPrefix}boltCircle`,
      title: improves
        ? `${best.way} would give the circle to ±${facts.format.length(best.plusMinus)} instead of ±${facts.format.length(now)}`
        : `This pair gives the smallest ±, ${facts.format.length(circle.plusMinus ?? best.plusMinus)}`,
      says: `With ${stated}: ${best.way} is the widest pair of ${pattern.count} holes; the error of the circle is the reading's divided by sin(180° k/n).`,
      value: quantity(now, 'mm'),
      limit: quantity(best.plusMinus, 'mm'),
      formula: `± ÷ sin(180° × ${best.step}/${pattern.count}) = ${digits(best.plusMinus, 3)}; here ÷ sin(180° × ${step}/${pattern.count}) = ${digits(now, 3)}`,
      source: circle.source,
    }),
  ];
}

function checkUsual(
  pattern: BoltPattern,
  circle: BoltCircle,
  readings: readonly Tagged[],
  facts: Facts,
): readonly Finding[] {
  const [near] = usualNear(circle.diameter, circle.plusMinus ?? 0);
  if (near === undefined || Math.abs(near.away) < SAME_SIZE) return [];
  // A circle given as such is a size that was chosen, unless it is a hair beside a usual one.
  if (readings[0]?.way === 'circle' && Math.abs(near.away) > HAIR) return [];
  return [
    found({
      code: 'usual-circle',
      level: 'note',
      field: `${pattern.fieldPrefix}boltCircle`,
      title: `Nearest usual circle ${near.circle.name}, ${facts.format.length(Math.abs(near.away))} ${near.away > 0 ? 'larger' : 'smaller'}`,
      says:
        circle.plusMinus === undefined
          ? 'No ± was given, so whether your reading reaches it cannot be said. Nothing was changed.'
          : near.within
            ? 'Your reading reaches it within its ±. Nothing was changed; take it if you know the part.'
            : 'Your reading does not reach it within its ±. Nothing was changed; measure again if you expected it.',
      value: quantity(circle.diameter, 'mm', circle.plusMinus),
      limit: quantity(near.circle.diameter, 'mm'),
      source: USUAL_SIZES,
      remedies: [
        {
          says: `Take ${near.circle.name}`,
          change: [
            {
              op: 'add',
              path: `/${pattern.fieldPrefix.replace('.', '/')}boltCircle`,
              value: `circle ${digits(near.circle.diameter, 4)} mm`,
            },
          ],
        },
      ],
    }),
  ];
}

/** Readings that contradict each other: past a bolt's play, whichever of them is right, the mean of them is not. */
function checkAgreement(pattern: BoltPattern, circle: BoltCircle, facts: Facts): readonly Finding[] {
  const hole = clearanceHole(pattern.thread, 'normal');
  if (!hole.found) return [];
  const play = hole.row.diameter - pattern.thread.diameter;
  const level = judge(['stop', circle.disagreement > play], ['caution', circle.disagreement > play / 2]);
  if (level === 'pass') return [];
  return [
    found({
      code: 'readings-disagree',
      level,
      field: `${pattern.fieldPrefix}boltCircle`,
      title: `The readings give circles ${facts.format.length(circle.disagreement)} apart`,
      says: `${pattern.thread.name} has ${facts.format.length(play)} of play in its hole. One of the readings, or the number of bolts, is wrong: measure again, and leave out the reading that was.`,
      value: quantity(circle.disagreement, 'mm'),
      limit: quantity(level === 'stop' ? play : play / 2, 'mm'),
      formula: `play ${digits(hole.row.diameter)} − ${digits(pattern.thread.diameter)} = ${digits(play)}; stop above it, caution above half of it`,
      source: hole.row.source,
    }),
  ];
}

/** All notes on one pattern's measuring. */
export function checkMeasuring(
  pattern: BoltPattern,
  circle: BoltCircle,
  readings: readonly Tagged[],
  facts: Facts,
): readonly Finding[] {
  return [
    ...checkAgreement(pattern, circle, facts),
    ...checkPlaces(pattern, circle, facts),
    ...checkPair(pattern, circle, readings, facts),
    ...checkUsual(pattern, circle, readings, facts),
    ...(circle.evenlySpaced ? circle.notes : []).map((says) =>
      found({
        code: 'measured-twice',
        level: 'note',
        field: `${pattern.fieldPrefix}boltCircle`,
        title: 'Readings of this pattern',
        says,
        source: circle.source,
      }),
    ),
  ];
}
