// Everything that can be set on a pierce-delay ladder.
import { z } from 'zod';
import { mostDelayRungs } from '../../process/index.js';
import type { FieldKit } from '../fields/index.js';
import { couponFields, slotWidthField } from '../shared/coupon/fields.js';

/** Lengths in mm or as typed, times in seconds. */
export function couponPierceParameters(f: FieldKit) {
  const group = 'Ladder';
  return z.strictObject({
    delay: f.time.maybe({
      title: 'Chart delay',
      help: 'Pierce delay that your chart gives for this plate; the rungs run from half of it to twice. Left out: the starting chart’s.',
      group,
      min: 0.05,
      max: 10,
    }),
    rungs: f.count.given({
      title: 'Rungs',
      help: 'How many delays are tried: 50, 75, 100, 125, 150, 200 % of the chart’s, then 250 and 300, at least 0.1 s apart.',
      group,
      min: 2,
      max: mostDelayRungs,
      default: 6,
    }),
    cut: f.length.given({
      title: 'Cut after the pierce',
      help: 'Straight part of each slot; 25 mm is enough to see where it severs.',
      group,
      min: 10,
      max: 200,
      default: '25 mm',
    }),
    slotWidth: slotWidthField(f, group),
    found: f.time.maybe({
      title: 'Shortest that severed',
      help: 'What the ladder said: the shortest delay whose cut was through from the first millimetre.',
      measuring: 'Look at the underside of each lead-in, and at which slugs fell by themselves.',
      group: 'Readings',
      min: 0,
      max: 30,
    }),
    ...couponFields(f),
  });
}

export type CouponPierce = z.output<ReturnType<typeof couponPierceParameters>>;
