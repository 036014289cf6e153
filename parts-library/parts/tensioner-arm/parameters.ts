// What can be set on a tensioner arm: arm, lock, strand, plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { plateFields } from '../shared/plate-fields.js';
import { armFields, lockFields } from './arm-fields.js';
import { strandFields } from './chain-fields.js';

/** One schema for the whole arm. Lengths in mm or as typed; origin at the pivot, the arm along x. */
export function tensionerArmParameters(f: FieldKit) {
  return z.strictObject({
    ...armFields(f),
    ...lockFields(f),
    ...strandFields(f),
    ...plateFields(f),
  });
}

export type TensionerArm = z.output<ReturnType<typeof tensionerArmParameters>>;
