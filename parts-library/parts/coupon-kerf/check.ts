// What a kerf coupon says once it is measured: kerf, its difference inside and outside, axes that disagree.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import type { Finding, Part } from '../../model/index.js';
import { couponSource, kerfAxesApart, kerfFromCoupon } from '../../process/index.js';
import { checkCoupon } from '../shared/coupon/checks.js';
import { headingOf } from '../shared/coupon/lettering.js';
import { couponSetting } from '../shared/coupon/setting.js';
import type { CouponKerf } from './parameters.js';

const meanOf = (values: readonly number[]): number | undefined =>
  values.length === 0 ? undefined : values.reduce((sum, value) => sum + value, 0) / values.length;

/** Square and window measured differently along x and y. */
function checkAxes(p: CouponKerf, facts: Facts): readonly Finding[] {
  const pairs = [
    { x: p.outsideX, y: p.outsideY, field: 'outsideX', name: 'square' },
    { x: p.windowX, y: p.windowY, field: 'windowX', name: 'window' },
  ];
  return pairs.flatMap(({ x, y, field, name }): readonly Finding[] => {
    if (x === undefined || y === undefined) return [];
    const apart = Math.abs(x.mm - y.mm);
    const isApart = apart > kerfAxesApart + 1e-9;
    return [
      found({
        code: 'axes-differ',
        level: judge(['caution', isApart]),
        field,
        title: `The ${name} is ${facts.format.length(apart)} ${isApart ? 'out between x and y' : 'apart between x and y'}, ${facts.format.length(kerfAxesApart)} at most`,
        says: isApart
          ? 'That is scale, backlash, squareness or a leaning torch, not kerf: mend it before a kerf is stored.'
          : 'Small enough to be kerf alone.',
        value: quantity(apart, 'mm'),
        limit: quantity(kerfAxesApart, 'mm'),
        formula: `|${digits(x.mm)} − ${digits(y.mm)}| = ${digits(apart)}`,
        source: couponSource,
      }),
    ];
  });
}

/** The kerf that the readings come to. */
function checkKerf(p: CouponKerf, facts: Facts): readonly Finding[] {
  const { length } = facts.format;
  const outside = meanOf([p.outsideX, p.outsideY].flatMap((entry) => entry?.mm ?? []));
  const inside = meanOf([p.windowX, p.windowY].flatMap((entry) => entry?.mm ?? []));
  if (outside === undefined || inside === undefined) {
    return outside === inside
      ? []
      : [
          found({
            code: 'kerf-half-read',
            level: 'note',
            field: outside === undefined ? 'outsideX' : 'windowX',
            title: `The ${outside === undefined ? 'square' : 'window'} is not measured yet`,
            says: 'One of the two alone cannot tell kerf from scale.',
            source: couponSource,
          }),
        ];
  }
  const kerfSet = p.kerfSet?.mm ?? facts.kerf.amount;
  const reading = kerfFromCoupon({
    square: p.side.mm,
    window: p.window.mm,
    measuredSquare: outside,
    measuredWindow: inside,
    kerfSet,
  });
  const half = Math.abs(reading.difference) / 2;
  const isSlip = reading.kerf <= 0;
  return [
    found({
      code: 'kerf-measured',
      level: isSlip ? 'caution' : 'note',
      field: 'outsideX',
      title: isSlip
        ? `These readings give a kerf of ${length(reading.kerf)}: look for a slip`
        : `Kerf ${facts.format.lengthWithin(reading.kerf, half)}: ${length(reading.outer)} outside, ${length(reading.inner)} in the window`,
      says: `Counted with a kerf of ${length(kerfSet)} in the path${p.kerfSet === undefined ? ', the one of this job' : ''}. Enter the mean as the kerf of this process, with the nozzle’s hours; a wide difference is lean or scale. If the whole difference were scale, the axes would move ${digits(reading.scale, 4)} for 1 and the kerf be ${length(reading.scaledKerf)}.`,
      value: quantity(reading.kerf, 'mm', half),
      formula: `outside ${digits(kerfSet, 3)} + ${digits(p.side.mm)} − ${digits(outside, 3)} = ${digits(reading.outer, 3)}; window ${digits(kerfSet, 3)} + ${digits(inside, 3)} − ${digits(p.window.mm)} = ${digits(reading.inner, 3)}; mean ${digits(reading.kerf, 3)}`,
      source: couponSource,
    }),
  ];
}

export function checkCouponKerf(part: Part, p: CouponKerf, facts: Facts): readonly Finding[] {
  const setting = couponSetting(p);
  if (!setting.ok) return [];
  return [
    ...checkKerf(p, facts),
    ...checkAxes(p, facts),
    ...checkCoupon(part, p, setting.value, headingOf('KERF', p, setting.value, facts.format), 'side', facts),
  ];
}
