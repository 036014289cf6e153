// What follows from the gap, and what is done to the rings by hand.
import type { Facts } from '../../checks/index.js';
import type { Derived, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { holeSteps } from '../shared/holes.js';
import type { RingSpacer } from './parameters.js';
import { resolveRing } from './resolve.js';
import { stackPlusMinus } from './stack.js';
import { bareFine, ringsText, stackText } from './words.js';

export function ringSpacerDerived(_part: Part, p: RingSpacer, { format }: DrawContext): readonly Derived[] {
  const answer = resolveRing(p);
  if (!answer.ok) return [];
  const { stack, outside, bore } = answer.value;
  const plusMinus = stackPlusMinus(stack);
  const within = plusMinus === undefined ? '± not known' : `±${format.fine(plusMinus)}`;
  return [
    {
      id: 'stack',
      field: 'plates',
      title: 'stack',
      value: { amount: stack.total, unit: 'mm', ...(plusMinus === undefined ? {} : { plusMinus }) },
      text: `${stackText(stack, format)} = ${format.fine(stack.total)}, ${within}`,
    },
    {
      id: 'remains',
      field: 'gap',
      title: 'remains',
      value: { amount: stack.remains, unit: 'mm' },
      text: `${format.fine(stack.remains)} of ${format.fine(p.gap.mm)}`,
    },
    ...stack.layers.map(({ sheet, count }) => ({
      id: `rings.${bareFine(sheet.thickness, format)}`,
      field: 'plates',
      title: `rings of ${format.fine(sheet.thickness)}`,
      value: { amount: count * p.places, unit: '1' as const },
      text: p.places > 1 ? `${count * p.places}: ${count} in each of ${p.places} places` : String(count),
    })),
    {
      id: 'ring',
      title: 'ring',
      value: { amount: (outside - bore) / 2, unit: 'mm' },
      text: `⌀${format.length(outside)} outside, ⌀${format.length(bore)} bore: ${format.length((outside - bore) / 2)} wide`,
    },
  ];
}

export function ringSpacerSteps(_part: Part, p: RingSpacer, facts: Facts): readonly ShopStep[] {
  const answer = resolveRing(p);
  if (!answer.ok) return [];
  const { stack, layer, bore, holes } = answer.value;
  const { length, fine } = facts.format;
  const others = stack.layers.filter((one) => one !== layer);
  return [
    ...others.map(({ sheet, count }): ShopStep => ({
      kind: 'cut',
      says: `The stack also takes ${ringsText(count * p.places)} of ${fine(sheet.thickness)}: the same outline, from that plate.`,
    })),
    {
      kind: 'deburr',
      says: 'Scrape dross and stone both faces flat: a bead of 0.2 mm on each ring is what remains of the gap.',
    },
    {
      kind: 'grind',
      says: 'Scale off both faces; it crushes and comes loose under a bolt.',
    },
    ...(p.boreMade === 'drill'
      ? [
          {
            kind: 'drill' as const,
            says: `Punch the middle, pilot, drill ${length(bore)}.`,
            featureIds: ['bore'],
          },
        ]
      : []),
    ...(holes === undefined
      ? []
      : holeSteps(
          holes.size,
          holes.places.map(({ featureId }) => featureId),
          facts.format,
        )),
    {
      kind: 'measure',
      says: `Measure each ring at three places, then the stack pressed together: ${fine(stack.total)} is wanted.`,
    },
    {
      kind: 'fit',
      says: `${stack.rings > 2 ? 'Thin rings between thick ones. ' : ''}${fine(stack.remains)} is to remain of a gap of ${fine(p.gap.mm)}; feel it with a feeler gauge before the bolt is drawn up.`,
    },
  ];
}
