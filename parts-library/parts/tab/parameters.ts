// What can be set on a tab: hole and nose, weld edge, pair, load, plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { holeFields } from '../shared/holes.js';
import { plateFields } from '../shared/plate-fields.js';
import { pullFields } from '../shared/pull-fields.js';
import { weldEdgeFields } from '../shared/weld-edge-fields.js';

function earFields(f: FieldKit) {
  const group = 'Ear';
  return {
    ...holeFields(f, group, 'M10'),
    height: f.length.given({
      title: 'Edge to hole',
      help: 'From the weld edge to the hole’s centre; of a coped edge from the tube’s crest.',
      measuring: 'Caliper from the tube’s surface to the pin, plus half the pin.',
      group,
      min: 3,
      max: 1000,
      default: '35 mm',
    }),
    nose: f.length.maybe({
      title: 'Nose radius',
      help: 'Round end about the hole: its edge distance. Left out: two bolt diameters, or what leaves 1.5 thicknesses beside the hole.',
      measuring: 'Caliper from the hole’s edge to the end, plus half the hole.',
      group,
      min: 2,
      max: 300,
      usual: [16, 22],
    }),
    base: f.length.given({
      title: 'Weld edge',
      help: 'Width of the edge, corner to corner.',
      measuring: 'Caliper along the bead’s place.',
      group,
      min: 5,
      max: 1000,
      default: '50 mm',
    }),
    lean: f.length.given({
      title: 'Hole beside the middle',
      help: 'How far the hole stands to the right of the edge’s middle; negative to the left.',
      group,
      min: -500,
      max: 500,
      usual: [-10, 10],
      default: '0 mm',
    }),
  };
}

function pairFields(f: FieldKit) {
  const group = 'Pair';
  return {
    ears: f.choice({
      title: 'Ears',
      help: 'single: the pin in single shear; pair: two equal ears with the eye between, the pin in double shear.',
      group,
      choices: [
        { value: 'single', label: 'Single' },
        { value: 'pair', label: 'Pair, double shear' },
      ],
      default: 'pair',
    }),
    eye: f.length.given({
      title: 'Eye width',
      help: 'Width of what the pin goes through: rod end, bush, strut eye.',
      measuring: 'Caliper over the eye’s faces.',
      group,
      min: 1,
      max: 500,
      default: '14 mm',
    }),
    play: f.length.given({
      title: 'Side play',
      help: 'Gap between a pair of ears less the eye, both sides together.',
      group,
      min: 0,
      max: 50,
      default: '0.8 mm',
      appliesWhen: { field: 'ears', values: ['pair'] },
    }),
  };
}

/** Lengths in mm or as typed; the crest of the weld edge's middle is the origin. */
export function tabParameters(f: FieldKit) {
  return z.strictObject({
    ...earFields(f),
    ...weldEdgeFields(f, '40 mm', '3 mm', [65, 90]),
    ...pairFields(f),
    ...pullFields(f),
    ...plateFields(f),
  });
}

export type Tab = z.output<ReturnType<typeof tabParameters>>;
