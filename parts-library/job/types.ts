// The job document: a cut list, what it is cut from, and what was decided about it. Plain JSON, one version.
import type { Vertex } from '../geometry/index.js';
import type { JsonObject, Subject } from '../model/index.js';
import type { Nest, Plate } from '../plate/index.js';
import type { Unit } from '../units/index.js';

/** Marks a file as a job, whatever its name is. */
export const JOB_FORMAT = 'fishplate-job';

/** The version this library writes. */
export const JOB_VERSION = 1;

/** One line of the cut list. */
export interface Row {
  /** Unique in the job; never reused. */
  readonly id: string;
  /** Id of the part family, for example `adapter-plate`. */
  readonly family: string;
  readonly name: string;
  readonly quantity: number;
  /** What the family reads: entries as they were stored, or plain numbers (mm) and texts. */
  readonly parameters: JsonObject;
  /** The kit that this row came from, and the part it plays there. */
  readonly kitId?: string;
  readonly role?: string;
  /** Parameters that were set by hand and no longer follow the kit. */
  readonly overrides?: JsonObject;
}

/** Several rows from one set of numbers. */
export interface KitUse {
  readonly id: string;
  /** Id of the kit in the catalogue. */
  readonly kit: string;
  readonly name: string;
  readonly numbers: JsonObject;
}

/** A plate as the job stores it: the same as in the rack, its contours not yet validated. */
export interface StoredPlate extends Omit<Plate, 'outline' | 'blocked'> {
  readonly outline: readonly Vertex[];
  readonly blocked: readonly (readonly Vertex[])[];
}

/** How plates of one material and thickness are cut; a figure left out comes from the chart. */
export interface ProcessChoice {
  readonly material: string;
  /** mm */
  readonly thickness: number;
  /** Name of the process as the chart has it, for example `air-45A`. */
  readonly processClass?: string;
  /** Widths of cut, mm. */
  readonly kerf?: number;
  readonly kerfPlusMinus?: number;
  readonly holeKerf?: number;
  /** mm/min */
  readonly speed?: number;
  readonly pierceSeconds?: number;
}

export interface Choices {
  readonly process: readonly ProcessChoice[];
}

/** A stop that a person accepted, with the reason. It lapses when what it judged changes. */
export interface Override {
  readonly code: string;
  readonly subject: Subject;
  /** Digest of the finding that was judged; see `findingDigest`. */
  readonly digest: string;
  readonly reason: string;
  /** The day as text, given by whoever accepted it: this room has no clock. */
  readonly date: string;
}

/** What the stored results were computed with, so that the same can be computed again. */
export interface ComputedWith {
  readonly library: string;
  readonly chartVersion: string;
  readonly shopRevision: number;
  readonly seed: number;
  readonly lanes: number;
  readonly iterations: number;
}

export interface Job {
  readonly format: typeof JOB_FORMAT;
  readonly version: typeof JOB_VERSION;
  readonly id: string;
  readonly name: string;
  /** Grows by one with every change. */
  readonly revision: number;
  /** Decides what a bare number means, and how lengths are shown. */
  readonly unit: Unit;
  readonly rows: readonly Row[];
  readonly kits: readonly KitUse[];
  readonly plates: readonly StoredPlate[];
  readonly nests: readonly Nest[];
  readonly choices: Choices;
  /** What was entered about the vehicle's drive: entries as they were stored, or plain numbers and texts. */
  readonly drive?: JsonObject;
  readonly overrides: readonly Override[];
  readonly computedWith: ComputedWith;
}

/** Something wrong at one place of a job or a change: where (RFC 6901 pointer, empty for the whole), and what. */
export interface JobProblem {
  readonly path: string;
  /** What stands there, and what is accepted. */
  readonly says: string;
}
