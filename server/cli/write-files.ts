// Writes files into a folder whole or not at all: each under a temporary name first, then all renamed.
import { randomBytes } from 'node:crypto';
import { lstat, open, rename, rm, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { makeFolder } from '../make-folder.js';

/** Why files could not be written, in one sentence. */
export class WriteProblem extends Error {
  override readonly name = 'WriteProblem';
}

export interface FileToWrite {
  readonly name: string;
  readonly text: string | Uint8Array;
}

export interface WrittenPath {
  readonly name: string;
  readonly path: string;
  readonly bytes: number;
}

const codeOf = (error: unknown): string =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : '';

const WORDS: Readonly<Record<string, string>> = {
  EACCES: 'no permission',
  EPERM: 'not permitted',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  ENOTDIR: 'a part of the path is a file',
  EEXIST: 'a file of that name is in the way',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'the path leads in a circle',
  ENOENT: 'a part of the path leads nowhere, or takes no new folders',
};

function problemOf(what: string, error: unknown): WriteProblem {
  const code = codeOf(error);
  return new WriteProblem(
    `${what}: ${WORDS[code] ?? (error instanceof Error ? error.message : 'unknown failure')}.`,
  );
}

/**
 * Writes files into a folder, which is made if it is missing. Files of the same names are replaced; anything there
 * that is not a plain file is left alone and nothing is written.
 * @param folder as given by a person
 * @throws WriteProblem when a file cannot be written; then no file of the list has been left half written
 */
export async function writeFiles(
  folder: string,
  files: readonly FileToWrite[],
): Promise<readonly WrittenPath[]> {
  const directory = resolve(folder);
  await openFolder(directory, folder);
  for (const { name } of files) await refuseSpecial(join(directory, name), join(folder, name));
  const staged: { readonly temporary: string; readonly path: string; readonly file: FileToWrite }[] = [];
  try {
    for (const file of files) {
      const temporary = join(directory, `.${file.name}.${randomBytes(6).toString('hex')}.tmp`);
      staged.push({ temporary, path: join(directory, file.name), file });
      await writeWhole(temporary, file.text);
    }
    for (const { temporary, path } of staged) await rename(temporary, path);
  } catch (error) {
    await Promise.all(staged.map(({ temporary }) => rm(temporary, { force: true })));
    throw problemOf(`"${folder}" cannot be written to`, error);
  }
  return staged.map(({ file: { name, text } }) => ({
    name,
    path: join(folder, name),
    bytes: typeof text === 'string' ? Buffer.byteLength(text) : text.byteLength,
  }));
}

async function openFolder(directory: string, given: string): Promise<void> {
  try {
    makeFolder(directory);
    if ((await stat(directory)).isDirectory()) return;
  } catch (error) {
    throw problemOf(`The folder "${given}" cannot be made`, error);
  }
  throw new WriteProblem(`"${given}" is not a folder.`);
}

/** A link, a folder or a device under the name of a file is somebody's intention; it is not replaced. */
async function refuseSpecial(path: string, given: string): Promise<void> {
  try {
    if ((await lstat(path)).isFile()) return;
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return;
    throw problemOf(`"${given}" cannot be looked at`, error);
  }
  throw new WriteProblem(
    `"${given}" is there already and is not a plain file; move it away or choose another folder.`,
  );
}

async function writeWhole(path: string, text: string | Uint8Array): Promise<void> {
  const handle = await open(path, 'wx');
  try {
    await handle.writeFile(text);
    await handle.sync();
  } finally {
    await handle.close();
  }
}
