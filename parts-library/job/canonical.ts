// Canonical JSON and its SHA-256 digest: the same value always gives the same text, whatever the order of its names.
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/**
 * Writes a JSON value by the rules of RFC 8785 (JSON Canonicalization Scheme): names sorted by UTF-16 code units, no
 * blanks, numbers and texts as ECMAScript writes them. Members that are undefined are left out.
 * @throws TypeError for a number that is not finite, or for a value that JSON does not have
 * @example canonicalJson({ b: 1, a: [true, 'x'] }) // '{"a":[true,"x"],"b":1}'
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') return JSON.stringify(value);
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new TypeError(`canonicalJson: ${value} is not a finite number`);
    return JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object') {
    const members = Object.entries(value)
      .filter(([, member]) => member !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([name, member]) => `${JSON.stringify(name)}:${canonicalJson(member)}`);
    return `{${members.join(',')}}`;
  }
  throw new TypeError(`canonicalJson: a value of type ${typeof value} is not JSON`);
}

/**
 * SHA-256 of the canonical JSON, as 64 hexadecimal digits.
 * @example digestOf({}) // '44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a'
 */
export function digestOf(value: unknown): string {
  return bytesToHex(sha256(utf8ToBytes(canonicalJson(value))));
}
