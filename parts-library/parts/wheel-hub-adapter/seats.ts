// Pilots and seats of a wheel-hub adapter: spigot and its wall, what centres the wheel, hub nuts under the wheel.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import type { Source } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import { LEAST_PILOT, PILOTS } from '../shared/pilot-checks.js';
import type { WheelHubAdapter } from './parameters.js';
import type { ResolvedAdapter } from './resolve.js';

/** Wall of a spigot between the hub's bore and the wheel's: least that can be turned, and what stays round, mm. */
const LEAST_WALL = 2;
const GOOD_WALL = 4;
/** A wheel's bore this much larger than the hub's pilot is no longer centred by it, mm. */
const LOOSE_PILOT = 0.3;

const SEATS: Source = {
  title: 'Wheel nuts and their seats',
  where: 'nut, seat and wheel belong together: cone on cone, flat on flat; nothing between wheel and seat',
  certainty: 'common practice',
};

const CONES: Readonly<Record<WheelHubAdapter['seat'], string>> = {
  cone: 'Cone seats alone centre the wheel',
  flat: 'Nothing centres the wheel: flat seats and no pilot',
};

/** Wheel on its pilot, whichever way that is. */
export function checkWheelPilot(p: WheelHubAdapter, r: ResolvedAdapter, facts: Facts): readonly Finding[] {
  const bore = p.pattern2.boltedBore.mm;
  const place = { code: 'wheel-centring', anchor: { x: 0, y: bore / 2 }, source: PILOTS } as const;
  const format = facts.format.length;
  if (p.wheelPilot === 'studs') {
    return [
      found({
        ...place,
        level: p.seat === 'cone' ? 'caution' : 'stop',
        field: 'wheelPilot',
        title: CONES[p.seat],
        says: `${p.seat === 'cone' ? 'They do it while every nut is tight, and the studs carry the wheel.' : 'It settles where it likes and works on its studs.'} A turned spigot makes it hub-centric.`,
        remedies: [
          {
            says: 'Turn a spigot to the wheel’s bore',
            change: [{ op: 'add', path: '/wheelPilot', value: 'spigot' }],
          },
        ],
      }),
    ];
  }
  if (p.wheelPilot === 'spigot') {
    const wall = (bore - p.hubPilot.mm) / 2;
    const isLow = p.spigot.mm < LEAST_PILOT;
    return [
      found({
        ...place,
        code: 'pilot-shoulder',
        level: judge(['stop', wall < LEAST_WALL || isLow], ['caution', wall < GOOD_WALL]),
        field: isLow ? 'spigot' : 'pattern2.boltedBore',
        title:
          wall <= 0
            ? `The hub’s pilot ⌀${format(p.hubPilot.mm)} does not pass inside the wheel’s bore ⌀${format(bore)}`
            : `Spigot ${format(p.spigot.mm)} high with a wall of ${format(wall)}, ${format(GOOD_WALL)} wanted`,
        says:
          wall < GOOD_WALL
            ? `Below ${format(LEAST_WALL)} there is no spigot to turn; a thin one bruises out of round. Let the hub’s pilot end inside the plate, or press a turned ring in.`
            : isLow
              ? `At least ${format(LEAST_PILOT)} past the wheel’s chamfer.`
              : 'Hub-centric. It reaches past the wheel’s chamfer: measure that too.',
        value: quantity(wall, 'mm'),
        limit: quantity(GOOD_WALL, 'mm'),
        formula: `(${digits(bore)} − ${digits(p.hubPilot.mm)}) ÷ 2 = ${digits(wall)}`,
      }),
    ];
  }
  const play = bore - p.hubPilot.mm;
  const misfit = play < 0 || play > LOOSE_PILOT;
  const hold = p.hubPilotHeight === undefined ? undefined : p.hubPilotHeight.mm - r.flange;
  const isShort = hold !== undefined && hold < LEAST_PILOT;
  return [
    found({
      ...place,
      level: judge(['stop', misfit || isShort], ['caution', hold === undefined]),
      field: misfit ? 'pattern2.boltedBore' : 'hubPilotHeight',
      title: misfit
        ? `Wheel’s bore ⌀${format(bore)} and hub’s pilot ⌀${format(p.hubPilot.mm)} do not fit each other`
        : isShort
          ? `The hub’s pilot stands ${format(Math.max(0, hold))} out of the adapter, ${format(LEAST_PILOT)} wanted`
          : 'The hub’s own pilot centres the wheel',
      says: misfit
        ? `Up to ${format(LOOSE_PILOT)} of play locates; turn a spigot to the wheel’s bore.`
        : hold === undefined
          ? `Measure how far it stands out of the hub’s face: ${format(r.flange)} of it is inside the adapter.`
          : `${format(Math.max(0, hold))} of it reaches into the wheel.`,
      value: quantity(play, 'mm'),
      limit: quantity(LOOSE_PILOT, 'mm'),
      formula: `${digits(bore)} − ${digits(p.hubPilot.mm)} = ${digits(play)}${hold === undefined ? '' : `; ${digits(p.hubPilotHeight?.mm ?? 0)} − ${digits(r.flange)} = ${digits(hold)}`}`,
    }),
  ];
}

/** The hub's nuts must not hold the wheel off its seat. */
export function checkNutsUnderWheel(
  p: WheelHubAdapter,
  r: ResolvedAdapter,
  facts: Facts,
): readonly Finding[] {
  const first = r.hub.pattern.holes[0];
  const format = facts.format.length;
  const isUnder = r.proud > (p.pocket?.mm ?? 0);
  const what = r.hub.pattern.boltedBy === 'stud' ? 'nuts' : 'heads';
  return [
    found({
      code: 'nuts-under-wheel',
      level: judge(['stop', isUnder && p.pocket !== undefined], ['caution', isUnder]),
      ...(first === undefined ? {} : { subject: { featureId: first.featureId }, anchor: first.at }),
      field: p.pocket === undefined ? 'pocket' : 'sink',
      title:
        r.proud <= 0
          ? `The hub’s ${what} lie below the wheel’s seat`
          : `The hub’s ${what} stand ${format(r.proud)} out of the wheel’s seat`,
      says: isUnder
        ? `${p.pocket === undefined ? 'Look at the back of the wheel: it has to have pockets that deep over them.' : `The wheel’s pockets are ${format(p.pocket.mm)} deep: it would sit on them, not on its seat.`} A deeper counterbore, a thicker plate, or cap screws would do; cut stud ends off level with their nuts.`
        : 'The wheel bears on its whole seat.',
      value: quantity(r.proud, 'mm'),
      limit: quantity(p.pocket?.mm ?? 0, 'mm'),
      source: SEATS,
    }),
  ];
}

/** What is left under the hub's nuts after counterbore and cone. */
export function checkUnderNuts(p: WheelHubAdapter, r: ResolvedAdapter, facts: Facts): readonly Finding[] {
  const left = r.underNuts - r.cone;
  const needed = r.hub.pattern.thread.diameter / 2;
  const first = r.hub.pattern.holes[0];
  const format = facts.format.length;
  return [
    found({
      code: 'under-nuts',
      level: judge(['stop', left < needed / 2], ['caution', left < needed]),
      ...(first === undefined ? {} : { subject: { featureId: first.featureId }, anchor: first.at }),
      field: p.sink.mm > 0 ? 'sink' : 'thickness',
      title: `${format(left)} of plate under the hub’s nuts, ${format(needed)} wanted`,
      says: `Seats ${format(r.flange)} apart${p.sink.mm > 0 ? `, let in ${format(p.sink.mm)}` : ''}${r.cone > 0 ? `, cone ${format(r.cone)} deep` : ''}. Half a bolt diameter is the least that does not cup.`,
      value: quantity(left, 'mm'),
      limit: quantity(needed, 'mm'),
      formula: `${digits(r.flange)} − ${digits(p.sink.mm)} − ${digits(r.cone)} = ${digits(left)}`,
      source: SEATS,
    }),
  ];
}

/** Seat on the adapter, and what the wheel's new place does. */
export function checkWheelSeat(p: WheelHubAdapter, r: ResolvedAdapter, facts: Facts): readonly Finding[] {
  const format = facts.format.length;
  const moved = found({
    code: 'wheel-offset',
    level: 'note',
    field: 'thickness',
    title: `The wheel moves ${format(r.flange)} outward, the track grows ${format(2 * r.flange)}`,
    says: 'Bearings and steering feel the longer arm; look at fender, fork and load before it is driven.',
    value: quantity(r.flange, 'mm'),
    source: SEATS,
  });
  if (p.wheelPad === undefined) return [moved];
  const over = r.reach - p.wheelPad.mm / 2;
  return [
    moved,
    found({
      code: 'wheel-seat',
      level: judge(['caution', over < 0]),
      anchor: { x: -r.reach, y: 0 },
      field: 'outside',
      title:
        over < 0
          ? `The wheel’s face hangs ${format(-over)} over the adapter all round`
          : `The wheel’s face lies whole on the adapter`,
      says:
        over < 0
          ? 'Its rim has to bear, or the wheel bends over the edge. A larger outside would do.'
          : 'Clean both faces to metal; paint under a seat creeps, and nuts work loose.',
      value: quantity(r.reach * 2, 'mm'),
      limit: quantity(p.wheelPad.mm, 'mm'),
      source: SEATS,
    }),
  ];
}
