// The numbers that the parts of a pedal set share.
import { z } from 'zod';
import type { FieldKit } from '../../parts/index.js';
import { armNumbers, brakeNumbers, stopNumbers, throttleNumbers } from './pedal-numbers.js';
import { frameNumbers, pivotNumbers, standoffNumbers } from './stack-numbers.js';

/** Everything that can be set on the set as a whole. Lengths in mm or as typed. */
export const pedalSetNumbers = (f: FieldKit) =>
  z.strictObject({
    ...frameNumbers(f),
    ...pivotNumbers(f),
    ...armNumbers(f),
    ...brakeNumbers(f),
    ...throttleNumbers(f),
    ...standoffNumbers(f),
    ...stopNumbers(f),
    material: f.material.given({
      title: 'Material',
      help: 'Grade of every plate.',
      group: 'Plate',
      default: 'S355',
    }),
  });

export type PedalSetNumbers = z.output<ReturnType<typeof pedalSetNumbers>>;
