// Welding on a closed tube: it needs a vent, and what may be in an old one must be known.
import type { Point } from '../geometry/index.js';
import type { Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import { found } from './findings.js';

const CLOSED: Source = {
  title: 'Welding on closed tubes',
  where: 'oil or gas in closed tubes; closed tubes need a vent before welding',
  certainty: 'common practice',
};

/** Where the air of a tube goes while its end is welded shut. */
export type Vent = 'here' | 'tube' | 'open' | 'none';

/** `field` names the parameter that says where the vent is; `anchor` the vent's place when it is in this plate. */
export function checkVent(vent: Vent, field: string, anchor?: Point): readonly Finding[] {
  const place = { code: 'vent', field, source: CLOSED, ...(anchor === undefined ? {} : { anchor }) } as const;
  if (vent === 'none') {
    return [
      found({
        ...place,
        level: 'stop',
        title: 'The tube is closed: it needs a vent before it is welded',
        says: 'Trapped air blows through the last of the bead, and a drop of oil or water in there bursts the tube. A hole in this plate, a hole drilled in the tube, or an open far end would do.',
        remedies: [
          { says: 'Cut a vent in this plate', change: [{ op: 'add', path: `/${field}`, value: 'here' }] },
        ],
      }),
    ];
  }
  const words = {
    here: 'Vented through this plate',
    tube: 'Vented through a hole drilled in the tube',
    open: 'The far end of the tube stays open',
  }[vent];
  return [
    found({
      ...place,
      level: 'pass',
      title: words,
      says: 'The hole is there before the first tack, and is closed, if at all, when the tube is cold.',
    }),
  ];
}

/** The usual caution of an old tube; `field` names what is welded on. */
export function checkOldTube(field: string): readonly Finding[] {
  return [
    found({
      code: 'old-tube',
      level: 'note',
      field,
      title: 'Salvaged or plated tube: know what is in it and on it',
      says: 'Oil, fuel or gas in a closed tube bursts; zinc and cadmium fume is poisonous; chlorinated cleaner near an arc makes phosgene. Open it, drain it, strip it well back, then weld.',
      source: CLOSED,
    }),
  ];
}
