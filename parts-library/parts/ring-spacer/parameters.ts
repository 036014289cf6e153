// Everything that can be set on a ring spacer.
import { z } from 'zod';
import { HOLE_FITS, holeFields } from '../shared/holes.js';
import { plateFields } from '../shared/plate-fields.js';
import type { FieldKit } from '../fields/index.js';

function ringFields(f: FieldKit) {
  const group = 'Ring';
  return {
    bolt: f.thread.given({
      title: 'Bolt',
      help: 'Bolt that the ring goes on, for example M20 or 3/4-10; it gives bore and outside when those are left out.',
      measuring: 'Caliper over the threads, then a thread gauge or a known nut.',
      group,
      default: 'M20',
    }),
    bore: f.length.maybe({
      title: 'Bore',
      help: 'Finished bore. Left out: the bolt’s clearance hole.',
      measuring: 'Caliper or micrometer over the shaft or sleeve that goes through; add the room it needs.',
      group,
      min: 3,
      max: 1000,
    }),
    holeFit: f.choice({
      title: 'Hole fit',
      help: 'How much larger than the bolt the bore is (ISO 273, ASME B18.2.8); close is the hole of an ISO 7089 washer.',
      group,
      choices: HOLE_FITS,
      default: 'normal',
    }),
    boreMade: f.choice({
      title: 'Bore made',
      help: 'Cut by the torch, or marked and drilled where it is too small to cut.',
      group,
      choices: [
        { value: 'cut', label: 'Cut' },
        { value: 'drill', label: 'Marked and drilled' },
      ],
      default: 'cut',
    }),
    outside: f.length.maybe({
      title: 'Outside',
      help: 'Outside diameter. Left out: the washer of the bolt.',
      measuring: 'The face it bears on: caliper over the shoulder, less a little.',
      group,
      min: 6,
      max: 1200,
    }),
    washer: f.choice({
      title: 'Washer size',
      help: 'Whose outside is taken when none is given: plain (ISO 7089, SAE) or large (ISO 7093, USS).',
      group,
      choices: [
        { value: 'plain', label: 'Plain washer' },
        { value: 'large', label: 'Large washer' },
      ],
      default: 'large',
    }),
  };
}

function gapFields(f: FieldKit) {
  const group = 'Gap';
  return {
    gap: f.length.given({
      title: 'Gap',
      help: 'Room that the rings fill, with its ±, for example 13.8 ±0.05.',
      measuring:
        'Inside caliper or telescopic gauge, then micrometer; at three places, with the parts seated as they will stand.',
      group,
      min: 0.2,
      max: 200,
      default: '13.8 ±0.05 mm',
    }),
    plates: f.lengths.given({
      title: 'Plates on hand',
      help: 'Thicknesses separated by commas, each with its ± when measured: 6.05 ±0.02, 3.02, 1.5 × 2. The × says how many rings it gives at most; without it, as many as are wanted.',
      measuring: 'Micrometer on each plate with the scale off: plate is seldom its nominal thickness.',
      group,
      min: 0.1,
      max: 40,
      default: '6.05 ±0.02 mm, 3.04 ±0.02 mm, 1.52 ±0.02 mm',
    }),
    leastPlay: f.length.given({
      title: 'Play that must stay',
      help: 'The stack is at most the gap less this; 0 where it is clamped solid, more where something turns beside it.',
      group,
      min: 0,
      max: 20,
      default: '0 mm',
    }),
    mostPlay: f.length.given({
      title: 'Play that is still well',
      help: 'More than this left over is a caution.',
      group,
      min: 0,
      max: 20,
      default: '0.25 mm',
    }),
    prefer: f.choice({
      title: 'Take',
      help: 'The fewest rings that leave no more than the play above, or the closest stack whatever it takes.',
      group,
      choices: [
        { value: 'fewest', label: 'Fewest rings' },
        { value: 'closest', label: 'Closest' },
      ],
      default: 'fewest',
    }),
    mostRings: f.count.given({
      title: 'Most rings in a stack',
      help: 'A stack of many thin rings is springy, and each face adds its scale and dross.',
      group,
      min: 1,
      max: 10,
      default: 6,
    }),
    places: f.count.given({
      title: 'Places',
      help: 'How many gaps of this kind are filled.',
      group,
      min: 1,
      max: 200,
      default: 1,
    }),
    drawn: f.length.maybe({
      title: 'Ring drawn',
      help: 'Which thickness of the stack this part is, for example 1.52. Left out: the thickest.',
      group,
      min: 0.1,
      max: 40,
    }),
  };
}

function patternFields(f: FieldKit) {
  const group = 'Bolts through the ring';
  return f.maybeGroup(
    z.strictObject({
      bolts: f.count.given({
        title: 'Bolts',
        help: 'How many bolts pass through the ring itself.',
        group,
        min: 2,
        max: 24,
        default: 4,
      }),
      circle: f.measure.given({
        title: 'Bolt circle',
        help: 'The circle through the hole centres, typed the way it was measured: circle 80; adjacent 56.6 ±0.1; across 80; every-2nd, near-edges, far-edges, from-bore and centres as on an adapter plate.',
        measuring: 'The widest pair of holes that the caliper reaches, inside and outside of the same pair.',
        group,
        min: 8,
        max: 1000,
        default: 'circle 80 mm',
      }),
      ...holeFields(f, group, 'M8'),
      clocking: f.angle.given({
        title: 'First hole at',
        help: 'Angle of the first hole, counter-clockwise from the right.',
        group,
        min: -360,
        max: 360,
        default: '90',
      }),
    }),
    { title: 'Bolts through the ring', help: 'Holes on a circle through the ring.', group },
  );
}

/** Lengths in mm or as typed. The plate's thickness is that of the ring drawn, so that it is no field of its own. */
export function ringSpacerParameters(f: FieldKit) {
  const { label, labelHeight, material } = plateFields(f);
  return z.strictObject({
    ...gapFields(f),
    ...ringFields(f),
    pattern: patternFields(f),
    label,
    labelHeight,
    material,
  });
}

export type RingSpacer = z.output<ReturnType<typeof ringSpacerParameters>>;
