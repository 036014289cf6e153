// Errors as problem details (RFC 9457): one shape for everything that goes wrong, with the fields concerned.
import type { ErrorRequestHandler, RequestHandler, Response } from 'express';

export interface FieldSays {
  readonly field: string;
  readonly says: string;
}

/** Thrown or passed on by a route; answered as `application/problem+json`. */
export class HttpProblem extends Error {
  override readonly name = 'HttpProblem';
  readonly status: number;
  readonly title: string;
  /** Members beside those of the standard. */
  readonly extra: Readonly<Record<string, unknown>>;

  constructor(status: number, title: string, detail: string, extra: Readonly<Record<string, unknown>> = {}) {
    super(detail);
    this.status = status;
    this.title = title;
    this.extra = extra;
  }
}

/** Values that cannot be used, each with its field. */
export const unusable = (errors: readonly FieldSays[]): HttpProblem =>
  new HttpProblem(
    422,
    'Values that cannot be used',
    errors.map(({ field, says }) => (field === '' ? says : `${field}: ${says}`)).join(' '),
    { errors },
  );

export const notFound = (what: string): HttpProblem => new HttpProblem(404, 'Not found', what);

function send(response: Response, status: number, title: string, detail: string, extra: object): void {
  response
    .status(status)
    .type('application/problem+json')
    .send(JSON.stringify({ type: 'about:blank', title, status, detail, ...extra }));
}

/** Every path that no route answers. */
export const answerNotFound: RequestHandler = (request, _response, next) => {
  next(notFound(`There is nothing at ${request.method} ${request.originalUrl.split('?')[0]}.`));
};

/** Errors of Express and its body reader that have a plain meaning. */
function known(error: unknown): HttpProblem | undefined {
  if (error instanceof HttpProblem) return error;
  if (typeof error !== 'object' || error === null || !('type' in error)) {
    return error instanceof URIError
      ? new HttpProblem(400, 'Bad request', 'The address cannot be read.')
      : undefined;
  }
  switch (error.type) {
    case 'entity.parse.failed':
      return new HttpProblem(400, 'Not JSON', 'The body is not JSON.');
    case 'entity.too.large':
      return new HttpProblem(413, 'Too large', 'The body is larger than is accepted.');
    case 'charset.unsupported':
    case 'encoding.unsupported':
      return new HttpProblem(415, 'Unsupported encoding', 'The body is to be UTF-8 JSON.');
    case 'request.aborted':
    case 'request.size.invalid':
    case 'stream.encoding.set':
      return new HttpProblem(400, 'Bad request', 'The body did not arrive whole.');
    default:
      return undefined;
  }
}

/** @param report told of failures that are ours, for the log */
export function answerErrors(report: (error: unknown) => void): ErrorRequestHandler {
  return (error: unknown, _request, response, next) => {
    if (response.headersSent) {
      next(error);
      return;
    }
    const problem = known(error);
    if (problem !== undefined) {
      send(response, problem.status, problem.title, problem.message, problem.extra);
      return;
    }
    report(error);
    // What went wrong inside is for the log, not for the network.
    send(response, 500, 'The program failed', 'Something went wrong here; the log says what.', {});
  };
}
