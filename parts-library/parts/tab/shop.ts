// What follows from a tab's numbers, what is done to it, and what is bought for it.
import type { Facts } from '../../checks/index.js';
import type { Derived, HardwareItem, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { pinSet } from '../shared/pin-set.js';
import { holeSteps } from '../shared/holes.js';
import { DEBURR, edgeWeldSteps } from '../shared/weld-steps.js';
import type { Tab } from './parameters.js';
import { filletOf, gapOf, resolveTab } from './resolve.js';

export function tabDerived(_part: Part, p: Tab, { format }: DrawContext): readonly Derived[] {
  const answer = resolveTab(p);
  if (!answer.ok) return [];
  const { outline, nose, size } = answer.value;
  const gap = gapOf(p);
  return [
    {
      id: 'nose',
      field: 'nose',
      title: 'nose',
      value: { amount: nose, unit: 'mm' },
      text: `R ${format.length(nose)}, ${format.length(nose - size.diameter / 2)} of metal beside the hole`,
    },
    {
      id: 'weld',
      field: 'base',
      title: 'weld',
      value: { amount: outline.edge.length, unit: 'mm' },
      text: `${format.length(outline.edge.length)} long, leg ${format.length(filletOf(p, format.unit))}${p.weldSides === 'both' ? ', both sides' : ''}`,
    },
    ...(p.edge === 'coped'
      ? [
          {
            id: 'cope',
            field: 'tube',
            title: 'cope',
            value: { amount: outline.edge.drop, unit: 'mm' as const },
            text: `${format.length(outline.edge.drop)} deep from the crest to the corners`,
          },
        ]
      : []),
    ...(gap === undefined
      ? []
      : [
          {
            id: 'gap',
            field: 'play',
            title: 'gap',
            value: { amount: gap, unit: 'mm' as const },
            text: `${format.length(gap)} inside the pair`,
          },
        ]),
  ];
}

export function tabSteps(_part: Part, p: Tab, { format }: Facts): readonly ShopStep[] {
  const answer = resolveTab(p);
  if (!answer.ok) return [];
  const { outline, size } = answer.value;
  const gap = gapOf(p);
  return [
    DEBURR,
    {
      kind: 'measure',
      says: `Measure edge to hole, ${format.length(p.height.mm)}, before the torch is set for the next one.`,
    },
    ...holeSteps(size, ['hole'], format),
    ...(size.made === 'clearance' || size.made === 'plain'
      ? [
          {
            kind: 'ream' as const,
            says: `Where the pin turns, cut the hole 3 mm under and drill or ream it: a plasma-cut hole is tapered and hard, and wears a pin.`,
            featureIds: ['hole'],
          },
        ]
      : []),
    ...edgeWeldSteps(
      {
        leg: filletOf(p, format.unit),
        sides: p.weldSides,
        to: 'the tube',
        fit:
          gap === undefined
            ? 'Dry fit with its bolt and what it carries; mark the edge’s ends on the tube.'
            : `Bolt the pair together over a spacer of ${format.length(gap)}, dry fit on the tube, mark both edges’ ends.`,
      },
      format,
    ),
    ...(p.edge === 'coped' && outline.edge.drop > 0
      ? [
          {
            kind: 'measure' as const,
            says: `After welding: height of the pin over the tube’s crest, ${format.length(p.height.mm)}.`,
          },
        ]
      : []),
    ...(gap === undefined
      ? []
      : [
          {
            kind: 'measure' as const,
            says: `After welding: gap ${format.length(gap)} at the pin and at the foot; the eye slides in by hand.`,
          },
        ]),
    { kind: 'paint', says: 'Wire-brush the beads, paint; keep paint out of the hole.' },
  ];
}

export function tabHardware(_part: Part, p: Tab, { format }: Facts): readonly HardwareItem[] {
  const answer = resolveTab(p);
  if (!answer.ok || answer.value.size.made === 'tapped') return [];
  const gap = gapOf(p);
  return pinSet(
    {
      thread: answer.value.size.thread,
      grade: p.boltGrade,
      quantity: 1,
      grip: gap === undefined ? p.thickness.mm + p.eye.mm : 2 * p.thickness.mm + gap,
    },
    format,
  );
}
