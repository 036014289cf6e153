// The schemas of drawings over HTTP: a file brought in, and what it was read as.
import { z } from 'zod';
import { DRAWING_UNITS, LAYER_OPERATIONS } from '../../parts-library/files/index.js';
import { findingSchema } from './schemas.js';

/** A drawing sent to be read. The text is bounded by the size of a body. */
export const drawingRequestSchema = z.strictObject({
  text: z.string().meta({ description: 'The DXF or SVG file as text.' }),
  name: z
    .string()
    .max(200)
    .default('drawing')
    .meta({ examples: ['bracket.dxf'] }),
  format: z.enum(['dxf', 'svg']).optional().meta({ description: 'By its first characters when left out.' }),
  unit: z
    .enum([...DRAWING_UNITS.keys()])
    .optional()
    .meta({ description: 'What the file’s numbers are in; needed where the file does not say.' }),
  gap: z
    .number()
    .optional()
    .meta({ description: 'Ends no farther apart are joined, mm. 0.05 when left out.' }),
  arcTolerance: z
    .number()
    .optional()
    .meta({ description: 'Farthest that arcs may lie from a curve, mm. 0.01 when left out.' }),
  layers: z
    .record(z.string().max(200), z.enum(LAYER_OPERATIONS))
    .optional()
    .meta({ description: 'What is done along the lines of a layer, by its name.' }),
  part: z.number().optional().meta({ description: 'Which of several parts, the largest being 1.' }),
  lines: z
    .enum(['ignore', 'score', 'etch'])
    .optional()
    .meta({ description: 'What becomes of lines that close nothing. `ignore` when left out.' }),
});

const shape = z.object({
  id: z.string(),
  layer: z.string(),
  operation: z.enum(['outline', 'opening', 'score', 'etch', 'mark', 'ignore']),
  closed: z.boolean(),
  vertices: z.array(z.object({ x: z.number(), y: z.number(), bulge: z.number() })),
});

/** A drawing as it was read, and the row that makes a part of it. */
export const drawingAnswerSchema = z
  .object({
    row: z
      .object({
        family: z.literal('own-outline'),
        name: z.string(),
        quantity: z.number(),
        parameters: z.object({
          drawing: z.object({
            source: z.object({
              name: z.string(),
              format: z.enum(['dxf', 'svg']),
              unit: z.string(),
              part: z.number(),
              digest: z.string(),
            }),
            shapes: z.array(shape),
            notes: z.array(z.string()),
            faults: z.array(z.string()),
          }),
        }),
      })
      .meta({
        description: 'With an id of its own, a row of a job; its parameters make the part by themselves.',
      }),
    layers: z.array(
      z.object({
        name: z.string(),
        operation: z.enum(LAYER_OPERATIONS),
        because: z.enum(['told', 'name', 'hidden', 'usual']),
        count: z.number(),
      }),
    ),
    parts: z.array(
      z.object({ number: z.number(), width: z.number(), height: z.number(), openings: z.number() }),
    ),
    findings: z.array(findingSchema),
  })
  .meta({ id: 'DrawingRead' });
