// What can be set on a chain guard: drive, windows, tabs, plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { plateFields } from '../shared/plate-fields.js';
import { driveFields, windowFields } from './chain-fields.js';
import { tabFields } from './tab-fields.js';

/** One schema for the whole guard. Lengths in mm or as typed; origin at the small sprocket, the large one along x. */
export function chainGuardParameters(f: FieldKit) {
  return z.strictObject({
    ...driveFields(f),
    ...tabFields(f),
    ...windowFields(f),
    ...plateFields(f, { thickness: '2 mm', material: 'S235' }),
  });
}

export type ChainGuard = z.output<ReturnType<typeof chainGuardParameters>>;
