// Dimensions, derived values and steps of a pierce-delay ladder.
import type { Facts } from '../../checks/index.js';
import type { Derived, Dimension, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { ladderDimensions } from '../shared/coupon/ladder-print.js';
import { SCRAPED, settingUp, writingDown } from '../shared/coupon/steps.js';
import { inOrder } from '../shared/in-order.js';
import { DELAY_MARGIN } from './check.js';
import type { CouponPierce } from './parameters.js';
import { pierceLadder, seconds } from './resolve.js';

export function couponPierceDimensions(
  _part: Part,
  p: CouponPierce,
  { format }: DrawContext,
): readonly Dimension[] {
  const answer = pierceLadder(p, format);
  if (!answer.ok) return [];
  const { ladder, slotWidth } = answer.value;
  return inOrder(
    ladderDimensions(
      ladder,
      {
        straight: p.cut.mm,
        straightWords: 'straight',
        slotWidth,
        straightField: 'cut',
        settingField: 'delay',
        setting: (text) => `delay ${text} s`,
        thickness: p.thickness.mm,
      },
      format,
    ),
  );
}

export function couponPierceDerived(
  _part: Part,
  p: CouponPierce,
  { format }: DrawContext,
): readonly Derived[] {
  const answer = pierceLadder(p, format);
  if (!answer.ok) return [];
  const { delay, delays, setting } = answer.value;
  return [
    {
      id: 'delay',
      field: 'delay',
      title: 'chart delay',
      value: { amount: delay, unit: 's' },
      text: `${seconds(delay)}${p.delay === undefined ? `, ${setting.processClass} of the starting chart` : ''}`,
    },
    {
      id: 'rungs',
      field: 'rungs',
      title: 'delays tried',
      value: { amount: delays.length, unit: '1' },
      text: delays.map(seconds).join(', '),
    },
    ...(p.found === undefined
      ? []
      : [
          {
            id: 'use',
            field: 'found',
            title: 'delay to use',
            value: { amount: p.found.value + DELAY_MARGIN, unit: 's' as const },
            text: seconds(p.found.value + DELAY_MARGIN),
          },
        ]),
  ];
}

export function couponPierceSteps(_part: Part, p: CouponPierce, facts: Facts): readonly ShopStep[] {
  const answer = pierceLadder(p, facts.format);
  if (!answer.ok) return [];
  const { delays, setting } = answer.value;
  return [
    ...settingUp(setting, 'Speed and height of the chart; only the delay changes.', facts.format),
    ...delays.map((value, index): ShopStep => ({
      kind: 'cut',
      says: `Slot ${index + 1}: pierce delay ${seconds(value)}.`,
      featureIds: [`rung.${index + 1}`],
    })),
    {
      kind: 'cut',
      says: 'Then the outside. Watch each pierce: sparks that go on flying up when the torch sets off say that it was too short.',
    },
    SCRAPED,
    writingDown(
      `Turn it over: the shortest delay whose lead-in is severed from its first millimetre. Add ${seconds(DELAY_MARGIN)} for production.`,
    ),
  ];
}
