// What can be set on a sprocket plate: chain and teeth, bolts, middle, lightening, plate, load.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { driveLoadFields } from '../shared/drive-load-fields.js';
import { patternFields } from '../shared/pattern-fields.js';
import { plateFields } from '../shared/plate-fields.js';
import { chainFields, otherSprocketFields } from '../shared/sprocket/chain-fields.js';
import { lighteningFields } from './lightening-fields.js';
import { middleFields } from './middle-fields.js';
import { toothFields } from './tooth-fields.js';

/** One schema for the whole part: the wheel sprocket of the orchard's haul cart. Lengths in mm or as typed. */
export function sprocketPlateParameters(f: FieldKit) {
  const pattern = 'Bolt pattern';
  return z.strictObject({
    ...chainFields(f, { chain: '41', teeth: 60 }),
    ...toothFields(f),
    ...otherSprocketFields(f),
    bolted: f.choice({
      title: 'Bolted on',
      help: 'Whether the sprocket has a bolt pattern; a welded one may have none.',
      group: pattern,
      choices: [
        { value: 'yes', label: 'Yes' },
        { value: 'no', label: 'No' },
      ],
      default: 'yes',
    }),
    ...patternFields(f, pattern, { bolts: 6, circle: 'circle 110', bolt: 'M10' }),
    boltedThickness: f.length.given({
      title: 'Thickness of the bolted part',
      help: 'Flange or adapter that the sprocket is bolted to; the bolts grip both.',
      measuring: 'Caliper on the flange beside a hole.',
      group: pattern,
      min: 1,
      max: 100,
      default: '6 mm',
    }),
    ...middleFields(f),
    ...lighteningFields(f),
    ...plateFields(f, { thickness: '5 mm' }),
    ...driveLoadFields(f),
  });
}

export type SprocketPlate = z.output<ReturnType<typeof sprocketPlateParameters>>;
