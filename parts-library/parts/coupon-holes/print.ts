// Dimensions, derived values and steps of a hole ladder.
import type { Facts } from '../../checks/index.js';
import type { Derived, Dimension, Part, ShopStep } from '../../model/index.js';
import { writeSpeed } from '../../units/index.js';
import type { DrawContext } from '../family.js';
import { SCRAPED, settingUp, writingDown } from '../shared/coupon/steps.js';
import { inOrder, type DimensionSpec } from '../shared/in-order.js';
import type { CouponHoles } from './parameters.js';
import { holeLadder } from './resolve.js';

export function couponHolesDimensions(
  _part: Part,
  p: CouponHoles,
  { format }: DrawContext,
): readonly Dimension[] {
  const answer = holeLadder(p, format);
  if (!answer.ok) return [];
  const { rows, width, height, diameters } = answer.value;
  const text = format.bare;
  const last = rows.at(-1)?.holes ?? [];
  const sizes = last.map(({ at, diameter }, index): DimensionSpec => ({
    id: `diameter.${index + 1}`,
    kind: 'diameter',
    centre: at,
    radius: diameter / 2,
    degrees: 270,
    field: 'diameters',
    text: `⌀${text(diameter)}`,
  }));
  const middle = rows[Math.floor(rows.length / 2)];
  const end = middle?.holes.at(-1);
  const second = rows[1]?.holes.at(-1);
  const first = rows[0]?.holes.at(-1);
  const largest = Math.max(...diameters);
  return inOrder([
    ...sizes,
    end === undefined || middle === undefined
      ? undefined
      : {
          id: 'speed',
          kind: 'leader',
          at: { x: end.at.x + end.diameter / 2, y: end.at.y },
          field: 'speed',
          text: `${middle.text}: ${writeSpeed(middle.speed, { unit: format.unit, decimals: 0 })}`,
        },
    first === undefined || second === undefined
      ? undefined
      : {
          id: 'pitch',
          kind: 'linear',
          along: 'y',
          from: { x: second.at.x + largest / 2, y: second.at.y },
          to: { x: first.at.x + largest / 2, y: first.at.y },
          field: 'rows',
          text: `${text(first.at.y - second.at.y)}, ${rows.length} rows`,
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

export function couponHolesDerived(_part: Part, p: CouponHoles, { format }: DrawContext): readonly Derived[] {
  const answer = holeLadder(p, format);
  if (!answer.ok) return [];
  const { rows, diameters, chartSpeed, setting } = answer.value;
  const speed = (value: number): string => writeSpeed(value, { unit: format.unit, decimals: 0 });
  return [
    {
      id: 'diameters',
      field: 'diameters',
      title: 'diameters',
      value: { amount: diameters.length, unit: '1' },
      text: diameters
        .map(
          (diameter) => `⌀${format.length(diameter)} (${Number((diameter / p.thickness.mm).toFixed(2))} t)`,
        )
        .join(', '),
    },
    {
      id: 'speeds',
      field: 'rows',
      title: 'speeds',
      value: { amount: rows.length, unit: '1' },
      text: `${rows.map((row) => `${row.text} ${speed(row.speed)}`).join(', ')}; of ${speed(chartSpeed)}${p.speed === undefined ? ` for ${setting.processClass} in the starting chart` : ''}`,
    },
  ];
}

export function couponHolesSteps(_part: Part, p: CouponHoles, facts: Facts): readonly ShopStep[] {
  const answer = holeLadder(p, facts.format);
  if (!answer.ok) return [];
  const { rows, setting } = answer.value;
  const { unit } = facts.format;
  return [
    ...settingUp(
      setting,
      'Kerf and speed from their own coupons first; height held still without height control, pierced in the middle, no lead-out.',
      facts.format,
    ),
    ...rows.map((row, index): ShopStep => ({
      kind: 'cut',
      says: `Row ${index + 1}, ${row.text}: ${writeSpeed(row.speed, { unit, decimals: 0 })}, smallest hole first.`,
      featureIds: row.holes.map(({ id }) => id),
    })),
    { kind: 'cut', says: 'Then the outside.' },
    SCRAPED,
    writingDown(
      'Each hole at top and bottom, along x and along y: smallest diameter, roundness, lean, and which bolt passes. Take the row that is roundest and straightest; hole kerf = measured bottom − (nominal − kerf set).',
    ),
  ];
}
