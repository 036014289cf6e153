// What every request passes: headers that narrow what the page may do, and checks of where a request comes from.
import type { RequestHandler } from 'express';
import { HttpProblem } from './problem.js';

/**
 * The page loads its own scripts, styles, fonts and pictures and talks to its own server, nothing else. Pictures and
 * downloads made on the page are data: and blob: addresses.
 */
const CONTENT_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self' data:",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

export const securityHeaders: RequestHandler = (_request, response, next) => {
  response.set({
    'Content-Security-Policy': CONTENT_POLICY,
    'X-Content-Type-Options': 'nosniff',
    'Referrer-Policy': 'no-referrer',
    'X-Frame-Options': 'DENY',
    'Cross-Origin-Opener-Policy': 'same-origin',
    'Cross-Origin-Resource-Policy': 'same-origin',
    'Permissions-Policy': 'camera=(), microphone=(), geolocation=()',
  });
  next();
};

const LOOPBACK_NAMES: ReadonlySet<string> = new Set(['localhost', '127.0.0.1', '[::1]']);

/** Host name of `name:port`, in lower case. */
const nameOf = (host: string): string => host.toLowerCase().replace(/:\d+$/, '');

/**
 * On loopback only loopback names are answered: a page elsewhere that points its own name at 127.0.0.1 would
 * otherwise be of the same origin. Requests that a page of another origin sends are refused too.
 */
export const loopbackOnly: RequestHandler = (request, _response, next) => {
  const host = request.headers.host ?? '';
  if (!LOOPBACK_NAMES.has(nameOf(host))) {
    next(new HttpProblem(403, 'Wrong host', 'This bench answers on localhost only.'));
    return;
  }
  const { origin } = request.headers;
  if (origin !== undefined && origin.toLowerCase() !== `http://${host.toLowerCase()}`) {
    next(new HttpProblem(403, 'Wrong origin', 'Requests from other pages are not accepted.'));
    return;
  }
  next();
};

/** Bodies are JSON. A form or plain text, which any page may send anywhere, is refused before it is read. */
export const jsonOnly: RequestHandler = (request, _response, next) => {
  const { headers } = request;
  const hasBody = (headers['content-length'] ?? '0') !== '0' || headers['transfer-encoding'] !== undefined;
  if (hasBody && request.is(['application/json', 'application/*+json']) === false) {
    next(new HttpProblem(415, 'Not JSON', 'Send the body as application/json.'));
    return;
  }
  next();
};
