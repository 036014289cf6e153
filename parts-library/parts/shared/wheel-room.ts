// Room round a part on a wheel's hub: caliper over the part, rim over caliper and disc.
import { checkSwingRoom, found, type Facts } from '../../checks/index.js';
import type { Finding } from '../../model/index.js';
import type { Entry } from '../fields/index.js';

/** Radii from the axle, as entered. */
export interface RoomRadii {
  readonly caliperInner?: Entry | undefined;
  readonly caliperOuter?: Entry | undefined;
  readonly rim?: Entry | undefined;
}

/** What turns: how far it reaches, its name in a sentence, the disc's radius where there is one (else 0), mm. */
export interface Turning {
  readonly reach: number;
  readonly what: string;
  readonly disc: number;
}

/** Room between what turns and what stands: the part under the caliper, caliper and disc under the rim. */
export function checkWheelRoom(p: RoomRadii, turning: Turning, facts: Facts): readonly Finding[] {
  const caliper = { inner: p.caliperInner?.mm, outer: p.caliperOuter?.mm };
  const rim = p.rim?.mm;
  const under = Math.max(caliper.outer ?? 0, turning.disc);
  return [
    ...(caliper.inner === undefined
      ? []
      : checkSwingRoom(
          {
            code: 'caliper-room',
            field: 'caliperInner',
            outer: 'the caliper',
            inner: turning.what,
            outerRadius: caliper.inner,
            innerRadius: turning.reach,
          },
          facts,
        )),
    ...(rim === undefined || under === 0
      ? []
      : checkSwingRoom(
          {
            code: 'rim-room',
            field: 'rim',
            outer: 'the rim',
            inner: under > turning.disc ? 'the caliper' : 'the disc',
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
