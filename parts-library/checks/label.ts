// The etched label: high enough to read, and with every letter there.
import type { Source } from '../handbook/index.js';
import { isLine, type Finding, type Part } from '../model/index.js';
import type { Facts } from './facts.js';
import { found, quantity } from './findings.js';

const MARKING: Source = {
  title: 'Marked lettering',
  where:
    'single strokes at least 6 mm high; outside the weld; a contract manufacturer’s published guideline for height',
  certainty: 'published',
};
/** Least height that reads, mm. */
const LEAST_HEIGHT = 6;

/** `missing` are characters that the face lacks. */
export function checkLabel(
  part: Part,
  height: number,
  missing: readonly string[],
  facts: Facts,
): readonly Finding[] {
  const first = part.features.filter(isLine).find(({ purpose }) => purpose === 'etch')?.path.vertices[0];
  const anchor = first === undefined ? {} : { anchor: first };
  const place = { code: 'label', field: 'label', source: MARKING, ...anchor } as const;
  return [
    ...(missing.length === 0
      ? []
      : [
          found({
            ...place,
            level: 'caution',
            title: `The lettering has no ${missing.join(' ')}`,
            says: 'Those characters were left blank; plain letters, figures and signs of the keyboard can be etched.',
          }),
        ]),
    ...(first !== undefined && height < LEAST_HEIGHT
      ? [
          found({
            ...place,
            level: 'note',
            field: 'labelHeight',
            title: `Letters ${facts.format.length(height)} high, ${facts.format.length(LEAST_HEIGHT)} is the least that reads`,
            says: 'A torch’s mark is as wide as a small letter’s gaps.',
            value: quantity(height, 'mm'),
            limit: quantity(LEAST_HEIGHT, 'mm'),
          }),
        ]
      : []),
  ];
}
