// The prints that the drawing tests look at: example parts on three windows and three papers.
import type { PrintInput, SheetNote } from '../../parts-library/drawing/index.js';
import {
  bentBracket,
  crowdedAdapter,
  lobedAdapter,
  ringPlate,
  TITLE,
  type Example,
} from './orchard-parts.js';

export const WINDOWS = [
  { width: 980, height: 720 },
  { width: 640, height: 560 },
  { width: 390, height: 420 },
] as const;

/** A4, A3 and Letter, landscape, mm. */
export const PAPERS = [
  { width: 297, height: 210 },
  { width: 420, height: 297 },
  { width: 279.4, height: 215.9 },
] as const;

export const notesOf = ({ findings }: Example): readonly SheetNote[] =>
  findings
    .filter(({ level }) => level !== 'pass')
    .map(({ level, title, says, source }, i) => ({
      number: i + 1,
      level,
      title,
      says,
      source: `${source.title}, ${source.where}, ${source.certainty}`,
    }));

export const onWindow = (example: Example, size: PrintInput['size']): PrintInput => ({
  ...example,
  size,
  frame: 'drawing',
  unit: 'mm',
});

export const onPaper = (example: Example, size: PrintInput['size']): PrintInput => ({
  ...example,
  size,
  frame: 'sheet',
  unit: 'mm',
  title: { ...TITLE, part: example.part.name },
  notes: notesOf(example),
});

/** Every example by name: three sizes of each kind, with few and many holes. */
export const EXAMPLES: readonly { readonly name: string; readonly example: Example }[] = [
  ...[60, 150, 400].flatMap((size) =>
    [4, 6, 12].flatMap((holes) => [
      { name: `ring ⌀${size} with ${holes} holes`, example: ringPlate(size, holes) },
      { name: `lobed ${size} with ${holes} holes`, example: lobedAdapter(size, holes) },
      { name: `crowded ${size} with ${holes} holes`, example: crowdedAdapter(size, holes) },
    ]),
  ),
  { name: 'bent bracket', example: bentBracket() },
];
