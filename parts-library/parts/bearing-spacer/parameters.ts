// Everything that can be set on a bearing spacer: readings of the seats, of the ring, of the bearings.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { plateFields } from '../shared/plate-fields.js';

function seatFields(f: FieldKit) {
  const group = 'Outer seats';
  const seat = (place: string, start: string) =>
    f.length.given({
      title: `Seat distance, ${place}`,
      help: 'Distance between the two faces that the outer races seat on, to a hundredth of a millimetre.',
      measuring: `Depth micrometer from the hub’s face to each seat, and their difference; or an inside micrometer between them, ${place}.`,
      group,
      min: 1,
      max: 40,
      default: start,
    });
  return {
    seat1: seat('at 12 o’clock', '5.02 mm'),
    seat2: seat('at 4 o’clock', '5.03 mm'),
    seat3: seat('at 8 o’clock', '5.02 mm'),
  };
}

function spacerFields(f: FieldKit) {
  const group = 'Ring as measured';
  const face = (place: string, start: string) =>
    f.length.given({
      title: `Thickness, ${place}`,
      help: 'Thickness of the plate, or of the ring as it is now, to a hundredth of a millimetre, scale off.',
      measuring: `Outside micrometer, ${place}; wipe both faces first.`,
      group,
      min: 1,
      max: 40,
      default: start,
    });
  return {
    face1: face('at 12 o’clock', '5.07 mm'),
    face2: face('at 3 o’clock', '5.08 mm'),
    face3: face('at 6 o’clock', '5.08 mm'),
    face4: face('at 9 o’clock', '5.07 mm'),
    faces: f.choice({
      title: 'Faces',
      help: 'As rolled, mill scale is measured with the plate and then crushes under the bolt.',
      group,
      choices: [
        { value: 'ground', label: 'Ground or lapped' },
        { value: 'scale-off', label: 'Scale off, as rolled beneath' },
        { value: 'as-rolled', label: 'As rolled, scale on' },
      ],
      default: 'ground',
    }),
  };
}

function bearingFields(f: FieldKit) {
  const group = 'Bearings';
  return {
    shaft: f.length.given({
      title: 'Shaft',
      help: 'Shaft or bolt that goes through the inner races.',
      measuring: 'Micrometer over the shaft where the bearings sit.',
      group,
      min: 4,
      max: 300,
      usual: [38, 41],
      default: '39.98 mm',
    }),
    innerShoulder: f.length.given({
      title: 'Inner race, outside',
      help: 'Outside diameter of the inner race’s side face: what the ring may bear on.',
      measuring: 'Caliper over the inner race beside the seal or cage; the smaller of both bearings.',
      group,
      min: 5,
      max: 400,
      usual: [53, 58],
      default: '56 mm',
    }),
    outerShoulder: f.length.given({
      title: 'Outer race, inside',
      help: 'Inside diameter of the outer race’s side face: what the ring must never reach.',
      measuring: 'Caliper jaws inside the outer race beside the seal; the smaller of both bearings.',
      group,
      min: 6,
      max: 500,
      usual: [63, 70],
      default: '66 mm',
    }),
  };
}

function ringFields(f: FieldKit) {
  const group = 'Ring';
  return {
    outside: f.length.given({
      title: 'Outside',
      help: 'Outside diameter of the ring: on the inner race, clear of seal and cage.',
      group,
      min: 6,
      max: 450,
      usual: [50, 57],
      default: '54 mm',
    }),
    bore: f.length.maybe({
      title: 'Bore',
      help: 'Finished bore. Left out: 1 mm over the shaft, so that a bore as the torch leaves it still passes.',
      group,
      min: 4,
      max: 400,
    }),
  };
}

/** Lengths in mm or as typed. The plate’s thickness is the mean of the ring’s readings. */
export function bearingSpacerParameters(f: FieldKit) {
  const { label, labelHeight, material } = plateFields(f);
  return z.strictObject({
    ...seatFields(f),
    ...spacerFields(f),
    ...bearingFields(f),
    ...ringFields(f),
    label,
    labelHeight,
    material,
  });
}

export type BearingSpacer = z.output<ReturnType<typeof bearingSpacerParameters>>;
