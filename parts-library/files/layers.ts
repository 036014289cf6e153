// One layer per operation, named in plain words; no name is shared between the two kinds of file.

import type { FileKind } from './types.js';

/** What is done along the things of one layer. */
export type Operation = 'outline' | 'opening' | 'score' | 'etch' | 'mark';

export interface Layer {
  readonly name: string;
  /** DXF colour index (1 to 255). */
  readonly colour: number;
  /** The same colour for SVG. */
  readonly stroke: string;
  /** Line weight, hundredths of a millimetre, from the series of ISO 128-2: 18, 25, 35, 50. */
  readonly weight: number;
}

/**
 * Weight tells what happens: the outer edge thickest, openings next, what stays on the face thinnest, so that a
 * black-and-white print still reads. Colour tells the kind at a glance: finished sizes are ink, grey for what stays
 * on the face; a cut path is warm (orange) where the torch goes through and cool (blue) where it does not.
 * Every line is continuous, since some readers break a dashed line into its dashes and cut those.
 */
const LAYERS: Readonly<Record<FileKind, Readonly<Record<Operation, Layer>>>> = {
  finished: {
    outline: { name: 'finished-outline', colour: 7, stroke: '#1d1d1b', weight: 50 },
    opening: { name: 'finished-opening', colour: 7, stroke: '#1d1d1b', weight: 35 },
    score: { name: 'finished-score', colour: 8, stroke: '#6f6f6b', weight: 25 },
    etch: { name: 'finished-etch', colour: 8, stroke: '#6f6f6b', weight: 18 },
    mark: { name: 'finished-mark', colour: 8, stroke: '#6f6f6b', weight: 18 },
  },
  cut: {
    outline: { name: 'cutpath-outline', colour: 30, stroke: '#d35400', weight: 50 },
    opening: { name: 'cutpath-opening', colour: 30, stroke: '#d35400', weight: 35 },
    score: { name: 'cutpath-score', colour: 150, stroke: '#1f6fb2', weight: 25 },
    etch: { name: 'cutpath-etch', colour: 150, stroke: '#1f6fb2', weight: 18 },
    mark: { name: 'cutpath-mark', colour: 150, stroke: '#1f6fb2', weight: 18 },
  },
};

/** The layer of an operation in a kind of file. */
export const layerOf = (kind: FileKind, operation: Operation): Layer => LAYERS[kind][operation];

/** All layers of a kind; a file declares every one, used or not, so that every file of a kind looks the same. */
export const layersOf = (kind: FileKind): readonly Layer[] => Object.values(LAYERS[kind]);
