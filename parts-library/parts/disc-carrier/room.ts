// Room round a disc carrier: caliper over lobes and bolt heads, rim over caliper and disc.
import { checkSwingRoom, found, type Facts } from '../../checks/index.js';
import { boltEnvelope } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { DiscCarrier } from './parameters.js';
import type { ResolvedCarrier } from './resolve.js';

/** How far from the axle metal that turns reaches: lobes, or heads and washers of the disc's bolts, mm. */
export function turningReach(r: ResolvedCarrier): number {
  const envelope = boltEnvelope(r.disc.pattern.thread);
  const head = envelope.found
    ? Math.max(envelope.row.acrossCorners.value, envelope.row.washerOutside.value) / 2
    : 0;
  return Math.max(r.outside.reach, r.disc.circle.diameter / 2 + head);
}

export function checkCarrierRoom(p: DiscCarrier, r: ResolvedCarrier, facts: Facts): readonly Finding[] {
  const caliper = { inner: p.caliperInner?.mm, outer: p.caliperOuter?.mm };
  const rim = p.rim?.mm;
  const under = Math.max(caliper.outer ?? 0, p.disc.mm / 2);
  return [
    ...(caliper.inner === undefined
      ? []
      : checkSwingRoom(
          {
            code: 'caliper-room',
            field: 'caliperInner',
            outer: 'the caliper',
            inner: 'lobes and bolt heads',
            outerRadius: caliper.inner,
            innerRadius: turningReach(r),
          },
          facts,
        )),
    ...(rim === undefined
      ? []
      : checkSwingRoom(
          {
            code: 'rim-room',
            field: 'rim',
            outer: 'the rim',
            inner: under > p.disc.mm / 2 ? 'the caliper' : 'the disc',
            outerRadius: rim,
            innerRadius: under,
          },
          facts,
        )),
    ...(caliper.inner === undefined || rim === undefined
      ? [
          found({
            code: 'not-checked',
            level: 'note',
            field: caliper.inner === undefined ? 'caliperInner' : 'rim',
            title: 'room under caliper and rim',
            says: 'Give the radii from the axle to the caliper’s nearest and farthest points and to the rim’s inside.',
            source: {
              title: 'Room between turning and standing parts',
              where: 'not given',
              certainty: 'common practice',
            },
          }),
        ]
      : []),
  ];
}
