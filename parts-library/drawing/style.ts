// The measures of a drawing: lettering, arrows, gaps and spacings, all from the height of its lettering.
import type { PrintInput } from './print-input.js';

export interface Style {
  /** Font size of dimensions, and of the smaller ghost labels. */
  readonly size: number;
  readonly small: number;
  /** Length and half width of an arrowhead. */
  readonly arrow: number;
  readonly arrowHalf: number;
  /** Gap between the part and the start of an extension line, and how far it runs past the dimension line. */
  readonly gap: number;
  readonly past: number;
  /** From the outline to the first dimension line, and from one to the next. */
  readonly first: number;
  readonly row: number;
  /** Horizontal end of a leader, and the space between it and its text. */
  readonly landing: number;
  readonly pad: number;
  readonly balloon: number;
  /** How far centre lines run past the edge that they belong to. */
  readonly centrePast: number;
  /** Clear space along the edge of the drawing area. */
  readonly edge: number;
}

/**
 * Proportions after ISO 129-1 and ISO 3098, in font sizes (capitals are 0.7 of it): arrows 15 degrees either
 * side would look heavy beside narrow lines, so heads are closed, filled and slim; 10 mm to the first dimension
 * line and 7 mm between lines at 3.5 mm lettering; extension lines start 8 line widths off and run 8 past.
 */
function styleFor(size: number): Style {
  return {
    size,
    small: size * 0.88,
    arrow: size * 0.72,
    arrowHalf: size * 0.125,
    gap: size * 0.22,
    past: size * 0.25,
    first: size * 1.7,
    row: size * 1.45,
    landing: size * 0.6,
    pad: size * 0.3,
    balloon: size * 0.72,
    centrePast: size * 0.5,
    edge: size * 0.5,
  };
}

/** Capital height over font size of Barlow. */
const CAPITAL = 0.7;

/** Lettering heights of ISO 3098-1 that suit a sheet: 2.5 mm up to A4 and Letter, 3.5 mm on A3. */
export const letteringOf = (height: number): number => (height > 250 ? 3.5 : 2.5) / CAPITAL;

/** Smallest and largest lettering of a window, CSS pixels: readable at arm's length, never shouting. */
const SMALLEST = 12;
const LARGEST = 16;

export function styleOf({ frame, size }: Pick<PrintInput, 'frame' | 'size'>, shrink = 1): Style {
  if (frame === 'sheet') return styleFor(letteringOf(size.height) * shrink);
  const room = Math.min(size.width, size.height);
  return styleFor(Math.min(LARGEST, Math.max(SMALLEST, 9.5 + room / 130)) * shrink);
}
