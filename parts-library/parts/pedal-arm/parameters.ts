// What can be set on a pedal arm: use, pivot, arm, pad, bends, rod or cable, stops and springs, loads, plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { plateFields } from '../shared/plate-fields.js';
import { armFields, bendFields, padFields } from './arm-fields.js';
import { linkFields } from './link-fields.js';
import { pivotFields } from './pivot-fields.js';
import { loadFields, stopFields } from './stop-fields.js';

/** Lengths in mm or as typed. */
export function pedalArmParameters(f: FieldKit) {
  return z.strictObject({
    ...pivotFields(f),
    ...armFields(f),
    ...padFields(f),
    ...linkFields(f),
    ...stopFields(f),
    ...bendFields(f),
    ...loadFields(f),
    ...plateFields(f, { thickness: '8 mm', material: 'S355' }),
  });
}

export type PedalArm = z.output<ReturnType<typeof pedalArmParameters>>;
