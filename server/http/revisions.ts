// Revisions as entity tags: every answer with a document names its revision, every change names the one it was made on.
import type { Request, Response } from 'express';
import { HttpProblem } from './problem.js';

/** @example etagOf(7) // '"7"' */
export const etagOf = (revision: number): string => `"${revision}"`;

/**
 * The revision that a change was made on, from `If-Match`.
 * @throws HttpProblem 428 when it is missing, 400 when it is no revision
 */
export function revisionOf(request: Request): number {
  const given = request.get('If-Match');
  if (given === undefined) {
    throw new HttpProblem(
      428,
      'Revision needed',
      'Name the revision that this was made on in the If-Match header, for example "7".',
    );
  }
  const found = /^"(\d{1,15})"$/.exec(given.trim())?.[1];
  if (found === undefined)
    throw new HttpProblem(400, 'No revision', `If-Match is ${given}; accepted is one such as "7".`);
  return Number(found);
}

/** Both sides of a conflict: what stands here now, and what was sent. */
export const conflict = (current: unknown, yours: unknown): HttpProblem =>
  new HttpProblem(
    412,
    'Changed meanwhile',
    'It was changed by somebody else since; both sides are given here.',
    {
      current,
      yours,
    },
  );

/** Sends a document with its revision, or 304 when the asker has it. */
export function sendRevision(
  request: Request,
  response: Response,
  document: { readonly revision: number },
  status = 200,
): void {
  const etag = etagOf(document.revision);
  response.set({ ETag: etag, 'Cache-Control': 'no-cache' });
  if (status === 200 && request.method === 'GET' && request.get('If-None-Match') === etag) {
    response.status(304).end();
    return;
  }
  response.status(status).json(document);
}
