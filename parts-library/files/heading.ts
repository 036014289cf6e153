// The words at the head of every file: which kind it is, what it is of, and what must be done before cutting.
import type { CutPlan } from '../cutting/index.js';
import type { Part } from '../model/index.js';
import { decimals } from './decimals.js';
import type { CutFileInfo } from './types.js';

/** Exact by definition (international yard and pound agreement, 1959). */
const MM_PER_INCH = 25.4;

/** A length with its unit; a file in inches says both. */
const length = (mm: number, unit: 'mm' | 'in'): string =>
  unit === 'mm' ? `${decimals(mm, 3)} mm` : `${decimals(mm / MM_PER_INCH, 4)} in (${decimals(mm, 3)} mm)`;

const unitLine = (unit: 'mm' | 'in'): string =>
  unit === 'mm' ? 'Units: millimetres, 1 unit = 1 mm.' : 'Units: inches, 1 unit = 1 in.';

const ORDER = 'Order in the file: lines and marks, then openings (smallest first), then the outline.';
const DRY_RUN = 'Follow the path with the torch off (a dry run) before the first cut.';

/** Heading of a finished-size file. */
export function finishedHeading(part: Part, unit: 'mm' | 'in'): readonly string[] {
  return [
    'FINISHED SIZE, no kerf: for a program that adds kerf itself.',
    'Do not follow these lines with a torch: the kerf would come off the part.',
    `Part: ${part.name}. Material: ${part.material}. Thickness: ${length(part.thickness, unit)}. Quantity: ${part.quantity}.`,
    unitLine(unit),
    ORDER,
    'Points on layer finished-mark are centre marks: spots to punch or drill from, not holes to cut.',
    DRY_RUN,
  ];
}

/** Heading of a cut-path file. */
export function cutHeading(plan: CutPlan, info: CutFileInfo, unit: 'mm' | 'in'): readonly string[] {
  const { kerf, holeKerf, thickness, squareSide } = plan.settings;
  const outlines = plan.contours.filter(({ purpose }) => purpose === 'outline').length;
  return [
    `CUT PATH, kerf ${length(kerf, unit)} already in: do not add kerf again.`,
    ...(holeKerf === kerf
      ? []
      : [`Small round holes have their own kerf, ${length(holeKerf, unit)}, already in.`]),
    `Name: ${info.name}. Material: ${info.material}. Thickness: ${length(thickness, unit)}. Wanted: ${info.quantity}. Cut by this file: ${outlines}.`,
    unitLine(unit),
    ORDER,
    'Each run is one open line: pierce at its first point, lead in, go once round, end where the lead-in met the contour.',
    squareSide === 'right'
      ? 'Direction: outlines clockwise, openings counter-clockwise (square side on the right of travel).'
      : 'Direction: outlines counter-clockwise, openings clockwise (square side on the left of travel).',
    'Layers cutpath-score, cutpath-etch and cutpath-mark do not go through the plate.',
    DRY_RUN,
  ];
}
