// Derived values, ghosts, steps and hardware of a tensioner arm.
import type { Facts } from '../../checks/index.js';
import type { Derived, Ghost, HardwareItem, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { boltItems, headGhosts } from '../shared/bolted.js';
import { holeSteps } from '../shared/holes.js';
import { lineGhost } from '../shared/mating.js';
import { DEBURR } from '../shared/weld-steps.js';
import { roundText } from '../shared/words.js';
import type { TensionerArm } from './parameters.js';
import { areAlike, onArm, resolveArm } from './resolve.js';

export function tensionerArmDerived(
  _part: Part,
  p: TensionerArm,
  { format }: DrawContext,
): readonly Derived[] {
  const answer = resolveArm(p);
  if (!answer.ok) return [];
  const { travel, slot } = answer.value;
  return [
    {
      id: 'travel',
      field: 'swing',
      title: 'idler travel',
      value: { amount: travel.across, unit: 'mm' },
      text: `${format.length(travel.across)} across the strand over ${roundText(p.swing.value)}°`,
    },
    {
      id: 'take-up',
      field: 'swing',
      title: 'take-up',
      value: { amount: travel.takeUp, unit: 'mm' },
      text: `${format.length(travel.takeUp)} of chain, ${roundText(travel.takeUp / travel.chain.pitch)} links of ${travel.chain.name}`,
    },
    {
      id: 'wrap',
      field: 'press',
      title: 'wrap of the idler',
      value: { amount: travel.start.wrapDegrees, unit: 'degrees' },
      text: `${roundText(travel.start.wrapDegrees)}° at the start, ${roundText(travel.end.wrapDegrees)}° at the end`,
    },
    ...(slot === undefined
      ? []
      : [
          {
            id: 'slot',
            field: 'slotRadius',
            title: 'slot',
            value: { amount: slot.travel, unit: 'mm' as const },
            text: `${format.length(slot.size.diameter)} wide, ${format.length(slot.travel)} of way for its bolt`,
          },
        ]),
  ];
}

/** The idler in the middle and at both ends of its swing, the strand on it, heads of the bolts. */
export function tensionerArmGhosts(_part: Part, p: TensionerArm, _facts: Facts): readonly Ghost[] {
  const answer = resolveArm(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const half = p.swing.value / 2;
  const round = (
    id: string,
    kind: Ghost['kind'],
    degrees: number,
    radius: number,
    label?: string,
  ): Ghost => ({
    id,
    kind,
    ...(label === undefined ? {} : { label }),
    shape: { circle: { centre: onArm(p.arm.mm, degrees), radius } },
  });
  const { pitchRadius, outerRadius, chain } = r.travel;
  // The strand touches the idler's pitch circle on the side that it is pressed towards.
  const along = onArm(1.6 * pitchRadius, -p.chainAngle.value);
  const up = onArm(pitchRadius, 90 - p.chainAngle.value);
  const touch = { x: p.arm.mm + up.x, y: up.y };
  return [
    round(
      'idler',
      'chain',
      0,
      pitchRadius,
      `idler, ${p.idler === 'sprocket' ? `${p.teeth} teeth` : 'roller'}`,
    ),
    round('idler.swept', 'mating-part', 0, outerRadius),
    round('idler.from', 'mating-part', -half, r.idlerNose),
    round('idler.to', 'mating-part', half, r.idlerNose, 'both ends of the swing'),
    lineGhost(
      'strand',
      'chain',
      { x: touch.x - along.x, y: touch.y - along.y },
      { x: touch.x + along.x, y: touch.y + along.y },
      `strand of ${chain.name}`,
    ),
    ...headGhosts(r.pivot, [r.pivotHole]),
    ...headGhosts(r.idler, [r.idlerHole]),
    ...(r.slot === undefined ? [] : headGhosts(r.slot.size, [r.slot.middle])),
    ...(p.bush === undefined
      ? []
      : [
          {
            id: 'bush',
            kind: 'hub' as const,
            label: 'pivot tube',
            shape: { circle: { centre: { x: 0, y: 0 }, radius: p.bush.mm / 2 } },
          },
        ]),
  ];
}

export function tensionerArmSteps(_part: Part, p: TensionerArm, facts: Facts): readonly ShopStep[] {
  const answer = resolveArm(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { length } = facts.format;
  return [
    DEBURR,
    { kind: 'measure', says: 'Measure slot and openings before the arm leaves the table.' },
    ...(areAlike(p, r)
      ? holeSteps(r.idler, ['pivot', 'idler'], facts.format)
      : [
          ...(p.bush === undefined ? holeSteps(r.pivot, ['pivot'], facts.format) : []),
          ...holeSteps(r.idler, ['idler'], facts.format),
        ]),
    ...(r.slot === undefined
      ? []
      : [
          {
            kind: 'grind' as const,
            says: `File the slot until ${r.slot.size.thread.name} runs from end to end; both faces flat under its washer.`,
            featureIds: ['slot'],
          },
        ]),
    ...(p.bush === undefined
      ? []
      : [
          {
            kind: 'grind' as const,
            says: 'Grind the pivot’s edge to bright metal; nitrided edges make porous welds.',
            featureIds: ['pivot'],
          },
          {
            kind: 'weld' as const,
            says: 'Tack the pivot tube square at three points, weld both sides in short runs, chase its bore after.',
            featureIds: ['pivot'],
          },
        ]),
    {
      kind: 'fit',
      says: `Hang the arm, swing it from end to end by hand: the idler must stand in the chain’s line within ${length(1)} and clear of everything.`,
    },
    {
      kind: 'indicate',
      says: 'Straight edge along sprocket and idler; shim the spacer until the chain runs in the middle.',
    },
    {
      kind: 'caution',
      says: 'Set the slack with the drive locked; fingers out of the chain. Look again after the first hour.',
    },
  ];
}

export function tensionerArmHardware(_part: Part, p: TensionerArm, facts: Facts): readonly HardwareItem[] {
  const answer = resolveArm(p);
  if (!answer.ok) return [];
  const { slot, idler, pivot } = answer.value;
  const t = p.thickness.mm;
  const into = (size: typeof idler) => (size.made === 'tapped' ? { into: t } : {});
  return [
    ...boltItems(
      {
        id: 'pivot',
        bolt: p.pivotBolt,
        count: 1,
        grip: p.under.mm + (pivot.made === 'tapped' && p.bush === undefined ? 0 : t),
        ...(p.bush === undefined ? into(pivot) : {}),
      },
      facts.format,
    ),
    ...boltItems(
      {
        id: 'idler',
        bolt: p.idlerBolt,
        count: 1,
        grip: p.idlerStack.mm + (idler.made === 'tapped' ? 0 : t),
        ...into(idler),
      },
      facts.format,
    ),
    ...(slot === undefined
      ? []
      : boltItems(
          { id: 'lock', bolt: p.lockBolt, count: 1, grip: p.under.mm + t, overSlot: true },
          facts.format,
        )),
    {
      id: 'idler.wheel',
      kind: 'bearing',
      name:
        p.idler === 'sprocket'
          ? `idler sprocket for ${p.chain}, ${p.teeth} teeth, on a sealed bearing`
          : `idler roller ⌀${facts.format.bare(p.roller.mm)}, on a sealed bearing`,
      quantity: 1,
      says: `Bore for ${p.idlerBolt}.`,
    },
    ...(p.bush === undefined
      ? []
      : [
          {
            id: 'bush',
            kind: 'tube' as const,
            name: `pivot tube ⌀${facts.format.bare(p.bush.mm)}, bore for ${p.pivotBolt}`,
            quantity: 1,
            length: t + 10,
            says: 'Plain low-carbon steel; 0.2 mm longer than what it turns between once it is welded and faced.',
          },
        ]),
    ...(p.lock === 'spring'
      ? [
          {
            id: 'spring',
            kind: 'spring' as const,
            name: `tension spring, ${Math.round(p.springForce.value)} N in the middle of the swing`,
            quantity: 1,
            says: `Works over ${facts.format.length((p.springAt.mm * p.swing.value * Math.PI) / 180)}.`,
          },
        ]
      : []),
  ];
}
