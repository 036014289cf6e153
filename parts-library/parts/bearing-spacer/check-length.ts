// The length of a bearing spacer: measured, not nominal; never shorter than the seats; parallel; scale off.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import {
  bearingSpacer,
  bearingSpacerExcess,
  bearingSpacerSource,
  nearestThickness,
} from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { Entry } from '../fields/index.js';
import type { BearingSpacer } from './parameters.js';
import { facesOf, seatsOf } from './sizes.js';

/** Readings that all fall on whole steps of this were not taken with a micrometer, mm and inches. */
const COARSE = { mm: 0.1, in: 0.254 } as const;
/** A reading this near to a stock thickness is that thickness, mm. */
const SAME = 0.005;
/** A stated ± of no more than this says that it was measured so, mm. */
const MEASURED = 0.01;
/** Faces further from parallel than this bend the races against each other, mm. */
const PARALLEL = 0.03;

const isMeasured = ({ plusMinus }: Entry): boolean => plusMinus !== undefined && plusMinus <= MEASURED;

const isWhole = (value: number, step: number): boolean => {
  const share = value / step;
  return Math.abs(share - Math.round(share)) < 1e-6;
};

/** Why readings look like a size on a label rather than like readings; undefined when they do not. */
export function looksNominal(readings: readonly Entry[], unit: 'mm' | 'in'): string | undefined {
  if (readings.every(isMeasured)) return undefined;
  const first = readings[0]?.mm ?? 0;
  const isSame = readings.every(({ mm }) => Math.abs(mm - first) < 1e-9);
  const stock = nearestThickness(first);
  if (isSame && stock !== undefined && Math.abs(stock.thickness - first) < SAME)
    return `all are ${stock.name}, as sold`;
  return readings.every(({ mm }) => isWhole(mm, COARSE[unit]))
    ? `all are whole ${unit === 'mm' ? 'tenths of a millimetre' : 'hundredths of an inch'}`
    : undefined;
}

function checkNominal(p: BearingSpacer, { format }: Facts): readonly Finding[] {
  const sets = [
    { field: 'face1', name: 'ring', why: looksNominal(facesOf(p), format.unit) },
    { field: 'seat1', name: 'seats', why: looksNominal(seatsOf(p), format.unit) },
  ];
  return sets.flatMap(({ field, name, why }) =>
    why === undefined
      ? []
      : [
          found({
            code: 'spacer-nominal',
            level: 'stop',
            field,
            title: `The ${name}: no readings, ${why}`,
            says: 'A spacer is made to micrometer readings; plate is seldom its nominal thickness and a seat seldom its drawing’s. Measure each place to a hundredth of a millimetre (a half thou). Where it truly is a round size everywhere, type it with its ±, for example 5.10 ±0.005.',
            source: bearingSpacerSource,
          }),
        ],
  );
}

/** The field of the shortest or longest reading. */
const fieldOf = (p: BearingSpacer, pick: 'min' | 'max'): string => {
  const faces = facesOf(p).map(({ mm }) => mm);
  return `face${faces.indexOf(Math[pick](...faces)) + 1}`;
};

function checkShortLong(p: BearingSpacer, { format }: Facts): readonly Finding[] {
  const seats = seatsOf(p);
  const faces = facesOf(p);
  const length = bearingSpacer(
    seats.map(({ mm }) => mm),
    faces.map(({ mm }) => mm),
  );
  if (length === undefined) return [];
  const { fine } = format;
  const { least, most, from, to } = length;
  const noise = 1e-9;
  const isShort = least < bearingSpacerExcess.least - noise;
  const isLong = most > bearingSpacerExcess.most + noise;
  const within = Math.max(...[...seats, ...faces].map(({ plusMinus }) => plusMinus ?? 0));
  const mayBeShort = !isShort && within > 0 && least - 2 * within < -noise;
  const wanted =
    from <= to
      ? `Every place is to lie between ${fine(from)} and ${fine(to)}.`
      : `The seats are more than ${fine(bearingSpacerExcess.most)} out of parallel: no ring suits them; true the seats first.`;
  const place = { anchor: { x: p.outside.mm / 2, y: 0 }, source: bearingSpacerSource } as const;
  return [
    found({
      ...place,
      code: 'spacer-short',
      level: judge(['stop', isShort], ['caution', mayBeShort]),
      field: fieldOf(p, 'min'),
      title: isShort
        ? `${fine(-least)} short: the bolt would load the bearings sideways`
        : mayBeShort
          ? `Longer than the seats by ${fine(least)}, less than the readings’ ±`
          : `Longer than the seats by ${fine(least)} at its shortest place`,
      says: isShort
        ? `Tightened, the inner races are drawn together until the balls carry the bolt: they run hot and fail. ${wanted} A thicker plate, or a shim of at least ${fine(-least)} on the inner race.`
        : wanted,
      value: quantity(least, 'mm', ...(within > 0 ? [2 * within] : [])),
      limit: quantity(bearingSpacerExcess.least, 'mm'),
      formula: `shortest ${digits(from + least, 4)} − widest seat ${digits(from, 4)} = ${digits(least, 4)}`,
    }),
    found({
      ...place,
      code: 'spacer-long',
      level: judge(['caution', isLong]),
      field: fieldOf(p, 'max'),
      title: isLong
        ? `${fine(most)} longer than the seats, ${fine(bearingSpacerExcess.most)} at most`
        : `No place is more than ${fine(most)} longer than the seats`,
      says: isLong
        ? `The outer races are left loose between their seats. ${wanted}${from <= to ? ` Take ${fine(most - bearingSpacerExcess.most)} off its longest place, lapped on glass or surface ground.` : ''}`
        : `At most ${fine(bearingSpacerExcess.most)}.`,
      value: quantity(most, 'mm'),
      limit: quantity(bearingSpacerExcess.most, 'mm'),
      formula: `longest ${digits(to - bearingSpacerExcess.most + most, 4)} − narrowest seat ${digits(to - bearingSpacerExcess.most, 4)} = ${digits(most, 4)}`,
    }),
    found({
      ...place,
      code: 'spacer-parallel',
      level: judge(['caution', length.spread > PARALLEL + noise]),
      field: fieldOf(p, 'max'),
      title: `Faces parallel within ${fine(length.spread)}, ${fine(PARALLEL)} wanted`,
      says:
        length.spread > PARALLEL + noise
          ? 'Drawn up, it tips one race against the other. Grind or lap both faces, and measure again.'
          : 'Longest less shortest of the four places.',
      value: quantity(length.spread, 'mm'),
      limit: quantity(PARALLEL, 'mm'),
      source: { ...bearingSpacerSource, where: `${bearingSpacerSource.where}; ${PARALLEL} mm is ours` },
    }),
  ];
}

function checkFaces(p: BearingSpacer): readonly Finding[] {
  if (p.faces !== 'as-rolled') return [];
  return [
    found({
      code: 'spacer-scale',
      level: 'stop',
      field: 'faces',
      title: 'Scale on the faces: what was measured will crush',
      says: 'Mill scale is some hundredths thick, cracks under the bolt and works into the bearing. Take it off both faces, then measure again.',
      source: bearingSpacerSource,
    }),
  ];
}

/** All that concerns the length. */
export function checkLength(p: BearingSpacer, facts: Facts): readonly Finding[] {
  return [...checkNominal(p, facts), ...checkFaces(p), ...checkShortLong(p, facts)];
}
