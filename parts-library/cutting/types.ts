// Cut plans: compensated contours with their lead-ins, in the order in which they are cut, and what they amount to.
import type { Contour, OpenPath, Point } from '../geometry/index.js';
import type { Part } from '../model/index.js';
import type { Placement } from '../plate/index.js';

/** A part where it lies on the plate. */
export interface PlacedPart {
  readonly placement: Placement;
  readonly part: Part;
}

/** What the process does to this plate; every figure from the chart unless the person typed it. */
export interface CutSettings {
  /** Kerf of ordinary contours and its half range, mm. */
  readonly kerf: number;
  readonly kerfPlusMinus: number;
  /** Kerf of small round holes, mm. */
  readonly holeKerf: number;
  /** Chart speed, mm/min. */
  readonly speed: number;
  /** Pierce delay, seconds. */
  readonly pierceSeconds: number;
  readonly thickness: number;
  /**
   * Seen from above, which side of travel the torch cuts square: `right` for the usual clockwise swirl, so that
   * outlines run clockwise and openings counter-clockwise.
   */
  readonly squareSide: 'right' | 'left';
}

/** The straight (later also curved) run from the pierce to the start of the cut. */
export interface LeadIn {
  readonly kind: 'line';
  readonly pierce: Point;
  readonly path: OpenPath;
  readonly length: number;
}

export interface CutContour {
  readonly placementId: string;
  readonly featureId: string;
  readonly purpose: 'outline' | 'opening';
  /** The torch's path, kerf already in, in the direction of travel, starting where the lead-in ends. */
  readonly path: Contour;
  /** False: a chord polyline within 10 µm on the scrap side. */
  readonly exact: boolean;
  readonly leadIn: LeadIn;
  /** Length of `path`, mm, without the lead-in. */
  readonly length: number;
  /** Speed on this contour, mm/min (small holes are cut slower). */
  readonly speed: number;
}

/** Scores, etches and centre marks first, while the plate is whole; then openings, smallest first; then outlines. */
export interface CutPlan {
  readonly settings: CutSettings;
  readonly lines: readonly {
    readonly placementId: string;
    readonly featureId: string;
    readonly purpose: 'score' | 'etch';
    readonly path: OpenPath;
    readonly length: number;
  }[];
  readonly marks: readonly { readonly placementId: string; readonly featureId: string; readonly at: Point }[];
  readonly contours: readonly CutContour[];
}

/** A figure that rests on starting values, same unit throughout. */
export interface Range {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** Figures that can be recomputed by hand from what the print shows. */
export interface CutFigures {
  /** Compensated torch-on path of openings and outlines, mm. Lead-ins, scores, etches and marks are beside it. */
  readonly length: number;
  readonly leadInLength: number;
  readonly lineLength: number;
  /** Torch starts that go through the plate. */
  readonly pierces: number;
  /** Centre marks, each a start that does not go through. */
  readonly marks: number;
  /** Torch-on seconds: contours and lead-ins at their speeds plus pierce delays; travel and probing are not in it. */
  readonly seconds: Range;
  /** Per contour, in cut order. */
  readonly contours: readonly {
    readonly placementId: string;
    readonly featureId: string;
    readonly length: number;
    readonly leadIn: number;
    readonly speed: number;
    readonly pierceSeconds: number;
    readonly seconds: number;
  }[];
}
