// What is found about the set as a whole: the stack in the opening, the two pairs beside each other, pads, tubes on bolts.
import { digits, found, judge, quantity } from '../../checks/index.js';
import { findThread, type Source } from '../../handbook/index.js';
import type { Finding, Format } from '../../model/index.js';
import type { PedalSetNumbers } from './numbers.js';
import type { PedalStack } from './stack.js';

/** Least room on both sides together: rails are not parallel, paint has a thickness. More than the most is wasted. mm */
const LEAST_CLEARANCE = 4;
const MOST_CLEARANCE = 40;
/** Free between two pads, mm: less, and one shoe presses both. */
const PAD_ROOM = 40;
/** A tube this much larger than its bolt rocks; mm on diameter. */
const LOOSE = 0.5;
/** More than this to ream out of a tube is another tube; mm on diameter. */
const MOST_TO_REAM = 0.6;

const ARITHMETIC: Source = {
  title: 'Arithmetic',
  where: 'standoffs, tubes, play and what reaches beside them, against the opening',
  certainty: 'common practice',
};
const PADS: Source = {
  title: 'Pedals beside each other',
  where: 'about 40 to 75 mm free between brake and throttle, so that one shoe does not press both',
  certainty: 'from memory',
};
const FIT: Source = {
  title: 'Pivot tubes on bolts',
  where: 'reamed or honed after welding until the bolt turns freely; half a millimetre of play rocks',
  certainty: 'common practice',
};

/** Each piece of the stack from rail to rail, for a formula. */
export const stackWords = (s: PedalStack): string =>
  `${digits(s.left)} + ${digits(s.pair)} + ${digits(s.between)} + ${digits(s.pair)} + ${digits(s.right)} = ${digits(s.total)}`;

function checkOpening(n: PedalSetNumbers, s: PedalStack, { length }: Format): Finding {
  const isTight = s.leastClearance < LEAST_CLEARANCE;
  const level = judge(['stop', s.leastClearance < 0], ['caution', isTight || s.clearance > MOST_CLEARANCE]);
  return found({
    code: 'opening',
    level,
    field: 'opening',
    title:
      s.leastClearance < 0
        ? `The stack of ${length(s.total)} does not go into the opening`
        : `${length(s.clearance)} left of the opening, ${length(s.clearance / 2)} to each rail`,
    says:
      level === 'pass'
        ? 'Feet, base and pads are counted as far as they reach.'
        : isTight
          ? 'Shorter pivot tubes or feet, thinner standoffs, or less between the pairs would do.'
          : `Longer pivot tubes guide the pads better: ${length(s.tube + (s.clearance - LEAST_CLEARANCE) / 2)} each would still go in. Or set the pairs further apart.`,
    value: quantity(s.clearance, 'mm', n.opening.plusMinus),
    limit: quantity(s.clearance > MOST_CLEARANCE ? MOST_CLEARANCE : LEAST_CLEARANCE, 'mm'),
    formula: `${digits(n.opening.mm)}${n.opening.plusMinus === undefined ? '' : ` ± ${digits(n.opening.plusMinus)}`} − (${stackWords(s)}) = ${digits(s.clearance)}`,
    source: ARITHMETIC,
  });
}

function checkBetween(s: PedalStack, { length }: Format): Finding {
  const room = s.between - s.betweenLeast;
  return found({
    code: 'between',
    level: judge(['stop', room < 0]),
    field: 'between',
    title:
      room < 0
        ? `Feet and base overlap by ${length(-room)} between the pairs`
        : `${length(room)} free between the pairs`,
    says: 'From the brake’s base or foot to the throttle’s standoff or foot. A wider set, or welded standoffs would make room.',
    value: quantity(room, 'mm'),
    limit: quantity(0, 'mm'),
    formula: `${digits(s.between)} − ${digits(s.betweenLeast)} = ${digits(room)}`,
    source: ARITHMETIC,
  });
}

function checkPads(n: PedalSetNumbers, s: PedalStack, { length }: Format): Finding {
  return found({
    code: 'pads',
    level: judge(['stop', s.padRoom <= 0], ['caution', s.padRoom < PAD_ROOM]),
    field: s.padRoom < PAD_ROOM ? 'padWidth' : 'between',
    title:
      s.padRoom <= 0
        ? `The pads overlap by ${length(-s.padRoom)}`
        : `${length(s.padRoom)} free between the pads, ${length(PAD_ROOM)} wanted`,
    says:
      s.padRoom < PAD_ROOM
        ? 'One shoe presses both. Narrower pads, pads spread by a joggle, or pairs further apart would do.'
        : 'Try it with the boots that are worn.',
    value: quantity(s.padRoom, 'mm'),
    limit: quantity(PAD_ROOM, 'mm'),
    formula: `arms ${digits(s.pitch)} apart, pads ${digits(n.padWidth.mm)} wide: ${digits(s.padRoom)}`,
    source: PADS,
  });
}

function checkTube(n: PedalSetNumbers, { length }: Format): readonly Finding[] {
  const thread = findThread(n.pivotBolt);
  if (!thread.found) return [];
  const inside = n.tubeOutside.mm - 2 * n.tubeWall.mm;
  const play = inside - thread.row.diameter;
  const level = judge(['stop', play < -MOST_TO_REAM], ['caution', play > LOOSE], ['note', play <= 0]);
  const says = {
    stop: 'The bolt does not go through. A thinner wall or a smaller bolt would do.',
    caution: 'The pedal rocks on its bolt. A thicker wall, a larger bolt, or a bush in the tube would do.',
    note: 'Ream or hone the tube after welding until the bolt turns in it freely.',
    pass: 'Welding closes the tube a little; ream or hone it until the bolt turns freely.',
  };
  return [
    found({
      code: 'tube-on-bolt',
      level,
      field: 'tubeWall',
      title: `Tube ⌀${length(inside)} inside on ${thread.row.name}`,
      says: says[level],
      value: quantity(play, 'mm'),
      limit: quantity(LOOSE, 'mm'),
      formula: `${digits(n.tubeOutside.mm)} − 2 × ${digits(n.tubeWall.mm)} − ${digits(thread.row.diameter)} = ${digits(play)}`,
      source: FIT,
    }),
  ];
}

export const checkPedalSet = (n: PedalSetNumbers, stack: PedalStack, format: Format): readonly Finding[] => [
  checkOpening(n, stack, format),
  checkBetween(stack, format),
  checkPads(n, stack, format),
  ...checkTube(n, format),
];
