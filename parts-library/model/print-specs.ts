// What a family asks its print to show: dimensions as views on parameters, and ghosts of the mating parts.
// Both are in the part's own coordinates (mm); where text and arrows go is decided by the drawing room.
import type { Contour, OpenPath, Point } from '../geometry/index.js';
import type { Quantity } from './finding.js';

interface DimensionBase {
  readonly id: string;
  /** Dotted path of the parameter that this dimension edits; absent for a derived, read-only one. */
  readonly field?: string;
  /** What stands on the drawing, already in the job's unit, for example `⌀57.35` or `6 × ⌀8.5, tap M10`. */
  readonly text: string;
  /** Place in the order in which a person measures the part; Tab follows it. */
  readonly order: number;
}

/** Distance between two points, ISO 129-1 with extension lines. */
export interface LinearDimension extends DimensionBase {
  readonly kind: 'linear';
  readonly from: Point;
  readonly to: Point;
  /** Measured along the line of the points, or along x, or along y. */
  readonly along: 'aligned' | 'x' | 'y';
}

/** A diameter or a radius, shown by a leader that ends on the circle. */
export interface RoundDimension extends DimensionBase {
  readonly kind: 'diameter' | 'radius';
  readonly centre: Point;
  /** Radius of the circle in both kinds, mm. */
  readonly radius: number;
  /** Where on the circle a leader may end, degrees; absent means anywhere. */
  readonly degrees?: number;
}

/** Words at the end of a leader, for example a hole call-out. */
export interface LeaderDimension extends DimensionBase {
  readonly kind: 'leader';
  readonly at: Point;
}

/** An angle between two rays, degrees counter-clockwise from `fromDegrees` to `toDegrees`. */
export interface AngularDimension extends DimensionBase {
  readonly kind: 'angle';
  readonly centre: Point;
  readonly radius: number;
  readonly fromDegrees: number;
  readonly toDegrees: number;
}

export type Dimension = LinearDimension | RoundDimension | LeaderDimension | AngularDimension;

/** What a ghost stands for; the drawing gives each its ISO 128 line. */
export type GhostKind =
  'mating-part' | 'chain' | 'hub' | 'weld' | 'bolt-head' | 'socket' | 'folded' | 'bolt-circle' | 'thread';

export interface Ghost {
  readonly id: string;
  readonly kind: GhostKind;
  /** Short label, shown with a leader when there is room, for example `side plates ⌀190.1`. */
  readonly label?: string;
  readonly shape:
    | { readonly circle: { readonly centre: Point; readonly radius: number } }
    | { readonly contour: Contour }
    | { readonly path: OpenPath };
}

/** What follows from what was typed: a circle from a reading, a flat length from legs. Shown, never edited. */
export interface Derived {
  readonly id: string;
  /** The parameter that it follows from, as a dotted path. */
  readonly field?: string;
  readonly title: string;
  readonly value: Quantity;
  /** In the job's unit, for example `⌀95 mm ±0.17, 5 holes ⌀9 mm`. */
  readonly text: string;
}

/** What is done to a part or with it, in the order of a workshop. */
export type StepKind =
  | 'cut'
  | 'deburr'
  | 'grind'
  | 'measure'
  | 'punch'
  | 'drill'
  | 'countersink'
  | 'tap'
  | 'ream'
  | 'bore'
  | 'bend'
  | 'fit'
  | 'tack'
  | 'indicate'
  | 'weld'
  | 'paint'
  | 'caution';

/** One step of the run sheet for a part: what is done after (or before) the torch, with its settings. */
export interface ShopStep {
  readonly kind: StepKind;
  readonly says: string;
  readonly featureIds?: readonly string[];
}

/** Something that is bought or sawn to go with a part. */
export interface HardwareItem {
  /** Comes from the family and says what it is for: `bolts`, `pivot.tube`. */
  readonly id: string;
  readonly kind:
    'bolt' | 'nut' | 'washer' | 'tube' | 'bar' | 'bearing' | 'spring' | 'clevis' | 'pin' | 'chain';
  /** As it is asked for, sizes in the job's unit: `M8 × 25 hexagon bolt, 8.8`, `tube 25 × 2`. */
  readonly name: string;
  readonly quantity: number;
  /** Sawn length, mm. */
  readonly length?: number;
  /** Grip length, locking, torque: what a person must know to fit it. */
  readonly says?: string;
}
