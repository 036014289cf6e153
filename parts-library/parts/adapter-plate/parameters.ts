// What can be set on an adapter plate: one or two bolt patterns, the centre, the outside, the plate and its load.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';

/** Bolt circles that make sense on a small vehicle, mm. */
export const SMALLEST_CIRCLE = 10;
export const LARGEST_CIRCLE = 2000;

const HOLE_FITS = [
  { value: 'close', label: 'Close' },
  { value: 'normal', label: 'Normal' },
  { value: 'loose', label: 'Loose' },
] as const;

const CIRCLE_HELP =
  'The circle through the hole centres, typed the way it was measured: circle 110; adjacent 55.84 ±0.1; every-2nd 90.35; ' +
  'near-edges 47.3 hole 8.5; far-edges 64.3 hole 8.5; both of these separated by a semicolon, so that the hole size cancels; ' +
  'across 110 (opposite holes); from-bore 20.5 bore 57.15 hole 8.5; centres (0,55) (-52,17) and so on.';

/** The fields of one bolt pattern, first or second. */
function patternFields(f: FieldKit, group: string, start: { bolts: number; circle: string; bolt: string }) {
  return {
    bolts: f.count.given({
      title: 'Bolts',
      help: 'How many bolts share the circle.',
      measuring: 'Count the holes.',
      group,
      min: 2,
      max: 24,
      default: start.bolts,
    }),
    boltCircle: f.measure.given({
      title: 'Bolt circle',
      help: CIRCLE_HELP,
      measuring:
        'Measure the widest pair of holes that the caliper reaches, inside and outside of the same pair; their mean is the centre distance.',
      group,
      min: SMALLEST_CIRCLE,
      max: LARGEST_CIRCLE,
      suggestions: [
        'circle',
        'adjacent',
        'every-2nd',
        'near-edges',
        'far-edges',
        'across',
        'from-bore',
        'centres',
      ],
      default: start.circle,
    }),
    bolt: f.thread.given({
      title: 'Bolt',
      help: 'Thread of the bolts, for example M10, M10x1.25, 3/8-16.',
      measuring: 'Caliper over the threads, then a thread gauge or a known nut.',
      group,
      default: start.bolt,
    }),
    holes: f.holes.given({
      title: 'Holes',
      help: 'clearance: cut to the clearance size; tapped: marked, drilled and tapped; drill: a centre mark to drill the clearance size from; or a diameter to cut.',
      group,
      min: 1,
      max: 200,
      default: 'clearance',
    }),
    holeFit: f.choice({
      title: 'Hole fit',
      help: 'How much larger than the bolt a clearance hole is (ISO 273, ASME B18.2.8).',
      group,
      choices: HOLE_FITS,
      default: 'normal',
    }),
    threadPercent: f.percent.maybe({
      title: 'Thread percent',
      help: 'Percent of full thread for the tap drill; about 65 eases tapping in plate and costs little strength. Left out, the usual chart drill is taken.',
      group,
      min: 50,
      max: 85,
      appliesWhen: { field: 'holes', values: ['tapped'] },
    }),
    clocking: f.angle.given({
      title: 'First hole at',
      help: 'Angle of the first hole, counter-clockwise from the right; 90 puts it on top.',
      group,
      min: -360,
      max: 360,
      default: '90',
    }),
    boltedHole: f.length.maybe({
      title: 'Hole in the bolted part',
      help: 'Diameter of the holes in the sprocket, disc or wheel that is bolted on. With it the fit of the two patterns is judged.',
      measuring: 'Caliper jaws inside one hole, two directions; the smaller reading counts.',
      group,
      min: 1,
      max: 200,
    }),
    boltedBore: f.length.maybe({
      title: 'Bore of the bolted part',
      help: 'Centre hole of the part that is bolted on, on the face that seats here. With it the hub and its weld are judged for room.',
      measuring: 'Caliper jaws inside the bore.',
      group,
      min: 1,
      max: 1000,
    }),
  };
}

/** One schema for the whole part. Lengths in mm or as typed. */
export function adapterPlateParameters(f: FieldKit) {
  const first = 'Bolt pattern';
  const second = 'Second bolt pattern';
  return z.strictObject({
    ...patternFields(f, first, { bolts: 5, circle: 'circle 95', bolt: 'M8' }),
    pattern2: f.maybeGroup(
      z.strictObject(patternFields(f, second, { bolts: 4, circle: 'circle 60', bolt: 'M8' })),
      { title: 'Second bolt pattern', help: 'Another circle of bolts in the same plate.', group: second },
    ),
    centre: f.maybeChoice({
      title: 'Centre',
      help: 'slip-to-weld: the hub slips in after its edge is ground, and is welded; bore-after: cut under size and bored to the hub; turned: the same in a lathe to a locating fit; plain: a round opening; none. Left out: slip-to-weld with a hub, plain with a bore, otherwise none.',
      group: 'Centre',
      choices: [
        { value: 'slip-to-weld', label: 'Slip to weld, after grinding' },
        { value: 'bore-after', label: 'Bore after cutting' },
        { value: 'turned', label: 'Turned to a locating fit' },
        { value: 'plain', label: 'Plain opening' },
        { value: 'none', label: 'None' },
      ],
    }),
    hub: f.length.maybe({
      title: 'Hub outside',
      help: 'Outside diameter of the weld-on hub where it passes through the plate.',
      measuring: 'Caliper or micrometer over the hub, two directions at right angles; take the larger.',
      group: 'Centre',
      min: 5,
      max: 500,
    }),
    fit: f.length.given({
      title: 'Fit',
      help: 'How much larger than the hub the finished bore is, on diameter.',
      group: 'Centre',
      min: 0,
      max: 5,
      default: '0.2 mm',
    }),
    bore: f.length.maybe({
      title: 'Bore',
      help: 'Finished bore, instead of hub and fit.',
      measuring: 'What has to pass: measure it, and add the room it needs.',
      group: 'Centre',
      min: 3,
      max: 1000,
    }),
    grind: f.length.given({
      title: 'Ground off the bore',
      help: 'Metal that will be ground off the cut edge, per side, before welding; the bore is cut that much smaller. 0.2 to 0.5 mm is usual.',
      group: 'Centre',
      min: 0,
      max: 2,
      default: '0 mm',
    }),
    machiningAllowance: f.length.given({
      title: 'Left for boring',
      help: 'How much smaller the opening is cut, on diameter, when it is bored or turned afterwards.',
      group: 'Centre',
      min: 1,
      max: 10,
      default: '3 mm',
    }),
    keyway: f.choice({
      title: 'Keyway',
      help: 'A keyway cut in the plate itself, for a plain bore on a keyed shaft. Thin plate crushes; a keyed hub is the usual answer.',
      group: 'Centre',
      choices: [
        { value: 'none', label: 'None' },
        { value: 'metric', label: 'Metric key (DIN 6885-1)' },
        { value: 'inch', label: 'Inch key (ASME B17.1)' },
      ],
      default: 'none',
    }),
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
      help: 'From bolt centre to the edge, on the outermost circle; the lobe radius of a lobed plate. Left out: twice the bolt.',
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
      default: 0,
    }),
    lighteningDiameter: f.length.given({
      title: 'Lightening hole',
      help: 'Diameter of each lightening hole.',
      group: 'Lightening',
      min: 2,
      max: 500,
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
      help: 'Angle of the first lightening hole. Left out: between two bolts.',
      group: 'Lightening',
      min: -360,
      max: 360,
    }),
    label: f.text.maybe({
      title: 'Etched label',
      help: 'Single-stroke lettering on the face, at least 6 mm high; marked, never cut through.',
      group: 'Plate',
    }),
    labelHeight: f.length.given({
      title: 'Label height',
      help: 'Height of a capital letter.',
      group: 'Plate',
      min: 3,
      max: 50,
      default: '6 mm',
    }),
    thickness: f.length.given({
      title: 'Thickness',
      help: 'Plate thickness; the measured one where it was measured.',
      measuring: 'Micrometer or caliper on a clean edge, scale off.',
      group: 'Plate',
      min: 1,
      max: 40,
      suggestions: ['3', '4', '5', '6', '8', '10', '12', '1/8 in', '3/16 in', '1/4 in', '5/16 in', '3/8 in'],
      default: '6 mm',
    }),
    material: f.material.given({
      title: 'Material',
      help: 'Grade of the plate.',
      group: 'Plate',
      default: 'S275',
    }),
    use: f.choice({
      title: 'Used on',
      help: 'Brake, steering and drive parts carry their cautions.',
      group: 'Load',
      choices: [
        { value: 'drive', label: 'Drive' },
        { value: 'brake', label: 'Brake' },
        { value: 'steering', label: 'Steering' },
        { value: 'other', label: 'Other' },
      ],
      default: 'drive',
    }),
    torque: f.torque.maybe({
      title: 'Torque',
      help: 'Greatest torque that passes through the plate, for a motor the stall torque at this shaft.',
      group: 'Load',
      min: 0,
      max: 100000,
    }),
    chain: f.chain.maybe({
      title: 'Chain',
      help: 'Chain on the bolted sprocket, for example 428, 40, 08B.',
      measuring: 'Inner width, roller diameter, and twelve pitches under light tension.',
      group: 'Load',
    }),
    teeth: f.count.maybe({
      title: 'Teeth',
      help: 'Teeth of the bolted sprocket.',
      group: 'Load',
      min: 9,
      max: 150,
    }),
    chainOffset: f.length.maybe({
      title: 'Chain plane to weld',
      help: 'Distance along the shaft from the middle of the chain to the weld; an offset pull bends the weld.',
      measuring: 'Depth rod from the sprocket face to the weld face, plus half the sprocket.',
      group: 'Load',
      min: 0,
      max: 500,
    }),
    gripMass: f.mass.maybe({
      title: 'Mass on the driven wheels',
      help: 'What the driven wheels carry; the tyres can pull no harder than their grip.',
      group: 'Load',
      min: 1,
      max: 20000,
    }),
    tyreDiameter: f.length.maybe({
      title: 'Tyre diameter',
      help: 'Loaded outside diameter of the driven tyres.',
      measuring: 'Axle centre to floor under load, doubled.',
      group: 'Load',
      min: 50,
      max: 2500,
    }),
    grip: f.factor.given({
      title: 'Grip',
      help: 'Friction of tyre on ground; 0.8 on dry hard ground, 1.0 as an upper bound.',
      group: 'Load',
      min: 0.1,
      max: 1.5,
      default: 0.8,
    }),
    boltGrade: f.choice({
      title: 'Bolt grade',
      help: 'Property class or SAE grade stamped on the head.',
      group: 'Load',
      choices: [
        { value: '8.8', label: '8.8' },
        { value: '10.9', label: '10.9' },
        { value: '12.9', label: '12.9' },
        { value: 'SAE 2', label: 'SAE grade 2' },
        { value: 'SAE 5', label: 'SAE grade 5' },
        { value: 'SAE 8', label: 'SAE grade 8' },
      ],
      default: '8.8',
    }),
    weldLeg: f.length.maybe({
      title: 'Weld leg',
      help: 'Leg of the fillet between hub and plate. Left out: the least leg for this thickness.',
      group: 'Load',
      min: 1,
      max: 30,
    }),
    weldSides: f.choice({
      title: 'Welded',
      help: 'On one face or on both.',
      group: 'Load',
      choices: [
        { value: 'both', label: 'Both sides' },
        { value: 'one', label: 'One side' },
      ],
      default: 'both',
    }),
    hubSteel: f.choice({
      title: 'Hub steel',
      help: 'Leaded, hardened or plated hubs do not weld like plain carbon steel.',
      group: 'Load',
      choices: [
        { value: 'unknown', label: 'Not known' },
        { value: 'carbon', label: 'Low-carbon, bare' },
        { value: 'leaded', label: 'Leaded free-cutting' },
        { value: 'hardened', label: 'Hardened or alloyed' },
        { value: 'plated', label: 'Plated' },
      ],
      default: 'unknown',
    }),
  });
}

export type AdapterPlate = z.output<ReturnType<typeof adapterPlateParameters>>;
export type Pattern = Pick<
  AdapterPlate,
  | 'bolts'
  | 'boltCircle'
  | 'bolt'
  | 'holes'
  | 'holeFit'
  | 'threadPercent'
  | 'clocking'
  | 'boltedHole'
  | 'boltedBore'
>;
