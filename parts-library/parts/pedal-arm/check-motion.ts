// Rules of the pedal's movement: it pushes the right way, reaches its stroke, rests free, and is not stopped short.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import {
  forwardStopSource,
  freePlayRule,
  leverSource,
  linePressure,
  linkAt,
  linkageSource,
  usualBrakeRatio,
} from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import { ratioFor, type Motion } from './motion.js';
import type { PedalArm } from './parameters.js';

const RADIANS = Math.PI / 180;
/** A foot follows a pedal through about this turn without lifting the heel, degrees; common practice. */
const LONGEST_SWING = 45;
/** A hand-made brake that gives this much pressure at hard braking asks for hoses and fittings rated for it, MPa. */
const HIGH_PRESSURE = 14;

const place = (motion: Motion) => ({ subject: { featureId: 'pin.1' }, anchor: motion.link.pin }) as const;
const angle = (degrees: number): string => `${digits(degrees, 1)}°`;

/** Does pressing push the rod in or pull the cable out, all the way to the wanted stroke? */
function checkStroke(p: PedalArm, motion: Motion, facts: Facts): readonly Finding[] {
  const { link, travel, full, lever } = motion;
  const { length } = facts.format;
  const wanted = travel + p.freePlay.mm;
  const base = { ...place(motion), field: 'anchorOff', source: linkageSource, code: 'stroke' } as const;
  if ((linkAt(link, 0)?.lever ?? 0) <= 0) {
    return [
      found({
        ...base,
        level: 'stop',
        title:
          link.kind === 'rod'
            ? 'Pressing pulls the rod away from its cylinder'
            : 'Pressing lets the cable go slack',
        says: 'The far end stands on the wrong side of the arm, or in line with pivot and pin. Put it on the other side, or the pin hole on the other side of the pivot.',
        value: quantity(linkAt(link, 0)?.lever ?? 0, 'mm'),
        limit: quantity(0, 'mm'),
      }),
    ];
  }
  if (full === undefined || lever.overCentre) {
    return [
      found({
        ...base,
        code: 'over-centre',
        level: 'stop',
        field: 'travel',
        title: `Goes over centre before ${length(wanted)}`,
        says: `The line of the ${link.kind} comes to the pivot's middle on the way: beyond it the pedal moves nothing, or lets go. A longer pin radius, a shorter stroke, or a far end that is square to the pin half way through the swing would do.`,
        value: quantity(wanted, 'mm'),
        limit: quantity(Math.hypot(link.pin.x, link.pin.y), 'mm'),
      }),
    ];
  }
  return [
    found({
      ...base,
      field: 'linkRadius',
      level: judge(['caution', motion.end > LONGEST_SWING]),
      title: `Swing ${angle(motion.end)}, ${length(motion.padTravel)} at the pad`,
      says:
        motion.end > LONGEST_SWING
          ? 'A foot does not follow that far without lifting. A longer pin radius gives less swing and more effort.'
          : `${length(wanted)} of ${link.kind === 'rod' ? 'rod' : 'cable'} are reached at ${angle(full)}.`,
      value: quantity(motion.end, 'degrees'),
      limit: quantity(LONGEST_SWING, 'degrees'),
      formula: `pad ${digits(p.length.mm)} × ${digits(motion.end * RADIANS, 4)} rad = ${digits(motion.padTravel)}`,
    }),
  ];
}

/** Ratio over the swing: pad's lever over the load's. */
function checkRatio(p: PedalArm, motion: Motion): readonly Finding[] {
  const { lever } = motion;
  const most = ratioFor(p, lever.least);
  const least = ratioFor(p, lever.most);
  const atRest = ratioFor(p, lever.atRest);
  const atFull = ratioFor(p, lever.atFull);
  if (most === undefined || least === undefined || atRest === undefined || atFull === undefined) return [];
  const { least: low, most: high, source } = usualBrakeRatio;
  const isBrake = p.use === 'brake' && motion.link.kind === 'rod';
  const isUnusual = isBrake && (atRest < low || atRest > high);
  const falls = isBrake && atFull < 0.85 * atRest;
  return [
    found({
      ...place(motion),
      code: 'lever-ratio',
      level: judge(['note', isUnusual || falls]),
      field: 'linkRadius',
      title: `Ratio ${digits(atRest)} to 1 at rest, ${digits(atFull)} at the end; ${digits(least)} to ${digits(most)} on the way`,
      says:
        `${isBrake ? `Without a booster ${low} to ${high} to 1 is usual: more is less effort and more travel. ` : ''}${falls ? 'It falls as the pedal goes down, when most push is wanted: move the far end so that rod and pin radius are square near the end.' : ''}`.trim() ||
        'Instant ratio from the exact linkage.',
      value: quantity(atRest, '1'),
      ...(isBrake ? { limit: quantity(isUnusual && atRest > high ? high : low, '1') } : {}),
      formula: `${digits(p.length.mm)} ÷ ${digits(lever.atRest)} = ${digits(atRest)}; ${digits(p.length.mm)} ÷ ${digits(lever.atFull)} = ${digits(atFull)}`,
      source: isBrake ? source : leverSource,
    }),
  ];
}

/** Free play at rest: a brake without it drags. */
function checkRest(p: PedalArm, motion: Motion, facts: Facts): readonly Finding[] {
  const { least, usual, most, source } = freePlayRule;
  const { length } = facts.format;
  const isBrake = p.use === 'brake';
  const play = p.freePlay.mm;
  const rest = motion.screws.find(({ id }) => id === 'rest');
  const anchor = rest?.tip ?? motion.link.pin;
  if (p.restStop === 'no') {
    return [
      found({
        code: 'rest-stop',
        level: isBrake ? 'stop' : 'caution',
        anchor,
        field: 'restStop',
        title: 'No rest stop',
        says: isBrake
          ? 'Nothing but the rod holds the pedal back: the piston takes the spring, or never comes past its port, and the brake drags. A rest stop that leaves about 1 mm would do.'
          : 'The cable or the cylinder takes the pull of the springs. A rest stop would do.',
        source,
        remedies: [{ says: 'Put in a rest stop', change: [{ op: 'add', path: '/restStop', value: 'yes' }] }],
      }),
    ];
  }
  return [
    found({
      code: 'free-play',
      level: judge(
        ['stop', isBrake && play < least - 1e-9],
        ['caution', play > most + 1e-9 || play < least - 1e-9],
      ),
      anchor,
      field: 'freePlay',
      title: `Free play ${length(play)} at rest, about ${length(usual)} wanted`,
      says:
        play < least
          ? 'Heat and wear use it up: the piston stays off its port and the brake comes on by itself, or a cable holds it on.'
          : play > most
            ? 'Travel is lost before anything happens.'
            : 'The rest stop leaves the rod free; check it warm.',
      value: quantity(play, 'mm'),
      limit: quantity(play > most ? most : least, 'mm'),
      source,
      ...(play < least
        ? {
            remedies: [
              {
                says: `Leave ${length(usual)}`,
                change: [{ op: 'add' as const, path: '/freePlay', value: usual }],
              },
            ],
          }
        : {}),
    }),
  ];
}

/** A forward stop on a brake must never act; on a throttle it must. */
function checkForward(p: PedalArm, motion: Motion, facts: Facts): readonly Finding[] {
  const { forward, full } = motion;
  const screw = motion.screws.find(({ id }) => id === 'forward');
  if (forward === undefined || full === undefined || screw === undefined) return [];
  const reached = linkAt(motion.link, forward * RADIANS)?.travel ?? 0;
  const wanted = motion.travel + p.freePlay.mm;
  const { length } = facts.format;
  const isShort = reached < wanted - 1e-6;
  const base = {
    code: 'forward-stop',
    anchor: screw.tip,
    field: 'forwardStop',
    value: quantity(reached, 'mm'),
    limit: quantity(wanted, 'mm'),
  } as const;
  if (p.use === 'throttle') {
    const isOver = reached > wanted + 1e-6;
    return [
      found({
        ...base,
        level: judge(['caution', isShort || isOver]),
        title: `Forward stop at ${angle(forward)}: cable ${length(reached)} of ${length(wanted)}`,
        says: isOver
          ? 'The foot pulls on the cable’s far end before the stop takes it. Set the stop nearer.'
          : isShort
            ? 'The throttle does not open fully.'
            : 'The stop takes the foot as the throttle is fully open, so that the cable never does.',
        source: forwardStopSource,
      }),
    ];
  }
  return [
    found({
      ...base,
      level: judge(['stop', p.use === 'brake' && isShort], ['caution', isShort]),
      title: `Forward stop at ${angle(forward)}: ${length(reached)} of ${length(wanted)}`,
      says: isShort
        ? `It acts before the full stroke: with one circuit lost, or pads worn, the pedal ends on its stop and not on the brake. No stop, or one beyond ${angle(full)} would do.`
        : 'It acts only after the full stroke, reserve included.',
      formula: `stroke ${digits(motion.travel)} + free play ${digits(p.freePlay.mm)} = ${digits(wanted)}`,
      source: forwardStopSource,
      ...(isShort
        ? {
            remedies: [
              {
                says: 'Leave the forward stop out',
                change: [{ op: 'remove' as const, path: '/forwardStop' }],
              },
            ],
          }
        : {}),
    }),
  ];
}

/** Line pressure of a push rod's cylinder at a hard push. */
function checkPressure(p: PedalArm, motion: Motion, facts: Facts): readonly Finding[] {
  const ratio = ratioFor(p, motion.lever.atRest);
  if (motion.link.kind !== 'rod' || ratio === undefined) return [];
  const count = p.cylinders === 'two' ? 2 : 1;
  const push = p.footForce.value * ratio;
  const pressure = linePressure(push, p.bore.mm, count);
  const { force, stress, length } = facts.format;
  const isHigh = pressure.value > HIGH_PRESSURE;
  return [
    found({
      ...place(motion),
      code: 'line-pressure',
      level: judge(['note', isHigh]),
      field: 'bore',
      title: `Line pressure ${stress(pressure.value)} at ${force(p.footForce.value)} on the pad`,
      says: `${count === 2 ? 'Two cylinders share the push. ' : ''}${isHigh ? 'Hoses, fittings and calipers must be rated for it; a larger bore or a lower ratio gives less.' : `Bore ${length(p.bore.mm)}; the ratio at rest.`}`,
      value: quantity(pressure.value, 'MPa'),
      limit: quantity(HIGH_PRESSURE, 'MPa'),
      formula: `${digits(p.footForce.value, 0)} × ${digits(ratio)} ÷ (${count} × π/4 × ${digits(p.bore.mm, 3)}²) = ${digits(pressure.value)}`,
      source: pressure.source,
    }),
  ];
}

export function checkMotion(p: PedalArm, motion: Motion, facts: Facts): readonly Finding[] {
  return [
    ...checkStroke(p, motion, facts),
    ...checkRatio(p, motion),
    ...checkRest(p, motion, facts),
    ...checkForward(p, motion, facts),
    ...checkPressure(p, motion, facts),
  ];
}
