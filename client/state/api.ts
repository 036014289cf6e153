// The server as the page sees it: jobs with their version tags, and the shop. Nothing here throws on a lost connection.
import {
  createDemoJob,
  openJob,
  openShop,
  type ComputedWith,
  type Job,
  type ShopFacts,
} from '../../parts-library/job/index.js';
import type { Put } from './saving.js';

export type Loaded =
  | { readonly kind: 'job'; readonly job: Job; readonly tag: string }
  | { readonly kind: 'none' }
  | { readonly kind: 'away'; readonly says: string };

const AWAY: Loaded = { kind: 'away', says: 'The server does not answer.' };

const jobAddress = (id: string): string => `api/jobs/${encodeURIComponent(id)}`;

const tagOf = (response: Response): string => response.headers.get('etag') ?? '';

/** A member of an answer that is meant to be an object. */
const member = (body: unknown, name: string): unknown =>
  typeof body === 'object' && body !== null
    ? new Map<string, unknown>(Object.entries(body)).get(name)
    : undefined;

const bodyOf = async (response: Response): Promise<unknown> => {
  try {
    return await response.json();
  } catch {
    return undefined;
  }
};

/** The sentence of a problem document (RFC 9457), or the status when there is none. */
async function problemOf(response: Response): Promise<string> {
  const detail = member(await bodyOf(response), 'detail');
  return typeof detail === 'string' ? detail : `the server answered ${response.status}`;
}

function opened(json: unknown, tag: string): Loaded {
  const result = openJob(json);
  if (result.ok) return { kind: 'job', job: result.job, tag };
  return { kind: 'away', says: result.problems[0]?.says ?? 'The stored job cannot be read.' };
}

const ask = (address: string): Promise<Response> =>
  fetch(address, { headers: { accept: 'application/json' } });

/** Loads a job. */
export async function loadJob(id: string): Promise<Loaded> {
  try {
    const response = await ask(jobAddress(id));
    if (response.status === 404) return { kind: 'none' };
    if (!response.ok) return { kind: 'away', says: await problemOf(response) };
    return opened(await bodyOf(response), tagOf(response));
  } catch {
    return AWAY;
  }
}

/** A stored job by its name. */
export interface JobHead {
  readonly id: string;
  readonly name: string;
}

const isHead = (value: unknown): value is JobHead =>
  typeof member(value, 'id') === 'string' && typeof member(value, 'name') === 'string';

/** Every stored job, the last one worked on first; undefined when the server cannot be asked. */
export async function listJobs(): Promise<readonly JobHead[] | undefined> {
  try {
    const response = await ask('api/jobs');
    const jobs = response.ok ? member(await bodyOf(response), 'jobs') : undefined;
    return Array.isArray(jobs) ? jobs.filter(isHead) : undefined;
  } catch {
    return undefined;
  }
}

/** The job to open when the address names none: the one that was worked on last. */
export async function loadLastJob(): Promise<Loaded> {
  const jobs = await listJobs();
  if (jobs === undefined) return AWAY;
  const [last] = jobs;
  return last === undefined ? { kind: 'none' } : loadJob(last.id);
}

/** Saves a job if the store still holds the version with this tag. */
export const putJob: Put = async (job, tag) => {
  try {
    const response = await fetch(jobAddress(job.id), {
      method: 'PUT',
      headers: { 'content-type': 'application/json', 'if-match': tag },
      body: JSON.stringify(job),
      keepalive: true,
    });
    if (response.ok) return { kind: 'saved', tag: tagOf(response) };
    if (response.status === 412) {
      const theirs = openJob(member(await bodyOf(response), 'current'));
      return theirs.ok
        ? { kind: 'conflict', theirs: theirs.job, tag: `"${theirs.job.revision}"` }
        : { kind: 'refused', says: 'somebody else changed this job, and their version cannot be read here' };
    }
    return response.status >= 500 ? { kind: 'away' } : { kind: 'refused', says: await problemOf(response) };
  } catch {
    return { kind: 'away' };
  }
};

async function post(body: unknown): Promise<Loaded> {
  try {
    const response = await fetch('api/jobs', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    if (!response.ok) return { kind: 'away', says: await problemOf(response) };
    return opened(await bodyOf(response), tagOf(response));
  } catch {
    return AWAY;
  }
}

/** Makes an empty job in the store. */
export const makeJob = (name: string): Promise<Loaded> => post({ name, unit: 'mm' });

/** Puts the demo job into the store, or opens it where it is there already. */
export async function makeDemoJob(): Promise<Loaded> {
  const demo = createDemoJob(UNCOMPUTED);
  const made = await post(demo);
  return made.kind === 'job' ? made : loadJob(demo.id);
}

/** What a job says before anything has been computed with it. */
const UNCOMPUTED: ComputedWith = {
  library: 'page',
  chartVersion: 'starting',
  shopRevision: 0,
  seed: 1,
  lanes: 1,
  iterations: 0,
};

/** What the server knows of the shop; undefined when it cannot be asked, so that starting values count. */
export async function loadShop(): Promise<ShopFacts | undefined> {
  try {
    const response = await ask('api/shop');
    const shop = response.ok ? openShop(await bodyOf(response)) : undefined;
    return shop?.ok === true ? shop.shop : undefined;
  } catch {
    return undefined;
  }
}
