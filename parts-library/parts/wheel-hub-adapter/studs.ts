// The wheel's studs: nut on enough thread, hold in the plate, heads beside the hub, nuts beside the studs.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import { boltEnvelope, weakestSource, type Source } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { WheelHubAdapter } from './parameters.js';
import type { ResolvedAdapter } from './resolve.js';

const ENGAGEMENT: Source = {
  title: 'Thread in a wheel nut',
  where: 'one diameter of full thread; below a plain nut’s height, 0.8 diameters, the nut is not filled',
  certainty: 'common practice',
};
const STUDS: Source = {
  title: 'Pressed wheel studs',
  where: 'knurl holds against turning, head against pulling; at least three quarters of a diameter of plate',
  certainty: 'common practice',
};
const SCREWED: Source = {
  title: 'Screwed wheel studs',
  where: 'one diameter of thread in steel, locked',
  certainty: 'common practice',
};
const FULL = 1;
const LEAST = 0.8;
const PRESS_LENGTH = 0.75;

/** Thread of the stud that reaches into the nut, past the wheel's metal. */
export function checkStudThread(p: WheelHubAdapter, r: ResolvedAdapter, facts: Facts): readonly Finding[] {
  const { thread, holes } = r.wheel.pattern;
  const first = holes[0];
  const turns = Math.max(0, r.nutGrip / thread.pitch);
  const wanted = FULL * thread.diameter;
  const level = judge(['stop', r.nutGrip < LEAST * thread.diameter], ['caution', r.nutGrip < wanted]);
  const format = facts.format.length;
  return [
    found({
      code: 'stud-thread',
      level,
      ...(first === undefined ? {} : { subject: { featureId: first.featureId }, anchor: first.at }),
      field: 'studLength',
      title: `${format(Math.max(0, r.nutGrip))} of stud in the wheel nut, ${format(wanted)} wanted for ${thread.name}`,
      says:
        level === 'pass'
          ? `${digits(turns, 1)} turns of the nut. Count them when it is fitted.`
          : `${digits(turns, 1)} turns of the nut: a wheel comes off that way. A longer stud would do; a longer nut does not make up for it.`,
      value: quantity(r.nutGrip, 'mm'),
      limit: quantity(wanted, 'mm'),
      formula: `${digits(p.studLength.mm)} − ${digits(p.wheelThickness.mm)} = ${digits(r.nutGrip)}; ÷ ${digits(thread.pitch)} = ${digits(turns, 1)} turns`,
      source: ENGAGEMENT,
    }),
  ];
}

/** A stud's hold in the plate, and a pressed one's head on the hub's side. */
export function checkStudHold(p: WheelHubAdapter, r: ResolvedAdapter, facts: Facts): readonly Finding[] {
  const { thread, holes, circle } = r.wheel.pattern;
  const first = holes[0];
  const place = first === undefined ? {} : { subject: { featureId: first.featureId }, anchor: first.at };
  const format = facts.format.length;
  if (p.studs === 'threaded') {
    const isShort = r.flange < FULL * thread.diameter;
    return [
      found({
        ...place,
        code: 'stud-screwed',
        level: judge(['caution', isShort]),
        field: 'thickness',
        title: `Studs screwed ${format(r.flange)} deep, ${format(FULL * thread.diameter)} wanted for ${thread.name}`,
        says: isShort
          ? 'One diameter of thread in steel. A thicker plate, a lower spigot, or pressed studs would do.'
          : 'Locked so that a seized nut does not screw the stud out.',
        value: quantity(r.flange, 'mm'),
        limit: quantity(FULL * thread.diameter, 'mm'),
        source: SCREWED,
      }),
    ];
  }
  const needed = PRESS_LENGTH * thread.diameter;
  const hold = found({
    ...place,
    code: 'stud-press',
    level: judge(['caution', r.flange < needed]),
    field: 'thickness',
    title: `Studs pressed into ${format(r.flange)} of plate, ${format(needed)} wanted for ${thread.name}`,
    says: `Ream ⌀${format(r.wheel.size.diameter)} and draw them in square with a nut and a stack of washers, never with the wheel.`,
    value: quantity(r.flange, 'mm'),
    limit: quantity(needed, 'mm'),
    formula: `${PRESS_LENGTH} × ${digits(thread.diameter)} = ${digits(needed)}`,
    source: STUDS,
  });
  if (p.hubFlange === undefined) {
    return [
      hold,
      found({
        code: 'not-checked',
        level: 'note',
        field: 'hubFlange',
        title: 'stud heads beside the hub’s flange',
        says: 'Measure the hub’s flange across: the heads of pressed studs have to stand outside it or be let into the plate.',
        source: STUDS,
      }),
    ];
  }
  const room = circle / 2 - r.studHead / 2 - p.hubFlange.mm / 2;
  const isUnder = room < 0;
  return [
    hold,
    found({
      ...place,
      code: 'stud-heads',
      level: judge(['caution', isUnder]),
      field: 'hubFlange',
      title: isUnder
        ? `Stud heads lie ${format(-room)} under the hub’s flange`
        : `Stud heads clear the hub’s flange by ${format(room)}`,
      says: isUnder
        ? `The adapter would sit on the heads, not on its face. Counterbore them ${format(p.studHeadHeight.mm)} deep, which leaves ${format(Math.max(0, r.flange - p.studHeadHeight.mm))} of plate for the knurl, or let the studs screw in.`
        : 'Mind what passes behind them: caliper, drum, dust shield.',
      value: quantity(room, 'mm'),
      limit: quantity(0, 'mm'),
      formula: `${digits(circle)}/2 − ${digits(r.studHead)}/2 − ${digits(p.hubFlange.mm)}/2 = ${digits(room)}`,
      source: STUDS,
    }),
  ];
}

/** Half of the turn at which the two patterns fall together again, degrees: where their holes lie farthest apart. */
function farthestTurn(a: number, b: number): number {
  const divisor = (x: number, y: number): number => (y === 0 ? x : divisor(y, x % y));
  return (180 * divisor(a, b)) / (a * b);
}

/** Washers and sockets of the hub's nuts beside the studs and beside the spigot. */
export function checkNutRoom(p: WheelHubAdapter, r: ResolvedAdapter, facts: Facts): readonly Finding[] {
  const { pattern } = r.hub;
  const stud = r.wheel.pattern.thread.diameter;
  const envelope = boltEnvelope(pattern.thread);
  if (!envelope.found) return [];
  const { acrossCorners, washerOutside, socketOutside } = envelope.row;
  const seat = Math.max(acrossCorners.value, washerOutside.value) / 2;
  const socket = socketOutside.value / 2;
  const source = weakestSource(acrossCorners.source, washerOutside.source, socketOutside.source);
  const format = facts.format.length;
  const pairs = pattern.holes.flatMap((one) =>
    r.wheel.pattern.holes.map(({ at }) => ({
      one,
      apart: Math.hypot(one.at.x - at.x, one.at.y - at.y),
    })),
  );
  const nearest = pairs.reduce((a, b) => (b.apart < a.apart ? b : a), {
    one: pattern.holes[0],
    apart: Infinity,
  });
  const turned =
    ((p.pattern2.clocking.value + farthestTurn(pattern.count, r.wheel.pattern.count) + 540) % 360) - 180;
  const standing = p.wheelPilot === 'spigot' ? p.pattern2.boltedBore.mm / 2 : p.hubPilot.mm / 2;
  const innermost = Math.min(...pattern.holes.map(({ at }) => Math.hypot(at.x, at.y)));
  const rooms = [
    {
      code: 'nuts-beside-studs',
      what: 'the nearest stud',
      room: nearest.apart - stud / 2,
      field: 'clocking',
      remedies: [
        {
          says: `Turn the hub’s bolts to lie between the studs`,
          change: [{ op: 'add' as const, path: '/clocking', value: String(Number(turned.toFixed(3))) }],
        },
      ],
    },
    {
      code: 'nuts-beside-pilot',
      what: p.wheelPilot === 'spigot' ? 'the wheel’s spigot' : 'the hub’s pilot',
      room: innermost - standing,
      field: 'pattern2.boltedBore',
      remedies: [],
    },
  ];
  return rooms.map(({ code, what, room, field, remedies }) => {
    const level = judge(['stop', room < seat], ['caution', room < socket]);
    const { one } = nearest;
    return found({
      code,
      level,
      ...(one === undefined ? {} : { subject: { featureId: one.featureId }, anchor: one.at }),
      field,
      title:
        level === 'pass'
          ? `Nut, washer and socket of ${pattern.thread.name} clear ${what}`
          : level === 'caution'
            ? `A socket does not go on beside ${what}; measure yours`
            : `Nut or washer of ${pattern.thread.name} does not seat beside ${what}`,
      says: `From bolt centre to ${what} ${format(room)}; nut or washer needs ${format(seat)}, a hand socket about ${format(socket)}.`,
      value: quantity(room, 'mm'),
      limit: quantity(socket, 'mm'),
      formula: `room ${digits(room)}; seat ${digits(seat)}; socket ${digits(socket)}`,
      source,
      ...(level === 'pass' || remedies.length === 0 ? {} : { remedies }),
    });
  });
}
