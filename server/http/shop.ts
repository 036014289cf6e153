// Routes of the shop: chart, machine record, tools and rack, read and saved whole.
import { Router } from 'express';
import { openShop } from '../../parts-library/job/index.js';
import type { ShopStore } from '../store/index.js';
import { handler } from './handler.js';
import { unusable } from './problem.js';
import { conflict, revisionOf, sendRevision } from './revisions.js';

export function shopRoutes(shop: ShopStore): Router {
  const router = Router();

  router.get(
    '/',
    handler(async (request, response) => {
      sendRevision(request, response, await shop.read());
    }),
  );

  router.put(
    '/',
    handler(async (request, response) => {
      const revision = revisionOf(request);
      const opened = openShop(request.body);
      if (!opened.ok) throw unusable(opened.problems.map(({ path, says }) => ({ field: path, says })));
      const result = await shop.save(opened.shop, revision);
      if (result.outcome === 'conflict') throw conflict(result.current, opened.shop);
      sendRevision(request, response, result.shop);
    }),
  );

  return router;
}
