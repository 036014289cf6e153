// What follows from a cable stop’s numbers, what is done to it, and what is bought for it.
import type { Facts } from '../../checks/index.js';
import type { Derived, HardwareItem, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { boltItems } from '../shared/bolted.js';
import { holeSteps } from '../shared/holes.js';
import { DEBURR, edgeWeldSteps } from '../shared/weld-steps.js';
import type { CableStop } from './parameters.js';
import { filletOf, resolveStop } from './resolve.js';

export function cableStopDerived(_part: Part, p: CableStop, { format }: DrawContext): readonly Derived[] {
  const answer = resolveStop(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { length } = format;
  return [
    {
      id: 'hole',
      field: p.seat === 'thread' ? 'adjuster' : 'neck',
      title: 'hole',
      value: { amount: r.hole, unit: 'mm' },
      text: p.seat === 'thread' ? `drill ⌀${length(r.hole)}, tap ${p.adjuster}` : `⌀${length(r.hole)}`,
    },
    {
      id: 'nose',
      field: 'nose',
      title: 'nose',
      value: { amount: r.nose, unit: 'mm' },
      text: `R ${length(r.nose)}, ${length(r.nose - r.hole / 2)} of metal round the hole`,
    },
    ...(r.laid.bend === undefined
      ? []
      : [
          {
            id: 'flat',
            field: 'footDepth',
            title: 'flat',
            value: { amount: r.ear.centre.y - r.footEnd, unit: 'mm' as const },
            text: `${length(r.ear.centre.y - r.footEnd)} from the foot’s end to the cable; the bend takes ${length(r.laid.bend.allowance)}`,
          },
        ]),
  ];
}

export function cableStopSteps(_part: Part, p: CableStop, { format }: Facts): readonly ShopStep[] {
  const answer = resolveStop(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { length } = format;
  return [
    DEBURR,
    {
      kind: 'deburr',
      says: `File the ${p.seat === 'slot' ? 'slot and hole' : 'hole'} smooth on both faces: a sharp edge frays a cable strand by strand.`,
      featureIds: [p.seat === 'slot' ? 'outline' : 'cable'],
    },
    ...(r.adjuster === undefined ? [] : holeSteps(r.adjuster, ['cable'], format)),
    ...holeSteps(
      r.foot,
      r.laid.holes.map(({ featureId }) => featureId),
      format,
    ),
    ...(p.foot === 'bent'
      ? [
          {
            kind: 'bend' as const,
            says: `Bend the foot up 90°, inside radius ${length(p.radius.mm)}.`,
            featureIds: ['bend'],
          },
        ]
      : []),
    ...(p.foot === 'weld'
      ? edgeWeldSteps(
          {
            leg: filletOf(p, format.unit),
            sides: p.weldSides,
            to: 'what it stands on',
            fit: 'Fit it with housing and cable in place, the plate square to the cable, the cable running straight out of it; mark both ends of the edge, and take the cable away before welding.',
          },
          format,
        )
      : [
          {
            kind: 'fit' as const,
            says: 'Bolt it on finger tight with housing and cable in place, turn it square to the cable, tighten.',
          },
        ]),
    {
      kind: 'measure',
      says: 'Afterwards: the ferrule seats flat, the cable touches nothing over its whole travel, and the lever comes back by its own spring.',
    },
    { kind: 'paint', says: 'Paint; keep it off the face that the ferrule seats on.' },
  ];
}

export function cableStopHardware(_part: Part, p: CableStop, { format }: Facts): readonly HardwareItem[] {
  const answer = resolveStop(p);
  if (!answer.ok) return [];
  const r = answer.value;
  return [
    ...(r.thread === undefined
      ? []
      : [
          {
            id: 'adjuster',
            kind: 'nut' as const,
            name: `${r.thread.name} adjusting barrel and lock nut`,
            quantity: 1,
            says: `For a cable of ${format.length(p.cable.mm)}.`,
          },
        ]),
    ...(r.laid.holes.length === 0 || r.foot.made === 'tapped'
      ? []
      : boltItems(
          { id: 'foot', bolt: p.bolt, count: r.laid.holes.length, grip: p.thickness.mm + p.boltedTo.mm },
          format,
        )),
  ];
}
