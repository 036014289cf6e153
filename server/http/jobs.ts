// Routes of jobs: listed, made, read, changed with undo and redo, deleted; and the parts of their rows.
import { randomBytes } from 'node:crypto';
import { Router, type Request, type Response } from 'express';
import {
  changeSchema,
  continueRun,
  createJob,
  edit,
  openJob,
  partFiles,
  reachOf,
  redo,
  replaceJob,
  requestForRow,
  runPart,
  startRun,
  summarise,
  undo,
  type ComputedWith,
  type HistoryEntry,
  type Job,
  type PartRun,
  type Step,
} from '../../parts-library/job/index.js';
import type { JobStore, ShopStore } from '../store/index.js';
import {
  downloadHeaders,
  fileOptionsInAddress,
  readBody,
  requireFiles,
  requireWhole,
  singleFile,
} from './parts.js';
import { handler, inAddress } from './handler.js';
import { HttpProblem, notFound, unusable } from './problem.js';
import { conflict, etagOf, revisionOf, sendRevision } from './revisions.js';
import { newJobSchema } from './schemas.js';

export interface JobRoutes {
  readonly jobs: JobStore;
  readonly shop: ShopStore;
  /** What a new job is computed with. */
  readonly computedWith: () => Promise<ComputedWith>;
}

const idOf = (request: Request): string => String(request.params['id']);

const noJob = (id: string): HttpProblem => notFound(`There is no job "${id}".`);

export function jobRoutes({ jobs, shop, computedWith }: JobRoutes): Router {
  const router = Router();

  const requireJob = async (request: Request): Promise<Job> => {
    const job = await jobs.find(idOf(request));
    if (job === undefined) throw noJob(idOf(request));
    return job;
  };

  router.get(
    '/',
    handler(async (_request, response) => {
      response.json({ jobs: await jobs.list() });
    }),
  );

  router.post(
    '/',
    handler(async (request, response) => {
      const body: unknown = request.body;
      const whole = typeof body === 'object' && body !== null && 'format' in body;
      const job = whole ? requireOpened(body) : await emptyJob(body);
      if (!(await jobs.create(job))) {
        const current = await jobs.find(job.id);
        throw new HttpProblem(409, 'There already', `There is a job "${job.id}" already.`, {
          current,
          yours: job,
        });
      }
      response.location(`/api/jobs/${job.id}`);
      sendRevision(request, response, job, 201);
    }),
  );

  const emptyJob = async (body: unknown): Promise<Job> => {
    const { name, unit } = readBody(newJobSchema, body);
    return createJob({
      id: `job-${randomBytes(6).toString('hex')}`,
      name,
      unit,
      computedWith: await computedWith(),
    });
  };

  router.get(
    '/:id',
    handler(async (request, response) => {
      sendRevision(request, response, await requireJob(request));
    }),
  );

  /** Takes a step on the stored job and answers with what it has become. */
  const step = async (
    request: Request,
    response: Response,
    take: (job: Job, history: readonly HistoryEntry[]) => Step,
  ): Promise<void> => {
    const id = idOf(request);
    const result = await jobs.step(id, revisionOf(request), take);
    if (result.outcome === 'missing') throw noJob(id);
    if (result.outcome === 'conflict') throw conflict(result.current, request.body ?? null);
    if (result.outcome === 'refused') {
      const { path, says } = result.problem;
      throw new HttpProblem(409, 'This change cannot be made', says, { errors: [{ field: path, says }] });
    }
    response.set('ETag', etagOf(result.job.revision));
    response.json({ job: result.job, ...reachOf(result.history) });
  };

  router.put(
    '/:id',
    handler(async (request, response) => {
      const next = requireOpened(request.body);
      if (next.id !== idOf(request))
        throw unusable([{ field: '/id', says: 'is not the id in the address.' }]);
      await step(request, response, (job) => edit(job, replaceJob(job, next)));
    }),
  );

  router.post(
    '/:id/changes',
    handler(async (request, response) => {
      const change = readBody(changeSchema, request.body);
      await step(request, response, (job) => edit(job, change));
    }),
  );

  router.post(
    '/:id/undo',
    handler((request, response) => step(request, response, undo)),
  );
  router.post(
    '/:id/redo',
    handler((request, response) => step(request, response, redo)),
  );

  router.get(
    '/:id/history',
    handler(async (request, response) => {
      const job = await requireJob(request);
      const history = await jobs.history(job.id);
      const entries = history.map(({ revision, kind, change }) => ({ revision, kind, says: change.says }));
      response.json({ revision: job.revision, entries, ...reachOf(history) });
    }),
  );

  router.delete(
    '/:id',
    handler(async (request, response) => {
      const result = await jobs.remove(idOf(request), revisionOf(request));
      if (result.outcome === 'missing') throw noJob(idOf(request));
      if (result.outcome === 'conflict') throw conflict(result.current, null);
      response.status(204).end();
    }),
  );

  const runOfRow = async (request: Request, job: Job): Promise<PartRun> => {
    const rowId = String(request.params['rowId']);
    const row = job.rows.find((one) => one.id === rowId);
    if (row === undefined) throw notFound(`Job "${job.id}" has no row "${rowId}".`);
    const facts = await shop.read();
    // Which process the job has chosen depends on the plate, which only the drawing knows.
    const { part } = continueRun(startRun(requestForRow(job, row), facts), 'draw');
    return requireWhole(runPart(requestForRow(job, row, part), facts));
  };

  router.get(
    '/:id/rows/:rowId',
    handler(async (request, response) => {
      response.json(summarise(await runOfRow(request, await requireJob(request))));
    }),
  );

  router.get(
    '/:id/rows/:rowId/files',
    handler(async (request, response) => {
      const { dxf, dxfUnit, despiteFindings } = fileOptionsInAddress(request);
      const job = await requireJob(request);
      const run = await runOfRow(request, job);
      const baseName = run.value?.part.name ?? run.family;
      const files = requireFiles(
        partFiles(run, { dxf, unit: dxfUnit, despiteFindings, baseName, overrides: job.overrides }),
      );
      const kind = inAddress(request, 'file');
      if (kind === undefined) {
        response.json({
          files: files.files,
          ...(files.withoutCut === undefined ? {} : { withoutCut: files.withoutCut }),
        });
        return;
      }
      const file = singleFile(files, kind);
      response.set(downloadHeaders(file)).send(file.text);
    }),
  );

  return router;
}

/** A job from a body, or the places that stand in its way. */
function requireOpened(body: unknown): Job {
  const opened = openJob(body);
  if (opened.ok) return opened.job;
  throw unusable(opened.problems.map(({ path, says }) => ({ field: path, says })));
}
