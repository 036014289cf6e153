// The fields of a foot: welded by its edge, bolted flat against a face, or bent square and bolted down.
import type { FieldKit } from '../fields/index.js';
import { holeFields } from './holes.js';

const BOLTED = { field: 'foot', values: ['flat', 'bent'] } as const;
const BENT = { field: 'foot', values: ['bent'] } as const;

/** What the foot is before anything is typed. */
export interface FootStart {
  readonly bolt: string;
  readonly spacing: string;
  readonly inset: string;
  readonly footDepth: string;
  readonly radius: string;
  /** Usual sizes for random trials, mm. */
  readonly usual: {
    readonly spacing: readonly [number, number];
    readonly inset: readonly [number, number];
    readonly footDepth: readonly [number, number];
  };
}

export function footFields(f: FieldKit, start: FootStart) {
  const group = 'Foot';
  return {
    foot: f.choice({
      title: 'Foot',
      help: 'weld: welded by its edge; flat: bolted against a face; bent: a foot bent square, bolted down.',
      group,
      choices: [
        { value: 'weld', label: 'Weld edge' },
        { value: 'flat', label: 'Flat, bolted' },
        { value: 'bent', label: 'Bent, bolted' },
      ],
      default: 'weld',
    }),
    ...holeFields(f, group, start.bolt),
    bolts: f.count.given({
      title: 'Foot bolts',
      help: 'In a row across the foot.',
      group,
      min: 1,
      max: 6,
      usual: [1, 2],
      default: '2',
      appliesWhen: BOLTED,
    }),
    spacing: f.length.given({
      title: 'Bolt spacing',
      help: 'Centre to centre across the foot.',
      measuring: 'Inside of one hole to inside of the next, plus one hole.',
      group,
      min: 5,
      max: 1000,
      usual: start.usual.spacing,
      default: start.spacing,
      appliesWhen: BOLTED,
    }),
    inset: f.length.given({
      title: 'Bolts from the foot’s end',
      help: 'From the end of the foot to the holes’ centres.',
      measuring: 'Caliper from the end to the hole’s edge, plus half the hole.',
      group,
      min: 3,
      max: 500,
      usual: start.usual.inset,
      default: start.inset,
      appliesWhen: BOLTED,
    }),
    footDepth: f.length.given({
      title: 'Foot',
      help: 'Height of a flat foot; of a bent one its outside length, from the ear’s outer face to its end.',
      measuring: 'Caliper from the outer face to the end.',
      group,
      min: 5,
      max: 500,
      usual: start.usual.footDepth,
      default: start.footDepth,
      appliesWhen: BOLTED,
    }),
    radius: f.length.given({
      title: 'Inside radius',
      help: 'Inside radius of the bend.',
      measuring: 'Radius gauge inside a trial bend in the same plate.',
      group,
      min: 0,
      max: 60,
      usual: [4, 10],
      default: start.radius,
      appliesWhen: BENT,
    }),
    kFactor: f.factor.given({
      title: 'K factor',
      help: 'Place of the neutral line in the thickness; bend a trial strip and measure it to find yours.',
      group,
      min: 0.25,
      max: 0.5,
      default: 0.4,
      appliesWhen: BENT,
    }),
    seat: f.length.given({
      title: 'Bolted to',
      help: 'Thickness of what the foot is bolted to; the bolts’ length follows.',
      group,
      min: 0,
      max: 500,
      usual: [3, 12],
      default: '6 mm',
      appliesWhen: BOLTED,
    }),
  };
}
