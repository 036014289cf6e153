// Writes parts-library/drawing/font-advances.ts from the font files: `npx tsx test/tools/write-font-advances.ts`.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readFaces } from './read-faces.js';

const faces = readFaces();
const characters = faces.characters;
const quoted = (text: string): string => `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;
const records = faces.faces.map(
  ({ face, metrics }) => `  ${quoted(face)}: {
    unitsPerEm: ${metrics.unitsPerEm},
    ascent: ${metrics.ascent},
    descent: ${metrics.descent},
    capHeight: ${metrics.capHeight},
    advances: [${Array.from(characters, (character) => metrics.advances.get(character)).join(', ')}],
  },`,
);

writeFileSync(
  fileURLToPath(new URL('../../parts-library/drawing/font-advances.ts', import.meta.url)),
  `// How far each character advances in the faces of the drawing. Written by test/tools/write-font-advances.ts
// from Barlow and Barlow Semi Condensed (The Barlow Project Authors, SIL Open Font License 1.1); not by hand.

/** The characters that the table covers, in the order of every list of advances. */
export const CHARACTERS = ${quoted(characters)};

export interface FaceMetrics {
  readonly unitsPerEm: number;
  /** Above and below the baseline, font units; the descent is negative. */
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number;
  /** Advance of each of CHARACTERS, font units. */
  readonly advances: readonly number[];
}

/** Barlow 400, Barlow 600 and Barlow Semi Condensed 500. */
export const FACES: Readonly<Record<'regular' | 'semi-bold' | 'condensed', FaceMetrics>> = {
${records.join('\n')}
};
`,
);
