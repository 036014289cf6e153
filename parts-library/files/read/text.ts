// The bytes of a drawing as text: UTF-8 where they are that, otherwise one character per byte as old files have it.
import { READ_LIMITS } from './limits.js';
import { DrawingProblem } from './problem.js';

/**
 * @param source the file's text, or its bytes
 * @throws DrawingProblem when it is no text, or too long
 */
export function textOfDrawing(source: string | Uint8Array): string {
  if (source.length > READ_LIMITS.characters) {
    throw new DrawingProblem(
      `The file has ${source.length} characters; accepted are up to ${READ_LIMITS.characters}. Leave out what is not cut.`,
    );
  }
  const text = typeof source === 'string' ? source : (utf8Of(source) ?? latinOf(source));
  if (text.includes('\u0000')) {
    throw new DrawingProblem(
      'The file is binary, not text. Save it as text (ASCII) DXF, or as plain SVG in UTF-8.',
    );
  }
  return text.replace(/^\uFEFF/, '');
}

/** Bytes to a text in pieces: a call takes only so many arguments. */
function latinOf(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let from = 0; from < bytes.length; from += 8192) {
    parts.push(String.fromCharCode(...bytes.subarray(from, from + 8192)));
  }
  return parts.join('');
}

/** UTF-8 by its definition (RFC 3629); undefined for bytes that are not. */
function utf8Of(bytes: Uint8Array): string | undefined {
  const parts: string[] = [];
  let points: number[] = [];
  for (let i = 0; i < bytes.length;) {
    const lead = bytes[i] ?? 0;
    const length = lead < 0x80 ? 1 : lead >= 0xc2 && lead < 0xe0 ? 2 : lead >= 0xe0 && lead < 0xf0 ? 3 : 4;
    if ((lead >= 0x80 && lead < 0xc2) || lead > 0xf4 || i + length > bytes.length) return undefined;
    let point = length === 1 ? lead : lead & (0x7f >> length);
    for (let k = 1; k < length; k++) {
      const next = bytes[i + k] ?? 0;
      if ((next & 0xc0) !== 0x80) return undefined;
      point = (point << 6) | (next & 0x3f);
    }
    if (point > 0x10ffff) return undefined;
    points.push(point);
    i += length;
    if (points.length === 8192) {
      parts.push(String.fromCodePoint(...points));
      points = [];
    }
  }
  parts.push(String.fromCodePoint(...points));
  return parts.join('');
}
