// A bolt pattern as the checks see it: where the holes are, what passes through them, how they are made.
import type { Thread } from '../handbook/index.js';
import type { Point } from '../geometry/index.js';

export interface BoltPattern {
  /** Prefix of the features' ids and of the parameters' paths: `pattern1` and empty, or `pattern2` and `pattern2.`. */
  readonly id: 'pattern1' | 'pattern2';
  readonly fieldPrefix: '' | 'pattern2.';
  readonly thread: Thread;
  readonly count: number;
  /** Diameter of the circle and its half range, mm; undefined when a reading came without its ±. */
  readonly circle: number;
  readonly circlePlusMinus: number | undefined;
  readonly made: 'clearance' | 'tapped' | 'drill' | 'plain';
  /** Finished hole, mm: clearance, plain, or tap drill. */
  readonly holeDiameter: number;
  readonly holes: readonly { readonly featureId: string; readonly at: Point }[];
  /** What the part that is bolted on has for the bolts. */
  readonly boltedBy: 'hole' | 'thread' | 'stud';
  /** Hole in the part that is bolted on, as measured. */
  readonly boltedHole?: { readonly diameter: number; readonly plusMinus: number };
  /** Bore of the part that is bolted on. */
  readonly boltedBore?: { readonly diameter: number; readonly plusMinus: number };
}
