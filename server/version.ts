// The version of this program, as its package says.
import { readFileSync } from 'node:fs';

/** Sources stand in server/, built files in dist/server/. */
const PLACES = ['../package.json', '../../package.json'];

/** @example version() // '0.1.0' */
export function version(): string {
  for (const place of PLACES) {
    try {
      const text = readFileSync(new URL(place, import.meta.url), 'utf8');
      const read: unknown = JSON.parse(text);
      if (
        typeof read === 'object' &&
        read !== null &&
        'name' in read &&
        read.name === 'fishplate' &&
        'version' in read
      ) {
        return String(read.version);
      }
    } catch {
      // The other place has it.
    }
  }
  return 'unknown';
}
