// Bringing a drawing in: the file a person chose is read on the page itself; its reader is fetched only then.
import { readDrawing, type DrawingOptions, type ReadDrawing } from '../../parts-library/files/index.js';
import type { Staged } from '../../parts-library/model/index.js';

/** Largest file that is taken up, bytes; what is read of it is bounded besides. */
const LARGEST_FILE = 16_000_000;

/** A file in hand, so that it can be read again in another unit or for another part. */
export interface DrawingFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Takes up a file, or says why not. */
export async function takeUp(file: File): Promise<DrawingFile | string> {
  if (file.size > LARGEST_FILE)
    return `${file.name} has ${file.size} bytes; accepted are up to ${LARGEST_FILE}. Leave out what is not cut.`;
  try {
    return { name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) };
  } catch {
    return `${file.name} cannot be read from the disk.`;
  }
}

/** Reads a file in hand, or says why the page cannot. */
export async function readFileInHand(
  { name, bytes }: DrawingFile,
  options: DrawingOptions,
): Promise<Staged<ReadDrawing | undefined> | string> {
  try {
    return await readDrawing(bytes, { ...options, name });
  } catch (error) {
    // The reader is fetched when it is first needed, and the server may be away.
    return `${name} cannot be read now: ${error instanceof Error ? error.message : 'the reader could not be fetched'}.`;
  }
}
