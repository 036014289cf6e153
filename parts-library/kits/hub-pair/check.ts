// What is found about the pair as a whole: what is faced off each plate, sides alike, what a wider track does.
import { digits, found, judge, quantity } from '../../checks/index.js';
import type { Source } from '../../handbook/index.js';
import type { Finding, Format } from '../../model/index.js';
import type { HubPairNumbers } from './numbers.js';
import { facingOf, SIDES, wideningOf, type Side } from './track.js';

/** Least and most that is faced off one side of a plate, mm: under the scale to clean metal; more is another plate. */
const LEAST_FACING = 0.3;
const MOST_FACING = 5;
/** Sides that differ by more are told, mm. */
const ALIKE = 0.5;

const FACING: Source = {
  title: 'Facing cut plate',
  where: 'scale and lean of a cut plate are faced off both sides, 0.3 mm or more each',
  certainty: 'common practice',
};
const TRACK: Source = {
  title: 'Wheels moved out on an axle',
  where: 'load on the bearings and scrub at the steering grow with what is put under a wheel',
  certainty: 'common practice',
};

const fieldOf = (side: Side): 'widenLeft' | 'widenRight' => (side === 'left' ? 'widenLeft' : 'widenRight');

/** Whether a plate becomes as thick as its side asks. */
export const isFaced = (n: HubPairNumbers, side: Side): boolean => {
  const facing = facingOf(n, side);
  return facing >= LEAST_FACING - 1e-9 && facing <= MOST_FACING + 1e-9;
};

function checkFacing(n: HubPairNumbers, side: Side, { length }: Format): Finding {
  const facing = facingOf(n, side);
  const widening = wideningOf(n, side);
  return found({
    code: 'facing',
    level: judge(['stop', !isFaced(n, side)]),
    field: (side === 'left' ? n.widenLeft : n.widenRight) === undefined ? 'thickness' : fieldOf(side),
    title:
      facing < LEAST_FACING - 1e-9
        ? `Plate of ${length(n.thickness.mm)} is too thin for ${length(widening)} on the ${side}`
        : `${length(facing)} is faced off each side of the ${side} adapter`,
    says: isFaced(n, side)
      ? 'The seat is what remains, the spigot stands on it.'
      : `Between ${length(LEAST_FACING)} and ${length(MOST_FACING)} can be faced off each side: a plate of about ${length(widening + n.spigot.mm + 2)}, or another widening would do.`,
    value: quantity(facing, 'mm'),
    limit: quantity(facing > MOST_FACING ? MOST_FACING : LEAST_FACING, 'mm'),
    formula: `(${digits(n.thickness.mm)} − ${digits(n.spigot.mm)} − ${digits(widening)}) ÷ 2 = ${digits(facing)}`,
    source: FACING,
  });
}

function checkSides(n: HubPairNumbers, { length }: Format): Finding {
  const [left, right] = [wideningOf(n, 'left'), wideningOf(n, 'right')];
  const apart = Math.abs(left - right);
  return found({
    code: 'sides',
    level: judge(['caution', apart > ALIKE]),
    field: left > right ? 'widenLeft' : 'widenRight',
    title: apart > ALIKE ? `The sides differ by ${length(apart)}` : 'Both wheels move out alike',
    says:
      apart > ALIKE
        ? 'The axle’s middle is no longer the track’s: brakes pull to one side, and each plate goes to its own hub. Mark them.'
        : 'The axle stays in the middle of the track.',
    value: quantity(apart, 'mm'),
    limit: quantity(ALIKE, 'mm'),
    formula: `|${digits(left)} − ${digits(right)}| = ${digits(apart)}`,
    source: TRACK,
  });
}

const widerTrack = (n: HubPairNumbers, { length }: Format): Finding => {
  const widest = Math.max(wideningOf(n, 'left'), wideningOf(n, 'right'));
  return found({
    code: 'track',
    level: 'note',
    field: 'track',
    title: `Each wheel stands up to ${length(widest)} further from its bearings`,
    says: 'Bearings and axle end carry its load on that longer arm; on a steered axle the scrub radius grows as much. See that tyres clear body and gates at full lock and full bump.',
    value: quantity(widest, 'mm'),
    source: TRACK,
  });
};

export const checkHubPair = (n: HubPairNumbers, format: Format): readonly Finding[] => [
  ...SIDES.map((side) => checkFacing(n, side, format)),
  checkSides(n, format),
  widerTrack(n, format),
];
