// Features of a flat part: what is cut through, what is only marked, and what each edge is for.
import type { Contour, OpenPath, Point } from '../geometry/index.js';

/** How a hole gets its final size. `cut` leaves the table finished; the others are finished by hand afterwards. */
export type HoleFinish = 'cut' | 'drill' | 'tap' | 'ream' | 'bore';

/** What a round feature is for. `size` is the finished diameter, mm; for a tapped hole its tap drill. */
export interface Hole {
  readonly finish: HoleFinish;
  readonly size: number;
  /** The thread it is tapped for or the bolt that passes through it, for example `M10` or `3/8-16`. */
  readonly thread?: string;
  /** Diameter of the bolt or shaft that it takes, mm. */
  readonly takes?: number;
}

/** Why a stretch of an edge matters, so that a lead-in stays off it and a weld finds it. */
export type EdgeRole = 'bend' | 'bearing' | 'mating' | 'weld';

export interface EdgeUse {
  /** Index of the contour's segment. */
  readonly segment: number;
  readonly role: EdgeRole;
}

interface Named {
  /**
   * Comes from the family's draw function and says what the feature is (`pattern1.hole.3`), never from its place
   * in an array, so that a lead-in, a locked dimension or an override keeps its meaning after an edit.
   */
  readonly id: string;
  /** What a person calls it, for example `bolt hole 3`. */
  readonly name: string;
}

/** An outer edge or an opening through the plate. Outlines run counter-clockwise, openings clockwise. */
export interface CutFeature extends Named {
  readonly purpose: 'outline' | 'opening';
  readonly contour: Contour;
  readonly edges?: readonly EdgeUse[];
  readonly hole?: Hole;
}

/** A partial-depth line to bend on, or shallow lettering. Never a cut contour. */
export interface LineFeature extends Named {
  readonly purpose: 'score' | 'etch';
  readonly path: OpenPath;
  /** For a bend line: rotation in degrees (90 for a right angle), inside radius mm, and which way the leg goes. */
  readonly bend?: { readonly degrees: number; readonly radius: number; readonly direction: 'up' | 'down' };
}

/** A spot to punch and drill from. */
export interface MarkFeature extends Named {
  readonly purpose: 'mark';
  readonly at: Point;
  readonly hole?: Hole;
}

export type Feature = CutFeature | LineFeature | MarkFeature;

/** A flat part as drawn, before kerf: finished sizes, origin where the family puts it, mm. */
export interface Part {
  readonly family: string;
  readonly name: string;
  readonly features: readonly Feature[];
  /** Material grade as the handbook names it, for example `S275`. */
  readonly material: string;
  /** Thickness used for every computation, mm (the measured one when it was measured). */
  readonly thickness: number;
  readonly quantity: number;
  /** True when the geometry was mirrored; lettering never is. */
  readonly mirrored?: boolean;
}

export const isCut = (feature: Feature): feature is CutFeature =>
  feature.purpose === 'outline' || feature.purpose === 'opening';

export const isOpening = (feature: Feature): feature is CutFeature => feature.purpose === 'opening';

export const isMark = (feature: Feature): feature is MarkFeature => feature.purpose === 'mark';

export const isLine = (feature: Feature): feature is LineFeature =>
  feature.purpose === 'score' || feature.purpose === 'etch';

/** The outer edge of a part. Every part has exactly one. */
export function outlineOf(part: Part): CutFeature {
  const outline = part.features.find((feature): feature is CutFeature => feature.purpose === 'outline');
  if (outline === undefined) throw new Error(`Part "${part.name}" has no outline; its family must draw one.`);
  return outline;
}
