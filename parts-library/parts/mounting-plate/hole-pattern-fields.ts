// The fields of the plate's own holes: a grid or a circle, plain or drawn out to slots.
import type { FieldKit } from '../fields/index.js';
import { holeFields } from '../shared/holes.js';
import { LARGEST_CIRCLE, SMALLEST_CIRCLE } from '../shared/pattern-fields.js';

export function holePatternFields(f: FieldKit) {
  const group = 'Holes';
  const grid = { field: 'figure', values: ['grid'] } as const;
  const circle = { field: 'figure', values: ['circle'] } as const;
  return {
    figure: f.choice({
      title: 'Figure',
      help: 'grid: columns and rows; circle: a bolt circle; none: no holes but those of the motor face.',
      group,
      choices: [
        { value: 'grid', label: 'Grid' },
        { value: 'circle', label: 'Bolt circle' },
        { value: 'none', label: 'None' },
      ],
      default: 'grid',
    }),
    columns: f.count.given({
      title: 'Columns',
      help: 'Holes from left to right.',
      measuring: 'Count them.',
      group,
      min: 1,
      max: 8,
      usual: [1, 2],
      default: 2,
      appliesWhen: grid,
    }),
    rows: f.count.given({
      title: 'Rows',
      help: 'Holes from bottom to top.',
      measuring: 'Count them.',
      group,
      min: 1,
      max: 8,
      usual: [2, 2],
      default: 2,
      appliesWhen: grid,
    }),
    pitchX: f.length.given({
      title: 'Between columns',
      help: 'Centre to centre from left to right.',
      measuring:
        'Inside to inside and outside to outside of the same two holes; the mean is centre to centre.',
      group,
      min: 5,
      max: 2500,
      usual: [190, 230],
      default: '230 mm',
      appliesWhen: grid,
    }),
    pitchY: f.length.given({
      title: 'Between rows',
      help: 'Centre to centre from bottom to top.',
      measuring:
        'Inside to inside and outside to outside of the same two holes; the mean is centre to centre.',
      group,
      min: 5,
      max: 2500,
      usual: [125, 160],
      default: '150 mm',
      appliesWhen: grid,
    }),
    bolts: f.count.given({
      title: 'Bolts',
      help: 'How many bolts share the circle.',
      measuring: 'Count the holes.',
      group,
      min: 2,
      max: 24,
      default: 4,
      appliesWhen: circle,
    }),
    boltCircle: f.measure.given({
      title: 'Bolt circle',
      help: 'The circle through the hole centres, typed the way it was measured: circle 110; adjacent 77.8 ±0.1; near-edges 66.8 hole 11; across 110 and so on.',
      measuring:
        'Widest pair of holes that the caliper reaches, inside and outside of the same pair; their mean is the centre distance.',
      group,
      min: SMALLEST_CIRCLE,
      max: LARGEST_CIRCLE,
      default: 'circle 160 mm',
      appliesWhen: circle,
    }),
    clocking: f.angle.given({
      title: 'First hole at',
      help: 'Angle of the first hole, counter-clockwise from the right.',
      group,
      min: -360,
      max: 360,
      default: '45',
      appliesWhen: circle,
    }),
    ...holeFields(f, group, 'M10'),
    slot: f.length.given({
      title: 'Slot travel',
      help: 'How far a bolt can move in its slot, from middle to middle of its ends; 0 for plain holes.',
      group,
      min: 0,
      max: 500,
      default: '0 mm',
    }),
    slotDirection: f.angle.given({
      title: 'Slot direction',
      help: '0 along the width, 90 along the height.',
      group,
      min: -180,
      max: 180,
      default: '0',
    }),
    bolted: f.length.maybe({
      title: 'Hole in what it is bolted to',
      help: 'Diameter of the holes in rail, frame or floor. With it the fit of the two patterns is judged.',
      measuring: 'Caliper jaws inside one hole, two directions; the smaller reading counts.',
      group,
      min: 1,
      max: 200,
    }),
    under: f.length.given({
      title: 'Thickness of what it is bolted to',
      help: 'Wall or flange under the plate, for the length of the bolts.',
      measuring: 'Caliper over the flange; over a tube that is bolted through, the whole tube.',
      group,
      min: 0.5,
      max: 300,
      default: '5 mm',
    }),
  };
}
