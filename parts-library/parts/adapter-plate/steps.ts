// What is done to an adapter plate after the torch, in order.
import { USUAL_GRIND, type Facts } from '../../checks/index.js';
import type { Part, ShopStep } from '../../model/index.js';
import type { AdapterPlate } from './parameters.js';
import { resolve } from './resolve.js';
import { weldLegOf } from './weld.js';

/** Pilot drilled on a punch mark before a larger drill, mm, and the drill from which it helps; common practice. */
const HAND_PILOT = 4;
const PILOTED_FROM = 7;

export function adapterPlateSteps(_part: Part, p: AdapterPlate, facts: Facts): readonly ShopStep[] {
  const answer = resolve(p);
  if (!answer.ok) return [];
  const { patterns, centre } = answer.value;
  const length = facts.format.length;
  const holes = patterns.flatMap(({ pattern, drillName }): readonly ShopStep[] => {
    const featureIds = pattern.holes.map(({ featureId }) => featureId);
    if (pattern.made === 'clearance' || pattern.made === 'plain') return [];
    const drill = `${length(pattern.holeDiameter)}${drillName === '' || drillName.endsWith('mm') ? '' : ` (${drillName})`}`;
    const isPiloted = pattern.holeDiameter >= PILOTED_FROM;
    return [
      {
        kind: 'drill',
        says: `Punch ${pattern.count} marks, ${isPiloted ? `pilot ${length(HAND_PILOT)}, ` : ''}drill ${drill}; better through the bolted part when it is at hand.`,
        featureIds,
      },
      ...(pattern.made === 'tapped'
        ? [
            {
              kind: 'tap' as const,
              says: `Tap ${pattern.count} × ${pattern.thread.name}, through.`,
              featureIds,
            },
          ]
        : []),
    ];
  });
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
