// The ways a bolt pattern can be measured with a caliper, as data. Lengths in mm.

/** A size measured along with a reading, such as the hole's diameter. */
export interface Size {
  readonly mm: number;
  readonly plusMinus?: number;
}

/** The bolt circle's diameter itself. */
export interface CircleReading {
  readonly way: 'circle';
  readonly diameter: number;
  readonly plusMinus?: number;
}

/** Centre to centre of two holes `step` holes apart; adjacent holes are one step apart. */
export interface StepsReading {
  readonly way: 'steps';
  readonly step: number;
  readonly distance: number;
  readonly plusMinus?: number;
}

/**
 * Hole edge to hole edge of two holes `step` apart: between the near edges, or over the far edges.
 * The hole is left out only when the same pair is measured on both sides.
 */
export interface EdgesReading {
  readonly way: 'edges';
  readonly side: 'near' | 'far';
  readonly step: number;
  readonly distance: number;
  readonly plusMinus?: number;
  readonly hole?: Size;
}

/**
 * Straight across an even pattern, between opposite holes: centre to centre, near edges or far edges.
 * The hole belongs to the two edge ways, and is left out only when both of them are there.
 */
export interface AcrossReading {
  readonly way: 'across';
  readonly side: 'centres' | 'near' | 'far';
  readonly distance: number;
  readonly plusMinus?: number;
  readonly hole?: Size;
}

/** From the bore's edge to the near edge of a hole. */
export interface FromBoreReading {
  readonly way: 'from-bore';
  readonly distance: number;
  readonly plusMinus?: number;
  readonly bore: Size;
  readonly hole: Size;
}

/** Three or more hole centres in one frame; `plusMinus` holds for each coordinate. */
export interface CentresReading {
  readonly way: 'centres';
  readonly centres: ReadonlyArray<{ readonly x: number; readonly y: number }>;
  readonly plusMinus?: number;
}

export type Tagged =
  CircleReading | StepsReading | EdgesReading | AcrossReading | FromBoreReading | CentresReading;

/** A pattern as measured: what was typed, and one or more readings of it. */
export interface Measure {
  readonly typed: string;
  readonly readings: readonly Tagged[];
}

/** Each way with its example, for help texts and for what is accepted. */
export const MEASURE_WAYS: ReadonlyArray<{ readonly example: string; readonly says: string }> = [
  { example: 'circle 95', says: 'bolt circle diameter' },
  { example: 'adjacent 55.84±0.1', says: 'neighbouring holes, centre to centre' },
  { example: 'every-2nd 90.35', says: 'holes two steps apart, centre to centre (every-3rd and so on)' },
  { example: 'near-edges 47.3 hole 8.5', says: 'between the near edges of two holes, with the hole size' },
  { example: 'far-edges 64.3 hole 8.5', says: 'over the far edges of two holes, with the hole size' },
  { example: 'near-edges 47.3; far-edges 64.3', says: 'both sides of one pair; the hole size cancels' },
  { example: 'near-edges 81.9 hole 8.5 step 2', says: 'edges of holes two steps apart' },
  { example: 'across 110', says: 'opposite holes of an even pattern, centre to centre' },
  { example: 'across near-edges 101.5 hole 8.5', says: 'opposite holes, edge to edge' },
  { example: 'from-bore 20.5 bore 57.15 hole 8.5', says: 'from the bore edge to the near edge of a hole' },
  { example: 'centres (0, 55.2) (-52.4, 17.1) (52.4, 17.1)', says: 'three or more hole centres, x and y' },
];
