// Ids and names of new rows: readable in an address, never used twice in a job.
import type { Job } from '../../parts-library/job/index.js';

const slug = (name: string): string =>
  name
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60);

/**
 * An id and a name that the job does not have yet.
 *
 * @example nameNewRow(jobWith('adapter-plate'), 'Adapter plate') // { id: 'adapter-plate-2', name: 'Adapter plate 2' }
 */
export function nameNewRow(job: Job, title: string): { readonly id: string; readonly name: string } {
  const stem = title.replace(/ \d+$/, '');
  const base = slug(stem) === '' ? 'part' : slug(stem);
  const taken = (id: string, name: string): boolean =>
    job.rows.some((row) => row.id === id || row.name.toLowerCase() === name.toLowerCase());
  if (!taken(base, stem)) return { id: base, name: stem };
  let number = 2;
  while (taken(`${base}-${number}`, `${stem} ${number}`)) number += 1;
  return { id: `${base}-${number}`, name: `${stem} ${number}` };
}
