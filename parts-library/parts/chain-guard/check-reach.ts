// Whether a finger reaches the chain: through windows, round the shafts, past the edge; and whether the strand hits the edge.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import {
  chainSlackSource,
  reachDistance,
  reachSource,
  SLACK,
  widestOpening,
  type OpeningShape,
  type Source,
} from '../../handbook/index.js';
import type { Point } from '../../geometry/index.js';
import type { Finding } from '../../model/index.js';
import type { ChainGuard } from './parameters.js';
import type { ResolvedGuard } from './resolve.js';
import { windowMiddle } from './window.js';

interface Gap {
  readonly featureId: string;
  readonly at: Point;
  readonly shape: OpeningShape;
  readonly width: number;
  readonly what: string;
  readonly field: string;
}

/** One opening against the distance to what moves behind it. */
function checkGap(p: ChainGuard, gap: Gap, facts: Facts): Finding {
  const needed = reachDistance(gap.shape, gap.width);
  const { length } = facts.format;
  const widest = widestOpening(gap.shape, p.behind.mm);
  const isSafe = needed !== undefined && p.behind.mm >= needed;
  return found({
    code: 'finger-safe',
    level: isSafe ? 'pass' : 'stop',
    subject: { featureId: gap.featureId },
    anchor: gap.at,
    field: gap.field,
    title: isSafe
      ? `${gap.what} of ${length(gap.width)}: chain ${length(p.behind.mm)} behind it, ${length(needed)} wanted`
      : `${gap.what} of ${length(gap.width)} lets a finger reach the chain`,
    says: isSafe
      ? 'For grown hands; small children reach further.'
      : needed === undefined
        ? 'An arm goes through. Close it.'
        : `The chain is ${length(p.behind.mm)} behind the plate, ${length(needed)} is wanted. An opening of ${length(widest)} at most, or the guard further out, would do.`,
    value: quantity(p.behind.mm, 'mm'),
    ...(needed === undefined ? {} : { limit: quantity(needed, 'mm') }),
    formula: `${gap.shape} ${digits(gap.width)}: ${needed === undefined ? 'over 120' : digits(needed)}; there ${digits(p.behind.mm)}`,
    source: reachSource,
    ...(isSafe || gap.field !== 'opening' || widest < 3
      ? {}
      : {
          remedies: [
            {
              says: `Openings of ${length(widest)}`,
              change: [{ op: 'add' as const, path: '/opening', value: widest }],
            },
          ],
        }),
  });
}

/** What is open in the plate. A gap round a shaft counts as a slot as wide as the gap at its widest. */
function gapsOf(p: ChainGuard, r: ResolvedGuard): readonly Gap[] {
  const middle = windowMiddle(p, r.drive);
  return [
    ...(p.window === 'none'
      ? []
      : [
          {
            featureId: 'window.1',
            at: { x: middle.x - ((p.openings - 1) / 2) * p.pitch.mm, y: middle.y },
            shape: p.window === 'round' ? ('round' as const) : ('slot' as const),
            width: p.opening.mm,
            what: p.window === 'round' ? 'Window holes' : 'Window slots',
            field: 'opening',
          },
        ]),
    ...(p.axleSmall.mm === 0
      ? []
      : [
          {
            featureId: 'axle.small',
            at: { x: 0, y: (p.axleSmall.mm + p.axleRoom.mm) / 2 },
            shape: 'slot' as const,
            // The shaft may stand at one end of its way.
            width: p.axleRoom.mm / 2 + p.takeUp.mm,
            what: 'Gap round the small sprocket’s shaft at one end of its take-up',
            field: 'axleRoom',
          },
        ]),
    ...(p.axleLarge.mm === 0
      ? []
      : [
          {
            featureId: 'axle.large',
            at: { x: p.centres.mm, y: (p.axleLarge.mm + p.axleRoom.mm) / 2 },
            shape: 'slot' as const,
            width: p.axleRoom.mm / 2,
            what: 'Gap round the large sprocket’s shaft',
            field: 'axleRoom',
          },
        ]),
  ];
}

const EDGE: Source = {
  title: 'Guards of chain drives',
  where: 'a plate closes one side; the nip at both sprockets is also reached past its edge',
  certainty: 'common practice',
};

export function checkReach(p: ChainGuard, r: ResolvedGuard, facts: Facts): readonly Finding[] {
  const { length } = facts.format;
  const movement = SLACK.most * p.centres.mm;
  const least = movement / 2;
  return [
    ...gapsOf(p, r).map((gap) => checkGap(p, gap, facts)),
    found({
      code: 'strand-room',
      level: judge(['stop', p.room.mm <= 0], ['caution', p.room.mm < least]),
      subject: { featureId: 'outline' },
      anchor: { x: p.centres.mm / 2, y: (r.drive.above.from.y + r.drive.above.to.y) / 2 },
      field: 'room',
      title: `Guard reaches ${length(p.room.mm)} past the chain, the loose strand may swing ${length(least)}`,
      says:
        p.room.mm < least
          ? 'A worn chain swings past the edge, where it is touched and where it saws. More room, or a shorter adjusting interval would do.'
          : 'A chain adjusted as it should be stays behind the plate.',
      value: quantity(p.room.mm, 'mm'),
      limit: quantity(least, 'mm'),
      formula: `${SLACK.most} × ${digits(p.centres.mm)} ÷ 2 = ${digits(least)}`,
      source: chainSlackSource,
    }),
    found({
      code: 'guard-edge',
      level: 'note',
      subject: { featureId: 'outline' },
      field: 'behind',
      title: 'A flat plate guards one side',
      says: `The chain runs ${length(p.behind.mm)} behind it and is reached past the edge: close the rim with a strip, or bring frame, floor or a second plate so near that no finger goes between. Hair, sleeves and branches are drawn in as well.`,
      source: EDGE,
    }),
  ];
}
