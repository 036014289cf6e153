// Dimensions, derived values and steps of a fit ladder.
import type { Facts } from '../../checks/index.js';
import type { Derived, Dimension, Part, ShopStep } from '../../model/index.js';
import { slotForTab } from '../../process/index.js';
import type { DrawContext } from '../family.js';
import { SCRAPED, settingUp, writingDown } from '../shared/coupon/steps.js';
import { inOrder } from '../shared/in-order.js';
import type { CouponFit } from './parameters.js';
import { fitLadder } from './resolve.js';

export function couponFitDimensions(
  _part: Part,
  p: CouponFit,
  { format }: DrawContext,
): readonly Dimension[] {
  const answer = fitLadder(p, format);
  if (!answer.ok) return [];
  const { slots, bores, eye, width, height } = answer.value;
  const text = format.bare;
  const [slot, next] = slots;
  const [bore, nextBore] = bores;
  const [last, lastBore] = [slots.at(-1), bores.at(-1)];
  if (slot === undefined || bore === undefined || next === undefined || last === undefined) return [];
  const half = p.slotLength.mm / 2;
  return inOrder([
    {
      id: 'tab',
      kind: 'leader',
      at: { x: slot.at.x - slot.size / 2, y: slot.at.y },
      field: 'tab',
      text: `tab ${text(p.tab.mm)} + ${text(p.first.mm)}`,
    },
    {
      id: 'step',
      kind: 'leader',
      at: { x: last.at.x + last.size / 2, y: last.at.y },
      field: 'step',
      text: `steps of ${text(p.step.mm)}`,
    },
    {
      id: 'slotLength',
      kind: 'linear',
      along: 'y',
      from: { x: last.at.x + last.size / 2, y: last.at.y - half },
      to: { x: last.at.x + last.size / 2, y: last.at.y + half },
      field: 'slotLength',
      text: text(p.slotLength.mm),
    },
    {
      id: 'pin',
      kind: 'diameter',
      centre: bore.at,
      radius: bore.size / 2,
      field: 'pin',
      text: `pin ⌀${text(p.pin.mm)} + ${text(p.first.mm)}`,
    },
    lastBore === undefined
      ? undefined
      : {
          id: 'count',
          kind: 'leader',
          at: { x: lastBore.at.x + lastBore.size / 2, y: lastBore.at.y },
          field: 'count',
          text: `${bores.length} of each`,
        },
    nextBore === undefined
      ? undefined
      : {
          id: 'pitch',
          kind: 'linear',
          along: 'x',
          from: bore.at,
          to: nextBore.at,
          text: text(nextBore.at.x - bore.at.x),
        },
    eye === undefined
      ? undefined
      : {
          id: 'eye',
          kind: 'leader',
          at: {
            x: last.at.x + eye,
            y: last.at.y - half - Math.sqrt(Math.max(0, eye ** 2 - (last.size / 2) ** 2)),
          },
          text: `eye ⌀${text(2 * eye)}`,
        },
    {
      id: 'width',
      kind: 'linear',
      along: 'x',
      from: { x: 0, y: height },
      to: { x: width, y: height },
      text: text(width),
    },
    {
      id: 'height',
      kind: 'linear',
      along: 'y',
      from: { x: 0, y: 0 },
      to: { x: 0, y: height },
      text: text(height),
    },
    {
      id: 'thickness',
      kind: 'leader',
      at: { x: width, y: height * 0.94 },
      field: 'thickness',
      text: `t ${text(p.thickness.mm)}`,
    },
  ]);
}

export function couponFitDerived(_part: Part, p: CouponFit, { format }: DrawContext): readonly Derived[] {
  const answer = fitLadder(p, format);
  if (!answer.ok) return [];
  const { slots, bores } = answer.value;
  const { length } = format;
  const wanted = slotForTab(p.tab.mm, p.thickness.mm);
  return [
    {
      id: 'slots',
      field: 'tab',
      title: 'slots',
      value: { amount: slots.length, unit: '1' },
      text: slots.map(({ size }) => length(size)).join(', '),
    },
    {
      id: 'bores',
      field: 'pin',
      title: 'bores',
      value: { amount: bores.length, unit: '1' },
      text: bores.map(({ size }) => `⌀${length(size)}`).join(', '),
    },
    {
      id: 'expected',
      field: 'tab',
      title: 'slot to expect',
      value: { amount: (wanted.least + wanted.most) / 2, unit: 'mm' },
      text: `${length(wanted.least)} to ${length(wanted.most)} for a tab of ${length(p.tab.mm)}`,
    },
    ...(p.slotFits === undefined
      ? []
      : [
          {
            id: 'slotClearance',
            field: 'slotFits',
            title: 'clearance of a slot',
            value: { amount: p.slotFits.mm - p.tab.mm, unit: 'mm' as const },
            text: length(p.slotFits.mm - p.tab.mm),
          },
        ]),
    ...(p.boreFits === undefined
      ? []
      : [
          {
            id: 'boreClearance',
            field: 'boreFits',
            title: 'clearance of a bore',
            value: { amount: p.boreFits.mm - p.pin.mm, unit: 'mm' as const },
            text: length(p.boreFits.mm - p.pin.mm),
          },
        ]),
  ];
}

export function couponFitSteps(_part: Part, p: CouponFit, facts: Facts): readonly ShopStep[] {
  const answer = fitLadder(p, facts.format);
  if (!answer.ok) return [];
  const { slots, bores, setting } = answer.value;
  const { length } = facts.format;
  return [
    ...settingUp(
      setting,
      'Kerf and hole kerf from their own coupons first: a fit on a kerf that was guessed says nothing.',
      facts.format,
    ),
    {
      kind: 'cut',
      says: 'Bores at hole speed, slots at chart speed, then the outside.',
      featureIds: [...bores, ...slots].map(({ id }) => id),
    },
    SCRAPED,
    {
      kind: 'fit',
      says: `Tab of ${length(p.tab.mm)}: from the smallest slot up, by hand, and with one tap; the tab a little shorter than the slot, whose corners come out as round as half a kerf. Pin of ${length(p.pin.mm)}: from the smallest bore up, from the top and from below.`,
    },
    writingDown('The smallest slot and the smallest bore that fit as you want them: their etched sizes.'),
  ];
}
