// Routes of part families: what there is, one part drawn and checked, its files.
import { Router, type Request, type Response } from 'express';
import type { z } from 'zod';
import {
  guardJson,
  partFiles,
  runPart,
  summarise,
  type PartFile,
  type PartFiles,
  type UncheckedRequest,
  type PartRun,
} from '../../parts-library/job/index.js';
import { findFamily, listFamilies, type Family } from '../../parts-library/parts/index.js';
import { safeBaseName } from '../../parts-library/files/index.js';
import { PAPERS, templatePdf } from '../pdf/template.js';
import type { ShopStore } from '../store/index.js';
import { handler, inAddress } from './handler.js';
import { HttpProblem, notFound, unusable } from './problem.js';
import { fileOptionsSchema, filesRequestSchema, partRequestSchema } from './schemas.js';

/** The kinds of file that can be asked for singly. */
const FILE_KINDS = ['finished.dxf', 'cut.dxf', 'finished.svg', 'cut.svg', 'print.svg'] as const;

export function familyOf(request: Request): Family {
  const id = String(request.params['family']);
  const family = findFamily(id);
  if (family !== undefined) return family;
  const known = listFamilies().map((one) => one.id);
  throw notFound(`There is no part family "${id}"; there are ${known.join(', ')}.`);
}

/** Reads a body by its schema; what is wrong is told field by field. */
export function readBody<S extends z.ZodType>(schema: S, body: unknown): z.output<S> {
  const guarded = guardJson(body ?? {});
  if (!guarded.ok) throw unusable([{ field: guarded.problem.path, says: guarded.problem.says }]);
  const parsed = schema.safeParse(guarded.value);
  if (parsed.success) return parsed.data;
  throw unusable(
    parsed.error.issues.map((issue) => ({
      field: issue.code === 'unrecognized_keys' ? issue.keys.join(', ') : issue.path.map(String).join('.'),
      says: issue.message,
    })),
  );
}

/** The flow's own request from what was sent. */
export function toPartRequest(family: Family, body: z.output<typeof partRequestSchema>): UncheckedRequest {
  const { parameters = {}, unit, name, quantity, process } = body;
  return {
    family: family.id,
    parameters,
    unit,
    ...(name === undefined ? {} : { name }),
    ...(quantity === undefined ? {} : { quantity }),
    ...(process === undefined ? {} : { process }),
  };
}

/** A whole run, or the fields that stand in its way. A part that cannot be drawn is told with its findings. */
export function requireWhole(run: PartRun): PartRun {
  if (run.problems.length > 0) throw unusable(run.problems);
  if (run.value !== undefined) return run;
  const stops = run.findings.filter(({ level }) => level === 'stop');
  throw new HttpProblem(
    422,
    'This part cannot be drawn',
    stops.map(({ title, says }) => `${title}: ${says}`).join(' '),
    {
      errors: stops.map(({ field, says }) => ({ field: field ?? '', says })),
      findings: run.findings,
    },
  );
}

/** The files, or 409 with the stop findings that withhold them. */
export function requireFiles(files: PartFiles): PartFiles & { readonly ok: true } {
  if (files.ok) return files;
  throw new HttpProblem(409, 'A stop finding', files.says, { findings: files.stops });
}

/** The one file of a kind such as `cut.dxf`. */
export function singleFile(files: PartFiles & { readonly ok: true }, kind: string): PartFile {
  const found = files.files.find(({ name }) => name.endsWith(`.${kind}`));
  if (found !== undefined && FILE_KINDS.some((one) => one === kind)) return found;
  throw notFound(files.withoutCut ?? `There is no file "${kind}"; there are ${FILE_KINDS.join(', ')}.`);
}

/** Headers of a download. An SVG opened by itself may run nothing. */
export const downloadHeaders = ({ name, mediaType }: PartFile): Record<string, string> => ({
  'Content-Type': mediaType === 'image/vnd.dxf' ? 'image/vnd.dxf' : 'image/svg+xml; charset=utf-8',
  'Content-Disposition': `attachment; filename="${name}"`,
  'Content-Security-Policy': "default-src 'none'; style-src 'unsafe-inline'; sandbox",
});

/** Reads a request that stands in an address as JSON. */
function requestInAddress(request: Request): unknown {
  try {
    return JSON.parse(inAddress(request, 'request') ?? '{}');
  } catch {
    throw unusable([{ field: 'request', says: 'is not JSON.' }]);
  }
}

export function partRoutes(shop: ShopStore): Router {
  const router = Router();

  router.get('/', (_request, response) => {
    response.json({
      parts: listFamilies().map(({ id, title, summary, fields }) => ({ id, title, summary, fields })),
    });
  });

  router.get('/:family', (request, response) => {
    const { id, title, summary, fields, inputSchema } = familyOf(request);
    response.json({ id, title, summary, fields, schema: inputSchema() });
  });

  router.post(
    '/:family',
    handler(async (request, response) => {
      const asked = toPartRequest(familyOf(request), readBody(partRequestSchema, request.body));
      response.json(summarise(requireWhole(runPart(asked, await shop.read()))));
    }),
  );

  const filesOf = async (request: Request, body: unknown): Promise<PartFiles & { readonly ok: true }> => {
    const { dxf, dxfUnit, despiteFindings, ...asked } = readBody(filesRequestSchema, body);
    const run = requireWhole(runPart(toPartRequest(familyOf(request), asked), await shop.read()));
    const baseName = asked.name === undefined ? {} : { baseName: asked.name };
    return requireFiles(partFiles(run, { dxf, unit: dxfUnit, despiteFindings, ...baseName }));
  };

  router.post(
    '/:family/files',
    handler(async (request, response) => {
      const { files, withoutCut } = await filesOf(request, request.body);
      response.json({ files, ...(withoutCut === undefined ? {} : { withoutCut }) });
    }),
  );

  router.get(
    '/:family/files',
    handler(async (request, response) => {
      const file = singleFile(
        await filesOf(request, requestInAddress(request)),
        inAddress(request, 'file') ?? '',
      );
      response.set(downloadHeaders(file)).send(file.text);
    }),
  );

  const sendTemplate = async (request: Request, response: Response, body: unknown): Promise<void> => {
    const asked = readBody(partRequestSchema, body);
    const run = requireWhole(runPart(toPartRequest(familyOf(request), asked), await shop.read()));
    const paper = PAPERS.find((one) => one === (inAddress(request, 'paper') ?? 'a4'));
    if (paper === undefined)
      throw unusable([{ field: 'paper', says: `is not known; accepted is ${PAPERS.join(' or ')}.` }]);
    const name = `${safeBaseName(asked.name ?? run.family)}.template.pdf`;
    response
      .set({ 'Content-Type': 'application/pdf', 'Content-Disposition': `attachment; filename="${name}"` })
      .send(Buffer.from(await templatePdf(run, paper)));
  };

  router.get(
    '/:family/template',
    handler((request, response) => sendTemplate(request, response, requestInAddress(request))),
  );

  router.post(
    '/:family/template',
    handler((request, response) => sendTemplate(request, response, request.body)),
  );

  return router;
}

/** File options as they stand in an address. */
export function fileOptionsInAddress(request: Request): z.output<typeof fileOptionsSchema> {
  const { dxf, dxfUnit, despiteFindings } = request.query;
  return readBody(fileOptionsSchema, {
    ...(dxf === undefined ? {} : { dxf }),
    ...(dxfUnit === undefined ? {} : { dxfUnit }),
    ...(despiteFindings === undefined ? {} : { despiteFindings: despiteFindings === 'true' }),
  });
}
