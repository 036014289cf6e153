// What can be set on a bent bracket: two legs, one bend, a hole in each leg, the plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';

/** Lengths in mm or as typed; legs are outside lengths, as a caliper reads them on the bent part. */
export function bentBracketParameters(f: FieldKit) {
  return z.strictObject({
    legA: f.length.given({
      title: 'First leg',
      help: 'Outside length of the first leg, over the bend.',
      measuring: 'From the leg’s end to the outer face of the other leg.',
      group: 'Legs',
      min: 10,
      max: 1000,
      default: '60 mm',
    }),
    legB: f.length.given({
      title: 'Second leg',
      help: 'Outside length of the second leg, over the bend.',
      measuring: 'From the leg’s end to the outer face of the other leg.',
      group: 'Legs',
      min: 10,
      max: 1000,
      default: '50 mm',
    }),
    width: f.length.given({
      title: 'Width',
      help: 'Width of the strip, along the bend.',
      group: 'Legs',
      min: 10,
      max: 1000,
      default: '40 mm',
    }),
    bend: f.angle.given({
      title: 'Bend',
      help: 'How far the second leg is turned; 90 for a right angle.',
      group: 'Bend',
      min: 1,
      max: 150,
      default: '90',
    }),
    radius: f.length.given({
      title: 'Inside radius',
      help: 'Inside radius of the bend.',
      measuring: 'Radius gauge inside a trial bend in the same plate.',
      group: 'Bend',
      min: 0,
      max: 100,
      default: '6 mm',
    }),
    kFactor: f.factor.given({
      title: 'K factor',
      help: 'Place of the neutral line in the thickness; 0.33 to 0.5. Bend a trial strip and measure it to find yours.',
      group: 'Bend',
      min: 0.25,
      max: 0.5,
      default: 0.4,
    }),
    bolt: f.thread.given({
      title: 'Bolt',
      help: 'Thread of the bolts in both holes.',
      group: 'Holes',
      default: 'M8',
    }),
    holeA: f.length.given({
      title: 'First hole from the end',
      help: 'From the end of the first leg to the hole’s centre.',
      group: 'Holes',
      min: 3,
      max: 1000,
      default: '20 mm',
    }),
    holeB: f.length.given({
      title: 'Second hole from the end',
      help: 'From the end of the second leg to the hole’s centre.',
      group: 'Holes',
      min: 3,
      max: 1000,
      default: '16 mm',
    }),
    thickness: f.length.given({
      title: 'Thickness',
      help: 'Plate thickness; the measured one where it was measured.',
      measuring: 'Micrometer or caliper on a clean edge, scale off.',
      group: 'Plate',
      min: 1,
      max: 12,
      default: '4 mm',
    }),
    material: f.material.given({
      title: 'Material',
      help: 'Grade of the plate.',
      group: 'Plate',
      default: 'S235',
    }),
  });
}

export type BentBracket = z.output<ReturnType<typeof bentBracketParameters>>;
