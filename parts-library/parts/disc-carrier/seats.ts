// Pilots and seats of a disc carrier: shoulder in the disc, bore on the hub, what turning leaves under the bolts.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import { fitLimits, minWeb } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import { LEAST_PILOT, PILOTS } from '../shared/pilot-checks.js';
import type { DiscCarrier } from './parameters.js';
import type { ResolvedCarrier } from './resolve.js';

/** Land between the shoulder and a bolt hole that a tool can leave without breaking out, mm. */
const LEAST_LAND = 2;

function checkBoltsAlone(r: ResolvedCarrier, facts: Facts): readonly Finding[] {
  const { boltedHole, thread, holes } = r.disc.pattern;
  const play = boltedHole === undefined ? undefined : Math.max(0, boltedHole.diameter - thread.diameter);
  const first = holes[0];
  return [
    found({
      code: 'disc-centring',
      level: 'caution',
      ...(first === undefined ? {} : { anchor: first.at }),
      field: 'discPilot',
      title: `Nothing centres the disc but its bolts${play === undefined ? '' : `, with ${facts.format.length(play)} of play`}`,
      says: 'It settles off centre, shakes, and its bolts take blows. Turn a shoulder to the disc’s bore, or use shouldered bolts that fill their holes.',
      ...(play === undefined ? {} : { value: quantity(play, 'mm') }),
      source: PILOTS,
      remedies: [
        {
          says: 'Turn a shoulder to the disc’s bore',
          change: [{ op: 'add', path: '/discPilot', value: 'turned' }],
        },
      ],
    }),
  ];
}

/** The shoulder in the disc's bore: high enough, not too high, clear of the bolt holes, and on enough metal. */
export function checkDiscPilot(p: DiscCarrier, r: ResolvedCarrier, facts: Facts): readonly Finding[] {
  if (p.discPilot === 'bolts') return checkBoltsAlone(r, facts);
  const format = facts.format.length;
  const radius = p.boltedBore.mm / 2;
  const place = { field: 'shoulder', anchor: { x: -radius, y: 0 } } as const;
  const low = r.depth < LEAST_PILOT;
  const high = r.depth >= p.discThickness.mm;
  const limits = fitLimits(p.shoulderFit, p.boltedBore.mm);
  const land = r.disc.circle.diameter / 2 - r.disc.pattern.holeDiameter / 2 - radius;
  const isWhole = radius <= r.outside.floor;
  return [
    found({
      ...place,
      code: 'pilot-shoulder',
      level: judge(['stop', low], ['caution', high]),
      title: low
        ? `Pilot shoulder ${format(r.depth)}: too low to centre the disc`
        : `Pilot shoulder ${format(r.depth)} in a disc of ${format(p.discThickness.mm)}`,
      says: low
        ? `At least ${format(LEAST_PILOT)}, past the chamfers. ${p.offset === undefined ? 'A higher shoulder' : 'Another place of the disc’s seat'} would do.`
        : high
          ? 'It stands level with the disc or proud of it; mind what passes there. A lower shoulder would do.'
          : `${isWhole ? 'A whole ring' : `Interrupted: on the ${r.disc.pattern.count} lobes alone`}; turned to ${p.shoulderFit}.`,
      value: quantity(r.depth, 'mm'),
      limit: quantity(low ? LEAST_PILOT : p.discThickness.mm, 'mm'),
      source: limits.found && !low && !high ? limits.row.source : PILOTS,
    }),
    found({
      ...place,
      code: 'pilot-land',
      level: judge(['stop', land <= 0], ['caution', land < LEAST_LAND]),
      field: 'boltedBore',
      title:
        land <= 0
          ? 'The disc’s bolt holes break into the pilot shoulder'
          : `${format(land)} between the pilot shoulder and the disc’s bolt holes`,
      says:
        land < LEAST_LAND
          ? `At least ${format(LEAST_LAND)}. Measure the disc’s bore and bolt circle again; the disc has to have metal there too.`
          : 'The disc has as much metal between its bore and its holes.',
      value: quantity(land, 'mm'),
      limit: quantity(LEAST_LAND, 'mm'),
      formula: `${digits(r.disc.circle.diameter)}/2 − ${digits(r.disc.pattern.holeDiameter)}/2 − ${digits(p.boltedBore.mm)}/2 = ${digits(land)}`,
      source: PILOTS,
    }),
  ];
}

/** What turning leaves under the disc's bolts. */
export function checkLobes(p: DiscCarrier, r: ResolvedCarrier, facts: Facts): readonly Finding[] {
  const least = minWeb(0);
  const format = facts.format.length;
  const first = r.disc.pattern.holes[0];
  return [
    found({
      code: 'lobe-thickness',
      level: judge(['stop', r.lobe < least.value], ['caution', r.lobe < r.finished / 2]),
      ...(first === undefined ? {} : { subject: { featureId: first.featureId }, anchor: first.at }),
      field: 'thickness',
      title: `${format(r.lobe)} left under the disc’s bolts`,
      says: `Plate ${format(p.thickness.mm)}, faced to ${format(r.finished)}, seat turned ${format(r.depth)} deep; hub’s face to disc’s seat ${format(r.offset)}. ${r.lobe < r.finished / 2 ? 'More than half is turned away; a thicker plate would do.' : 'Bolt loads count with this thickness.'}`,
      value: quantity(r.lobe, 'mm'),
      limit: quantity(least.value, 'mm'),
      formula: `${digits(p.thickness.mm)} − 2 × ${digits(p.faceAllowance.mm)} − ${digits(r.depth)} = ${digits(r.lobe)}`,
      source: least.source,
    }),
  ];
}
