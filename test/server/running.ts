// A bench listening on a free port with data in memory, for the tests that talk to it.
import { request } from 'node:http';
import { serve, type Running } from '../../server/serve.js';

export interface Bench extends Running {
  readonly failures: readonly unknown[];
}

export async function startBench(page?: string): Promise<Bench> {
  const failures: unknown[] = [];
  const running = await serve({
    port: 0,
    host: '127.0.0.1',
    file: ':memory:',
    version: '0.0.0-test',
    report: (error) => failures.push(error),
    ...(page === undefined ? {} : { page }),
  });
  return { ...running, failures };
}

export interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly text: string;
  /** The body as JSON. */
  readonly json: () => unknown;
}

/** Sends a request exactly as told: every header, also those that a browser would not let a page set. */
export function send(
  bench: Bench,
  method: string,
  path: string,
  options: {
    readonly body?: unknown;
    readonly text?: string;
    readonly headers?: Readonly<Record<string, string>>;
  } = {},
): Promise<Answer> {
  const content = options.text ?? (options.body === undefined ? undefined : JSON.stringify(options.body));
  return new Promise((resolve, reject) => {
    const sent = request(
      {
        host: '127.0.0.1',
        port: bench.port,
        method,
        path,
        headers: {
          ...(content === undefined
            ? {}
            : { 'Content-Type': 'application/json', 'Content-Length': Buffer.byteLength(content) }),
          ...options.headers,
        },
      },
      (response) => {
        let text = '';
        response.setEncoding('utf8');
        response.on('data', (part: string) => (text += part));
        response.on('end', () => {
          const headers = Object.fromEntries(
            Object.entries(response.headers).map(([name, value]) => [name, String(value)]),
          );
          resolve({ status: response.statusCode ?? 0, headers, text, json: () => JSON.parse(text) });
        });
      },
    );
    sent.on('error', reject);
    sent.end(content);
  });
}

/** The header that names the revision a change is made on. */
export const onRevision = (revision: number): { readonly headers: Readonly<Record<string, string>> } => ({
  headers: { 'If-Match': `"${revision}"` },
});
