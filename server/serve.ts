// The bench as a running server: store, interface and page on a loopback port, stopped without losing anything.
import { createServer, type Server } from 'node:http';
import { createDemoJob, DEMO_JOB_ID } from '../parts-library/job/index.js';
import { createApp } from './http/app.js';
import { openStore, type Store } from './store/index.js';

export interface ServeOptions {
  /** 0 takes any free port. */
  readonly port: number;
  /** A loopback address. */
  readonly host: string;
  /** Path of the data file, or `:memory:`. */
  readonly file: string;
  readonly version: string;
  /** Folder of the built page. */
  readonly page?: string;
  /** How many further ports are tried when one is taken. */
  readonly tries?: number;
  readonly report?: (error: unknown) => void;
}

export interface Running {
  readonly address: string;
  readonly port: number;
  readonly store: Store;
  /** Takes no new requests, lets running ones end, closes the store. */
  readonly stop: () => Promise<void>;
}

/** How long running requests may take to end, before their connections are cut. */
const GRACE_MILLISECONDS = 5000;

/**
 * Starts the bench. The demo job is put into a store that has no jobs.
 * @throws StoreProblem when the data file cannot be used, or the error of listening
 */
export async function serve(options: ServeOptions): Promise<Running> {
  const { host, file, version, page, report = () => undefined } = options;
  const store = openStore(file);
  try {
    await addDemoJob(store, version);
    const app = createApp({ store, version, report, ...(page === undefined ? {} : { page }) });
    const server = createServer(app);
    const port = await listen(server, options.port, host, options.tries ?? 0);
    const name = host.includes(':') ? `[${host}]` : host;
    return { address: `http://${name}:${port}/`, port, store, stop: () => stop(server, store) };
  } catch (error) {
    await store.close();
    throw error;
  }
}

async function addDemoJob(store: Store, version: string): Promise<void> {
  if ((await store.jobs.list()).length > 0 || (await store.jobs.find(DEMO_JOB_ID)) !== undefined) return;
  const { chart, revision } = await store.shop.read();
  const computedWith = {
    library: version,
    chartVersion: chart.version,
    shopRevision: revision,
    seed: 1,
    lanes: 1,
    iterations: 0,
  };
  await store.jobs.create(createDemoJob(computedWith));
}

const isTaken = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';

/** Listens on a port, or on the next free one. */
async function listen(server: Server, port: number, host: string, tries: number): Promise<number> {
  try {
    return await listenOn(server, port, host);
  } catch (error) {
    if (tries > 0 && port !== 0 && isTaken(error)) return listen(server, port + 1, host, tries - 1);
    throw error;
  }
}

function listenOn(server: Server, port: number, host: string): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      server.off('error', reject);
      const address = server.address();
      resolve(typeof address === 'object' && address !== null ? address.port : port);
    });
  });
}

async function stop(server: Server, store: Store): Promise<void> {
  const closed = new Promise<void>((resolve) => {
    server.close(() => resolve());
  });
  server.closeIdleConnections();
  const cut = setTimeout(() => server.closeAllConnections(), GRACE_MILLISECONDS);
  await closed;
  clearTimeout(cut);
  await store.close();
}
