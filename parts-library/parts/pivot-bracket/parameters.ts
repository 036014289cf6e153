// What can be set on a pivot bracket: pivot, ear, pair, foot, weld, load, plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { holeFields } from '../shared/holes.js';
import { plateFields } from '../shared/plate-fields.js';
import { pullFields } from '../shared/pull-fields.js';
import { weldEdgeFields } from '../shared/weld-edge-fields.js';

const BOLTED = { field: 'foot', values: ['flat', 'bent'] } as const;
const BENT = { field: 'foot', values: ['bent'] } as const;
const ROUND = { field: 'pivot', values: ['tube', 'bush'] } as const;

function pivotFields(f: FieldKit) {
  const group = 'Pivot';
  return {
    pivot: f.choice({
      title: 'Pivot',
      help: 'tube: a tube through the ears, welded in; bush: pressed into a bored hole; bolt: a bolt through clearance holes.',
      group,
      choices: [
        { value: 'tube', label: 'Tube, welded in' },
        { value: 'bush', label: 'Bush, pressed in' },
        { value: 'bolt', label: 'Bolt' },
      ],
      default: 'tube',
    }),
    outside: f.length.given({
      title: 'Tube or bush outside',
      help: 'Outside diameter of what sits in the ear.',
      measuring: 'Micrometer or caliper in two directions; take the larger.',
      group,
      min: 5,
      max: 200,
      usual: [16, 40],
      default: '26.9 mm',
      appliesWhen: ROUND,
    }),
    tubeWall: f.length.given({
      title: 'Tube wall',
      help: 'Wall of the pivot tube or bush.',
      measuring: 'Caliper over the sawn end, burr off.',
      group,
      min: 0.5,
      max: 40,
      usual: [2, 5],
      default: '2.6 mm',
      appliesWhen: ROUND,
    }),
    fit: f.length.given({
      title: 'Fit of the tube',
      help: 'How much larger than the tube its hole is cut, on diameter.',
      group,
      min: 0,
      max: 3,
      usual: [0, 0.6],
      default: '0.3 mm',
      appliesWhen: { field: 'pivot', values: ['tube'] },
    }),
    boreAllowance: f.length.given({
      title: 'Left to bore',
      help: 'How much smaller than the bush its hole is cut, on diameter.',
      group,
      min: 0,
      max: 10,
      usual: [2, 4],
      default: '3 mm',
      appliesWhen: { field: 'pivot', values: ['bush'] },
    }),
    overhang: f.length.given({
      title: 'Tube beyond the ears',
      help: 'How far the pivot tube stands out of each ear, room for its fillet.',
      group,
      min: 0,
      max: 200,
      usual: [0, 8],
      default: '4 mm',
      appliesWhen: { field: 'pivot', values: ['tube'] },
    }),
    pin: f.thread.given({
      title: 'Pivot bolt',
      help: 'Bolt through the tube or bush, or through the ears.',
      measuring: 'Caliper over the shank, then a thread gauge or a known nut.',
      group,
      default: 'M12',
    }),
  };
}

function earFields(f: FieldKit) {
  const group = 'Ear';
  return {
    height: f.length.given({
      title: 'Pivot height',
      help: 'From the weld edge, the underside of a bent foot, or the lower edge of a flat one to the pivot’s middle.',
      measuring: 'Rule from what it stands on to the pivot, plus half the pivot.',
      group,
      min: 5,
      max: 1000,
      usual: [60, 120],
      default: '70 mm',
    }),
    nose: f.length.maybe({
      title: 'Nose radius',
      help: 'Round end about the pivot. Left out: two thicknesses of metal round the hole, two diameters about a bolt.',
      group,
      min: 3,
      max: 300,
      usual: [26, 34],
    }),
    base: f.length.given({
      title: 'Base',
      help: 'Width of the foot or weld edge.',
      measuring: 'Rule over the place it stands on.',
      group,
      min: 10,
      max: 1000,
      usual: [70, 120],
      default: '80 mm',
    }),
    lean: f.length.given({
      title: 'Pivot beside the middle',
      help: 'How far the pivot stands to the right of the base’s middle; negative to the left.',
      group,
      min: -500,
      max: 500,
      usual: [-15, 15],
      default: '0 mm',
    }),
    standoffs: f.choice({
      title: 'Standoffs',
      help: 'One, or two with what turns between them.',
      group,
      choices: [
        { value: 'pair', label: 'Pair' },
        { value: 'single', label: 'Single' },
      ],
      default: 'pair',
    }),
    gap: f.length.given({
      title: 'Gap',
      help: 'Inside of one ear to inside of the other.',
      measuring: 'Length of the boss or bush that turns between, plus the side play wanted.',
      group,
      min: 1,
      max: 2000,
      usual: [30, 120],
      default: '60.5 mm',
      appliesWhen: { field: 'standoffs', values: ['pair'] },
    }),
  };
}

function footFields(f: FieldKit) {
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
    ...holeFields(f, group, 'M8'),
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
      usual: [30, 40],
      default: '45 mm',
      appliesWhen: BOLTED,
    }),
    inset: f.length.given({
      title: 'Bolts from the foot’s end',
      help: 'From the end of the foot to the holes’ centres.',
      measuring: 'Caliper from the end to the hole’s edge, plus half the hole.',
      group,
      min: 3,
      max: 500,
      usual: [12, 18],
      default: '16 mm',
      appliesWhen: BOLTED,
    }),
    footDepth: f.length.given({
      title: 'Foot',
      help: 'Height of a flat foot; of a bent one its outside length, from the ear’s outer face to its end.',
      measuring: 'Caliper from the outer face to the end.',
      group,
      min: 5,
      max: 500,
      usual: [40, 50],
      default: '50 mm',
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
      default: '9 mm',
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

/** Lengths in mm or as typed; the middle of the base line is the origin. */
export function pivotBracketParameters(f: FieldKit) {
  return z.strictObject({
    ...pivotFields(f),
    ...earFields(f),
    ...footFields(f),
    ...weldEdgeFields(f, '40 mm', '3 mm'),
    ...pullFields(f),
    ...plateFields(f),
  });
}

export type PivotBracket = z.output<ReturnType<typeof pivotBracketParameters>>;
