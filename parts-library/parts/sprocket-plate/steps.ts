// What is done to a sprocket after the torch, and what is bought to go with it.
import { USUAL_GRIND, type Facts } from '../../checks/index.js';
import { rootLimits, toothRange } from '../../handbook/index.js';
import type { HardwareItem, Part, ShopStep } from '../../model/index.js';
import { boltItems } from '../shared/bolted.js';
import { holeSteps } from '../shared/holes.js';
import { driveOf } from '../shared/sprocket/check-chain.js';
import { weldLegOf } from './middle.js';
import type { SprocketPlate } from './parameters.js';
import { resolveSprocket, type Sprocket } from './resolve.js';

/** Full indicator reading at the teeth that still runs quietly, mm: common practice on small vehicles. */
const RUNOUT = 0.5;

function faceSteps(p: SprocketPlate, { teeth }: Sprocket, facts: Facts): readonly ShopStep[] {
  const { length } = facts.format;
  const pitch = teeth.chain.pitch;
  if (p.faces === 'as-cut') return [];
  return [
    {
      kind: 'grind',
      says:
        p.faces === 'faced'
          ? `In the lathe, turn both faces of the teeth down alike to ${length(toothRange(teeth.chain).nominal)}, inward to ⌀${length(teeth.diameters.maxHub)}.`
          : `Chamfer both edges of the tips ${length(0.125 * pitch)} deep, ${length(0.5 * pitch)} down the tooth.`,
      featureIds: ['outline'],
    },
  ];
}

function middleSteps(p: SprocketPlate, { middle }: Sprocket, facts: Facts): readonly ShopStep[] {
  const { length } = facts.format;
  if (middle === undefined) return [];
  const { finished, drawn, way } = middle.centre;
  const featureIds = ['centre'];
  if (way === 'bore-after') {
    return [
      {
        kind: 'bore',
        says: `Bore the middle from ⌀${length(drawn)} to ⌀${length(finished)}, set true by the bottoms of the gaps, not by the tips.`,
        featureIds,
      },
    ];
  }
  if (p.middle === 'keyed') {
    return [
      {
        kind: 'fit',
        says: 'File the keyway’s sides square to the key; try shaft and key together.',
        featureIds,
      },
    ];
  }
  if (way !== 'slip-to-weld') return [];
  const sides = p.weldSides === 'both' ? 'on both sides' : 'on the far side';
  return [
    {
      kind: 'grind',
      says:
        drawn < finished
          ? `Grind the bore’s edge to bright metal, from ⌀${length(drawn)} to ⌀${length(finished)}; nitrided edges make porous welds.`
          : `Grind the bore’s edge to bright metal, which opens it from ⌀${length(finished)} by about ${length(2 * USUAL_GRIND)}.`,
      featureIds,
    },
    { kind: 'fit', says: 'Dry fit the hub; mark which face is which.' },
    { kind: 'tack', says: 'Tack at four points.', featureIds },
    {
      kind: 'indicate',
      says: `Indicate the bottoms of the gaps and the face on the hub; knock true to within ${length(RUNOUT)}.`,
    },
    {
      kind: 'weld',
      says: `Weld a ${length(weldLegOf(p, facts.format.unit))} fillet ${sides}, in short runs opposite each other.`,
      featureIds,
    },
    { kind: 'indicate', says: `Indicate again: a wobble of more than ${length(RUNOUT)} throws the chain.` },
    {
      kind: 'caution',
      says: 'Take plating off before welding; no chlorinated cleaner near an arc; eye shade and extraction as your code says.',
    },
  ];
}

export function sprocketPlateSteps(_part: Part, p: SprocketPlate, facts: Facts): readonly ShopStep[] {
  const answer = resolveSprocket(p);
  if (!answer.ok) return [];
  const sprocket = answer.value;
  const { teeth, pattern } = sprocket;
  const { length } = facts.format;
  const limits = rootLimits(teeth.chain, p.teeth, teeth.gap.form);
  const across = p.teeth % 2 === 0 ? 'opposite gaps' : 'a gap and the one next to opposite';
  return [
    {
      kind: 'deburr',
      says: 'Scrape dross off the teeth, file the beads off tips and flanks; leave the seats as cut.',
    },
    {
      kind: 'measure',
      says: `Caliper over ${across}: ${length(teeth.caliper)}${limits === undefined ? '' : `, accepted ${length(limits.least)} to ${length(limits.most)}`}. Lay the chain half round: it drops into every gap.`,
      featureIds: ['outline'],
    },
    ...(pattern === undefined
      ? []
      : holeSteps(
          pattern.size,
          pattern.pattern.holes.map(({ featureId }) => featureId),
          facts.format,
        )),
    ...faceSteps(p, sprocket, facts),
    ...middleSteps(p, sprocket, facts),
    ...(pattern === undefined
      ? []
      : [
          {
            kind: 'indicate' as const,
            says: `Bolt up, turn it, and read the bottoms of the gaps and the face: within ${length(RUNOUT)}.`,
          },
        ]),
    {
      kind: 'caution',
      says: 'A chain nips fingers: fit the guard before power. Oil the chain, side of a link clip by the direction of travel, closed end first.',
    },
  ];
}

/** Bolts for the grip, and the chain where its length is known. */
export function sprocketPlateHardware(_part: Part, p: SprocketPlate, facts: Facts): readonly HardwareItem[] {
  const answer = resolveSprocket(p);
  if (!answer.ok) return [];
  const { teeth, pattern } = answer.value;
  const drive = driveOf(p, teeth.chain);
  const isStud = p.boltedBy === 'stud';
  const intoPlate = pattern?.size.made === 'tapped';
  const into = intoPlate ? p.thickness.mm : p.boltedBy === 'thread' ? p.boltedThickness.mm : undefined;
  const grip =
    into === undefined
      ? p.thickness.mm + p.boltedThickness.mm
      : intoPlate
        ? p.boltedThickness.mm
        : p.thickness.mm;
  return [
    ...(pattern === undefined || isStud
      ? []
      : boltItems(
          {
            id: 'sprocket',
            bolt: p.bolt,
            count: p.bolts,
            grip,
            ...(into === undefined ? {} : { into }),
            grade: p.boltGrade,
          },
          facts.format,
        )),
    {
      id: 'chain',
      kind: 'chain',
      name: `${teeth.chain.name} roller chain${drive === undefined ? '' : `, ${drive.evenLinks} links`}`,
      quantity: 1,
      says:
        drive === undefined
          ? 'Count the links from the old one; an even number needs no cranked link.'
          : `With its connecting link${drive.evenCentre === undefined ? '' : `; ${facts.format.length(drive.evenCentre)} between centres`}.`,
    },
  ];
}
