// Everything that can be set on a hole ladder, and what was measured on one of its holes.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { couponFields } from '../shared/coupon/fields.js';

function readingFields(f: FieldKit) {
  const group = 'Readings of one hole';
  const reading = (title: string, help: string) =>
    f.length.maybe({
      title,
      help,
      measuring:
        'Caliper’s inside jaws or a small-hole gauge, dross off, across the start of the cut and square to it.',
      group,
      min: 1,
      max: 200,
    });
  return {
    readNominal: reading(
      'Hole read',
      'Nominal diameter of the hole that was measured, as etched over its column.',
    ),
    bottomX: reading('Bottom, along x', 'Diameter at the underside.'),
    bottomY: reading('Bottom, along y', 'Diameter at the underside, at right angles.'),
    topX: reading('Top, along x', 'Diameter at the top.'),
    topY: reading('Top, along y', 'Diameter at the top, at right angles.'),
    kerfSet: f.length.maybe({
      title: 'Hole kerf it was cut with',
      help: 'The kerf that the path of the hole was made for. Left out: the hole kerf of this job.',
      group,
      min: 0,
      max: 6,
    }),
  };
}

/** Lengths in mm or as typed, speeds in mm/min or in/min. */
export function couponHolesParameters(f: FieldKit) {
  const group = 'Ladder';
  return z.strictObject({
    diameters: f.lengths.maybe({
      title: 'Diameters',
      help: 'Holes of each row, separated by commas. Left out: 1, 1.5, 2 and 3 thicknesses, none smaller than the torch cuts at all.',
      group,
      min: 1,
      max: 80,
    }),
    rows: f.count.given({
      title: 'Speeds',
      help: 'Rows, each at its share of chart speed: 50, 60, 70, 80, 100 %; fewer rows take the middle ones.',
      group,
      min: 1,
      max: 5,
      default: 5,
    }),
    speed: f.speed.maybe({
      title: 'Chart speed',
      help: 'Straight-cut speed that your speed ladder gave for this plate. Left out: the starting chart’s.',
      group,
      min: 100,
      max: 20000,
    }),
    ...couponFields(f),
    ...readingFields(f),
  });
}

export type CouponHoles = z.output<ReturnType<typeof couponHolesParameters>>;
