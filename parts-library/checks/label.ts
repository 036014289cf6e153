// The etched label: on metal, clear of openings, not across a weld, with every letter there.
import type { Source } from '../handbook/index.js';
import { isLine, type Finding, type Part } from '../model/index.js';
import { clearMetal } from './clear-metal.js';
import type { Facts } from './facts.js';
import { found, quantity } from './findings.js';

const MARKING: Source = {
  title: 'Marked lettering',
  where:
    'single strokes at least 6 mm high; outside the weld; a contract manufacturer’s published guideline for height',
  certainty: 'published',
};
/** Room between lettering and an edge, mm. */
const CLEAR = 2;

/** `missing` are characters that the face lacks. */
export function checkLabel(
  part: Part,
  height: number,
  missing: readonly string[],
  facts: Facts,
): readonly Finding[] {
  const points = part.features
    .filter(isLine)
    .filter(({ purpose }) => purpose === 'etch')
    .flatMap(({ path }) => path.vertices);
  const first = points[0];
  if (first === undefined) return [];
  const isClear = clearMetal(part.features, CLEAR);
  const blocked = points.find((point) => !isClear(point));
  const place = { code: 'label', field: 'label', source: MARKING } as const;
  return [
    ...(blocked === undefined
      ? []
      : [
          found({
            ...place,
            level: 'caution',
            anchor: blocked,
            title: 'The label runs into an edge or a hole',
            says: `Lettering stays ${facts.format.length(CLEAR)} clear of edges and holes; a shorter label or a smaller height would do.`,
          }),
        ]),
    ...(missing.length === 0
      ? []
      : [
          found({
            ...place,
            level: 'caution',
            anchor: first,
            title: `The lettering has no ${missing.join(' ')}`,
            says: 'Those characters were left blank; plain letters, figures and signs of the keyboard can be etched.',
          }),
        ]),
    ...(height < 6
      ? [
          found({
            ...place,
            level: 'note',
            anchor: first,
            field: 'labelHeight',
            title: `Letters ${facts.format.length(height)} high, 6 mm is the least that reads`,
            says: 'A torch’s mark is as wide as a small letter’s gaps.',
            value: quantity(height, 'mm'),
            limit: quantity(6, 'mm'),
          }),
        ]
      : []),
  ];
}
