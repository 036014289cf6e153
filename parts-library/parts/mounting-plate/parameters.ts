// What can be set on a mounting plate: outside, holes, motor face, window and notch, plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { plateFields } from '../shared/plate-fields.js';
import { holePatternFields } from './hole-pattern-fields.js';
import { motorFields } from './motor-fields.js';
import { openingFields, outsideFields } from './outside-fields.js';

/** One schema for the whole plate. Lengths in mm or as typed; the origin is the middle of the plate. */
export function mountingPlateParameters(f: FieldKit) {
  return z.strictObject({
    ...outsideFields(f),
    ...holePatternFields(f),
    ...motorFields(f),
    ...openingFields(f),
    ...plateFields(f),
  });
}

export type MountingPlate = z.output<ReturnType<typeof mountingPlateParameters>>;
