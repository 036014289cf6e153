// The fields of the outer edge and of the lightening holes.
import type { FieldKit } from '../fields/index.js';

/** Round or lobed, and what is taken away for weight. */
export function outsideFields(f: FieldKit) {
  return {
    shape: f.choice({
      title: 'Outside',
      help: 'round: a circle by diameter or by edge distance; lobed: material between the bolts scalloped away.',
      group: 'Outside',
      choices: [
        { value: 'round', label: 'Round' },
        { value: 'lobed', label: 'Lobed' },
      ],
      default: 'round',
    }),
    outside: f.length.maybe({
      title: 'Outside diameter',
      help: 'Diameter of a round plate. Left out, it follows from the edge distance.',
      group: 'Outside',
      min: 10,
      max: 2000,
      appliesWhen: { field: 'shape', values: ['round'] },
    }),
    edge: f.length.maybe({
      title: 'Edge distance',
      help: 'From bolt centre to the edge, on the outermost circle; the lobe radius of a lobed plate. Left out: twice the bolt, or 1.5 thicknesses of metal beside the hole if that is more.',
      group: 'Outside',
      min: 2,
      max: 500,
    }),
    scallop: f.length.maybe({
      title: 'Scallop radius',
      help: 'Radius of the hollow between two lobes. Left out, it is as deep as the smallest web allows.',
      group: 'Outside',
      min: 1,
      max: 2000,
      appliesWhen: { field: 'shape', values: ['lobed'] },
    }),
    web: f.length.maybe({
      title: 'Smallest web',
      help: 'Least metal between the scallops and the centre opening. Left out: 2.5 times the thickness.',
      group: 'Outside',
      min: 1,
      max: 500,
      appliesWhen: { field: 'shape', values: ['lobed'] },
    }),
    lightening: f.count.given({
      title: 'Lightening holes',
      help: 'Holes that only take weight away, evenly spaced.',
      group: 'Lightening',
      min: 0,
      max: 24,
      usual: [0, 3],
      default: 0,
    }),
    lighteningDiameter: f.length.given({
      title: 'Lightening hole',
      help: 'Diameter of each lightening hole.',
      group: 'Lightening',
      min: 2,
      max: 500,
      usual: [6, 10],
      default: '16 mm',
    }),
    lighteningCircle: f.length.maybe({
      title: 'Lightening circle',
      help: 'Circle through the lightening holes. Left out: midway between the centre opening and the bolt circle.',
      group: 'Lightening',
      min: 5,
      max: 2000,
    }),
    lighteningClocking: f.angle.maybe({
      title: 'First lightening hole at',
      help: 'Angle of the first lightening hole. Left out: between two bolts, or toward a bolt when lobed.',
      group: 'Lightening',
      min: -360,
      max: 360,
    }),
  };
}
