// File names that say which kind of file it is and that every file system takes.
import type { FileKind } from './types.js';

/** Longest base name kept: with `.finished.dxf` behind it the name stays well under every limit (255 bytes). */
const LONGEST_BASE = 80;

/** Device names that one desktop system keeps for itself, whatever follows the dot. */
const RESERVED = /^(con|prn|aux|nul|com\d|lpt\d)$/;

/**
 * A base name in lower-case letters, digits, dashes and underscores: accents dropped, anything else a dash.
 * Lower case, since two names that differ only in case are one file on some systems. Empty becomes `part`.
 *
 * @example safeBaseName('Adapter plate, 6 mm') // 'adapter-plate-6-mm'
 */
export function safeBaseName(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9_]+/g, '-')
    .slice(0, LONGEST_BASE)
    .replace(/^-+|-+$/g, '');
  if (plain === '') return 'part';
  return RESERVED.test(plain) ? `part-${plain}` : plain;
}

/** `adapter-plate`, `cut`, `dxf` gives `adapter-plate.cut.dxf`. */
export const fileName = (baseName: string, kind: FileKind, format: 'dxf' | 'svg'): string =>
  `${safeBaseName(baseName)}.${kind}.${format}`;
