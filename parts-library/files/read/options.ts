// What may be said about a drawing before it is read; everything has a value of its own otherwise.
import type { LayerOperation } from './operations.js';
import { DrawingProblem } from './problem.js';

/** Units that a drawing's numbers can be taken to be in, mm. A point is a 72nd of an inch, a pixel a 96th. */
export const DRAWING_UNITS: ReadonlyMap<string, number> = new Map([
  ['mm', 1],
  ['cm', 10],
  ['m', 1000],
  ['in', 25.4],
  ['ft', 304.8],
  ['pt', 25.4 / 72],
  ['px', 25.4 / 96],
]);

export interface DrawingOptions {
  /** Name of the file, to be kept with the drawing. */
  readonly name?: string;
  /** By its first characters when absent. */
  readonly format?: 'dxf' | 'svg';
  /** What the file's numbers are in; wins over what the file says, and is needed where it is silent. */
  readonly unit?: string;
  /** Ends no farther apart than this are joined, mm. 0.05 when absent. */
  readonly gap?: number;
  /** Farthest that arcs may lie from a curve they stand for, mm. 0.01 when absent. */
  readonly arcTolerance?: number;
  /** What is done along the lines of a layer, by its name. */
  readonly layers?: Readonly<Record<string, LayerOperation>>;
  /** Which of several parts, the largest being 1. */
  readonly part?: number;
  /** What becomes of lines that close nothing on layers that are cut. `ignore` when absent. */
  readonly lines?: 'ignore' | 'score' | 'etch';
}

/** Bounds of the two tolerances, mm. */
const GAP = { least: 0, most: 5, usual: 0.05 };
const ARC = { least: 0.001, most: 1, usual: 0.01 };

export interface ReadOptions {
  readonly gap: number;
  readonly arcTolerance: number;
  readonly part: number;
  readonly lines: 'ignore' | 'score' | 'etch';
  readonly layers: ReadonlyMap<string, LayerOperation>;
}

function bounded(value: number | undefined, field: string, what: string, range: typeof GAP): number {
  if (value === undefined) return range.usual;
  if (value >= range.least && value <= range.most) return value;
  throw new DrawingProblem(`${what} is ${value}; accepted is ${range.least} to ${range.most} mm.`, field);
}

/** @throws DrawingProblem naming the option */
export function checkOptions(options: DrawingOptions): ReadOptions {
  const { gap, arcTolerance, part = 1, lines = 'ignore', layers = {}, unit } = options;
  if (unit !== undefined && !DRAWING_UNITS.has(unit))
    throw new DrawingProblem(
      `The unit is "${unit.slice(0, 20)}"; accepted are ${[...DRAWING_UNITS.keys()].join(', ')}.`,
      'unit',
    );
  if (!Number.isInteger(part) || part < 1)
    throw new DrawingProblem(`The part is ${part}; accepted is a whole number from 1.`, 'part');
  return {
    gap: bounded(gap, 'gap', 'The gap tolerance', GAP),
    arcTolerance: bounded(arcTolerance, 'arcTolerance', 'The arc tolerance', ARC),
    part,
    lines,
    layers: new Map(Object.entries(layers)),
  };
}
