// What follows from a pivot bracket’s numbers, what is done to it, and what is bought or sawn for it.
import type { Facts } from '../../checks/index.js';
import type { Derived, HardwareItem, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { boltItems } from '../shared/bolted.js';
import { holeSteps } from '../shared/holes.js';
import { pinSet } from '../shared/pin-set.js';
import { DEBURR, edgeWeldSteps } from '../shared/weld-steps.js';
import type { PivotBracket } from './parameters.js';
import { filletOf, gapOf, isMirrored, resolveBracket } from './resolve.js';

/** Over both ears of two, mm; over one for a single bracket. */
const overEars = (p: PivotBracket): number =>
  p.standoffs === 'single' ? p.thickness.mm : p.gap.mm + 2 * p.thickness.mm;

/** Sawn length of the pivot tube or bush, mm. */
const sawnLength = (p: PivotBracket): number => overEars(p) + (p.pivot === 'tube' ? 2 * p.overhang.mm : 0);

export function pivotBracketDerived(
  _part: Part,
  p: PivotBracket,
  { format }: DrawContext,
): readonly Derived[] {
  const answer = resolveBracket(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { length } = format;
  return [
    {
      id: 'nose',
      field: 'nose',
      title: 'nose',
      value: { amount: r.nose, unit: 'mm' },
      text: `R ${length(r.nose)}, ${length(r.nose - r.finished / 2)} of metal round the pivot`,
    },
    ...(p.pivot === 'tube'
      ? [
          {
            id: 'tube',
            field: 'overhang',
            title: 'pivot tube',
            value: { amount: sawnLength(p), unit: 'mm' as const },
            text: `sawn ${length(sawnLength(p))}`,
          },
        ]
      : []),
    ...(r.bend === undefined
      ? []
      : [
          {
            id: 'flat',
            field: 'footDepth',
            title: 'flat',
            value: { amount: r.ear.centre.y - r.footEnd, unit: 'mm' as const },
            text: `${length(r.ear.centre.y - r.footEnd)} from the foot’s end to the pivot; the bend takes ${length(r.bend.allowance)}`,
          },
        ]),
    ...(p.foot === 'weld'
      ? [
          {
            id: 'weld',
            field: 'base',
            title: 'weld',
            value: { amount: r.ear.edge.length, unit: 'mm' as const },
            text: `${length(r.ear.edge.length)} long, leg ${length(filletOf(p, format.unit))}${p.weldSides === 'both' ? ', both sides' : ''}`,
          },
        ]
      : []),
  ];
}

function footSteps(p: PivotBracket, { format }: Facts): readonly ShopStep[] {
  const gap = gapOf(p);
  if (p.foot === 'weld') {
    return edgeWeldSteps(
      {
        leg: filletOf(p, format.unit),
        sides: p.weldSides,
        to: 'what it stands on',
        fit:
          gap === undefined
            ? 'Dry fit on its place with the pivot in it; square it from two sides.'
            : `Thread both ears on a straight bar through the pivot with a spacer of ${format.length(gap)} between; stand the pair on its place as one.`,
      },
      format,
    );
  }
  return [
    ...(p.foot === 'bent'
      ? [
          {
            kind: 'bend' as const,
            says: `Bend the foot up 90°, inside radius ${format.length(p.radius.mm)}${p.standoffs === 'pair' ? '; the second one of a pair the other way, unless both feet are to point one way' : ''}.`,
            featureIds: ['bend'],
          },
        ]
      : []),
    {
      kind: 'fit',
      says:
        gap === undefined
          ? 'Bolt it down finger tight with the pivot in it, square it, tighten.'
          : `Bolt the pair down finger tight on a straight bar through the pivot, gap ${format.length(gap)}, tighten.`,
    },
  ];
}

export function pivotBracketSteps(_part: Part, p: PivotBracket, facts: Facts): readonly ShopStep[] {
  const answer = resolveBracket(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { length } = facts.format;
  const pivot: readonly ShopStep[] =
    p.pivot === 'bush'
      ? [
          {
            kind: 'bore',
            says: `Bore the pivot from ⌀${length(r.cut)} to ⌀${length(r.finished)} H7, set from the bush as measured; both ears clamped together.`,
            featureIds: ['pivot'],
          },
        ]
      : p.pivot === 'tube'
        ? [
            {
              kind: 'grind',
              says: 'Grind the pivot hole’s edge to bright metal: nitrided edges make porous welds.',
              featureIds: ['pivot'],
            },
          ]
        : [];
  const tube: readonly ShopStep[] =
    p.pivot === 'tube'
      ? [
          {
            kind: 'weld',
            says: 'Tack the pivot tube at four points in each ear, indicate it, weld in short runs opposite each other, with the bolt out.',
            featureIds: ['pivot'],
          },
          {
            kind: 'ream',
            says: `Ream or hone the tube after welding until ${r.pin.name} turns in it freely.`,
          },
        ]
      : [];
  return [
    DEBURR,
    { kind: 'measure', says: 'Try the first one on its place and on its pivot before cutting the rest.' },
    ...holeSteps(
      r.size,
      r.holes.map(({ featureId }) => featureId),
      facts.format,
    ),
    ...pivot,
    ...footSteps(p, facts),
    ...tube,
    {
      kind: 'measure',
      says:
        p.standoffs !== 'single'
          ? `Afterwards: gap ${length(p.gap.mm)} at the pivot and at the foot, pivot square to the frame, what turns falls by its own weight.`
          : 'Afterwards: the pivot is square to the frame from two sides.',
    },
    { kind: 'paint', says: 'Paint; keep it out of the pivot.' },
  ];
}

export function pivotBracketHardware(
  _part: Part,
  p: PivotBracket,
  { format }: Facts,
): readonly HardwareItem[] {
  const answer = resolveBracket(p);
  if (!answer.ok) return [];
  const r = answer.value;
  // What goes through both hands is listed with the one that is not mirrored.
  const isListed = !(p.standoffs === 'handed' && isMirrored(p));
  return [
    ...(p.pivot === 'bolt' || (p.pivot === 'tube' && !isListed)
      ? []
      : [
          {
            id: 'pivot',
            kind: p.pivot === 'tube' ? ('tube' as const) : ('bearing' as const),
            name: `${p.pivot === 'tube' ? 'tube' : 'bush'} ${format.bare(p.outside.mm)} × ${format.bare(p.tubeWall.mm)}`,
            quantity: p.pivot === 'tube' || p.standoffs !== 'pair' ? 1 : 2,
            length: p.pivot === 'tube' ? sawnLength(p) : p.thickness.mm,
            says:
              p.pivot === 'tube'
                ? 'Sawn square, deburred inside; faced to length where it sets the side play.'
                : 'Pressed in flush.',
          },
        ]),
    ...(isListed
      ? pinSet({ thread: r.pin, grade: p.boltGrade, quantity: 1, grip: sawnLength(p) }, format)
      : []),
    ...(r.holes.length === 0 || r.size.made === 'tapped'
      ? []
      : boltItems(
          {
            id: 'foot',
            bolt: p.bolt,
            count: r.holes.length * (p.standoffs === 'pair' ? 2 : 1),
            grip: p.thickness.mm + p.seat.mm,
            grade: p.boltGrade,
          },
          format,
        )),
  ];
}
