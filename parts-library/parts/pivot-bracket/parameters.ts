// What can be set on a pivot bracket: pivot, ear, pair, foot, weld, load, plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { footFields, type FootStart } from '../shared/foot-fields.js';
import { plateFields } from '../shared/plate-fields.js';
import { pullFields } from '../shared/pull-fields.js';
import { weldEdgeFields } from '../shared/weld-edge-fields.js';

/** The usual foot of a standoff. */
const FOOT: FootStart = {
  bolt: 'M8',
  spacing: '45 mm',
  inset: '16 mm',
  footDepth: '50 mm',
  radius: '9 mm',
  usual: { spacing: [30, 40], inset: [12, 18], footDepth: [40, 50] },
};
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
      usual: [70, 90],
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
      help: 'One, or two with what turns between them. handed: one of two, whose mirror image is a part of its own.',
      group,
      choices: [
        { value: 'pair', label: 'Pair' },
        { value: 'handed', label: 'One hand of a pair' },
        { value: 'single', label: 'Single' },
      ],
      default: 'pair',
    }),
    mirrored: f.choice({
      title: 'Mirrored',
      help: 'Drawn as the other hand: the pivot leans and the pull acts to the other side; the foot still bends up, and the label still reads.',
      group,
      choices: [
        { value: 'no', label: 'As given' },
        { value: 'yes', label: 'Mirrored' },
      ],
      default: 'no',
      appliesWhen: { field: 'standoffs', values: ['handed', 'single'] },
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
      appliesWhen: { field: 'standoffs', values: ['pair', 'handed'] },
    }),
  };
}

/** Lengths in mm or as typed; the middle of the base line is the origin. */
export function pivotBracketParameters(f: FieldKit) {
  return z.strictObject({
    ...pivotFields(f),
    ...earFields(f),
    ...footFields(f, FOOT),
    ...weldEdgeFields(f, '40 mm', '3 mm', [95, 140]),
    ...pullFields(f),
    ...plateFields(f),
  });
}

export type PivotBracket = z.output<ReturnType<typeof pivotBracketParameters>>;
