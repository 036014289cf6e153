// What can be set on a bent bracket: its profile and legs, how it is bent, the holes, the plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';

const END_TO_FACE =
  'Caliper from the leg’s end to the outer face of the leg beside it, on a bent one or on the drawing.';

function profileFields(f: FieldKit) {
  const group = 'Profile';
  return {
    profile: f.choice({
      title: 'Profile',
      help: 'Seen from its edge: L has one bend, U and Z two, a hat four with a flange at each end.',
      group,
      choices: [
        { value: 'L', label: 'L' },
        { value: 'U', label: 'U' },
        { value: 'Z', label: 'Z' },
        { value: 'hat', label: 'Hat' },
      ],
      default: 'L',
    }),
    legA: f.length.given({
      title: 'First leg',
      help: 'Outside length of the first leg; of a hat its first wall.',
      measuring: END_TO_FACE,
      group,
      min: 5,
      max: 1000,
      default: '60 mm',
    }),
    middle: f.length.given({
      title: 'Base, web or top',
      help: 'Outside length between the two bends of a U or Z, or of a hat’s top.',
      measuring: 'Caliper over both outer faces.',
      group,
      min: 5,
      max: 1000,
      default: '60 mm',
      appliesWhen: { field: 'profile', values: ['U', 'Z', 'hat'] },
    }),
    legB: f.length.given({
      title: 'Second leg',
      help: 'Outside length of the last leg; of a hat its second wall.',
      measuring: END_TO_FACE,
      group,
      min: 5,
      max: 1000,
      default: '50 mm',
    }),
    flange: f.length.given({
      title: 'Flange',
      help: 'Outside length of each flange of a hat.',
      measuring: END_TO_FACE,
      group,
      min: 5,
      max: 1000,
      default: '40 mm',
      appliesWhen: { field: 'profile', values: ['hat'] },
    }),
    width: f.length.given({
      title: 'Width',
      help: 'Width of the strip, along the bend.',
      measuring: 'Caliper over the strip.',
      group,
      min: 10,
      max: 1000,
      default: '40 mm',
    }),
    lastWidth: f.length.maybe({
      title: 'Width of the last leg',
      help: 'Narrower than the rest: the bend then gets a relief on both sides, so that the wide part does not tear.',
      group,
      min: 5,
      max: 1000,
    }),
  };
}

function bendFields(f: FieldKit) {
  const group = 'Bend';
  return {
    bend: f.angle.given({
      title: 'Bend',
      help: 'How far each leg is turned; 90 for a right angle.',
      group,
      min: 1,
      max: 150,
      default: '90',
    }),
    made: f.choice({
      title: 'Made',
      help: 'pressed: over a radius in a brake or vice; scored: a groove of partial depth, folded by hand and welded.',
      group,
      choices: [
        { value: 'pressed', label: 'Pressed over a radius' },
        { value: 'scored', label: 'Scored and folded' },
      ],
      default: 'pressed',
    }),
    radius: f.length.given({
      title: 'Inside radius',
      help: 'Inside radius of the bend.',
      measuring: 'Radius gauge inside a trial bend in the same plate.',
      group,
      min: 0,
      max: 100,
      default: '6 mm',
      appliesWhen: { field: 'made', values: ['pressed'] },
    }),
    groove: f.length.given({
      title: 'Groove depth',
      help: 'Depth of the score. Up to a third of the thickness stays a bend; up to a half is welded after.',
      measuring: 'Depth rod in a trial groove; plasma scoring does not repeat well.',
      group,
      min: 0.1,
      max: 10,
      default: '1.5 mm',
      appliesWhen: { field: 'made', values: ['scored'] },
    }),
    weldedAfter: f.choice({
      title: 'Groove welded after',
      help: 'Whether the groove is filled with weld after folding.',
      group,
      choices: [
        { value: 'yes', label: 'Yes' },
        { value: 'no', label: 'No' },
      ],
      default: 'yes',
      appliesWhen: { field: 'made', values: ['scored'] },
    }),
    kFactor: f.factor.given({
      title: 'K factor',
      help: 'Place of the neutral line in the thickness; 0.33 to 0.5. Bend a trial strip and measure it to find yours.',
      group,
      min: 0.25,
      max: 0.5,
      default: 0.4,
    }),
    allowance: f.length.maybe({
      title: 'Bend allowance',
      help: 'Measured on a trial strip: flat length less the straight parts. Wins over the K factor.',
      measuring:
        'Measure the strip, bend it, measure both legs outside; flat = legs − 2 setbacks + allowance.',
      group,
      min: 0.1,
      max: 300,
    }),
    loaded: f.choice({
      title: 'Carries load',
      help: 'Whether the bend carries more than its own cover.',
      group,
      choices: [
        { value: 'yes', label: 'Yes' },
        { value: 'no', label: 'No' },
      ],
      default: 'yes',
    }),
  };
}

function holeFields(f: FieldKit) {
  const group = 'Holes';
  const count = (title: string, help: string, start: number) =>
    f.count.given({ title, help, group, min: 0, max: 8, default: start });
  return {
    bolt: f.thread.given({
      title: 'Bolt',
      help: 'Thread of the bolts; all holes are clearance holes.',
      group,
      default: 'M8',
    }),
    holesA: count('Holes in the first leg', 'Side by side across the width.', 1),
    holeA: f.length.given({
      title: 'First holes from the end',
      help: 'From the end of the strip to the hole centres; on a hat they are in the first flange.',
      measuring: 'Caliper from the end to the hole’s edge, plus half the hole.',
      group,
      min: 3,
      max: 1000,
      default: '20 mm',
    }),
    holesMiddle: count('Holes in the middle', 'In the base, web or top, half way along.', 0),
    holesB: count('Holes in the last leg', 'Side by side across the width.', 1),
    holeB: f.length.given({
      title: 'Last holes from the end',
      help: 'From the other end of the strip to the hole centres; on a hat they are in the second flange.',
      measuring: 'Caliper from the end to the hole’s edge, plus half the hole.',
      group,
      min: 3,
      max: 1000,
      default: '16 mm',
    }),
    spacing: f.length.maybe({
      title: 'Hole spacing',
      help: 'Centre to centre across the width. Left out: the width divided by the number of holes.',
      group,
      min: 3,
      max: 1000,
    }),
  };
}

/** Lengths in mm or as typed; legs are outside lengths, as a caliper reads them on the bent part. */
export function bentBracketParameters(f: FieldKit) {
  return z.strictObject({
    ...profileFields(f),
    ...bendFields(f),
    ...holeFields(f),
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
