// Ghosts of what an adapter plate mates with: hub, weld, bolt heads, sockets, chain and sprocket.
import type { Facts } from '../../checks/index.js';
import { findChain, outsideDiameter, pitchDiameter, sidePlateCircle } from '../../handbook/index.js';
import type { Ghost, Part } from '../../model/index.js';
import { patternGhosts } from '../shared/pattern-ghosts.js';
import type { AdapterPlate } from './parameters.js';
import { resolve } from './resolve.js';
import { weldLegOf } from './weld.js';

const MIDDLE = { x: 0, y: 0 };

function hubGhosts(p: AdapterPlate, facts: Facts): readonly Ghost[] {
  const answer = resolve(p);
  if (!answer.ok || answer.value.centre?.hub === undefined) return [];
  const radius = answer.value.centre.hub.diameter / 2;
  const hub: Ghost = { id: 'hub', kind: 'hub', label: 'hub', shape: { circle: { centre: MIDDLE, radius } } };
  if (!answer.value.centre.welded) return [hub];
  return [
    hub,
    {
      id: 'weld',
      kind: 'weld',
      shape: { circle: { centre: MIDDLE, radius: radius + weldLegOf(p, facts.format.unit) } },
    },
  ];
}

function chainGhosts(p: AdapterPlate, facts: Facts): readonly Ghost[] {
  if (p.chain === undefined || p.teeth === undefined) return [];
  const chain = findChain(p.chain);
  if (!chain.found) return [];
  const circle = (id: string, kind: Ghost['kind'], diameter: number, label?: string): Ghost => ({
    id,
    kind,
    shape: { circle: { centre: MIDDLE, radius: diameter / 2 } },
    ...(label === undefined ? {} : { label }),
  });
  const sides = chain.row.plateHeight === undefined ? undefined : sidePlateCircle(chain.row, p.teeth);
  return [
    circle('sprocket', 'mating-part', outsideDiameter(chain.row.pitch, p.teeth)),
    circle(
      'chain.pitch',
      'chain',
      pitchDiameter(chain.row.pitch, p.teeth),
      `${chain.row.name} × ${p.teeth} teeth`,
    ),
    ...(sides === undefined
      ? []
      : [circle('chain.sides', 'chain', sides, `side plates ⌀${facts.format.bare(sides)}`)]),
  ];
}

/** Everything that mates, in true size. */
export function adapterPlateGhosts(_part: Part, p: AdapterPlate, facts: Facts): readonly Ghost[] {
  const bores = [p.boltedBore, p.pattern2?.boltedBore].flatMap((bore, index): readonly Ghost[] =>
    bore === undefined
      ? []
      : [
          {
            id: `bolted-bore.${index + 1}`,
            kind: 'mating-part',
            label: `bolted part’s bore ⌀${facts.format.bare(bore.mm)}`,
            shape: { circle: { centre: MIDDLE, radius: bore.mm / 2 } },
          },
        ],
  );
  const answer = resolve(p);
  const patterns = answer.ok ? patternGhosts(answer.value.patterns) : [];
  return [...patterns, ...hubGhosts(p, facts), ...bores, ...chainGhosts(p, facts)];
}
