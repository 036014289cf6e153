// What both DXF versions begin with: the heading as comments and the header variables.
import type { Bounds } from '../geometry/index.js';
import { place, plainText } from './dxf-groups.js';
import type { Group } from './dxf-groups.js';

/** $INSUNITS of the DXF reference: 1 is inches, 4 millimetres. */
const INSERTION_UNITS = { in: 1, mm: 4 } as const;

/** $PDMODE 2 shows a point as a plus sign. It only changes how a viewer draws it: the file holds no line to cut. */
const POINT_SHOWN_AS_PLUS = 2;

/** How large that plus sign is shown, in the file's unit: 3 mm. */
const POINT_SIZE = { mm: '3', in: '0.12' } as const;

/** Comment groups (999), which every reader passes over and every person can read in a text editor. */
export const comments = (heading: readonly string[]): Group[] =>
  heading.map((line): Group => [999, plainText(line)]);

/**
 * Header variables: version, unit, extents. $INSUNITS and $MEASUREMENT are younger than R12; readers of R12 either
 * use them or pass over them, and without them a file in inches would be taken for millimetres.
 */
export function headerVariables(acadver: string, unit: 'mm' | 'in', extents: Bounds): Group[] {
  const { minX, minY, maxX, maxY } = extents;
  return [
    [9, '$ACADVER'],
    [1, acadver],
    [9, '$INSUNITS'],
    [70, INSERTION_UNITS[unit]],
    [9, '$MEASUREMENT'],
    [70, unit === 'mm' ? 1 : 0],
    [9, '$EXTMIN'],
    ...place(10, minX, minY, unit),
    [9, '$EXTMAX'],
    ...place(10, maxX, maxY, unit),
    [9, '$LIMMIN'],
    ...place(10, minX, minY, unit).slice(0, 2),
    [9, '$LIMMAX'],
    ...place(10, maxX, maxY, unit).slice(0, 2),
    [9, '$PDMODE'],
    [70, POINT_SHOWN_AS_PLUS],
    [9, '$PDSIZE'],
    [40, POINT_SIZE[unit]],
  ];
}
