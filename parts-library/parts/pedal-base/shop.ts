// What follows from a pedal base’s numbers, what is done to it, and what is bought for it.
import type { Facts } from '../../checks/index.js';
import { linePressure } from '../../handbook/index.js';
import type { Derived, HardwareItem, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { boltItems } from '../shared/bolted.js';
import { holeSteps } from '../shared/holes.js';
import { DEBURR, edgeWeldSteps } from '../shared/weld-steps.js';
import { rodRise } from './check.js';
import type { PedalBase } from './parameters.js';
import { filletOf, resolveBase } from './resolve.js';
import { pedalForces } from './statics.js';

export function pedalBaseDerived(_part: Part, p: PedalBase, { format }: DrawContext): readonly Derived[] {
  if (!resolveBase(p).ok) return [];
  const { ratio, rod, pivot } = pedalForces(p);
  return [
    {
      id: 'ratio',
      field: 'pivotDrop',
      title: 'ratio',
      value: { amount: ratio, unit: '1' },
      text: `${Number(ratio.toFixed(2))} to 1${p.pivotMount === 'slots' && p.travel.mm > 0 ? `; ${Number((p.padReach.mm / (p.pivotDrop.mm + p.travel.mm / 2)).toFixed(2))} to ${Number((p.padReach.mm / Math.max(1, p.pivotDrop.mm - p.travel.mm / 2)).toFixed(2))} over the slots, pad and rod staying` : ''}`,
    },
    {
      id: 'rod',
      field: 'footForce',
      title: 'rod',
      value: { amount: rod, unit: 'N' },
      text: `${format.force(rod)} on the cylinder, ${format.force(pivot)} back on the pivot`,
    },
    ...(p.bore === undefined
      ? []
      : [
          {
            id: 'pressure',
            field: 'bore',
            title: 'line pressure',
            value: { amount: linePressure(rod, p.bore.mm).value, unit: 'MPa' as const },
            text: format.stress(linePressure(rod, p.bore.mm).value),
          },
        ]),
    {
      id: 'rise',
      field: 'swing',
      title: 'rod’s rise',
      value: { amount: rodRise(p), unit: 'mm' },
      text: `${format.length(rodRise(p))} off its line over the swing`,
    },
  ];
}

export function pedalBaseSteps(_part: Part, p: PedalBase, { format }: Facts): readonly ShopStep[] {
  const answer = resolveBase(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { length } = format;
  return [
    DEBURR,
    {
      kind: 'measure',
      says: `Lay the cylinder on: its bolts drop through, the rod stands in the window’s middle. Spacing ${length(p.cylinderSpacing.mm)}.`,
      featureIds: ['window'],
    },
    ...holeSteps(
      r.cylinder,
      r.cylinderHoles.map(({ featureId }) => featureId),
      format,
    ),
    ...(p.pivotMount === 'welded'
      ? [
          {
            kind: 'grind' as const,
            says: 'Grind the ears’ places and edges to bright metal; leave the etched lines readable.',
          },
          {
            kind: 'fit' as const,
            says: `Stand both ears on their lines, on a straight bar through the pivot with a spacer of ${length(p.gap.mm)}; bar square to the rod, ${length(p.pivotOut.mm)} before the plate.`,
          },
          {
            kind: 'tack' as const,
            says: 'Tack both ears outside, hang the pedal in, push it through its whole swing.',
          },
          {
            kind: 'weld' as const,
            says: 'Weld the ears in short runs from side to side, bar and spacer in place; the plate draws hollow, straighten it cold.',
          },
        ]
      : [
          {
            kind: 'fit' as const,
            says: `Bolt the ears on finger tight on a bar through the pivot, gap ${length(p.gap.mm)}, tighten with the rod square to the pivot at half stroke.`,
          },
        ]),
    ...(p.mount === 'weld'
      ? edgeWeldSteps(
          {
            leg: filletOf(p, format.unit),
            sides: p.weldSides,
            to: 'what it stands on',
            fit: 'Stand the plate on its place, square both ways, cylinder taken off.',
          },
          format,
        )
      : []),
    {
      kind: 'measure',
      says: 'Free play of about 1 mm at the rod with the pedal at rest; full stroke, reserve included, before anything stops the pedal.',
    },
    {
      kind: 'caution',
      says: 'Push it with your whole weight before driving, look for cracks and for give, and again after the first day. No weld spatter or heat near the cylinder: take it off first.',
    },
    { kind: 'paint', says: 'Paint; keep it off the flange’s seat and out of the pivot.' },
  ];
}

export function pedalBaseHardware(_part: Part, p: PedalBase, { format }: Facts): readonly HardwareItem[] {
  const answer = resolveBase(p);
  if (!answer.ok) return [];
  const r = answer.value;
  return [
    ...(r.cylinder.made === 'tapped'
      ? boltItems({ id: 'cylinder', bolt: p.bolt, count: 2, grip: p.flange.mm, into: p.thickness.mm }, format)
      : boltItems({ id: 'cylinder', bolt: p.bolt, count: 2, grip: p.flange.mm + p.thickness.mm }, format)),
    ...(r.earHoles.length === 0
      ? []
      : boltItems(
          {
            id: 'ears',
            bolt: p.earBolt,
            count: 4,
            grip: p.thickness.mm + p.earThickness.mm,
            overSlot: p.travel.mm > 0,
          },
          format,
        )),
    ...(r.mountHoles.length === 0
      ? []
      : boltItems({ id: 'mount', bolt: p.mountBolt, count: 4, grip: p.thickness.mm + p.seat.mm }, format)),
  ];
}
