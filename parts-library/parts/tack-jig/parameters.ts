// What can be set on a tack jig: the weldment, the stops or clamps that hold it, the plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { plateFields } from '../shared/plate-fields.js';

function weldmentFields(f: FieldKit) {
  const group = 'Weldment';
  return {
    kind: f.choice({
      title: 'Jig',
      help: 'bed: the tubes lie on it between stops and wedges that stand in slots; square: it lies between the tubes in the corner and is clamped to both.',
      group,
      choices: [
        { value: 'bed', label: 'Bed with stops and wedges' },
        { value: 'square', label: 'Square in the corner' },
      ],
      default: 'bed',
    }),
    angle: f.angle.given({
      title: 'Angle',
      help: 'Between the two tubes, inside.',
      measuring: 'Bevel gauge on the frame, or from the drawing.',
      group,
      min: 45,
      max: 135,
      default: '90',
    }),
    preset: f.angle.given({
      title: 'Opened for shrinkage',
      help: 'How far the jig holds the corner open, because the weld pulls it to: 0 to 1, found on the first frame.',
      measuring: 'Weld one corner, measure how far it closed.',
      group,
      min: -3,
      max: 3,
      default: '0',
    }),
    joint: f.choice({
      title: 'Joint',
      help: 'mitre: both tubes sawn; butt: the second stands on the first.',
      group,
      choices: [
        { value: 'mitre', label: 'Mitre' },
        { value: 'butt', label: 'Butt' },
      ],
      default: 'mitre',
    }),
    tubeA: f.length.given({
      title: 'First tube',
      help: 'Width of the tube that runs to the right, in the plane of the frame; of round tube its outside.',
      measuring: 'Caliper over the tube, paint off.',
      group,
      min: 5,
      max: 300,
      default: '40 mm',
    }),
    tubeB: f.length.given({
      title: 'Second tube',
      help: 'Width of the other tube.',
      measuring: 'Caliper over the tube, paint off.',
      group,
      min: 5,
      max: 300,
      default: '40 mm',
    }),
    tall: f.length.given({
      title: 'Tube height',
      help: 'Height of the tubes over the bed, for the length of the stops.',
      measuring: 'Caliper over the tube the other way.',
      group,
      min: 5,
      max: 300,
      default: '40 mm',
    }),
    legA: f.length.given({
      title: 'First leg',
      help: 'Length of the jig along the first tube: on a bed from the outer corner, on a square from the inner one.',
      group,
      min: 60,
      max: 2000,
      usual: [340, 420],
      default: '360 mm',
    }),
    legB: f.length.given({
      title: 'Second leg',
      help: 'Length of the jig along the second tube.',
      group,
      min: 60,
      max: 2000,
      usual: [340, 420],
      default: '360 mm',
    }),
    weldRoom: f.length.given({
      title: 'Room round the weld',
      help: 'On a bed how far its opening reaches past the joint; on a square the radius that its corner stays away.',
      group,
      min: 0,
      max: 150,
      default: '10 mm',
    }),
  };
}

function stopFields(f: FieldKit) {
  const group = 'Stops and wedges';
  const bed = { field: 'kind', values: ['bed'] } as const;
  return {
    stop: f.length.given({
      title: 'Thickness of the stops',
      help: 'Plate that the stops are made of; the measured one.',
      measuring: 'Micrometer or caliper on a clean edge, scale off.',
      group,
      min: 2,
      max: 30,
      default: '6 mm',
      appliesWhen: bed,
    }),
    stopWidth: f.length.given({
      title: 'Width of the stops',
      help: 'Along the tube.',
      group,
      min: 8,
      max: 150,
      default: '25 mm',
      appliesWhen: bed,
    }),
    clearance: f.length.given({
      title: 'Clearance',
      help: 'What a slot is larger than its stop at its narrowest, both sides together; it lets the stop lean, so keep it small.',
      measuring:
        'Cut a ladder of slots in steps of 0.1 mm in the same plate, take the one that is driven in.',
      group,
      min: 0,
      max: 3,
      default: '0.3 mm',
      appliesWhen: bed,
    }),
    lean: f.angle.given({
      title: 'Lean of the cut',
      help: 'How far the cut leans from square; 1 to 5 for air plasma.',
      measuring: 'Square on the face, feeler at the far edge: gap ÷ thickness is its tangent.',
      group,
      min: 0,
      max: 8,
      default: '2',
      appliesWhen: bed,
    }),
    relief: f.length.given({
      title: 'Corner relief of the slots',
      help: 'Radius of the bite at slot corners, so that square stops seat; 0 leaves the torch’s own radius.',
      group,
      min: 0,
      max: 10,
      default: '1.5 mm',
      appliesWhen: bed,
    }),
    eye: f.length.maybe({
      title: 'Eye to pierce in',
      help: 'Diameter of a round eye in the middle of each slot, where the slot is too narrow to pierce in.',
      group,
      min: 3,
      max: 40,
      usual: [9, 11],
      appliesWhen: bed,
    }),
    wedgeGap: f.length.given({
      title: 'Room for the wedge',
      help: 'Between the tube and the stop on its inner side: a wedge driven in there presses the tube against the outer stops.',
      group,
      min: 0,
      max: 60,
      default: '6 mm',
      appliesWhen: bed,
    }),
    near: f.length.maybe({
      title: 'First stops from the corner',
      help: 'From the outer corner to the middle of the nearer stop, along both tubes. Left out: clear of the opening round the weld.',
      group,
      min: 10,
      max: 1800,
      usual: [105, 125],
      appliesWhen: bed,
    }),
  };
}

function clampFields(f: FieldKit) {
  const group = 'Clamps';
  const bed = { field: 'kind', values: ['bed'] } as const;
  const square = { field: 'kind', values: ['square'] } as const;
  return {
    clamps: f.count.given({
      title: 'Clamps on each leg',
      help: 'On a bed pairs of bolts with a strap over the tube; on a square openings for screw clamps.',
      group,
      min: 0,
      max: 2,
      default: 1,
    }),
    clampBolt: f.thread.given({
      title: 'Strap bolt',
      help: 'Thread of the bolts on both sides of the tube.',
      group,
      default: 'M8',
      appliesWhen: bed,
    }),
    clampHoles: f.holes.given({
      title: 'Strap bolt holes',
      help: 'clearance: cut; tapped: marked, drilled and tapped; drill: a centre mark to drill from; or a diameter.',
      group,
      min: 1,
      max: 60,
      default: 'clearance',
      appliesWhen: bed,
    }),
    clampOpening: f.length.given({
      title: 'Clamp opening',
      help: 'Diameter of the opening that a screw clamp’s jaw goes into.',
      measuring: 'Caliper over the jaw’s pad, and 5 mm.',
      group,
      min: 8,
      max: 150,
      default: '38 mm',
      appliesWhen: square,
    }),
    clampLand: f.length.given({
      title: 'Metal under the clamp',
      help: 'Between the edge that lies on the tube and the opening.',
      group,
      min: 3,
      max: 100,
      default: '15 mm',
      appliesWhen: square,
    }),
    tip: f.length.given({
      title: 'Width at the ends',
      help: 'Of a square, at the end of each leg.',
      group,
      min: 5,
      max: 500,
      default: '65 mm',
      appliesWhen: square,
    }),
    shape: f.choice({
      title: 'Bed',
      help: 'L: two strips; full: the corner between them is filled and stiffer.',
      group: 'Plate',
      choices: [
        { value: 'L', label: 'L-shaped' },
        { value: 'full', label: 'Filled' },
      ],
      default: 'L',
      appliesWhen: bed,
    }),
    corner: f.length.given({
      title: 'Corner radius',
      help: 'Outside corners, and the inner corner of an L.',
      group: 'Plate',
      min: 0,
      max: 300,
      default: '10 mm',
    }),
  };
}

/** One schema for both kinds. Lengths in mm or as typed; the origin is the corner, the first tube along x. */
export function tackJigParameters(f: FieldKit) {
  return z.strictObject({ ...weldmentFields(f), ...stopFields(f), ...clampFields(f), ...plateFields(f) });
}

export type TackJig = z.output<ReturnType<typeof tackJigParameters>>;
