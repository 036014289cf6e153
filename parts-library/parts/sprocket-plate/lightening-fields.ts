// The fields of what is taken out of a sprocket for weight: windows between spokes, or round holes.
import type { FieldKit } from '../fields/index.js';

export function lighteningFields(f: FieldKit) {
  const group = 'Lightening';
  const windows = { field: 'lightening', values: ['windows'] } as const;
  const round = { field: 'lightening', values: ['holes'] } as const;
  return {
    lightening: f.choice({
      title: 'Lightening',
      help: 'windows: pieces of a ring between spokes; holes: round ones on a circle; none. Left out by itself where there is no room.',
      group,
      choices: [
        { value: 'none', label: 'None' },
        { value: 'windows', label: 'Windows' },
        { value: 'holes', label: 'Round holes' },
      ],
      default: 'windows',
    }),
    openings: f.count.given({
      title: 'How many',
      help: 'Windows or holes, evenly spaced.',
      group,
      min: 3,
      max: 24,
      default: 6,
    }),
    spoke: f.length.given({
      title: 'Spoke',
      help: 'Breadth of the metal between two windows.',
      group,
      min: 3,
      max: 200,
      default: '16 mm',
      appliesWhen: windows,
    }),
    windowInner: f.length.maybe({
      title: 'Windows from',
      help: 'Diameter at which the windows begin. Left out: outside the bolt heads, or the hub and its weld.',
      group,
      min: 10,
      max: 1000,
      appliesWhen: windows,
    }),
    windowOuter: f.length.maybe({
      title: 'Windows to',
      help: 'Diameter at which the windows end. Left out: a rim of one pitch stays under the teeth.',
      group,
      min: 10,
      max: 1000,
      appliesWhen: windows,
    }),
    windowCorner: f.length.maybe({
      title: 'Window corners',
      help: 'Fillet in the corners of the windows. Left out: 6 mm, or what fits.',
      group,
      min: 0.5,
      max: 100,
      appliesWhen: windows,
    }),
    holeSize: f.length.given({
      title: 'Lightening hole',
      help: 'Diameter of each lightening hole.',
      group,
      min: 3,
      max: 500,
      default: '24 mm',
      appliesWhen: round,
    }),
    holeCircle: f.length.maybe({
      title: 'Lightening circle',
      help: 'Circle through the lightening holes. Left out: midway between what is inside and the rim.',
      group,
      min: 10,
      max: 1000,
      appliesWhen: round,
    }),
    openingsClocking: f.angle.maybe({
      title: 'First spoke or hole at',
      help: 'Angle of the middle of the first spoke, or of the first hole. Left out: a spoke on the first bolt, a hole between two bolts.',
      group,
      min: -360,
      max: 360,
    }),
  };
}
