// What is done to an adapter plate after the torch, in order.
import { USUAL_GRIND, type Facts } from '../../checks/index.js';
import type { Part, ShopStep } from '../../model/index.js';
import { holeSteps } from '../shared/holes.js';
import type { AdapterPlate } from './parameters.js';
import { resolve } from './resolve.js';
import { weldLegOf } from './weld.js';

export function adapterPlateSteps(_part: Part, p: AdapterPlate, facts: Facts): readonly ShopStep[] {
  const answer = resolve(p);
  if (!answer.ok) return [];
  const { patterns, centre } = answer.value;
  const length = facts.format.length;
  const holes = patterns.flatMap(({ pattern, size }) =>
    holeSteps(
      size,
      pattern.holes.map(({ featureId }) => featureId),
      facts.format,
    ),
  );
  const bore: readonly ShopStep[] =
    centre === undefined
      ? []
      : centre.way === 'slip-to-weld'
        ? [
            {
              kind: 'grind',
              says:
                centre.drawn < centre.finished
                  ? `Grind the centre’s edge to bright metal, from ⌀${length(centre.drawn)} to ⌀${length(centre.finished)}; nitrided edges make porous welds.`
                  : `Grind the centre’s edge to bright metal, which opens it from ⌀${length(centre.finished)} by about ${length(2 * USUAL_GRIND)}; nitrided edges make porous welds.`,
              featureIds: ['centre'],
            },
          ]
        : centre.finish === 'bore'
          ? [
              {
                kind: 'bore',
                says: `${centre.way === 'turned' ? 'Turn' : 'Bore'} the centre from ⌀${length(centre.drawn)} to ⌀${length(centre.finished)}, set from the hub as measured.`,
                featureIds: ['centre'],
              },
            ]
          : [];
  const weld: readonly ShopStep[] =
    centre?.welded === true
      ? [
          { kind: 'fit', says: 'Dry fit hub, plate and bolted part; mark which face is which.' },
          {
            kind: 'weld',
            says: `Tack at four points, indicate the plate on the hub, weld ${length(weldLegOf(p, facts.format.unit))} fillet ${p.weldSides === 'both' ? 'on both sides' : 'on the far side'} in short runs opposite each other, indicate again.`,
            featureIds: ['centre'],
          },
          {
            kind: 'caution',
            says: 'Take plating off before welding; no chlorinated cleaner near an arc; eye shade and extraction as your code says.',
          },
        ]
      : [];
  return [
    { kind: 'deburr', says: 'Scrape dross, break the edges.' },
    { kind: 'measure', says: 'Measure bore and one hole pair before taking the plate off the table.' },
    ...holes,
    ...bore,
    ...weld,
  ];
}
