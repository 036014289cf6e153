// What the bearing asks of its plate: room round the collar, a wide enough seat, limits of the bore, a hold sideways.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import type { Source } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { BearingFlange } from './parameters.js';
import type { ResolvedFlange } from './resolve.js';

/** Least gap between what turns and the plate, on each side, mm. */
const LEAST_GAP = 1;

const ROOM: Source = {
  title: 'Turning parts beside a cut edge',
  where: 'at least 1 mm all round after the cut’s tolerance: shafts sag, edges carry dross',
  certainty: 'common practice',
};

/** What turns in the opening stays off its edge, the tolerance of the cut counted. */
function checkCollar(p: BearingFlange, r: ResolvedFlange, facts: Facts): readonly Finding[] {
  const tolerance = facts.cutTolerance(r.cut);
  const gap = (r.cut - p.collar.mm - tolerance.amount) / 2;
  const level = judge(['stop', r.cut <= p.collar.mm], ['caution', gap < LEAST_GAP]);
  return [
    found({
      code: 'collar-room',
      level,
      subject: { featureId: 'opening' },
      anchor: { x: r.shaft.x + r.cut / 2, y: r.shaft.y },
      field: 'collarRoom',
      title:
        level === 'stop'
          ? 'The collar does not go through the opening'
          : `Collar clears the opening by ${facts.format.length(Math.max(gap, 0))} at worst`,
      says:
        level === 'pass'
          ? 'Counted on one side, the opening at its small limit.'
          : 'A collar that touches the plate wears through it and heats the bearing; a larger opening would do.',
      value: quantity(gap, 'mm'),
      limit: quantity(LEAST_GAP, 'mm'),
      formula: `(${digits(r.cut)} − ${digits(p.collar.mm)} − ${digits(tolerance.amount)}) ÷ 2 = ${digits(gap)}`,
      source: ROOM,
    }),
  ];
}

const SEAT_WIDTH: Source = {
  title: 'Width of a bearing’s seat',
  where: 'an outer ring wants its seat over its whole width, and rocks on less than half of it',
  certainty: 'common practice',
};

const MACHINED: Source = {
  title: 'Bearing seats are machined',
  where: 'a thermal cut is ±0.7 mm and leans; a seat is held to hundredths',
  certainty: 'common practice',
};

function checkSeat(p: BearingFlange, r: ResolvedFlange, facts: Facts): readonly Finding[] {
  if (r.seat === undefined) return [];
  const { fine, length } = facts.format;
  const share = p.thickness.mm / p.bearingWidth.mm;
  const place = {
    subject: { featureId: 'opening' },
    anchor: { x: r.shaft.x - r.finished / 2, y: r.shaft.y },
  } as const;
  const isHeld = p.retainer === 'ring' || p.seatFit === 'N7';
  return [
    found({
      ...place,
      code: 'bearing-seat',
      level: 'note',
      field: 'seatFit',
      title: `Cut ⌀${length(r.cut)}, then bore ${p.seatFit}: ${fine(r.seat.least)} to ${fine(r.seat.most)}`,
      says: 'Never fit a bearing to a cut edge. Clamp the plate flat, set from the cut edge, bore to the bearing at hand, and break the edge so that the ring does not shave it.',
      value: quantity(p.outside.mm, 'mm'),
      limit: quantity(r.seat.most, 'mm'),
      formula: `${digits(p.outside.mm)} ${r.seat.least < p.outside.mm ? '−' : '+'} ${digits(Math.abs(r.seat.least - p.outside.mm), 3)} / ${r.seat.most < p.outside.mm ? '−' : '+'} ${digits(Math.abs(r.seat.most - p.outside.mm), 3)}`,
      source: r.seat.source,
    }),
    found({
      ...place,
      code: 'machined-allowance',
      level: judge(['caution', p.leave.mm < facts.cutTolerance(r.cut).amount + 1]),
      field: 'leave',
      title: `${length(p.leave.mm)} left for boring`,
      says: 'It must cover the cut’s tolerance and take the hard skin away all round.',
      value: quantity(p.leave.mm, 'mm'),
      limit: quantity(facts.cutTolerance(r.cut).amount + 1, 'mm'),
      formula: `${digits(facts.cutTolerance(r.cut).amount)} + 2 × 0.5 = ${digits(facts.cutTolerance(r.cut).amount + 1)}`,
      source: MACHINED,
    }),
    found({
      ...place,
      code: 'seat-width',
      level: judge(['caution', share < 0.5], ['note', share < 1 - 1e-9]),
      field: 'thickness',
      title: `Seat ${length(p.thickness.mm)} wide under a bearing of ${length(p.bearingWidth.mm)}`,
      says:
        share >= 1 - 1e-9
          ? 'The whole ring is carried.'
          : 'The ring stands out of the plate. A thicker plate, a second ring welded on before boring, or a flanged housing would do.',
      value: quantity(p.thickness.mm, 'mm'),
      limit: quantity(p.bearingWidth.mm, 'mm'),
      formula: `${digits(p.thickness.mm)} ÷ ${digits(p.bearingWidth.mm)} = ${digits(share)}`,
      source: SEAT_WIDTH,
    }),
    found({
      ...place,
      code: 'bearing-held',
      level: judge(['caution', !isHeld]),
      field: 'retainer',
      title: isHeld ? 'The outer ring is held sideways' : 'Nothing here holds the outer ring sideways',
      says: isHeld
        ? 'Hold it at one bearing of the shaft; the other floats, or heat locks both.'
        : 'A bearing that slides in walks out. A clamp ring, a circlip or a shoulder would do.',
      source: MACHINED,
    }),
  ];
}

export function checkBearing(p: BearingFlange, r: ResolvedFlange, facts: Facts): readonly Finding[] {
  return p.bearing === 'flanged' ? checkCollar(p, r, facts) : checkSeat(p, r, facts);
}
