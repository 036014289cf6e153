// The schemas of the HTTP interface that are not part of a document: requests, summaries, problems.
import { z } from 'zod';

const figure = z.union([z.number(), z.string().max(200)]);

/** What is known of the cut: numbers are mm, mm/min and seconds; texts are read in the unit of the request. */
export const processSchema = z
  .strictObject({
    processClass: z.string().max(100),
    kerf: figure,
    kerfPlusMinus: figure,
    holeKerf: figure,
    speed: figure,
    pierceSeconds: figure,
  })
  .partial()
  .meta({ description: 'Figures of the cut; each that is left out comes from the shop’s chart.' });

/** A part asked for. The parameters are checked by their family. */
export const partRequestSchema = z.strictObject({
  parameters: z.unknown().optional(),
  unit: z.enum(['mm', 'in']).default('mm').meta({ description: 'Unit of a number in a text that has none.' }),
  name: z.string().optional(),
  quantity: z.number().optional(),
  process: z.unknown().optional(),
});

/** Files asked for. */
export const fileOptionsSchema = z.strictObject({
  dxf: z.enum(['r12', 'r2000']).default('r12'),
  dxfUnit: z.enum(['mm', 'in']).default('mm'),
  despiteFindings: z.boolean().default(false),
});

export const filesRequestSchema = z.strictObject({ ...partRequestSchema.shape, ...fileOptionsSchema.shape });

/** A kit asked for. The numbers are checked by the kit. */
export const kitRequestSchema = z.strictObject({
  numbers: z.unknown().optional(),
  unit: partRequestSchema.shape.unit,
});

export const kitFilesRequestSchema = z.strictObject({
  ...kitRequestSchema.shape,
  ...fileOptionsSchema.shape,
});

const range = z.object({ low: z.number(), high: z.number() });

export const findingSchema = z.looseObject({
  code: z.string(),
  level: z.enum(['stop', 'caution', 'note', 'pass']),
  stage: z.string(),
  title: z.string(),
  says: z.string(),
  field: z.string().optional(),
  formula: z.string().optional(),
  source: z.object({ title: z.string(), where: z.string(), certainty: z.string() }),
});

const bounds = z.object({
  minX: z.number(),
  minY: z.number(),
  maxX: z.number(),
  maxY: z.number(),
  width: z.number(),
  height: z.number(),
});

/** One part as it comes back: lengths mm, areas mm², mass kg. */
export const summarySchema = z
  .object({
    unit: z.enum(['mm', 'in']),
    parameters: z.record(z.string(), z.unknown()).meta({ description: 'As understood, ready to be stored.' }),
    part: z.object({
      family: z.string(),
      name: z.string(),
      material: z.string(),
      thickness: z.number(),
      quantity: z.number(),
      area: z.number(),
      perimeter: z.number(),
      mass: z.number(),
      bounds,
      openings: z.array(
        z.object({
          id: z.string(),
          name: z.string(),
          area: z.number(),
          perimeter: z.number(),
          diameter: z.number().optional(),
        }),
      ),
      marks: z.array(z.object({ id: z.string(), name: z.string(), x: z.number(), y: z.number() })),
    }),
    cut: z.object({
      length: z.number(),
      pierces: z.number(),
      seconds: z.number(),
      secondsRange: range,
      leadInLength: z.number(),
      lineLength: z.number(),
      marks: z.number(),
      processClass: z.string(),
      kerf: z.number(),
      kerfPlusMinus: z.number(),
      holeKerf: z.number(),
      speed: z.number(),
      pierceSeconds: z.number(),
      travelIncluded: z.literal(false),
      contours: z.array(
        z.object({
          featureId: z.string(),
          length: z.number(),
          leadIn: z.number(),
          speed: z.number(),
          seconds: z.number(),
        }),
      ),
    }),
    findings: z.array(findingSchema),
    derived: z.array(z.looseObject({ id: z.string(), title: z.string(), text: z.string() })),
    steps: z.array(z.looseObject({ kind: z.string(), says: z.string() })),
    hardware: z.array(
      z.looseObject({ id: z.string(), kind: z.string(), name: z.string(), quantity: z.number() }),
    ),
  })
  .meta({ id: 'PartSummary' });

/** A kit as it comes back: what spans its members, and each member as a part by itself. */
export const kitSummarySchema = z
  .object({
    numbers: z.record(z.string(), z.unknown()).meta({ description: 'As understood, ready to be stored.' }),
    derived: z.array(z.looseObject({ id: z.string(), title: z.string(), text: z.string() })),
    findings: z.array(findingSchema),
    members: z.array(
      z.object({
        role: z.string(),
        name: z.string(),
        quantity: z.number(),
        findings: z.array(findingSchema),
        part: summarySchema.optional().meta({ description: 'Absent when it cannot be drawn.' }),
      }),
    ),
  })
  .meta({ id: 'KitSummary' });

export const filesSchema = z
  .object({
    files: z.array(
      z.object({
        name: z.string(),
        kind: z.enum(['finished', 'cut', 'print']),
        mediaType: z.string(),
        text: z.string(),
      }),
    ),
    withoutCut: z.string().optional().meta({ description: 'Why no cut path is among them.' }),
  })
  .meta({ id: 'PartFiles' });

/** A drive asked for. The parameters are checked by the drive's own reader. */
export const driveRequestSchema = z.strictObject({
  parameters: z.unknown().optional(),
  unit: partRequestSchema.shape.unit,
});

const candidateSchema = z.object({
  name: z.string(),
  standard: z.string(),
  pitch: z.number(),
  roller: z.number(),
  innerWidth: z.number(),
  tensileNewtons: z.number().optional(),
  offWidth: z.number().optional().meta({ description: 'Reading less the printed width.' }),
  offRoller: z.number().optional(),
  wearPercent: z.number().optional(),
  fits: z.boolean(),
});

const toothChangeSchema = z.object({
  motorTeeth: z.number(),
  wheelTeeth: z.number(),
  chainRatio: z.number(),
  speed: z.number().meta({ description: 'Of the speed before; the pull is its inverse.' }),
  roadSpeed: z.number().optional().meta({ description: 'km/h' }),
  groundNewtons: z.number().optional(),
  chainNewtons: z.number().optional(),
  safety: z.number().optional(),
  sameLinks: z
    .object({ centres: z.number(), moves: z.number() })
    .optional()
    .meta({ description: 'Centres of the same chain, and how far they move.' }),
  sameCentres: z
    .object({ links: z.number(), centres: z.number() })
    .optional()
    .meta({ description: 'The nearest even chain at the centres as they are.' }),
  wrapSmall: z.number().optional().meta({ description: 'degrees' }),
  climbs: z.boolean().optional(),
});

/** A drive as it comes back: lengths mm, N, N·m, km/h, m/s. */
export const driveSummarySchema = z
  .object({
    unit: z.enum(['mm', 'in']),
    parameters: z.record(z.string(), z.unknown()).meta({ description: 'As understood, ready to be stored.' }),
    chain: z.object({ name: z.string(), from: z.enum(['name', 'readings']) }).optional(),
    candidates: z.array(candidateSchema).meta({ description: 'Chains that were measured, likeliest first.' }),
    figures: z.array(
      z.object({
        id: z.string(),
        group: z.string(),
        field: z.string().optional(),
        title: z.string(),
        value: z.object({ amount: z.number(), unit: z.string(), plusMinus: z.number().optional() }),
        text: z.string(),
        formula: z.string(),
        source: findingSchema.shape.source,
      }),
    ),
    linkChoices: z.array(z.object({ links: z.number(), centres: z.number(), moves: z.number().optional() })),
    changes: z.array(toothChangeSchema).meta({ description: 'The drive as it is comes first.' }),
    findings: z.array(findingSchema),
    picture: z
      .object({
        pitch: z.number(),
        motorTeeth: z.number(),
        wheelTeeth: z.number(),
        centres: z.number(),
        links: z.number(),
        sag: z.number(),
      })
      .optional(),
  })
  .meta({ id: 'DriveNumbers' });

/** RFC 9457. */
export const problemSchema = z
  .looseObject({
    type: z.string(),
    title: z.string(),
    status: z.number(),
    detail: z.string(),
    errors: z
      .array(z.object({ field: z.string(), says: z.string() }))
      .optional()
      .meta({ description: 'The fields that cannot be used, and what is accepted.' }),
  })
  .meta({ id: 'Problem' });

export const jobHeadSchema = z
  .object({
    id: z.string(),
    name: z.string(),
    revision: z.number(),
    createdAt: z.string(),
    updatedAt: z.string(),
  })
  .meta({ id: 'JobHead' });

/** A new, empty job. */
export const newJobSchema = z.strictObject({
  name: z.string().min(1).max(200),
  unit: z.enum(['mm', 'in']).default('mm'),
});
