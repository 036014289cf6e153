// The schema of a job: exactly what a version 1 document may hold, with the bounds that keep it sane.
import { z } from 'zod';
import type { JsonObject } from '../model/index.js';
import { JOB_FORMAT, JOB_VERSION, type Job } from './types.js';

/** Ids stand in addresses and file names: letters, digits, dot, dash and underscore. */
const ID = /^[A-Za-z0-9][A-Za-z0-9._-]{0,79}$/;

/** Larger than any plate; a length beyond it is a slip of the decimal point. mm */
const FARTHEST = 100_000;

const id = z.string().regex(ID, 'accepted is 1 to 80 letters, digits, dots, dashes or underscores');
const name = z.string().min(1).max(200);
const mm = z.number().min(-FARTHEST).max(FARTHEST);
const positiveMm = z.number().positive().max(FARTHEST);
const whole = z.number().int().min(0).max(Number.MAX_SAFE_INTEGER);

const jsonObject: z.ZodType<JsonObject> = z.record(z.string(), z.json());

const vertex = z.strictObject({ x: mm, y: mm, bulge: z.number().min(-1).max(1) });
const vertices = z.array(vertex).min(2).max(10_000);

const row = z.strictObject({
  id,
  family: id,
  name,
  quantity: z.number().int().min(1).max(10_000),
  parameters: jsonObject,
  kitId: id.exactOptional(),
  role: name.exactOptional(),
  overrides: jsonObject.exactOptional(),
});

const kit = z.strictObject({ id, kit: id, name, numbers: jsonObject });

const plate = z.strictObject({
  id,
  name,
  kind: z.enum(['full', 'remnant']),
  outline: vertices,
  blocked: z.array(vertices).max(1000),
  material: name,
  thickness: positiveMm,
  count: z.number().int().min(0).max(100_000),
});

const placement = z.strictObject({
  id,
  rowId: id,
  copy: whole,
  at: z.strictObject({ x: mm, y: mm }),
  turnDegrees: z.number().min(-360).max(360),
  mirrored: z.boolean(),
  locked: z.boolean(),
});

const digest = z.string().regex(/^[0-9a-f]{64}$/, 'accepted is a SHA-256 digest of 64 hexadecimal digits');

const nest = z.strictObject({
  id,
  plateId: id.exactOptional(),
  placements: z.array(placement).max(100_000),
  inputs: digest,
});

const processChoice = z.strictObject({
  material: name,
  thickness: positiveMm,
  processClass: name.exactOptional(),
  kerf: z.number().min(0).max(20).exactOptional(),
  kerfPlusMinus: z.number().min(0).max(20).exactOptional(),
  holeKerf: z.number().min(0).max(20).exactOptional(),
  speed: z.number().positive().max(100_000).exactOptional(),
  pierceSeconds: z.number().min(0).max(60).exactOptional(),
});

const subject = z.strictObject({
  rowId: id.exactOptional(),
  featureId: name.exactOptional(),
  plateId: id.exactOptional(),
  placementId: id.exactOptional(),
});

const override = z.strictObject({
  code: name,
  subject,
  digest,
  reason: z.string().min(1, 'say why it is accepted').max(2000),
  date: z.string().min(1).max(40),
});

const computedWith = z.strictObject({
  library: name,
  chartVersion: name,
  shopRevision: whole,
  seed: whole,
  lanes: z.number().int().min(1).max(1024),
  iterations: whole,
});

/** Refuses two of the same id, at the second one. */
const uniqueIds = <T extends { readonly id: string }>(items: z.ZodArray<z.ZodType<T>>) =>
  items.superRefine((list, ctx) => {
    const seen = new Set<string>();
    for (const [index, item] of list.entries()) {
      if (seen.has(item.id)) {
        ctx.addIssue({
          code: 'custom',
          path: [index, 'id'],
          message: `the id "${item.id}" is used twice`,
          input: item.id,
        });
      }
      seen.add(item.id);
    }
  });

/** What a version 1 job may hold; strict throughout, so that a misspelt name is an error and never silently lost. */
export const jobSchema: z.ZodType<Job> = z
  .strictObject({
    format: z.literal(JOB_FORMAT),
    version: z.literal(JOB_VERSION),
    id,
    name,
    revision: whole,
    unit: z.enum(['mm', 'in']),
    rows: uniqueIds(z.array(row).max(10_000)),
    kits: uniqueIds(z.array(kit).max(1000)),
    plates: uniqueIds(z.array(plate).max(1000)),
    nests: uniqueIds(z.array(nest).max(1000)),
    choices: z.strictObject({ process: z.array(processChoice).max(1000) }),
    drive: jsonObject.exactOptional(),
    overrides: z.array(override).max(10_000),
    computedWith,
  })
  .superRefine((job, ctx) => {
    const kitIds = new Set(job.kits.map((one) => one.id));
    for (const [index, one] of job.rows.entries()) {
      if (one.kitId !== undefined && !kitIds.has(one.kitId)) {
        ctx.addIssue({
          code: 'custom',
          path: ['rows', index, 'kitId'],
          message: `there is no kit "${one.kitId}" in this job`,
          input: one.kitId,
        });
      }
    }
  });
