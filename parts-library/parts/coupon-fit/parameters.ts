// Everything that can be set on a fit ladder, and which of its steps fitted.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { couponFields } from '../shared/coupon/fields.js';

/** Lengths in mm or as typed. */
export function couponFitParameters(f: FieldKit) {
  const group = 'Ladder';
  return z.strictObject({
    tab: f.length.given({
      title: 'Tab',
      help: 'Thickness of the plate that goes into the slots.',
      measuring: 'Micrometer or caliper on the tab’s plate, scale as it will be.',
      group,
      min: 1,
      max: 40,
      default: '6 mm',
    }),
    pin: f.length.given({
      title: 'Pin',
      help: 'Bolt, pin or tube that goes into the bores.',
      measuring: 'Caliper over it, two directions; the larger.',
      group,
      min: 3,
      max: 60,
      default: '12 mm',
    }),
    first: f.length.given({
      title: 'First clearance',
      help: 'The first slot and bore are this much over tab and pin; 0 is the nominal size.',
      group,
      min: 0,
      max: 3,
      default: '0.2 mm',
    }),
    step: f.length.given({
      title: 'Step',
      help: 'From one to the next; 0.1 to 0.2 mm is what a hand feels.',
      group,
      min: 0.05,
      max: 1,
      default: '0.15 mm',
    }),
    count: f.count.given({
      title: 'Steps',
      help: 'How many slots, and how many bores.',
      group,
      min: 2,
      max: 9,
      default: 5,
    }),
    slotLength: f.length.given({
      title: 'Slot length',
      help: 'Straight part of each slot.',
      group,
      min: 10,
      max: 120,
      default: '25 mm',
    }),
    slotFits: f.length.maybe({
      title: 'Slot that fits',
      help: 'Etched size of the smallest slot that the tab enters by hand.',
      measuring: 'Dross and burr off both; push by hand, then with one tap of a hammer.',
      group: 'Readings',
      min: 1,
      max: 50,
    }),
    boreFits: f.length.maybe({
      title: 'Bore that fits',
      help: 'Etched size of the smallest bore that the pin drops through.',
      measuring: 'Dross and burr off; from the top and from below.',
      group: 'Readings',
      min: 1,
      max: 80,
    }),
    ...couponFields(f),
  });
}

export type CouponFit = z.output<ReturnType<typeof couponFitParameters>>;
