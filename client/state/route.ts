// Deep links: #/job/part names what is on screen, #/job/part/drive the drive numbers beside it, so that a copied address
// shows the same sheet.
import { signal, type ReadonlySignal } from '@preact/signals';

export interface Route {
  readonly jobId: string | undefined;
  readonly rowId: string | undefined;
  /** What is shown in place of the part's print. */
  readonly beside?: 'drive';
}

/** A token of the address; one that cannot be decoded names nothing. */
function decode(token: string): string | undefined {
  try {
    return token === '' ? undefined : decodeURIComponent(token);
  } catch {
    return undefined;
  }
}

/**
 * The job and part of an address's fragment.
 *
 * @example readRoute('#/orchard-cart/adapter') // { jobId: 'orchard-cart', rowId: 'adapter' }
 */
export function readRoute(fragment: string): Route {
  const [jobId, rowId, beside] = fragment.replace(/^#\/?/, '').split('/').map(decode);
  return { jobId, rowId, ...(beside === 'drive' ? { beside } : {}) };
}

/** The fragment of a part's address. */
export const writeRoute = (jobId: string, rowId: string | undefined): string =>
  `#/${encodeURIComponent(jobId)}${rowId === undefined ? '' : `/${encodeURIComponent(rowId)}`}`;

/** The fragment of the drive numbers, opened beside a part. */
export const writeDriveRoute = (jobId: string, rowId: string | undefined): string =>
  `#/${encodeURIComponent(jobId)}/${encodeURIComponent(rowId ?? '')}/drive`;

/** The route of the window, followed as it changes. */
export function followRoute(): ReadonlySignal<Route> {
  const route = signal(readRoute(window.location.hash));
  window.addEventListener('hashchange', () => {
    route.value = readRoute(window.location.hash);
  });
  return route;
}
