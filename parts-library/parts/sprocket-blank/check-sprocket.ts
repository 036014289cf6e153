// The blank between flange and bought sprocket: what it stands on, what centres it, where it puts the chain.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import type { Source } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { SprocketBlank } from './parameters.js';
import type { Blank } from './resolve.js';

const SEAT: Source = {
  title: 'A sprocket’s seat on a plate',
  where: 'the plate reaches under the sprocket all round the bolts, a bolt’s diameter to each side at least',
  certainty: 'common practice',
};

/** Seat between the sprocket's bore and the blank's outside, beside the bolts. */
export function checkSeatUnderSprocket(
  p: SprocketBlank,
  { pattern, pilot, edge }: Blank,
  facts: Facts,
): readonly Finding[] {
  const { boltedBore, thread, circle } = pattern.pattern;
  const place = { code: 'sprocket-seat', field: 'boltedBore', source: SEAT } as const;
  if (boltedBore === undefined) {
    return [
      found({
        ...place,
        code: 'not-checked',
        level: 'note',
        title: 'seat under the sprocket',
        says: 'Measure the sprocket’s bore: with it the width of its seat is known.',
      }),
    ];
  }
  const bore = Math.max(boltedBore.diameter, pilot?.finished ?? 0);
  const inside = (circle - bore) / 2;
  const least = Math.min(inside, edge);
  const wanted = thread.diameter;
  const isShort = least < wanted;
  const isInside = inside <= edge;
  return [
    found({
      ...place,
      level: judge(['stop', inside <= 0], ['caution', isShort]),
      anchor: { x: 0, y: bore / 2 },
      field: isInside ? 'boltedBore' : 'outside',
      title: `The sprocket seats ${facts.format.length(inside)} inside and ${facts.format.length(edge)} outside the bolts`,
      says: isShort
        ? `At least ${facts.format.length(wanted)}, one bolt, to each side keeps it from rocking. ${isInside ? 'A smaller bore, or a blank for another circle,' : 'A larger outside'} would do.`
        : 'Wide enough not to rock.',
      value: quantity(least, 'mm'),
      limit: quantity(wanted, 'mm'),
      formula: `(${digits(circle)} − ${digits(bore)}) ÷ 2 = ${digits(inside)}; outside ${digits(edge)}`,
    }),
  ];
}

const CENTRING: Source = {
  title: 'What centres a bolted disc',
  where: 'a pilot does; bolts in clearance holes leave their play',
  certainty: 'common practice',
};

/** Bolts in clearance holes let the blank run out by their play; a bored pilot does not. */
export function checkCentring(p: SprocketBlank, { pattern }: Blank, facts: Facts): readonly Finding[] {
  const { holeDiameter, thread, made } = pattern.pattern;
  const play = made === 'tapped' ? 0 : Math.max(0, holeDiameter - thread.diameter);
  const isPiloted = p.pilot === 'bored';
  return [
    found({
      code: 'centring',
      level: judge(['pass', isPiloted], ['note', true]),
      field: 'pilot',
      title: isPiloted
        ? 'The pilot bore centres the blank'
        : `Only the bolts centre it: it may stand ${facts.format.length(play / 2)} out of true`,
      says: isPiloted
        ? 'The sprocket itself is centred by its own bore or by its bolts: look at the play there too.'
        : `${facts.format.length(play)} of play in each hole; indicate the sprocket while tightening, or bore a pilot.`,
      value: quantity(play / 2, 'mm'),
      formula: `(${digits(holeDiameter)} − ${digits(thread.diameter)}) ÷ 2 = ${digits(play / 2)}`,
      source: CENTRING,
      ...(isPiloted
        ? {}
        : {
            remedies: [
              {
                says: 'Bore a pilot',
                change: [{ op: 'add' as const, path: '/pilot', value: 'bored' }],
              },
            ],
          }),
    }),
  ];
}

/** How far sprockets may be out of line before the plates scrape, mm. */
const LINE = 0.5;
const CHAIN_LINE: Source = {
  title: 'Sprockets in line',
  where: `a straightedge over both faces shows no more than ${LINE} mm on a short drive`,
  certainty: 'common practice',
};

/** The blank's thickness against the stand-off that the chain line wants. */
export function checkChainLine(p: SprocketBlank, facts: Facts): readonly Finding[] {
  const place = { code: 'chain-line', field: 'standoff', source: CHAIN_LINE } as const;
  if (p.standoff === undefined) {
    return [
      found({
        ...place,
        code: 'not-checked',
        level: 'note',
        title: 'chain line',
        says: 'Measure how far the sprocket has to stand off the flange: the blank’s thickness moves the chain by as much.',
      }),
    ];
  }
  const off = p.thickness.mm - p.standoff.mm;
  const isOff = Math.abs(off) > LINE;
  return [
    found({
      ...place,
      level: judge(['caution', isOff]),
      title: isOff
        ? `Blank ${facts.format.length(p.thickness.mm)}, ${facts.format.length(p.standoff.mm)} wanted: the chain runs ${facts.format.length(Math.abs(off))} out of line`
        : 'The blank puts the sprocket in line',
      says: isOff
        ? `${off > 0 ? 'A thinner plate' : 'A thicker plate, a second blank or ring spacers'}, or moving the other sprocket would do.`
        : 'Check it with a straightedge when it is bolted up.',
      value: quantity(p.thickness.mm, 'mm'),
      limit: quantity(p.standoff.mm, 'mm', LINE),
      formula: `${digits(p.thickness.mm)} − ${digits(p.standoff.mm)} = ${digits(off)}`,
    }),
  ];
}
