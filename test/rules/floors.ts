// The floors of the house: which room may import which. Imports go down only, through the neighbour's index.ts.

/** For each room, the rooms below it. */
export const FLOORS: Readonly<Record<string, readonly string[]>> = (() => {
  const below: Record<string, readonly string[]> = {};
  const put = (room: string, ...rooms: readonly string[]): void => {
    below[room] = [...new Set(rooms.flatMap((one) => [one, ...(below[one] ?? [])]))];
  };
  put('units');
  put('geometry');
  put('handbook', 'units', 'geometry');
  put('model', 'handbook');
  put('process', 'model');
  put('checks', 'process');
  put('parts', 'checks');
  put('kits', 'parts');
  put('drive', 'parts');
  put('plate', 'process');
  put('nesting', 'plate');
  put('cutting', 'plate');
  put('drawing', 'kits', 'parts', 'nesting', 'cutting');
  put('files', 'drawing');
  put('job', 'files', 'drive');
  put('server', 'job');
  put('client', 'job');
  return below;
})();

const ROOT = 'parts-library/';

/** The room a file belongs to: a folder of `parts-library`, `server`, `client`, or the library's public face. */
export function roomOf(file: string): string {
  const path = file.startsWith(ROOT) ? file.slice(ROOT.length) : file;
  return path.includes('/') ? (path.split('/')[0] ?? '') : 'index';
}

/** What is wrong with one import, or nothing. `from` and `to` are paths from the repository's top. */
export function judgeImport(from: string, to: string): string | undefined {
  const [here, there] = [roomOf(from), roomOf(to)];
  if (here === there) return undefined;
  if (here === 'index')
    return to.endsWith('/index.ts')
      ? undefined
      : `${from} imports ${to}: only a room's index.ts may be re-exported.`;
  if (there === 'index') {
    return here === 'server' || here === 'client'
      ? undefined
      : `${from} imports the library's public face; a room imports its neighbour's index.ts.`;
  }
  if (!(FLOORS[here] ?? []).includes(there))
    return `${from} imports ${to}: ${here} may not look up to ${there}.`;
  if (!to.endsWith(`${there}/index.ts`)) return `${from} imports ${to}: go through ${there}/index.ts.`;
  return undefined;
}
