// What is said of the parts of a file: several outlines, islands, lines that close nothing.
import type { Bounds } from '../../geometry/index.js';
import type { Finding } from '../../model/index.js';
import type { Nested } from './nest.js';
import type { ReadOptions } from './options.js';
import { heard, short, some } from './words.js';

const sizeOf = ({ minX, minY, maxX, maxY }: Bounds): string =>
  `${short(maxX - minX)} × ${short(maxY - minY)} mm`;

/** How many parts are told by their size. */
const TOLD = 6;

export function partsFindings(
  nested: readonly Nested[],
  parts: readonly number[],
  part: number,
): readonly Finding[] {
  if (parts.length < 2) return [];
  const sizes = parts
    .slice(0, TOLD)
    .map(
      (at, order) => `${order + 1}: ${sizeOf(nested[at]?.bounds ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 })}`,
    );
  return [
    heard(
      'several-outlines',
      'caution',
      `${parts.length} outlines in the drawing; part ${part} was taken`,
      `By size ${sizes.join(', ')}${parts.length > TOLD ? ' and smaller ones' : ''}. Bring the file in once more for another part; a frame drawn round the part is on a layer to be ignored.`,
      { field: 'part' },
    ),
  ];
}

export const islandFindings = (islands: readonly Nested[]): readonly Finding[] =>
  islands.length === 0
    ? []
    : [
        heard(
          'islands',
          'caution',
          `${some(islands.length, 'contour')} inside openings left out`,
          `What stands inside an opening falls out with it; it would be a part of its own (${islands
            .slice(0, TOLD)
            .map(({ bounds }) => sizeOf(bounds))
            .join(', ')}).`,
        ),
      ];

export function looseFindings(
  loose: number,
  { lines, gap }: ReadOptions,
  nextGap: number | undefined,
): readonly Finding[] {
  if (loose === 0) return [];
  const left =
    nextGap === undefined
      ? ''
      : ` The narrowest gap left between ends is ${short(nextGap)} mm; the gap tolerance is ${gap} mm.`;
  return [
    heard(
      'open-lines',
      'caution',
      `${some(loose, 'line')} ${loose === 1 ? 'closes' : 'close'} nothing`,
      `${lines === 'ignore' ? 'What is open is kept to be seen and not cut' : `What is open is made as ${lines} lines`}.${left}`,
      { field: 'gap' },
    ),
  ];
}
