// What can be said of a drive: sprockets, chain, motor, tyre and hill.
import { z } from 'zod';
import { createReader, type FieldKit } from '../parts/index.js';
import { chainFields } from './chain-fields.js';
import { hillFields } from './hill-fields.js';
import { motorFields } from './motor-fields.js';
import { sprocketFields } from './sprocket-fields.js';

function driveParameters(f: FieldKit) {
  return z.strictObject({
    ...sprocketFields(f),
    ...chainFields(f),
    ...motorFields(f),
    ...hillFields(f),
  });
}

/** Fields, schema and reading of a drive; without what fields say about each other, for which see `readDrive`. */
export const driveReader = createReader(driveParameters);

export type Drive = z.output<ReturnType<typeof driveParameters>>;
