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
