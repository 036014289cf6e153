// Dimensions, derived values and steps of a kerf coupon.
import type { Facts } from '../../checks/index.js';
import type { Derived, Dimension, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { SCRAPED, settingUp, writingDown } from '../shared/coupon/steps.js';
import { couponSetting } from '../shared/coupon/setting.js';
import { inOrder, type DimensionSpec } from '../shared/in-order.js';
import type { CouponKerf } from './parameters.js';

export function couponKerfDimensions(
  _part: Part,
  p: CouponKerf,
  { format }: DrawContext,
): readonly Dimension[] {
  const text = format.bare;
  const [outer, inner] = [p.side.mm / 2, p.window.mm / 2];
  const across = (id: string, half: number, at: number, along: 'x' | 'y', field: string): DimensionSpec => ({
    id,
    kind: 'linear',
    along,
    from: along === 'x' ? { x: -half, y: at } : { x: at, y: -half },
    to: along === 'x' ? { x: half, y: at } : { x: at, y: half },
    field,
    text: text(2 * half),
  });
  const read = (
    id: keyof CouponKerf,
    word: string,
    at: { x: number; y: number },
  ): DimensionSpec | undefined => {
    const entry = p[id];
    return typeof entry === 'object' && 'mm' in entry
      ? { id: `read.${id}`, kind: 'leader', at, field: id, text: `${word} ${text(entry.mm)}` }
      : undefined;
  };
  return inOrder([
    across('side.x', outer, -outer, 'x', 'side'),
    across('side.y', outer, -outer, 'y', 'side'),
    across('window.x', inner, -inner, 'x', 'window'),
    across('window.y', inner, -inner, 'y', 'window'),
    {
      id: 'thickness',
      kind: 'leader',
      at: { x: outer, y: outer / 2 },
      field: 'thickness',
      text: `t ${text(p.thickness.mm)}`,
    },
    read('outsideX', 'x read', { x: outer, y: -outer / 2 }),
    read('outsideY', 'y read', { x: -outer / 2, y: outer }),
    read('windowX', 'x read', { x: inner, y: -inner / 2 }),
    read('windowY', 'y read', { x: inner / 2, y: inner }),
  ]);
}

export function couponKerfDerived(_part: Part, p: CouponKerf, { format }: DrawContext): readonly Derived[] {
  const setting = couponSetting(p);
  if (!setting.ok) return [];
  const { row, processClass } = setting.value;
  const { length } = format;
  return [
    {
      id: 'kerf.starting',
      field: 'thickness',
      title: 'kerf to expect',
      value: { amount: row.kerf, unit: 'mm', plusMinus: row.kerfPlusMinus },
      text: `${format.lengthWithin(row.kerf, row.kerfPlusMinus)} for ${processClass} from the starting chart`,
    },
    {
      id: 'expected',
      field: 'side',
      title: 'to measure',
      value: { amount: p.side.mm, unit: 'mm' },
      text: `${length(p.side.mm)} and ${length(p.window.mm)} if the kerf in the path is right; cut uncompensated with that kerf ${length(p.side.mm - row.kerf)} and ${length(p.window.mm + row.kerf)}`,
    },
  ];
}

export function couponKerfSteps(_part: Part, p: CouponKerf, facts: Facts): readonly ShopStep[] {
  const setting = couponSetting(p);
  if (!setting.ok) return [];
  const { length } = facts.format;
  return [
    ...settingUp(
      setting.value,
      'Cut in the direction that parts are cut in, cold, the window first; X along the gantry’s x.',
      facts.format,
    ),
    SCRAPED,
    writingDown(
      `Square and window along X and along Y, three places each, away from corners and starts: ${length(p.side.mm)} and ${length(p.window.mm)} are wanted.`,
    ),
    {
      kind: 'measure',
      says: `Kerf outside = kerf set + ${length(p.side.mm)} − measured; window = kerf set + measured − ${length(p.window.mm)}; take the mean. X and Y more than 0.2 mm apart is not kerf.`,
    },
    { kind: 'caution', says: 'Cut it again at each new nozzle: a worn one cuts wider.' },
  ];
}
