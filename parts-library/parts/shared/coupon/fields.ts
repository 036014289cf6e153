// The fields that every coupon has: the plate, the current it is cut with, what is etched on it.
import type { FieldKit } from '../../fields/index.js';
import { plateFields } from '../plate-fields.js';

/** Plate, current and etch. The label is given by the coupon itself unless another is typed. */
export function couponFields(f: FieldKit) {
  const { label: _, labelHeight, thickness, material } = plateFields(f);
  return {
    thickness,
    material,
    amps: f.maybeChoice({
      title: 'Current',
      help: 'Current and nozzle that the coupon is cut with. Left out: the lowest that holds this plate with a third in hand.',
      group: 'Plate',
      choices: [
        { value: '30', label: '30 A' },
        { value: '45', label: '45 A' },
        { value: '65', label: '65 A' },
        { value: '85', label: '85 A' },
        { value: '105', label: '105 A' },
      ],
    }),
    label: f.text.maybe({
      title: 'Etched heading',
      help: 'Left out: what the coupon is for, thickness, material and current. Single strokes, marked, never cut through.',
      group: 'Plate',
    }),
    labelHeight,
  };
}

/** What every coupon's parameters hold. */
export interface CouponParameters {
  readonly thickness: { readonly mm: number };
  readonly material: string;
  readonly amps?: '30' | '45' | '65' | '85' | '105' | undefined;
  readonly label?: string | undefined;
  readonly labelHeight: { readonly mm: number };
}

/** The width of the slots that a ladder is made of. */
export function slotWidthField(f: FieldKit, group: string) {
  return f.length.maybe({
    title: 'Slot width',
    help: 'Width of each slot, wide enough for the pierce to stand clear of its edges. Left out: twice the lead-in, and a kerf.',
    group,
    min: 4,
    max: 60,
  });
}
