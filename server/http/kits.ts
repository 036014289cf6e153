// Routes of kits: what there is, and several parts worked out from one set of numbers.
import { Router, type Request } from 'express';
import { partFiles, runKit, summarise, type KitRun } from '../../parts-library/job/index.js';
import { findKit, listKits, type Kit } from '../../parts-library/kits/index.js';
import type { ShopStore } from '../store/index.js';
import { handler } from './handler.js';
import { readBody } from './parts.js';
import { HttpProblem, notFound, unusable } from './problem.js';
import { kitFilesRequestSchema, kitRequestSchema } from './schemas.js';

function kitOf(request: Request): Kit {
  const id = String(request.params['kit']);
  const kit = findKit(id);
  if (kit !== undefined) return kit;
  throw notFound(
    `There is no kit "${id}"; there are ${listKits()
      .map((one) => one.id)
      .join(', ')}.`,
  );
}

const summaryOf = ({ numbers, derived, findings, members }: KitRun): object => ({
  numbers,
  derived,
  findings,
  members: members.map(({ role, name, quantity, run }) => ({
    role,
    name,
    quantity,
    findings: run.findings,
    part: summarise(run),
  })),
});

export function kitRoutes(shop: ShopStore): Router {
  const router = Router();

  router.get('/', (_request, response) => {
    response.json({
      kits: listKits().map(({ id, title, summary, fields }) => ({ id, title, summary, fields })),
    });
  });

  router.get('/:kit', (request, response) => {
    const { id, title, summary, fields, inputSchema } = kitOf(request);
    response.json({ id, title, summary, fields, schema: inputSchema() });
  });

  const ranOf = async (kit: Kit, numbers: unknown, unit: 'mm' | 'in'): Promise<KitRun> => {
    const ran = runKit(kit.id, numbers, unit, await shop.read());
    if (!ran.ok) throw unusable(ran.problems);
    return ran.value;
  };

  router.post(
    '/:kit',
    handler(async (request, response) => {
      const { numbers = {}, unit } = readBody(kitRequestSchema, request.body);
      response.json(summaryOf(await ranOf(kitOf(request), numbers, unit)));
    }),
  );

  router.post(
    '/:kit/files',
    handler(async (request, response) => {
      const kit = kitOf(request);
      const {
        numbers = {},
        unit,
        dxf,
        dxfUnit,
        despiteFindings,
      } = readBody(kitFilesRequestSchema, request.body);
      const ran = await ranOf(kit, numbers, unit);
      const made = ran.members.map(({ role, run }) =>
        partFiles(run, { dxf, unit: dxfUnit, despiteFindings, baseName: `${kit.id}.${role}` }),
      );
      const stops = [
        ...(despiteFindings ? [] : ran.findings.filter(({ level }) => level === 'stop')),
        ...made.flatMap((files) => (files.ok ? [] : files.stops)),
      ];
      // A kit is written whole or not at all.
      if (stops.length > 0) {
        throw new HttpProblem(409, 'A stop finding', 'Stop findings withhold the files of this kit.', {
          findings: stops,
        });
      }
      response.json({ files: made.flatMap((files) => (files.ok ? files.files : [])) });
    }),
  );

  return router;
}
