// What can be set on a brake-disc carrier: disc and its bolts, hub and its bolts, outside, machining, room, load, plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { hubPilotFields, machinedFields, SHOULDER_FITS } from '../shared/machined-fields.js';
import { patternFields } from '../shared/pattern-fields.js';
import { plateFields } from '../shared/plate-fields.js';
import { GRADES, wheelLoadFields, wheelRoomFields } from '../shared/wheel-fields.js';
import { carrierOutsideFields } from './outside-fields.js';

function discFields(f: FieldKit) {
  const group = 'Disc';
  return {
    boltedBore: f.length.given({
      title: 'Disc bore',
      help: 'The hole in the middle of the disc; the carrier’s pilot is turned to it.',
      measuring: 'Caliper jaws inside the clean bore, two directions; the smaller reading counts.',
      group,
      min: 20,
      max: 250,
      default: '150 mm',
    }),
    disc: f.length.given({
      title: 'Disc outside',
      help: 'Outside diameter of the disc.',
      measuring: 'Caliper or rule across the disc.',
      group,
      min: 60,
      max: 600,
      default: '260 mm',
    }),
    discThickness: f.length.given({
      title: 'Disc thickness',
      help: 'Thickness at the bolts.',
      measuring: 'Micrometer on the ring where it is bolted.',
      group,
      min: 2,
      max: 40,
      default: '5 mm',
    }),
    discPilot: f.choice({
      title: 'Disc centred by',
      help: 'turned: a shoulder turned to the disc’s bore; bolts: the bolts alone, with the play of their holes.',
      group,
      choices: [
        { value: 'turned', label: 'Turned shoulder' },
        { value: 'bolts', label: 'Bolts alone' },
      ],
      default: 'turned',
    }),
    shoulder: f.length.given({
      title: 'Pilot shoulder',
      help: 'Height of the turned shoulder in the disc’s bore; less than the disc is thick, so that washers bear on the disc.',
      group,
      min: 0.5,
      max: 20,
      default: '3 mm',
      appliesWhen: { field: 'discPilot', values: ['turned'] },
    }),
    shoulderFit: f.choice({
      title: 'Fit in the disc',
      help: 'ISO 286 class of the shoulder in the disc’s bore.',
      group,
      choices: SHOULDER_FITS,
      default: 'f7',
      appliesWhen: { field: 'discPilot', values: ['turned'] },
    }),
    discSide: f.choice({
      title: 'Disc sits on',
      help: 'far: the face away from the hub; near: the face that lies on the hub, outside the hub’s flange.',
      group,
      choices: [
        { value: 'far', label: 'Far face' },
        { value: 'near', label: 'Hub’s face' },
      ],
      default: 'far',
    }),
    offset: f.length.maybe({
      title: 'Hub face to disc seat',
      help: 'Where the caliper wants the disc: from the hub’s face to the face on which the disc sits. Left out: what the plate gives.',
      measuring:
        'Straight edge on the hub’s face, depth rod to the middle of the caliper’s gap, less half the disc.',
      group,
      min: 0.1,
      max: 100,
    }),
  };
}

/** One schema for the whole part. Lengths in mm or as typed. */
export function discCarrierParameters(f: FieldKit) {
  const hub = z
    .strictObject(
      patternFields(f, 'Hub', {
        bolts: 4,
        circle: 'circle 72',
        bolt: 'M8',
        clocking: '45',
        holes: 'drill',
        boltedBy: 'thread',
      }),
    )
    .omit({ boltedBore: true });
  return z.strictObject({
    ...patternFields(f, 'Disc', { bolts: 6, circle: 'circle 172', bolt: 'M8', holes: 'drill' }),
    ...discFields(f),
    pattern2: f.group(hub, { title: 'Hub bolts', help: 'The circle of bolts on the hub.', group: 'Hub' }),
    ...hubPilotFields(f, '40 mm'),
    hubFlange: f.length.maybe({
      title: 'Hub flange thickness',
      help: 'What the hub’s bolts clamp besides the carrier, or the thread they go into. Left out: one bolt diameter.',
      measuring: 'Caliper over the flange at a hole.',
      group: 'Hub',
      min: 2,
      max: 80,
    }),
    ...carrierOutsideFields(f),
    ...machinedFields(f, 'the disc’s rim', '0.2 mm'),
    ...wheelRoomFields(f),
    ...wheelLoadFields(f),
    boltGrade: f.choice({
      title: 'Bolt grade',
      help: 'Property class or SAE grade stamped on the heads.',
      group: 'Load',
      choices: GRADES,
      default: '8.8',
    }),
    ...plateFields(f, { thickness: '10 mm', material: 'S355' }),
  });
}

export type DiscCarrier = z.output<ReturnType<typeof discCarrierParameters>>;
