// What can be set on a cable stop: ferrule and cable, ear, foot, weld, load, plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { footFields, type FootStart } from '../shared/foot-fields.js';
import { plateFields } from '../shared/plate-fields.js';
import { useField } from '../shared/pull-fields.js';
import { weldEdgeFields } from '../shared/weld-edge-fields.js';

const SLOTTED = { field: 'seat', values: ['slot'] } as const;
const PLAIN = { field: 'seat', values: ['slot', 'hole'] } as const;

/** The usual foot of a cable stop. */
const FOOT: FootStart = {
  bolt: 'M6',
  spacing: '18 mm',
  inset: '12 mm',
  footDepth: '42 mm',
  radius: '6 mm',
  usual: { spacing: [14, 18], inset: [9, 11], footDepth: [30, 42] },
};

function cableFields(f: FieldKit) {
  const group = 'Cable';
  return {
    seat: f.choice({
      title: 'Seat',
      help: 'slot: a hole with a slot to the end, the cable drops in; hole: closed, the cable is threaded through; thread: tapped for an adjuster.',
      group,
      choices: [
        { value: 'slot', label: 'Hole and slot' },
        { value: 'hole', label: 'Closed hole' },
        { value: 'thread', label: 'Tapped for an adjuster' },
      ],
      default: 'slot',
    }),
    neck: f.length.given({
      title: 'Ferrule neck',
      help: 'Diameter of the part of the ferrule that sits in the hole.',
      measuring: 'Caliper over the ferrule behind its shoulder.',
      group,
      min: 2,
      max: 60,
      usual: [7, 10],
      default: '8 mm',
      appliesWhen: PLAIN,
    }),
    neckFit: f.length.given({
      title: 'Play of the neck',
      help: 'How much larger than the neck the hole is, on diameter.',
      group,
      min: 0,
      max: 5,
      usual: [0.2, 0.8],
      default: '0.5 mm',
      appliesWhen: PLAIN,
    }),
    shoulder: f.length.given({
      title: 'Ferrule shoulder',
      help: 'Diameter of the shoulder that bears on the plate’s face; of an adjuster its nut across flats.',
      measuring: 'Caliper over the shoulder.',
      group,
      min: 3,
      max: 80,
      usual: [12, 16],
      default: '12 mm',
    }),
    adjuster: f.thread.given({
      title: 'Adjuster',
      help: 'Thread of the adjusting barrel.',
      measuring: 'Caliper over the threads, then a thread gauge or a known nut.',
      group,
      default: 'M8',
      appliesWhen: { field: 'seat', values: ['thread'] },
    }),
    cable: f.length.given({
      title: 'Cable',
      help: 'Diameter of the inner cable.',
      measuring: 'Caliper over the bare strands.',
      group,
      min: 0.5,
      max: 12,
      usual: [1.2, 2.5],
      default: '1.6 mm',
    }),
    slot: f.length.given({
      title: 'Slot',
      help: 'Width of the slot: wider than the cable, narrower than the ferrule’s neck.',
      group,
      min: 0.5,
      max: 40,
      usual: [3.2, 5],
      default: '3.5 mm',
      appliesWhen: SLOTTED,
    }),
    slotAngle: f.angle.given({
      title: 'Slot direction',
      help: '0 straight out of the nose, to the right above 0.',
      group,
      min: -80,
      max: 80,
      usual: [-45, 45],
      default: '0',
      appliesWhen: SLOTTED,
    }),
  };
}

function earFields(f: FieldKit) {
  const group = 'Ear';
  return {
    height: f.length.given({
      title: 'Cable height',
      help: 'From the weld edge, the underside of a bent foot, or the lower edge of a flat one to the cable.',
      measuring: 'Rule from what it stands on to the cable held straight.',
      group,
      min: 3,
      max: 500,
      usual: [60, 85],
      default: '55 mm',
    }),
    nose: f.length.maybe({
      title: 'Nose radius',
      help: 'Round end about the cable. Left out: half the shoulder and 4 mm, at least two thicknesses of metal round the hole.',
      group,
      min: 3,
      max: 200,
      usual: [12, 15],
    }),
    base: f.length.given({
      title: 'Base',
      help: 'Width of the weld edge or foot.',
      group,
      min: 8,
      max: 500,
      usual: [36, 50],
      default: '40 mm',
    }),
    lean: f.length.given({
      title: 'Cable beside the middle',
      help: 'How far the cable stands to the right of the base’s middle; negative to the left.',
      group,
      min: -300,
      max: 300,
      usual: [-8, 8],
      default: '0 mm',
    }),
  };
}

/** Lengths in mm or as typed; the middle of the base line is the origin. */
export function cableStopParameters(f: FieldKit) {
  const { seat: bolted, ...foot } = footFields(f, FOOT);
  return z.strictObject({
    ...cableFields(f),
    ...earFields(f),
    ...foot,
    boltedTo: bolted,
    ...weldEdgeFields(f, '30 mm', '2.5 mm', [52, 80]),
    use: useField(f),
    pull: f.force.maybe({
      title: 'Cable pull',
      help: 'Greatest pull in the cable; its housing pushes on the stop as hard.',
      measuring: 'Force at the pedal or lever times its ratio.',
      group: 'Load',
      min: 1,
      max: 1e5,
      usual: [50, 400],
    }),
    ...plateFields(f, { thickness: '4 mm' }),
  });
}

export type CableStop = z.output<ReturnType<typeof cableStopParameters>>;
