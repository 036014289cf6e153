// What can be set on a bearing flange plate: bearing, how it is held, outside, plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { plateFields } from '../shared/plate-fields.js';
import { housingFields, seatFields } from './bearing-fields.js';
import { mountFields, outsideFields } from './mount-fields.js';

/** One schema for the whole plate. Lengths in mm or as typed; the origin is the middle of the plate. */
export function bearingFlangeParameters(f: FieldKit) {
  return z.strictObject({
    ...housingFields(f),
    ...seatFields(f),
    ...mountFields(f),
    ...outsideFields(f),
    ...plateFields(f),
  });
}

export type BearingFlange = z.output<ReturnType<typeof bearingFlangeParameters>>;
