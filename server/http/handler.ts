// Route handlers that wait for something: a promise that fails goes to the error handler.
import type { Request, RequestHandler, Response } from 'express';

export const handler =
  (handle: (request: Request, response: Response) => Promise<void>): RequestHandler =>
  (request, response, next) => {
    handle(request, response).catch(next);
  };

/** A value of the address given once, or undefined. */
export function inAddress(request: Request, name: string): string | undefined {
  const value = request.query[name];
  return typeof value === 'string' ? value : undefined;
}
