// Everything that can be set on a kerf coupon, and what was measured on it.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { couponFields } from '../shared/coupon/fields.js';

function sizeFields(f: FieldKit) {
  const group = 'Coupon';
  return {
    side: f.length.given({
      title: 'Square',
      help: 'Outside of the coupon; 100 mm is usual.',
      group,
      min: 50,
      max: 400,
      default: '100 mm',
    }),
    window: f.length.given({
      title: 'Window',
      help: 'Square window in its middle; 40 to 50 mm is usual.',
      group,
      min: 15,
      max: 300,
      default: '45 mm',
    }),
  };
}

function readingFields(f: FieldKit) {
  const group = 'Readings';
  const reading = (title: string, where: string) =>
    f.length.maybe({
      title,
      help: `What the coupon measures ${where}, dross scraped off, not ground.`,
      measuring: `Caliper at three places, off the corners and off the start of the cut; the smallest over the thickness is what a part will have. Mean of the three.`,
      group,
      min: 5,
      max: 410,
    });
  return {
    kerfSet: f.length.maybe({
      title: 'Kerf it was cut with',
      help: 'The kerf that the path was made for; 0 when it was cut on the nominal line. Left out: the kerf of this job.',
      group,
      min: 0,
      max: 6,
    }),
    outsideX: reading('Square, along x', 'outside from left to right'),
    outsideY: reading('Square, along y', 'outside from bottom to top'),
    windowX: reading('Window, along x', 'inside the window from left to right'),
    windowY: reading('Window, along y', 'inside the window from bottom to top'),
  };
}

/** Lengths in mm or as typed. */
export function couponKerfParameters(f: FieldKit) {
  return z.strictObject({ ...sizeFields(f), ...couponFields(f), ...readingFields(f) });
}

export type CouponKerf = z.output<ReturnType<typeof couponKerfParameters>>;
