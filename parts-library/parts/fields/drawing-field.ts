// The field of a drawing that was brought in: plain JSON within bounds, every closed shape proved to be a contour.
import { z } from 'zod';
import { GeometryError, makeContour, type Contour } from '../../geometry/index.js';
import { DRAWING_LIMITS, type Drawing, type DrawnShape } from '../../model/index.js';

const { reach, name: longestName, sentences, sentenceLength } = DRAWING_LIMITS;

const coordinate = z.number().min(-reach).max(reach);

/** A half circle's rounding may lie a hair above 1. */
const LARGEST_BULGE = 1 + 1e-9;

const words = z
  .string()
  .min(1)
  .max(longestName)
  .regex(/^\P{Cc}*$/u);
const told = z.array(z.string().max(sentenceLength)).max(sentences);

/** What a drawing holds, each part within its bounds. */
const drawingSchema = z.strictObject({
  source: z.strictObject({
    name: words,
    format: z.enum(['dxf', 'svg']),
    unit: z.string().max(20),
    part: z.number().int().min(1).max(100_000),
    digest: z.string().regex(/^[0-9a-f]{64}$/),
  }),
  shapes: z
    .array(
      z.strictObject({
        id: z.string().regex(/^[a-z]+\.\d{1,5}$/),
        layer: words,
        operation: z.enum(['outline', 'opening', 'score', 'etch', 'mark', 'ignore']),
        closed: z.boolean(),
        vertices: z
          .array(
            z.strictObject({
              x: coordinate,
              y: coordinate,
              bulge: z.number().min(-LARGEST_BULGE).max(LARGEST_BULGE),
            }),
          )
          .min(1)
          .max(DRAWING_LIMITS.vertices),
      }),
    )
    .min(1)
    .max(DRAWING_LIMITS.shapes),
  notes: told,
  faults: told,
});

const { $schema: _version, ...description } = z.toJSONSchema(drawingSchema);

/**
 * What the field takes: anything, so that a drawing that is known already need not be looked through again; described
 * as the schema it is then held to.
 */
export const drawnInput = z.unknown().meta(description);

/** Contours of shapes that were proved; a drawing that was read does not change. */
const proved = new WeakMap<DrawnShape, Contour>();

/**
 * The contour of a closed shape.
 * @throws GeometryError when it is none; one that came through the field is one
 */
export function contourOfShape(shape: DrawnShape): Contour {
  const known = proved.get(shape);
  if (known !== undefined) return known;
  const made = makeContour(shape.vertices);
  proved.set(shape, made);
  return made;
}

export type DrawingRead =
  { readonly ok: true; readonly drawing: Drawing } | { readonly ok: false; readonly says: string };

/** The last drawing that was read, by its text: a keystroke in another field proves nothing anew. */
let last: { readonly text: string; readonly drawing: Drawing } | undefined;

/**
 * Reads a drawing from JSON.
 * @param input anything
 * @returns the drawing, or in a sentence what is wrong with it and where
 */
export function readDrawn(input: unknown): DrawingRead {
  if (typeof input !== 'object' || input === null || Array.isArray(input))
    return { ok: false, says: 'accepted is a drawing as bringing in a DXF or SVG file gives it.' };
  const text = textOf(input);
  if (last !== undefined && last.text === text) return { ok: true, drawing: last.drawing };
  const parsed = drawingSchema.safeParse(input);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    const place = (issue?.path ?? []).join('.');
    return {
      ok: false,
      says: `at ${place === '' ? 'its top' : place}: ${issue?.message ?? 'not readable'}. Accepted is a drawing as bringing in a DXF or SVG file gives it.`,
    };
  }
  const says = faultOf(parsed.data);
  if (says !== undefined) return { ok: false, says };
  last = { text, drawing: parsed.data };
  return { ok: true, drawing: parsed.data };
}

/** As JSON; nothing for what cannot be written so, which the schema then refuses. */
function textOf(input: object): string {
  try {
    return JSON.stringify(input);
  } catch {
    return '';
  }
}

function faultOf({ shapes }: Drawing): string | undefined {
  const vertices = shapes.reduce((sum, shape) => sum + shape.vertices.length, 0);
  if (vertices > DRAWING_LIMITS.vertices)
    return `it has ${vertices} vertices; accepted are up to ${DRAWING_LIMITS.vertices}.`;
  const ids = new Set<string>();
  for (const shape of shapes) {
    if (ids.has(shape.id)) return `two of its shapes are called ${shape.id}.`;
    ids.add(shape.id);
    if (!shape.closed) continue;
    try {
      contourOfShape(shape);
    } catch (error) {
      if (!(error instanceof GeometryError)) throw error;
      return `shape ${shape.id} is no contour. ${error.message}`;
    }
  }
  return undefined;
}
