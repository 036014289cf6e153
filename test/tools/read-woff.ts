// A small reader of WOFF 1.0 font files: only the tables that say how far each character advances.
// https://www.w3.org/TR/WOFF/ and the OpenType tables head, hhea, hmtx, cmap (format 4), OS/2.
import { readFileSync } from 'node:fs';
import { inflateSync } from 'node:zlib';

export interface FontMetrics {
  readonly unitsPerEm: number;
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number;
  /** Advance of each character of the file, font units. */
  readonly advances: ReadonlyMap<string, number>;
}

function readTables(bytes: Buffer): ReadonlyMap<string, Buffer> {
  const tables = new Map<string, Buffer>();
  for (let i = 0; i < bytes.readUInt16BE(12); i++) {
    const entry = 44 + i * 20;
    const start = bytes.readUInt32BE(entry + 4);
    const stored = bytes.readUInt32BE(entry + 8);
    const data = bytes.subarray(start, start + stored);
    const packed = stored < bytes.readUInt32BE(entry + 12);
    tables.set(bytes.toString('latin1', entry, entry + 4), packed ? inflateSync(data) : data);
  }
  return tables;
}

function readCharacters(cmap: Buffer): ReadonlyMap<number, number> {
  const glyphs = new Map<number, number>();
  const subtables = Array.from({ length: cmap.readUInt16BE(2) }, (_, i) => cmap.readUInt32BE(8 + i * 8));
  const start = subtables.find((offset) => cmap.readUInt16BE(offset) === 4);
  if (start === undefined) throw new Error('The font has no character table of format 4.');
  const doubled = cmap.readUInt16BE(start + 6);
  for (let i = 0; i < doubled / 2; i++) {
    const last = cmap.readUInt16BE(start + 14 + 2 * i);
    const first = cmap.readUInt16BE(start + 16 + doubled + 2 * i);
    const delta = cmap.readInt16BE(start + 16 + 2 * doubled + 2 * i);
    const rangeAt = start + 16 + 3 * doubled + 2 * i;
    const range = cmap.readUInt16BE(rangeAt);
    for (let code = first; code <= last && code < 0xffff; code++) {
      const listed = range === 0 ? code : cmap.readUInt16BE(rangeAt + range + 2 * (code - first));
      const glyph = range !== 0 && listed === 0 ? 0 : (listed + delta) & 0xffff;
      if (glyph !== 0) glyphs.set(code, glyph);
    }
  }
  return glyphs;
}

/** Reads one WOFF file from disk. */
export function readWoff(path: string): FontMetrics {
  const tables = readTables(readFileSync(path));
  const table = (name: string): Buffer => {
    const found = tables.get(name);
    if (found === undefined) throw new Error(`${path} has no table "${name}".`);
    return found;
  };
  const hmtx = table('hmtx');
  const longest = table('hhea').readUInt16BE(34) - 1;
  const advances = new Map<string, number>();
  for (const [code, glyph] of readCharacters(table('cmap'))) {
    advances.set(String.fromCodePoint(code), hmtx.readUInt16BE(4 * Math.min(glyph, longest)));
  }
  return {
    unitsPerEm: table('head').readUInt16BE(18),
    ascent: table('hhea').readInt16BE(4),
    descent: table('hhea').readInt16BE(6),
    capHeight: table('OS/2').readInt16BE(88),
    advances,
  };
}
