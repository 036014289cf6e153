// The rules that every coupon shares: the current it was laid out for, its webs, its etch, the plate it fits on.
import {
  checkLabel,
  checkMaterialCaution,
  checkPlateSize,
  checkWebs,
  found,
  type Facts,
} from '../../../checks/index.js';
import { findMaterial } from '../../../handbook/index.js';
import type { Finding, Part } from '../../../model/index.js';
import { couponSource } from '../../../process/index.js';
import { letterText } from '../../lettering/strokes.js';
import { underFields } from '../bolted.js';
import type { CouponParameters } from './fields.js';
import type { CouponSetting } from './setting.js';

/** The chart's class written as the field `amps` takes it. */
const ampsOf = (processClass: string): string => processClass.replace(/^air-(\d+)A$/, '$1');

function checkClass(setting: CouponSetting, facts: Facts): readonly Finding[] {
  if (facts.processClass === setting.processClass) return [];
  const amps = ampsOf(facts.processClass);
  return [
    found({
      code: 'coupon-class',
      level: 'caution',
      field: 'amps',
      title: `Laid out for ${setting.processClass}, cut with ${facts.processClass}`,
      says: 'Another nozzle has another kerf, speed and delay: its figures do not go with this etch. Never mix classes in one chart.',
      source: couponSource,
      ...(/^\d+$/.test(amps)
        ? {
            remedies: [
              {
                says: `Lay it out for ${amps} A`,
                change: [{ op: 'add' as const, path: '/amps', value: amps }],
              },
            ],
          }
        : {}),
    }),
  ];
}

/**
 * What is checked of any coupon.
 * @param texts all that is etched
 * @param sizeField the parameter that makes the plate smaller
 */
export function checkCoupon(
  part: Part,
  p: CouponParameters,
  setting: CouponSetting,
  texts: readonly string[],
  sizeField: string,
  facts: Facts,
): readonly Finding[] {
  const material = findMaterial(p.material);
  const { missing } = letterText(texts.join(''), { x: 0, y: 0 }, p.labelHeight.mm);
  return [
    ...checkClass(setting, facts),
    ...(material.found ? checkMaterialCaution(material.row) : []),
    ...checkWebs(part, facts),
    ...checkLabel(part, p.labelHeight.mm, missing, facts),
    ...underFields(checkPlateSize(part, facts), { outside: sizeField }),
  ];
}
