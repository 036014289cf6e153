// What the starting chart says of a coupon's plate: the class, its speed, delay, kerf and heights.
import { findMaterial } from '../../../handbook/index.js';
import {
  chartMaterial,
  chartRow,
  leadInLength,
  startingChart,
  suggestClass,
  type ChartRow,
} from '../../../process/index.js';
import type { CouponParameters } from './fields.js';
import { refusal, type Resolved } from '../resolved.js';

export interface CouponSetting {
  /** `air-45A`. */
  readonly processClass: string;
  readonly amps: number;
  readonly row: ChartRow;
}

/**
 * Class and chart row of a coupon; a shop's own figures are typed over them, that is what the coupon is for.
 * @example 6 mm mild steel: air-45A, 1450 mm/min, 0.5 s
 */
export function couponSetting(p: CouponParameters): Resolved<CouponSetting> {
  const material = findMaterial(p.material);
  if (!material.found) return refusal('material', material.says);
  const thickness = p.thickness.mm;
  const processClass = p.amps === undefined ? suggestClass(thickness)?.processClass.id : `air-${p.amps}A`;
  if (processClass === undefined) {
    return refusal(
      'thickness',
      `No current of the starting chart is meant for ${Number(thickness.toFixed(2))} mm; give the current that cuts it.`,
    );
  }
  const answer = chartRow(startingChart, {
    processClass,
    material: chartMaterial(material.row),
    thickness,
  });
  const found = startingChart.classes.find(({ id }) => id === processClass);
  if (!answer.found || found === undefined)
    return refusal('amps', answer.found ? `There is no class ${processClass}.` : answer.says);
  return { ok: true, value: { processClass, amps: found.amps, row: answer.row } };
}

/** Width of a slot whose pierce stands a whole lead-in clear of both sides, to half a millimetre. */
export function slotWidthFor(thickness: number, kerf: number): number {
  return Math.ceil(2 * (2 * leadInLength(thickness, kerf) + kerf)) / 2;
}

/** Metal between the slots of a ladder, mm: 1.5 thicknesses, and never so little that heat runs from one to the next. */
export const metalBetween = (thickness: number): number => Math.max(10, Math.floor(1.5 * thickness) + 1);
