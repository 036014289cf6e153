// What can be set on a tube cap or base plate: tube, plate, vent, bolts, weld, load.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { holeFields } from '../shared/holes.js';
import { plateFields } from '../shared/plate-fields.js';
import { useField } from '../shared/pull-fields.js';
import { filletFields } from '../shared/weld-edge-fields.js';

const BASE = { field: 'kind', values: ['base'] } as const;

function tubeFields(f: FieldKit) {
  const group = 'Tube';
  return {
    section: f.choice({
      title: 'Section',
      help: 'Shape of the tube.',
      group,
      choices: [
        { value: 'round', label: 'Round' },
        { value: 'square', label: 'Square' },
        { value: 'rectangular', label: 'Rectangular' },
      ],
      default: 'square',
    }),
    outside: f.length.given({
      title: 'Outside',
      help: 'Diameter, side, or the longer side.',
      measuring: 'Caliper over the tube near its end, burr and paint off; a round one in two directions.',
      group,
      min: 8,
      max: 1000,
      default: '50 mm',
    }),
    otherSide: f.length.given({
      title: 'Other side',
      help: 'Shorter side of a rectangular tube.',
      measuring: 'Caliper over the tube near its end.',
      group,
      min: 8,
      max: 1000,
      default: '30 mm',
      appliesWhen: { field: 'section', values: ['rectangular'] },
    }),
    wall: f.length.given({
      title: 'Wall',
      help: 'Wall of the tube.',
      measuring: 'Caliper over the sawn end in two places away from the seam, burr off.',
      group,
      min: 0.8,
      max: 40,
      default: '3 mm',
    }),
    tubeCorner: f.length.maybe({
      title: 'Tube’s corner radius',
      help: 'Outside corner of a square or rectangular tube. Left out: twice the wall, 2.5 times above 6 mm.',
      measuring: 'Radius gauge on the outside corner.',
      group,
      min: 0,
      max: 100,
      usual: [4, 9],
      appliesWhen: { field: 'section', values: ['square', 'rectangular'] },
    }),
  };
}

function capFields(f: FieldKit) {
  const group = 'Plate shape';
  return {
    kind: f.choice({
      title: 'Kind',
      help: 'cap: on the tube’s end; plug: inside it; base: a larger plate with bolts.',
      group,
      choices: [
        { value: 'cap', label: 'Cap on the end' },
        { value: 'plug', label: 'Plug inside' },
        { value: 'base', label: 'Base plate' },
      ],
      default: 'cap',
    }),
    shelf: f.length.given({
      title: 'Proud of the tube',
      help: 'How far a cap stands out on each side, room for a fillet round the tube; negative: set in, the bead lies on the tube’s end.',
      group,
      min: -40,
      max: 200,
      usual: [-2.5, 6],
      default: '-2 mm',
      appliesWhen: { field: 'kind', values: ['cap'] },
    }),
    play: f.length.given({
      title: 'Play of a plug',
      help: 'Tube’s inside less the plug, both sides together; the seam inside the tube needs some.',
      measuring: 'Caliper inside the tube across the weld seam.',
      group,
      min: 0,
      max: 10,
      default: '1 mm',
      appliesWhen: { field: 'kind', values: ['plug'] },
    }),
    baseShape: f.choice({
      title: 'Base',
      help: 'Outline of the base plate.',
      group,
      choices: [
        { value: 'rectangle', label: 'Rectangle' },
        { value: 'round', label: 'Round' },
      ],
      default: 'rectangle',
      appliesWhen: BASE,
    }),
    width: f.length.given({
      title: 'Base width',
      help: 'Width, or diameter of a round one.',
      group,
      min: 20,
      max: 2000,
      default: '130 mm',
      appliesWhen: BASE,
    }),
    depth: f.length.given({
      title: 'Base depth',
      help: 'The other side of a rectangular base.',
      group,
      min: 20,
      max: 2000,
      default: '130 mm',
      appliesWhen: BASE,
    }),
    cornerRadius: f.length.given({
      title: 'Corner radius',
      help: 'Corners of a rectangular base.',
      group,
      min: 0,
      max: 500,
      default: '10 mm',
      appliesWhen: BASE,
    }),
  };
}

function ventFields(f: FieldKit) {
  const group = 'Vent';
  return {
    vent: f.choice({
      title: 'Vent',
      help: 'Where the air goes while the tube is welded shut: a hole in this plate, one drilled in the tube, or an open far end.',
      group,
      choices: [
        { value: 'here', label: 'Hole in this plate' },
        { value: 'tube', label: 'Hole in the tube' },
        { value: 'open', label: 'Far end open' },
        { value: 'none', label: 'None' },
      ],
      default: 'here',
    }),
    ventDiameter: f.length.given({
      title: 'Vent hole',
      help: 'Diameter; on a base plate it drains the tube as well.',
      group,
      min: 2,
      max: 200,
      default: '10 mm',
      appliesWhen: { field: 'vent', values: ['here'] },
    }),
  };
}

function boltFields(f: FieldKit) {
  const group = 'Bolts';
  const set = holeFields(f, group, 'M10');
  return {
    ...set,
    bolts: f.count.given({
      title: 'Bolts',
      help: 'Two or four on a rectangle, two to twelve on a round base.',
      group,
      min: 2,
      max: 12,
      default: '4',
      appliesWhen: BASE,
    }),
    inset: f.length.given({
      title: 'Bolt to edge',
      help: 'From the hole’s centre to the nearest edges.',
      measuring: 'Caliper from the edge to the hole’s edge, plus half the hole.',
      group,
      min: 3,
      max: 500,
      default: '20 mm',
      appliesWhen: BASE,
    }),
    seat: f.length.given({
      title: 'Bolted to',
      help: 'Thickness of what the base is bolted to; the bolts’ length follows.',
      group,
      min: 0,
      max: 500,
      default: '8 mm',
      appliesWhen: BASE,
    }),
    boltGrade: f.choice({
      title: 'Bolt grade',
      help: 'Marked on the head.',
      group,
      choices: [
        { value: '8.8', label: '8.8' },
        { value: '10.9', label: '10.9' },
        { value: 'SAE 5', label: 'SAE 5' },
        { value: 'SAE 8', label: 'SAE 8' },
      ],
      default: '8.8',
      appliesWhen: BASE,
    }),
  };
}

/** Lengths in mm or as typed; the tube’s middle is the origin. */
export function tubeCapParameters(f: FieldKit) {
  return z.strictObject({
    ...capFields(f),
    ...tubeFields(f),
    ...ventFields(f),
    ...boltFields(f),
    ...filletFields(f, 'Weld'),
    use: useField(f),
    uplift: f.force.maybe({
      title: 'Pull on the tube',
      help: 'Greatest pull along the tube, away from a base plate.',
      group: 'Load',
      min: 1,
      max: 1e7,
      usual: [500, 8000],
      appliesWhen: BASE,
    }),
    overturning: f.torque.maybe({
      title: 'Overturning moment',
      help: 'Side force on the tube times its height over the base.',
      group: 'Load',
      min: 1,
      max: 1e6,
      usual: [50, 600],
      appliesWhen: BASE,
    }),
    ...plateFields(f),
  });
}

export type TubeCap = z.output<ReturnType<typeof tubeCapParameters>>;
