// The fields of the bearing: a bought housing with its bolts, or a bare bearing in a bored seat.
import type { FieldKit } from '../fields/index.js';
import { holeFields } from '../shared/holes.js';
import { LARGEST_CIRCLE, SMALLEST_CIRCLE } from '../shared/pattern-fields.js';

export function housingFields(f: FieldKit) {
  const group = 'Bearing housing';
  const flanged = { field: 'bearing', values: ['flanged'] } as const;
  return {
    bearing: f.choice({
      title: 'Bearing',
      help: 'flanged: a bought housing bolted to the plate; seat: a bare bearing in a bore that is machined after cutting.',
      group,
      choices: [
        { value: 'flanged', label: 'Flanged housing' },
        { value: 'seat', label: 'Bored seat' },
      ],
      default: 'flanged',
    }),
    flangeBolts: f.choice({
      title: 'Housing bolts',
      help: 'Holes in the housing’s flange: two on a line, three or four round the shaft.',
      group,
      choices: [
        { value: '2', label: 'Two' },
        { value: '3', label: 'Three' },
        { value: '4', label: 'Four' },
      ],
      default: '4',
      appliesWhen: flanged,
    }),
    boltCircle: f.measure.given({
      title: 'Housing bolt circle',
      help: 'Typed the way it was measured: adjacent 92 (side of the square, or between the two holes); across 130; near-edges 80 hole 12; circle 130.',
      measuring:
        'Inside to inside and outside to outside of two neighbouring holes of the housing; the mean is centre to centre.',
      group,
      min: SMALLEST_CIRCLE,
      max: LARGEST_CIRCLE,
      suggestions: ['adjacent', 'across', 'near-edges', 'circle'],
      default: 'adjacent 92 mm',
      appliesWhen: flanged,
    }),
    clocking: f.angle.given({
      title: 'First bolt at',
      help: 'Angle of the first housing bolt, counter-clockwise from the right; two bolts stand best along the pull.',
      group,
      min: -360,
      max: 360,
      default: '45',
      appliesWhen: flanged,
    }),
    ...holeFields(f, group, 'M10'),
    housingHole: f.length.maybe({
      title: 'Hole in the housing',
      help: 'Smallest width of a bolt hole of the housing. With it the fit of the two patterns is judged.',
      measuring: 'Caliper jaws inside the cast hole, the narrow way.',
      group,
      min: 2,
      max: 60,
      appliesWhen: flanged,
    }),
    housingFlange: f.length.given({
      title: 'Housing flange thickness',
      help: 'Thickness of its flange at the bolts, for their length.',
      measuring: 'Caliper over the flange beside a bolt hole.',
      group,
      min: 1,
      max: 80,
      default: '13 mm',
      appliesWhen: flanged,
    }),
    shaft: f.length.given({
      title: 'Shaft',
      help: 'Diameter of the shaft in the bearing.',
      measuring: 'Micrometer, two directions, where the bearing sits.',
      group,
      min: 3,
      max: 200,
      default: '25 mm',
    }),
    collar: f.length.given({
      title: 'Collar',
      help: 'Largest thing that turns in the plate’s opening: inner ring, locking collar, shaft shoulder.',
      measuring: 'Caliper over the collar or inner ring, over its screws if they stand out.',
      group,
      min: 3,
      max: 300,
      default: '38 mm',
      appliesWhen: flanged,
    }),
    collarRoom: f.length.given({
      title: 'Room round the collar',
      help: 'How much larger the opening is, on diameter.',
      group,
      min: 0,
      max: 100,
      default: '6 mm',
      appliesWhen: flanged,
    }),
  };
}

export function seatFields(f: FieldKit) {
  const group = 'Bored seat';
  const seat = { field: 'bearing', values: ['seat'] } as const;
  const ring = { field: 'retainer', values: ['ring'] } as const;
  return {
    outside: f.length.given({
      title: 'Bearing outside',
      help: 'Outside diameter of the bearing.',
      measuring: 'Micrometer over the outer ring, or the number etched on it.',
      group,
      min: 12,
      max: 180,
      suggestions: ['35', '42', '47', '52', '62', '72', '80'],
      default: '52 mm',
      appliesWhen: seat,
    }),
    bearingWidth: f.length.given({
      title: 'Bearing width',
      help: 'Width of the bearing’s rings.',
      measuring: 'Caliper over both faces of the outer ring.',
      group,
      min: 3,
      max: 60,
      default: '15 mm',
      appliesWhen: seat,
    }),
    seatFit: f.choice({
      title: 'Seat',
      help: 'H7: the bearing slides in and is held sideways; N7: it is pressed in.',
      group,
      choices: [
        { value: 'H7', label: 'H7, slides in' },
        { value: 'N7', label: 'N7, pressed in' },
      ],
      default: 'H7',
      appliesWhen: seat,
    }),
    leave: f.length.given({
      title: 'Left for boring',
      help: 'How much smaller the opening is cut, on diameter; 3 mm takes the hard skin away.',
      group,
      min: 1,
      max: 10,
      default: '3 mm',
      appliesWhen: seat,
    }),
    retainer: f.choice({
      title: 'Held sideways by',
      help: 'ring: a ring bolted over the outer ring’s edge; none: by the fit, a shoulder or a circlip that is made otherwise.',
      group,
      choices: [
        { value: 'none', label: 'None in this plate' },
        { value: 'ring', label: 'Clamp ring' },
      ],
      default: 'ring',
      appliesWhen: seat,
    }),
    clampBolts: f.count.given({
      title: 'Clamp ring screws',
      help: 'How many screws hold the clamp ring.',
      group,
      min: 2,
      max: 8,
      default: 4,
      appliesWhen: ring,
    }),
    clampBolt: f.thread.given({
      title: 'Clamp ring screw',
      help: 'Their thread.',
      group,
      default: 'M6',
      appliesWhen: ring,
    }),
    clampHoles: f.holes.given({
      title: 'Clamp ring holes',
      help: 'tapped: marked, drilled and tapped; drill: a centre mark to drill from; clearance: cut; or a diameter.',
      group,
      min: 1,
      max: 50,
      default: 'tapped',
      appliesWhen: ring,
    }),
  };
}
