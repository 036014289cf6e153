// The server as the page sees it: jobs with their version tags, and the shop. Nothing here throws on a lost connection.
import { DEMO_JOB_ID, openJob, type Job } from '../../parts-library/job/index.js';
import type { Put } from './saving.js';

export type Loaded =
  | { readonly kind: 'job'; readonly job: Job; readonly tag: string }
  | { readonly kind: 'none' }
  | { readonly kind: 'away'; readonly says: string };

const jobAddress = (id: string): string => `api/jobs/${encodeURIComponent(id)}`;

/** The sentence of a problem document (RFC 9457), or the status when there is none. */
async function problemOf(response: Response): Promise<string> {
  const body: unknown = await response.json().catch(() => undefined);
  const detail = typeof body === 'object' && body !== null && 'detail' in body ? body.detail : undefined;
  return typeof detail === 'string' ? detail : `the server answered ${response.status}`;
}

async function jobFrom(response: Response): Promise<Loaded> {
  const opened = openJob(await response.json());
  if (!opened.ok) return { kind: 'away', says: opened.problems[0]?.says ?? 'The stored job cannot be read.' };
  return { kind: 'job', job: opened.job, tag: response.headers.get('etag') ?? '' };
}

/** Loads a job. */
export async function loadJob(id: string): Promise<Loaded> {
  try {
    const response = await fetch(jobAddress(id), { headers: { accept: 'application/json' } });
    if (response.status === 404) return { kind: 'none' };
    if (!response.ok) return { kind: 'away', says: await problemOf(response) };
    return await jobFrom(response);
  } catch {
    return { kind: 'away', says: 'The server does not answer.' };
  }
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
    if (response.ok) return { kind: 'saved', tag: response.headers.get('etag') ?? '' };
    if (response.status === 412 || response.status === 409) {
      const theirs = await loadJob(job.id);
      return theirs.kind === 'job'
        ? { kind: 'conflict', theirs: theirs.job, tag: theirs.tag }
        : { kind: 'away' };
    }
    if (response.status >= 500) return { kind: 'away' };
    return { kind: 'refused', says: await problemOf(response) };
  } catch {
    return { kind: 'away' };
  }
};

/** The job to open when the address names none: the last one that was worked on, or the demo job. */
export async function loadFirstJob(): Promise<Loaded> {
  return loadJob(DEMO_JOB_ID);
}
