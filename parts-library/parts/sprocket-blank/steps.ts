// What is done to a sprocket blank after the torch, and the bolts that hold sprocket, blank and flange.
import type { Facts } from '../../checks/index.js';
import type { HardwareItem, Part, ShopStep } from '../../model/index.js';
import { boltItems } from '../shared/bolted.js';
import { holeSteps } from '../shared/holes.js';
import type { SprocketBlank } from './parameters.js';
import { resolveBlank } from './resolve.js';

export function sprocketBlankSteps(_part: Part, p: SprocketBlank, facts: Facts): readonly ShopStep[] {
  const answer = resolveBlank(p);
  if (!answer.ok) return [];
  const { pattern, pilot } = answer.value;
  const { length } = facts.format;
  return [
    {
      kind: 'deburr',
      says: 'Scrape dross, break the edges; both faces flat and bare where flange and sprocket seat.',
    },
    { kind: 'measure', says: 'Measure the bore and one hole pair; lay the sprocket on the blank.' },
    ...(pilot === undefined || p.pilot !== 'bored'
      ? []
      : [
          {
            kind: 'bore' as const,
            says: `Bore the pilot from ⌀${length(pilot.drawn)} to ⌀${length(pilot.finished)}, to the flange’s pilot as measured.`,
            featureIds: ['centre'],
          },
        ]),
    ...holeSteps(
      pattern.size,
      pattern.pattern.holes.map(({ featureId }) => featureId),
      facts.format,
    ),
    {
      kind: 'fit',
      says: 'Bolt sprocket, blank and flange together; straightedge from sprocket to sprocket.',
    },
    { kind: 'indicate', says: 'Turn it and read the sprocket’s face and gap bottoms: within 0.5 mm.' },
    { kind: 'caution', says: 'A chain nips fingers: fit the guard before power.' },
  ];
}

/** Bolts through everything, or into the thread where there is one. */
export function sprocketBlankHardware(_part: Part, p: SprocketBlank, facts: Facts): readonly HardwareItem[] {
  const answer = resolveBlank(p);
  if (!answer.ok || p.boltedBy === 'stud') return [];
  const stack = p.sprocketThickness.mm + p.thickness.mm;
  const common = { id: 'sprocket', bolt: p.bolt, count: p.bolts, grade: p.boltGrade } as const;
  if (answer.value.pattern.size.made === 'tapped') {
    return boltItems({ ...common, grip: p.sprocketThickness.mm, into: p.thickness.mm }, facts.format);
  }
  return p.boltedBy === 'thread'
    ? boltItems({ ...common, grip: stack, into: p.flangeThickness.mm }, facts.format)
    : boltItems({ ...common, grip: stack + p.flangeThickness.mm }, facts.format);
}
