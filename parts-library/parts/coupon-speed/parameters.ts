// Everything that can be set on a speed ladder.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { couponFields, slotWidthField } from '../shared/coupon/fields.js';

/** Lengths in mm or as typed, speeds in mm/min or in/min. */
export function couponSpeedParameters(f: FieldKit) {
  const group = 'Ladder';
  return z.strictObject({
    speed: f.speed.maybe({
      title: 'Chart speed',
      help: 'Speed that your chart gives for this plate; the lines run slower and faster than it. Left out: the starting chart’s.',
      group,
      min: 100,
      max: 20000,
    }),
    step: f.percent.maybe({
      title: 'Step',
      help: 'From line to line, in percent of chart speed. Left out: 5 round a speed of your own, 10 round the starting chart’s.',
      group,
      min: 2,
      max: 15,
    }),
    rungs: f.count.given({
      title: 'Lines',
      help: 'How many speeds are tried; an odd number, the chart’s in the middle.',
      group,
      min: 3,
      max: 9,
      usual: [7, 7],
      default: 7,
    }),
    line: f.length.given({
      title: 'Straight at speed',
      help: 'Straight cut once the torch has its speed; 100 mm or more. The run-up is added at both ends.',
      group,
      min: 50,
      max: 600,
      default: '100 mm',
    }),
    acceleration: f.factor.given({
      title: 'Acceleration, m/s²',
      help: 'Of the table; 0.5 to 3 is usual. It gives the run-up, v² ÷ 2a.',
      group,
      min: 0.1,
      max: 20,
      default: 1,
    }),
    slotWidth: slotWidthField(f, group),
    slowest: f.speed.maybe({
      title: 'Slowest clean line',
      help: 'What the ladder said: the slowest line without thick, bubbly dross.',
      measuring:
        'Scrape the bottom edge with a thumbnail and a scraper; heavy dross that falls off is too slow.',
      group: 'Readings',
      min: 50,
      max: 30000,
    }),
    fastest: f.speed.maybe({
      title: 'Fastest clean line',
      help: 'What the ladder said: the fastest line without a thin hard bead.',
      measuring: 'A thin bead that must be ground, and trailing drag lines, are too fast.',
      group: 'Readings',
      min: 50,
      max: 30000,
    }),
    ...couponFields(f),
  });
}

export type CouponSpeed = z.output<ReturnType<typeof couponSpeedParameters>>;
