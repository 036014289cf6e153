// The route of drawings: a DXF or SVG file is read into the row of a part, or refused with the option that would help.
import { Router } from 'express';
import { readDrawing, type DrawingOptions } from '../../parts-library/files/index.js';
import { drawingRow } from '../../parts-library/job/index.js';
import { drawingRequestSchema } from './drawing-schemas.js';
import { handler } from './handler.js';
import { readBody } from './parts.js';
import { HttpProblem, unusable } from './problem.js';

/** The body less its text, which is as long as a drawing is and has a reader of its own. */
function splitBody(body: unknown): { readonly text: string; readonly rest: unknown } {
  if (typeof body !== 'object' || body === null || !('text' in body) || typeof body.text !== 'string')
    throw unusable([{ field: 'text', says: 'The DXF or SVG file as text is missing.' }]);
  return { text: body.text, rest: { ...body, text: '' } };
}

export function drawingRoutes(): Router {
  const router = Router();

  router.post(
    '/',
    handler(async (request, response) => {
      const { text, rest } = splitBody(request.body);
      const asked = readBody(drawingRequestSchema, rest);
      const options: DrawingOptions = Object.fromEntries(
        Object.entries(asked).filter(([name, value]) => name !== 'text' && value !== undefined),
      );
      const { value, findings } = await readDrawing(text, options);
      if (value === undefined) {
        throw new HttpProblem(
          422,
          'This drawing cannot be brought in',
          findings.map(({ says }) => says).join(' '),
          { errors: findings.map(({ field, says }) => ({ field: field ?? 'text', says })), findings },
        );
      }
      const { drawing, layers, parts } = value;
      response.json({ row: drawingRow(drawing), layers, parts, findings });
    }),
  );

  return router;
}
