// The fields of one bolt pattern, first or second.
import type { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { holeFields } from './holes.js';

/** Bolt circles that make sense on a small vehicle, mm. */
export const SMALLEST_CIRCLE = 10;
export const LARGEST_CIRCLE = 2000;

const CIRCLE_HELP =
  'The circle through the hole centres, typed the way it was measured: circle 110; adjacent 55.84 ±0.1; every-2nd 90.35; ' +
  'near-edges 47.3 hole 8.5; far-edges 64.3 hole 8.5; both of these separated by a semicolon, so that the hole size cancels; ' +
  'across 110 (opposite holes); from-bore 20.5 bore 57.15 hole 8.5; centres (0,55) (-52,17) and so on.';

/** What a pattern is before anything is typed. */
export interface PatternStart {
  readonly bolts: number;
  readonly circle: string;
  readonly bolt: string;
  /** Angle of the first hole; 90, on top, when left out. */
  readonly clocking?: string;
  /** How the holes are made; cut to the clearance size when left out. */
  readonly holes?: string;
  /** What the bolted part has for the bolts; clearance holes when left out. */
  readonly boltedBy?: 'hole' | 'thread' | 'stud';
}

/** The fields of one bolt pattern, first or second. */
export function patternFields(f: FieldKit, group: string, start: PatternStart) {
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
    ...holeFields(f, group, start.bolt, start.holes),
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
      default: start.clocking ?? '90',
    }),
    boltedBy: f.choice({
      title: 'Bolted part has',
      help: 'Clearance holes, tapped holes, or studs. Tapped holes and studs hold the bolt where it is, so that only the hole in this plate gives.',
      group,
      choices: [
        { value: 'hole', label: 'Holes' },
        { value: 'thread', label: 'Tapped holes' },
        { value: 'stud', label: 'Studs' },
      ],
      default: start.boltedBy ?? 'hole',
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

/** One bolt pattern as read. */
export type Pattern = z.output<z.ZodObject<ReturnType<typeof patternFields>>>;
