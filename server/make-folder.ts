// Makes a folder and those above it, step by step.
import { mkdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';

const codeOf = (error: unknown): unknown =>
  error instanceof Error && 'code' in error ? error.code : undefined;

function isThere(path: string): boolean {
  try {
    statSync(path);
    return true;
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return false;
    throw error;
  }
}

/**
 * Makes a folder, and those above it that are missing. Node's own recursive way tries for ever where a file system
 * takes no new names but says that they are not there, as /proc does.
 * @param directory an absolute path
 * @throws the error of the file system; whether what is there already is a folder is for the caller to ask
 */
export function makeFolder(directory: string): void {
  if (isThere(directory)) return;
  const above = dirname(directory);
  if (above !== directory) makeFolder(above);
  try {
    mkdirSync(directory);
  } catch (error) {
    // Another program may have been quicker.
    if (codeOf(error) !== 'EEXIST') throw error;
  }
}
