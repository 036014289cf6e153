// Deep links: #/job/part names what is on screen, so that a copied address shows the same print.
import { signal, type ReadonlySignal } from '@preact/signals';

export interface Route {
  readonly jobId: string | undefined;
  readonly rowId: string | undefined;
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
  const [jobId, rowId] = fragment.replace(/^#\/?/, '').split('/').map(decode);
  return { jobId, rowId };
}

/** The fragment of a part's address. */
export const writeRoute = (jobId: string, rowId: string | undefined): string =>
  `#/${encodeURIComponent(jobId)}${rowId === undefined ? '' : `/${encodeURIComponent(rowId)}`}`;

/** The route of the window, followed as it changes. */
export function followRoute(): ReadonlySignal<Route> {
  const route = signal(readRoute(window.location.hash));
  window.addEventListener('hashchange', () => {
    route.value = readRoute(window.location.hash);
  });
  return route;
}
