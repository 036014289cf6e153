// The fields of the pivot: the tube, how it sits in the arm, and the metal round it.
import type { FieldKit } from '../fields/index.js';

/** Use of the pedal, and what it turns on. */
export function pivotFields(f: FieldKit) {
  const group = 'Pivot';
  return {
    use: f.choice({
      title: 'Pedal',
      help: 'Brake and throttle differ: a brake rests on free play and its forward stop never acts before the full stroke; a throttle stops forward and has two return springs.',
      group: 'Use',
      choices: [
        { value: 'brake', label: 'Brake' },
        { value: 'throttle', label: 'Throttle' },
        { value: 'clutch', label: 'Clutch' },
      ],
      default: 'brake',
    }),
    pivot: f.choice({
      title: 'Pivot tube',
      help: 'welded: the tube is welded into the arm and turns on the pivot bolt. bushed: a bush pressed into the bored arm turns on the tube.',
      group,
      choices: [
        { value: 'welded', label: 'Welded in' },
        { value: 'bushed', label: 'Bushed' },
      ],
      default: 'welded',
    }),
    tubeOutside: f.length.given({
      title: 'Tube outside',
      help: 'Outside diameter of the pivot tube.',
      measuring: 'Caliper over the tube, two directions at right angles; take the larger.',
      group,
      min: 8,
      max: 80,
      usual: [16, 45],
      default: '30 mm',
    }),
    tubeWall: f.length.given({
      title: 'Tube wall',
      help: 'Wall of the pivot tube.',
      measuring: 'Caliper on the sawn end, burr off.',
      group,
      min: 1,
      max: 20,
      usual: [2, 6],
      default: '4 mm',
    }),
    tubeLength: f.length.given({
      title: 'Tube length',
      help: 'Sawn length: what the arm bears on along the pivot. A short one lets the pad rock sideways.',
      measuring: 'Caliper between the standoffs, less the side play wanted.',
      group,
      min: 5,
      max: 300,
      usual: [20, 90],
      default: '50 mm',
    }),
    bushWall: f.length.given({
      title: 'Bush wall',
      help: 'Wall of the bush between tube and arm.',
      measuring: 'Half of bush outside less bush inside.',
      group,
      min: 0.5,
      max: 15,
      usual: [1, 5],
      default: '2 mm',
      appliesWhen: { field: 'pivot', values: ['bushed'] },
    }),
    fit: f.length.given({
      title: 'Fit of the tube',
      help: 'How much larger than the tube the cut hole is, on diameter, for a tube that is welded in.',
      group,
      min: 0,
      max: 2,
      usual: [0, 0.6],
      default: '0.2 mm',
      appliesWhen: { field: 'pivot', values: ['welded'] },
    }),
    bossEdge: f.length.given({
      title: 'Metal round the pivot',
      help: 'From the hole for tube or bush to the outside of the boss.',
      measuring: 'Caliper from the hole to the outside.',
      group,
      min: 3,
      max: 60,
      usual: [8, 20],
      default: '13 mm',
    }),
    weldLeg: f.length.maybe({
      title: 'Weld leg',
      help: 'Leg of the fillet between tube and arm. Left out: the least leg for this thickness.',
      group,
      min: 1,
      max: 20,
      usual: [3, 6],
      appliesWhen: { field: 'pivot', values: ['welded'] },
    }),
    weldSides: f.choice({
      title: 'Tube welded',
      help: 'On one face of the arm or on both.',
      group,
      choices: [
        { value: 'both', label: 'Both sides' },
        { value: 'one', label: 'One side' },
      ],
      default: 'both',
      appliesWhen: { field: 'pivot', values: ['welded'] },
    }),
  };
}
