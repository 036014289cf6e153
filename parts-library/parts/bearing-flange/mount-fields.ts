// The fields of how the plate is held, its outside, and what pulls on the shaft.
import type { FieldKit } from '../fields/index.js';
import { HOLE_FITS } from '../shared/holes.js';
import { useField } from '../shared/pull-fields.js';

export function mountFields(f: FieldKit) {
  const group = 'Held by';
  const bolted = { field: 'mount', values: ['bolted'] } as const;
  return {
    mount: f.choice({
      title: 'Held by',
      help: 'bolted: four bolts in a rectangle; welded: its lower edge stands on the frame.',
      group,
      choices: [
        { value: 'bolted', label: 'Four bolts' },
        { value: 'welded', label: 'Welded at its foot' },
      ],
      default: 'bolted',
    }),
    mountX: f.length.given({
      title: 'Bolts across',
      help: 'Centre to centre from left to right.',
      measuring:
        'Inside to inside and outside to outside of the same two holes; the mean is centre to centre.',
      group,
      min: 10,
      max: 1500,
      default: '180 mm',
      appliesWhen: bolted,
    }),
    mountY: f.length.given({
      title: 'Bolts up',
      help: 'Centre to centre from bottom to top.',
      measuring:
        'Inside to inside and outside to outside of the same two holes; the mean is centre to centre.',
      group,
      min: 10,
      max: 1500,
      default: '120 mm',
      appliesWhen: bolted,
    }),
    mountBolt: f.thread.given({
      title: 'Mounting bolt',
      help: 'Thread of the four bolts.',
      group,
      default: 'M10',
      appliesWhen: bolted,
    }),
    mountHoles: f.holes.given({
      title: 'Mounting holes',
      help: 'clearance: cut; tapped: marked, drilled and tapped; drill: a centre mark to drill from; or a diameter.',
      group,
      min: 1,
      max: 100,
      default: 'clearance',
      appliesWhen: bolted,
    }),
    mountFit: f.choice({
      title: 'Mounting hole fit',
      help: 'Loose holes let the shaft be lined up before the bolts are tightened.',
      group,
      choices: HOLE_FITS,
      default: 'loose',
      appliesWhen: bolted,
    }),
    under: f.length.given({
      title: 'Thickness of the frame',
      help: 'What the bolts go through behind the plate, or what its foot is welded to.',
      measuring: 'Caliper over the flange; over a tube that is bolted through, the whole tube.',
      group,
      min: 0.5,
      max: 300,
      default: '5 mm',
    }),
    weldLeg: f.length.maybe({
      title: 'Fillet leg',
      help: 'Leg of the fillets along the foot. Left out: the least for this thickness.',
      measuring: 'Fillet gauge.',
      group,
      min: 1,
      max: 30,
      appliesWhen: { field: 'mount', values: ['welded'] },
    }),
  };
}

export function outsideFields(f: FieldKit) {
  const group = 'Outside';
  const rectangle = { field: 'shape', values: ['rectangle'] } as const;
  return {
    shape: f.choice({
      title: 'Shape',
      help: 'rectangle: by width and height; hull: a belt drawn tight round bolts and bearing, with a straight foot when it is welded.',
      group,
      choices: [
        { value: 'rectangle', label: 'Rectangle' },
        { value: 'hull', label: 'Hull' },
      ],
      default: 'rectangle',
    }),
    width: f.length.given({
      title: 'Width',
      help: 'Of the rectangle; of a welded hull its foot.',
      measuring: 'The room there is, less play.',
      group,
      min: 20,
      max: 1500,
      usual: [215, 260],
      default: '220 mm',
    }),
    height: f.length.given({
      title: 'Height',
      help: 'Of the rectangle; of a welded hull from the foot to the shaft’s middle line doubled.',
      measuring: 'The room there is, less play.',
      group,
      min: 20,
      max: 1500,
      usual: [160, 200],
      default: '165 mm',
    }),
    corner: f.length.given({
      title: 'Corner radius',
      help: 'Radius of the outside corners; 0 leaves them sharp.',
      group,
      min: 0,
      max: 700,
      default: '15 mm',
      appliesWhen: rectangle,
    }),
    edge: f.length.maybe({
      title: 'Edge distance',
      help: 'Of the hull, from bolt centres to the outside. Left out: two bolt diameters, and metal of 1.5 thicknesses.',
      group,
      min: 2,
      max: 300,
      appliesWhen: { field: 'shape', values: ['hull'] },
    }),
    shaftX: f.length.given({
      title: 'Shaft right of the middle',
      help: 'From the plate’s middle; negative to the left.',
      group,
      min: -700,
      max: 700,
      default: '0 mm',
    }),
    shaftY: f.length.given({
      title: 'Shaft above the middle',
      help: 'From the plate’s middle; negative downwards.',
      measuring: 'Height of the shaft over the frame, less the height of the plate’s middle.',
      group,
      min: -700,
      max: 700,
      default: '0 mm',
    }),
    pull: f.force.maybe({
      title: 'Pull on the bearing',
      help: 'Greatest force across the shaft at this bearing: chain pull and weight together.',
      measuring: 'Chain pull is torque in N·m × 2000 ÷ pitch diameter in mm.',
      group: 'Load',
      min: 0,
      max: 1e6,
    }),
    use: useField(f, 'drive'),
  };
}
