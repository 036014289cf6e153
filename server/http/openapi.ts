// The description of the HTTP interface (OpenAPI 3.1), made from the schemas that guard it.
import { z } from 'zod';
import { createDocument, type ZodOpenApiOperationObject, type ZodOpenApiPathsObject } from 'zod-openapi';
import { changeSchema, jobSchema, shopSchema } from '../../parts-library/job/index.js';
import { listKits, type Kit } from '../../parts-library/kits/index.js';
import { driveReader } from '../../parts-library/drive/index.js';
import { listFamilies, type Family } from '../../parts-library/parts/index.js';
import { drawingAnswerSchema, drawingRequestSchema } from './drawing-schemas.js';
import {
  driveRequestSchema,
  driveSummarySchema,
  fileOptionsSchema,
  filesSchema,
  jobHeadSchema,
  kitRequestSchema,
  kitSummarySchema,
  newJobSchema,
  partRequestSchema,
  problemSchema,
  processSchema,
  summarySchema,
} from './schemas.js';
import { PAPERS } from '../pdf/template.js';

const json = (schema: z.ZodType) => ({ content: { 'application/json': { schema } } });

const problem = (description: string) => ({
  description,
  content: { 'application/problem+json': { schema: problemSchema } },
});

const answer = (description: string, schema: z.ZodType) => ({ description, ...json(schema) });

const UNUSABLE = { '422': problem('Values that cannot be used, with their fields.') };
const MISSING = { '404': problem('There is no such thing here.') };
const REVISION = {
  '412': problem('Changed meanwhile; `current` and `yours` are both given.'),
  '428': problem('The If-Match header is missing.'),
};

const idInPath = { path: z.object({ id: z.string() }) };
const ifMatch = { header: z.object({ 'If-Match': z.string().meta({ examples: ['"7"'] }) }) };

/** One family's own body, so that its parameters are described by name. */
function familyPaths(family: Family): ZodOpenApiPathsObject {
  const parameters = family.schema('mm').optional();
  const shape = { ...partRequestSchema.shape, parameters, process: processSchema.optional() };
  const body = z.strictObject(shape);
  const filesBody = z.strictObject({ ...shape, ...fileOptionsSchema.shape });
  const part: ZodOpenApiOperationObject = {
    operationId: `part_${family.id}`,
    summary: family.summary,
    requestBody: json(body),
    responses: { '200': answer('Figures, findings and steps. Lengths mm.', summarySchema), ...UNUSABLE },
  };
  const files: ZodOpenApiOperationObject = {
    operationId: `files_${family.id}`,
    summary: `Files of: ${family.title}`,
    requestBody: json(filesBody),
    responses: {
      '200': answer('The files as text.', filesSchema),
      '409': problem('A stop finding withholds the files.'),
      ...UNUSABLE,
    },
  };
  const file: ZodOpenApiOperationObject = {
    operationId: `file_${family.id}`,
    summary: `One file of: ${family.title}`,
    requestParams: {
      query: z.object({
        file: z.enum(['finished.dxf', 'cut.dxf', 'finished.svg', 'cut.svg', 'print.svg']),
        request: z.string().optional().meta({ description: 'The body of the POST as JSON text.' }),
      }),
    },
    responses: {
      '200': { description: 'The file.' },
      '409': problem('A stop finding withholds it.'),
      ...UNUSABLE,
    },
  };
  const template: ZodOpenApiOperationObject = {
    operationId: `template_${family.id}`,
    summary: `Paper template at true size of: ${family.title}`,
    requestParams: {
      query: z.object({
        paper: z.enum(PAPERS).optional().meta({ description: 'a4 when left out.' }),
        request: z.string().optional().meta({ description: 'The body of the POST as JSON text.' }),
      }),
    },
    responses: { '200': { description: 'A PDF, tiled where it takes more than one page.' }, ...UNUSABLE },
  };
  return {
    [`/api/parts/${family.id}`]: { post: part },
    [`/api/parts/${family.id}/files`]: { post: files, get: file },
    [`/api/parts/${family.id}/template`]: {
      get: template,
      post: {
        operationId: `template_post_${family.id}`,
        summary: `Paper template at true size of: ${family.title}`,
        requestParams: { query: z.object({ paper: z.enum(PAPERS).optional() }) },
        requestBody: json(body),
        responses: template.responses,
      },
    },
  };
}

const drawingPaths: ZodOpenApiPathsObject = {
  '/api/drawings': {
    post: {
      operationId: 'drawing',
      summary: 'Reads a DXF or SVG drawing into the row of a part.',
      requestBody: json(drawingRequestSchema),
      responses: {
        '200': answer('The row, and what was mended, assumed and left out.', drawingAnswerSchema),
        '413': problem('The file is larger than a body may be.'),
        '422': problem(
          'The drawing cannot be read; `errors` names the option that would help, such as `unit`.',
        ),
      },
    },
  },
};

/** The drive's body, so that its parameters are described by name. */
function drivePaths(): ZodOpenApiPathsObject {
  const parameters = driveReader.schema('mm').optional();
  return {
    '/api/drive': {
      get: {
        operationId: 'drive_fields',
        summary: 'What can be said of a drive: fields and the JSON Schema of its parameters.',
        responses: {
          '200': answer(
            'The fields.',
            z.object({ fields: z.array(z.looseObject({ path: z.string() })), schema: z.looseObject({}) }),
          ),
        },
      },
      post: {
        operationId: 'drive',
        summary: 'Drive numbers: chain, ratio, speed, other sprockets, the hill, length and strength.',
        requestBody: json(z.strictObject({ ...driveRequestSchema.shape, parameters })),
        responses: { '200': answer('Numbers and findings. Lengths mm.', driveSummarySchema), ...UNUSABLE },
      },
    },
  };
}

/** A kit's own body, so that its numbers are described by name. */
function kitPaths(kit: Kit): ZodOpenApiPathsObject {
  const numbers = kit.schema('mm').optional();
  const body = z.strictObject({ ...kitRequestSchema.shape, numbers });
  return {
    [`/api/kits/${kit.id}`]: {
      post: {
        operationId: `kit_${kit.id}`,
        summary: kit.summary,
        requestBody: json(body),
        responses: {
          '200': answer('The members and what spans them. Lengths mm.', kitSummarySchema),
          ...UNUSABLE,
        },
      },
    },
    [`/api/kits/${kit.id}/files`]: {
      post: {
        operationId: `kit_files_${kit.id}`,
        summary: `Files of every member of: ${kit.title}`,
        requestBody: json(z.strictObject({ ...body.shape, ...fileOptionsSchema.shape })),
        responses: {
          '200': answer('The files as text.', filesSchema),
          '409': problem('A stop finding of a member or of the kit withholds all of them.'),
          ...UNUSABLE,
        },
      },
    },
  };
}

const job = jobSchema.meta({ id: 'Job' });
const shop = shopSchema.meta({ id: 'Shop' });
const change = changeSchema.meta({ id: 'Change' });
const stepped = z.object({ job, undo: change.optional(), redo: change.optional() });

const jobPaths: ZodOpenApiPathsObject = {
  '/api/jobs': {
    get: {
      summary: 'Jobs, the last changed first.',
      responses: { '200': answer('Heads of jobs.', z.object({ jobs: z.array(jobHeadSchema) })) },
    },
    post: {
      summary: 'A new job, or one brought in whole.',
      requestBody: json(z.union([newJobSchema, job])),
      responses: {
        '201': answer('The job.', job),
        '409': problem('There is a job of that id.'),
        ...UNUSABLE,
      },
    },
  },
  '/api/jobs/{id}': {
    get: {
      summary: 'One job.',
      requestParams: idInPath,
      responses: { '200': answer('The job.', job), ...MISSING },
    },
    put: {
      summary: 'The job as it is to be; stored as one change.',
      requestParams: { ...idInPath, ...ifMatch },
      requestBody: json(job),
      responses: {
        '200': answer('The job, and what undo and redo would do.', stepped),
        ...MISSING,
        ...REVISION,
        ...UNUSABLE,
      },
    },
    delete: {
      summary: 'Deletes the job with its history.',
      requestParams: { ...idInPath, ...ifMatch },
      responses: { '204': { description: 'Gone.' }, ...MISSING, ...REVISION },
    },
  },
  '/api/jobs/{id}/changes': {
    post: {
      summary: 'One edit, as a JSON Patch (RFC 6902).',
      requestParams: { ...idInPath, ...ifMatch },
      requestBody: json(change),
      responses: {
        '200': answer('The job, and what undo and redo would do.', stepped),
        '409': problem('The change does not fit the job.'),
        ...MISSING,
        ...REVISION,
        ...UNUSABLE,
      },
    },
  },
  ...Object.fromEntries(
    (['undo', 'redo'] as const).map((name) => [
      `/api/jobs/{id}/${name}`,
      {
        post: {
          summary: name === 'undo' ? 'Takes back the last edit.' : 'Makes the last undone edit again.',
          requestParams: { ...idInPath, ...ifMatch },
          responses: {
            '200': answer('The job, and what undo and redo would do.', stepped),
            '409': problem(`There is nothing to ${name}.`),
            ...MISSING,
            ...REVISION,
          },
        },
      },
    ]),
  ),
  '/api/jobs/{id}/history': {
    get: {
      summary: 'What was done to the job.',
      requestParams: idInPath,
      responses: {
        '200': answer(
          'Oldest first.',
          z.object({
            revision: z.number(),
            entries: z.array(
              z.object({ revision: z.number(), kind: z.enum(['edit', 'undo', 'redo']), says: z.string() }),
            ),
            undo: change.optional(),
            redo: change.optional(),
          }),
        ),
        ...MISSING,
      },
    },
  },
  '/api/jobs/{id}/rows/{rowId}': {
    get: {
      summary: 'The part of a row: figures, findings, steps.',
      requestParams: { path: z.object({ id: z.string(), rowId: z.string() }) },
      responses: { '200': answer('As for a part by itself.', summarySchema), ...MISSING, ...UNUSABLE },
    },
  },
  '/api/jobs/{id}/rows/{rowId}/files': {
    get: {
      summary: 'The files of a row, or one of them with `file`.',
      requestParams: {
        path: z.object({ id: z.string(), rowId: z.string() }),
        query: z.object({ file: z.string().optional(), ...fileOptionsSchema.partial().shape }),
      },
      responses: {
        '200': answer('The files as text.', filesSchema),
        '409': problem('A stop finding withholds them.'),
        ...MISSING,
      },
    },
  },
};

/** The whole description. */
export function describeInterface(version: string): object {
  return createDocument({
    openapi: '3.1.0',
    info: {
      title: 'Fishplate',
      version,
      description:
        'Flat plate parts from measures: drawn, checked, planned. Lengths are mm unless said otherwise.',
    },
    paths: {
      '/api/parts': {
        get: {
          summary: 'Part families with their fields.',
          responses: {
            '200': answer(
              'The families.',
              z.object({
                parts: z.array(z.looseObject({ id: z.string(), title: z.string(), summary: z.string() })),
              }),
            ),
          },
        },
      },
      '/api/parts/{family}': {
        get: {
          summary: 'One family: fields and the JSON Schema of its parameters.',
          requestParams: { path: z.object({ family: z.enum(listFamilies().map(({ id }) => id)) }) },
          responses: { '200': answer('The family.', z.looseObject({ id: z.string() })), ...MISSING },
        },
      },
      ...Object.assign({}, ...listFamilies().map(familyPaths)),
      '/api/kits': {
        get: {
          summary: 'Kits with their fields.',
          responses: {
            '200': answer(
              'The kits.',
              z.object({
                kits: z.array(z.looseObject({ id: z.string(), title: z.string(), summary: z.string() })),
              }),
            ),
          },
        },
      },
      '/api/kits/{kit}': {
        get: {
          summary: 'One kit: fields and the JSON Schema of its numbers.',
          requestParams: { path: z.object({ kit: z.enum(listKits().map(({ id }) => id)) }) },
          responses: { '200': answer('The kit.', z.looseObject({ id: z.string() })), ...MISSING },
        },
      },
      ...Object.assign({}, ...listKits().map(kitPaths)),
      ...jobPaths,
      ...drivePaths(),
      ...drawingPaths,
      '/api/shop': {
        get: {
          summary: 'Chart, machine record, tools, rack.',
          responses: { '200': answer('The shop.', shop) },
        },
        put: {
          summary: 'Saves the shop whole.',
          requestParams: ifMatch,
          requestBody: json(shop),
          responses: { '200': answer('The shop.', shop), ...REVISION, ...UNUSABLE },
        },
      },
      '/healthz': {
        get: {
          summary: 'Whether the server answers.',
          responses: {
            '200': answer('It does.', z.object({ status: z.literal('ok'), version: z.string() })),
          },
        },
      },
    },
  });
}
