// What can be set on a gusset: legs and angle, free edge, relief, edges on tubes, lightening hole, load, plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { plateFields } from '../shared/plate-fields.js';
import { useField } from '../shared/pull-fields.js';
import { filletFields } from '../shared/weld-edge-fields.js';

function shapeFields(f: FieldKit) {
  const group = 'Shape';
  const leg = (title: string, on: string, start: string) =>
    f.length.given({
      title,
      help: `From the corner of the two members to the gusset’s end on the ${on}.`,
      measuring: 'Rule from the inner corner along the member.',
      group,
      min: 10,
      max: 2000,
      default: start,
    });
  return {
    shape: f.choice({
      title: 'Shape',
      help: 'triangle: a toe of one height at both ends; trapezoid: wider at its upper end.',
      group,
      choices: [
        { value: 'triangle', label: 'Triangle' },
        { value: 'trapezoid', label: 'Trapezoid' },
      ],
      default: 'triangle',
    }),
    legA: leg('First leg', 'first member', '80 mm'),
    legB: leg('Second leg', 'second member', '80 mm'),
    angle: f.angle.given({
      title: 'Angle between the members',
      help: '90 for a square corner.',
      measuring: 'Bevel gauge or digital protractor in the corner, paint and weld spatter off.',
      group,
      min: 30,
      max: 150,
      default: '90',
    }),
    toe: f.length.given({
      title: 'Toe',
      help: 'Height of the blunt end; a feather edge burns away.',
      group,
      min: 0,
      max: 500,
      default: '10 mm',
    }),
    top: f.length.given({
      title: 'Upper end',
      help: 'Width of a trapezoid’s end on the second leg.',
      group,
      min: 1,
      max: 1000,
      default: '30 mm',
      appliesWhen: { field: 'shape', values: ['trapezoid'] },
    }),
    hollow: f.length.given({
      title: 'Hollow of the free edge',
      help: 'How deep the free edge is curved in; 0 for a straight one. It leads the load out more softly.',
      group,
      min: 0,
      max: 500,
      usual: [0, 8],
      default: '0 mm',
    }),
    hole: f.length.maybe({
      title: 'Lightening hole',
      help: 'Diameter of a hole in the middle of the plate.',
      group,
      min: 3,
      max: 1000,
      usual: [12, 20],
    }),
  };
}

function cornerFields(f: FieldKit) {
  const group = 'Corner';
  return {
    relief: f.choice({
      title: 'Relief',
      help: 'Clears the weld between the members: snipped straight, or a round mouse hole.',
      group,
      choices: [
        { value: 'snip', label: 'Snipped' },
        { value: 'round', label: 'Round' },
        { value: 'none', label: 'None' },
      ],
      default: 'snip',
    }),
    reliefSize: f.length.given({
      title: 'Relief size',
      help: 'From the corner along each edge.',
      group,
      min: 1,
      max: 500,
      default: '15 mm',
      appliesWhen: { field: 'relief', values: ['snip', 'round'] },
    }),
    jointLeg: f.length.given({
      title: 'Weld in the corner',
      help: 'Leg of the weld between the two members; 0 where there is none.',
      measuring: 'Fillet gauge in the corner.',
      group,
      min: 0,
      max: 50,
      default: '5 mm',
    }),
  };
}

function edgeFields(f: FieldKit) {
  const group = 'Weld edges';
  const edge = (title: string) =>
    f.choice({
      title,
      help: 'straight: along a tube or on a flat; coped: across a round tube whose crest is at the middle of the edge.',
      group,
      choices: [
        { value: 'straight', label: 'Straight' },
        { value: 'coped', label: 'Coped' },
      ],
      default: 'straight',
    });
  const tube = (title: string) =>
    f.length.given({
      title,
      help: 'Outside diameter of the tube, or side of a square one.',
      measuring: 'Caliper over the tube in two directions, paint and scale off.',
      group,
      min: 5,
      max: 1000,
      usual: [110, 160],
      default: '40 mm',
    });
  return {
    edgeA: edge('First edge'),
    tubeA: tube('First tube'),
    edgeB: edge('Second edge'),
    tubeB: tube('Second tube'),
    wall: f.length.given({
      title: 'Member’s wall',
      help: 'Wall of the thinner member: the thinner of it and the plate rules the fillet.',
      measuring: 'Caliper over a sawn end, burr off.',
      group,
      min: 0.8,
      max: 40,
      default: '3 mm',
    }),
    ...filletFields(f, group),
  };
}

/** Lengths in mm or as typed; the corner of the members is the origin, the first one along x. */
export function gussetParameters(f: FieldKit) {
  return z.strictObject({
    ...shapeFields(f),
    ...cornerFields(f),
    ...edgeFields(f),
    use: useField(f),
    thrust: f.force.maybe({
      title: 'Thrust',
      help: 'Greatest push or pull along the free edge, the gusset taken as a strut between the middles of its welds.',
      group: 'Load',
      min: 1,
      max: 1e7,
      usual: [500, 8000],
    }),
    ...plateFields(f),
  });
}

export type Gusset = z.output<ReturnType<typeof gussetParameters>>;
