// Routes of drive numbers: what can be said of a drive, and what follows from it.
import { Router } from 'express';
import { driveReader } from '../../parts-library/drive/index.js';
import { runDrive } from '../drive.js';
import { readBody } from './parts.js';
import { unusable } from './problem.js';
import { driveRequestSchema } from './schemas.js';

export function driveRoutes(): Router {
  const router = Router();

  router.get('/', (_request, response) => {
    response.json({ fields: driveReader.fields, schema: driveReader.inputSchema() });
  });

  router.post('/', (request, response) => {
    const { parameters = {}, unit } = readBody(driveRequestSchema, request.body);
    const ran = runDrive(parameters, unit);
    if (!ran.ok) throw unusable(ran.problems);
    response.json(ran.value);
  });

  return router;
}
