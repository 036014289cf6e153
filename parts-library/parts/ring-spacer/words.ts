// How a stack of rings is worded.
import type { Format } from '../../model/index.js';
import type { Stack } from './stack.js';

/** `2 × 6.05 mm + 1.52 mm`. */
export function stackText({ layers }: Stack, { fine: length }: Format): string {
  return layers
    .map(({ sheet, count }) => `${count > 1 ? `${count} × ` : ''}${length(sheet.thickness)}`)
    .join(' + ');
}

/** `1 ring`, `3 rings`. */
export const ringsText = (count: number): string => `${count} ${count === 1 ? 'ring' : 'rings'}`;

/** A thickness without its unit, as fine as a micrometer reads: `1.52`, `0.0625`. */
export const bareFine = (mm: number, { fine, unit }: Format): string => fine(mm).replace(` ${unit}`, '');
