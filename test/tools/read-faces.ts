// The three faces of the drawing, read from the font packages: which file each comes from and what it measures.
import { fileURLToPath } from 'node:url';
import { readWoff, type FontMetrics } from './read-woff.js';

export type FaceName = 'regular' | 'semi-bold' | 'condensed';

const FILES: readonly { readonly face: FaceName; readonly family: string; readonly weight: number }[] = [
  { face: 'regular', family: 'barlow', weight: 400 },
  { face: 'semi-bold', family: 'barlow', weight: 600 },
  { face: 'condensed', family: 'barlow-semi-condensed', weight: 500 },
];

const pathOf = (family: string, subset: string, weight: number): string =>
  fileURLToPath(
    new URL(
      `../../node_modules/@fontsource/${family}/files/${family}-${subset}-${weight}-normal.woff`,
      import.meta.url,
    ),
  );

export interface Faces {
  /** Printing characters that every face has: ASCII, Latin-1, Latin Extended-A, punctuation and signs. */
  readonly characters: string;
  readonly faces: readonly { readonly face: FaceName; readonly metrics: FontMetrics }[];
}

/** Reads the Latin and extended Latin files of each face and joins them. */
export function readFaces(): Faces {
  const faces = FILES.map(({ face, family, weight }) => {
    const latin = readWoff(pathOf(family, 'latin', weight));
    const extended = readWoff(pathOf(family, 'latin-ext', weight));
    return { face, metrics: { ...latin, advances: new Map([...extended.advances, ...latin.advances]) } };
  });
  const shared = [...(faces[0]?.metrics.advances.keys() ?? [])]
    .filter((character) => /[\p{L}\p{N}\p{P}\p{S}\u0020\u00a0]/u.test(character))
    .filter((character) => faces.every(({ metrics }) => metrics.advances.has(character)))
    .toSorted((a, b) => (a.codePointAt(0) ?? 0) - (b.codePointAt(0) ?? 0));
  return { characters: shared.join(''), faces };
}
