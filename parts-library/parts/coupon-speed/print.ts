// Dimensions, derived values and steps of a speed ladder.
import { percent, type Facts } from '../../checks/index.js';
import type { Derived, Dimension, Part, ShopStep } from '../../model/index.js';
import { writeSpeed } from '../../units/index.js';
import type { DrawContext } from '../family.js';
import { ladderDimensions } from '../shared/coupon/ladder-print.js';
import { SCRAPED, settingUp, writingDown } from '../shared/coupon/steps.js';
import { inOrder } from '../shared/in-order.js';
import type { CouponSpeed } from './parameters.js';
import { speedLadder } from './resolve.js';

export function couponSpeedDimensions(
  _part: Part,
  p: CouponSpeed,
  { format }: DrawContext,
): readonly Dimension[] {
  const answer = speedLadder(p, format);
  if (!answer.ok) return [];
  const { ladder, slotWidth } = answer.value;
  return inOrder(
    ladderDimensions(
      ladder,
      {
        straight: p.line.mm,
        straightWords: 'at speed',
        slotWidth,
        straightField: 'line',
        settingField: 'speed',
        setting: (text) => `${text} ${format.unit}/min`,
        thickness: p.thickness.mm,
      },
      format,
    ),
  );
}

export function couponSpeedDerived(_part: Part, p: CouponSpeed, { format }: DrawContext): readonly Derived[] {
  const answer = speedLadder(p, format);
  if (!answer.ok) return [];
  const { chartSpeed, lines, runUp, setting } = answer.value;
  const speed = (value: number): string => writeSpeed(value, { unit: format.unit, decimals: 0 });
  return [
    {
      id: 'speed',
      field: 'speed',
      title: 'chart speed',
      value: { amount: 100, unit: '%' },
      text: `${speed(chartSpeed)}${p.speed === undefined ? `, ${setting.processClass} of the starting chart, at most ${speed(setting.row.ceilingSpeed)}` : ''}`,
    },
    {
      id: 'lines',
      field: 'step',
      title: 'speeds tried',
      value: { amount: lines.length, unit: '1' },
      text: lines.map((line) => `${percent(line.share)} ${speed(line.speed)}`).join(', '),
    },
    {
      id: 'runUp',
      field: 'acceleration',
      title: 'run-up',
      value: { amount: runUp, unit: 'mm' },
      text: `${format.length(runUp)} at each end, for the fastest line`,
    },
  ];
}

export function couponSpeedSteps(_part: Part, p: CouponSpeed, facts: Facts): readonly ShopStep[] {
  const answer = speedLadder(p, facts.format);
  if (!answer.ok) return [];
  const { lines, setting } = answer.value;
  const { unit } = facts.format;
  return [
    ...settingUp(
      setting,
      'Pierce delay first, from its own ladder; height held still; only the speed changes.',
      facts.format,
    ),
    ...lines.map(({ share, speed }, index): ShopStep => ({
      kind: 'cut',
      says: `Line ${index + 1}: ${writeSpeed(speed, { unit, decimals: 0 })} (${percent(share)}); chalk the number on its slug as it drops.`,
      featureIds: [`rung.${index + 1}`],
    })),
    { kind: 'cut', says: 'Then the outside, at chart speed.' },
    SCRAPED,
    writingDown(
      'On the middle of each line, top and bottom: dross that scrapes off (too slow), a thin hard bead (too fast), drag lines, lean. Take the middle of the clean lines.',
    ),
  ];
}
