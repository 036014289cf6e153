// What can be set on an adapter plate: one or two bolt patterns, the centre, the outside, the plate and its load.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { centreFields } from './centre-fields.js';
import { loadFields } from './load-fields.js';
import { outsideFields } from './outside-fields.js';
import { patternFields } from '../shared/pattern-fields.js';
import { plateFields } from '../shared/plate-fields.js';

/** One schema for the whole part. Lengths in mm or as typed. */
export function adapterPlateParameters(f: FieldKit) {
  const second = 'Second bolt pattern';
  return z.strictObject({
    ...patternFields(f, 'Bolt pattern', { bolts: 5, circle: 'circle 95', bolt: 'M8' }),
    boltedThickness: f.length.maybe({
      title: 'Thickness of the bolted part',
      help: 'Sprocket, disc or wheel where the bolts go through; it gives the length of the bolts.',
      measuring: 'Caliper over the flange beside a hole.',
      group: 'Bolt pattern',
      min: 0.5,
      max: 100,
      usual: [3, 12],
    }),
    pattern2: f.maybeGroup(
      z.strictObject(patternFields(f, second, { bolts: 4, circle: 'circle 60', bolt: 'M8' })),
      { title: second, help: 'Another circle of bolts in the same plate.', group: second },
    ),
    ...centreFields(f),
    ...outsideFields(f),
    ...plateFields(f),
    ...loadFields(f),
  });
}

export type AdapterPlate = z.output<ReturnType<typeof adapterPlateParameters>>;
