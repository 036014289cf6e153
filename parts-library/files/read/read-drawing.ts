// Brings a drawing in: a DXF or SVG file becomes the outline, openings, lines and marks of one part, in true arcs.
import type { Drawing, Staged } from '../../model/index.js';
import type { ReadPart } from './assemble.js';
import type { ReadLayer } from './operations.js';
import type { DrawingOptions } from './options.js';
import { DrawingProblem } from './problem.js';
import { heard } from './words.js';

/** A drawing that was read, and what else the file holds. */
export interface ReadDrawing {
  /** Plain JSON: the parameter of a part. */
  readonly drawing: Drawing;
  readonly layers: readonly ReadLayer[];
  /** The parts that the file draws, the largest first. */
  readonly parts: readonly ReadPart[];
}

/**
 * Reads a drawing for one part.
 * @param source the file's text, or its bytes
 * @returns the drawing with what was mended, assumed and left out; no value and a stop finding, whose `field` names
 * the option that would help, for a file that cannot be read. Never throws on what is in the file.
 * @example (await readDrawing(text, { name: 'bracket.dxf', unit: 'mm' })).value?.drawing.shapes
 */
export async function readDrawing(
  source: string | Uint8Array,
  options: DrawingOptions = {},
): Promise<Staged<ReadDrawing | undefined>> {
  try {
    // Fetched only when a drawing is brought in: a page that shows prints needs none of it.
    const { readWhole } = await import('./read-whole.js');
    return await readWhole(source, options);
  } catch (error) {
    if (!(error instanceof DrawingProblem)) throw error;
    const { field, message } = error;
    return {
      value: undefined,
      findings: [
        heard('unreadable-drawing', 'stop', 'This drawing cannot be brought in', message, { field }),
      ],
    };
  }
}
