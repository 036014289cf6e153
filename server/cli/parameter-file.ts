// The file of `--params`: JSON from a path or from standard input.
import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import type { InputProblem } from './outcome.js';

/** Largest parameter file, bytes: the largest part of the catalogue takes a few kilobytes. */
const LARGEST_FILE = 1_000_000;

export interface ReadParameters {
  readonly value: unknown;
  readonly problems: readonly InputProblem[];
}

/**
 * Reads a parameter file.
 * @param path as given by a person; `-` is standard input, undefined is no file
 * @returns the parsed JSON, or what is wrong with `--params`
 */
export async function readParameters(path: string | undefined): Promise<ReadParameters> {
  if (path === undefined) return { value: undefined, problems: [] };
  const refuse = (says: string): ReadParameters => ({
    value: undefined,
    problems: [{ field: 'params', flag: '--params', says }],
  });
  let content: string;
  try {
    content = path === '-' ? await text(process.stdin) : await readFile(path, 'utf8');
  } catch {
    return refuse(`"${path}" cannot be read; accepted is the path of a JSON file.`);
  }
  // Some editors put a byte-order mark in front.
  content = content.replace(/^\uFEFF/, '');
  if (content.length > LARGEST_FILE) return refuse(`"${path}" is larger than ${LARGEST_FILE} bytes.`);
  try {
    return { value: JSON.parse(content) as unknown, problems: [] };
  } catch (error) {
    return refuse(`"${path}" is not JSON: ${error instanceof Error ? error.message : 'unreadable'}.`);
  }
}
