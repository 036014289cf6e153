// The HTTP interface put together: guards, routes, the built page, errors.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import express, { Router, type Express, type RequestHandler } from 'express';
import type { ComputedWith } from '../../parts-library/job/index.js';
import type { Store } from '../store/index.js';
import { drawingRoutes } from './drawings.js';
import { driveRoutes } from './drive.js';
import { jsonOnly, loopbackOnly, securityHeaders } from './guards.js';
import { jobRoutes } from './jobs.js';
import { kitRoutes } from './kits.js';
import { describeInterface } from './openapi.js';
import { partRoutes } from './parts.js';
import { answerErrors, answerNotFound } from './problem.js';
import { shopRoutes } from './shop.js';

export interface AppOptions {
  readonly store: Store;
  readonly version: string;
  /** Folder of the built page; without it only the interface is served. */
  readonly page?: string;
  /** Told of failures that are ours. */
  readonly report: (error: unknown) => void;
}

/** Largest body: a job of a few thousand rows. */
const BODY_LIMIT = '4mb';

export function createApp({ store, version, page, report }: AppOptions): Express {
  const computedWith = async (): Promise<ComputedWith> => {
    const { chart, revision } = await store.shop.read();
    return {
      library: version,
      chartVersion: chart.version,
      shopRevision: revision,
      seed: 1,
      lanes: 1,
      iterations: 0,
    };
  };
  const api = Router();
  api.use('/parts', partRoutes(store.shop));
  api.use('/kits', kitRoutes(store.shop));
  api.use('/drive', driveRoutes());
  api.use('/drawings', drawingRoutes());
  api.use('/jobs', jobRoutes({ jobs: store.jobs, shop: store.shop, computedWith }));
  api.use('/shop', shopRoutes(store.shop));
  api.use(answerNotFound);

  const description = describeInterface(version);
  const app = express();
  app.disable('x-powered-by');
  app.set('etag', false);
  app.use(securityHeaders, loopbackOnly);
  app.get('/healthz', (_request, response) => {
    response.json({ status: 'ok', version });
  });
  app.get('/openapi.json', (_request, response) => {
    response.json(description);
  });
  // Bodies of the bench are small: packed ones are refused, not unpacked.
  const readJson = express.json({ limit: BODY_LIMIT, type: () => true, inflate: false });
  app.use('/api', noStore, jsonOnly, readJson, api);
  if (page !== undefined && existsSync(join(page, 'index.html'))) app.use(pageRoutes(page));
  app.use(answerNotFound, answerErrors(report));
  return app;
}

/** Answers of the interface are not kept by anybody, unless a route says otherwise. */
const noStore: RequestHandler = (_request, response, next) => {
  response.set('Cache-Control', 'no-store');
  next();
};

/** The built page. Its files carry a digest in their names; the page itself is asked for each time. */
function pageRoutes(folder: string): Router {
  const router = Router();
  router.use(
    '/assets',
    express.static(join(folder, 'assets'), {
      immutable: true,
      maxAge: '1y',
      index: false,
      dotfiles: 'ignore',
      redirect: false,
    }),
  );
  router.use(express.static(folder, { index: 'index.html', maxAge: 0, dotfiles: 'ignore', redirect: false }));
  return router;
}
