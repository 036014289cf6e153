// Ghosts of what a sprocket mates with: chain, bolt heads, hub and weld.
import type { Facts } from '../../checks/index.js';
import type { Ghost, Part } from '../../model/index.js';
import { patternGhosts } from '../shared/pattern-ghosts.js';
import { chainGhosts, rollerGhosts } from '../shared/sprocket/chain-ghosts.js';
import { weldLegOf } from './middle.js';
import type { SprocketPlate } from './parameters.js';
import { resolveSprocket } from './resolve.js';

const MIDDLE = { x: 0, y: 0 };

/** Everything that mates, in true size. */
export function sprocketPlateGhosts(_part: Part, p: SprocketPlate, facts: Facts): readonly Ghost[] {
  const answer = resolveSprocket(p);
  if (!answer.ok) return [];
  const { teeth, pattern, middle } = answer.value;
  const hub = middle?.centre.hub;
  return [
    ...chainGhosts(teeth.chain, p.teeth, facts.format),
    ...rollerGhosts(teeth.chain, p.teeth),
    ...(pattern === undefined ? [] : patternGhosts([pattern])),
    ...(hub === undefined
      ? []
      : [
          {
            id: 'hub',
            kind: 'hub' as const,
            label: 'hub',
            shape: { circle: { centre: MIDDLE, radius: hub.diameter / 2 } },
          },
          {
            id: 'weld',
            kind: 'weld' as const,
            shape: { circle: { centre: MIDDLE, radius: hub.diameter / 2 + weldLegOf(p, facts.format.unit) } },
          },
        ]),
  ];
}
