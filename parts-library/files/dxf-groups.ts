// DXF as its reference defines it: pairs of a group code and a value, a line each, CRLF, plain ASCII.
import { BULGE_PLACES, decimals } from './decimals.js';
import { placesIn } from './rounding.js';

/** One group: what the code means is fixed by the DXF reference (0 starts a thing, 8 a layer, 10 and 20 a place). */
export type Group = readonly [code: number, value: string | number];

/** Longest line of text that every version takes, characters. */
const LONGEST_TEXT = 255;

/** The groups of a place: x, y and z = 0. */
export const place = (code: number, x: number, y: number, unit: 'mm' | 'in'): Group[] => [
  [code, decimals(x, placesIn(unit))],
  [code + 10, decimals(y, placesIn(unit))],
  [code + 20, '0'],
];

/** The bulge of a vertex, nothing when the segment that leaves it is straight. */
export const bulgeGroup = (bulge: number): Group[] =>
  bulge === 0 ? [] : [[42, decimals(bulge, BULGE_PLACES)]];

/** Signs of the trade in the ASCII that everyone reads. */
const SIGNS: Readonly<Record<string, string>> = {
  '±': '+/-',
  '×': 'x',
  '°': ' deg',
  '⌀': 'dia ',
  '·': '.',
  '≥': '>=',
  '≤': '<=',
  '–': '-',
  '’': "'",
};

/**
 * Words that may stand in a DXF file: one line of ASCII. Signs of the trade are spelt out; what else is not ASCII becomes
 * `\U+00E9`, the escape of the DXF reference, so that no code page can spoil a name.
 */
export function plainText(words: string): string {
  return words
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[±×°⌀·≥≤–’]/g, (sign) => SIGNS[sign] ?? '')
    .replace(
      /[^\x20-\x7e]/g,
      (unit) => `\\U+${unit.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`,
    )
    .slice(0, LONGEST_TEXT);
}

/** Groups that are the same in every file, written as `70 0, 3 Solid line`: a code, a blank, its value. */
export const fixed = (groups: string): Group[] =>
  groups.split(', ').map((group): Group => {
    const blank = group.indexOf(' ');
    return [Number(group.slice(0, blank)), group.slice(blank + 1)];
  });

export const section = (name: string, body: readonly Group[]): Group[] => [
  [0, 'SECTION'],
  [2, name],
  ...body,
  [0, 'ENDSEC'],
];

/** The text of a list of groups. */
export const textOf = (groups: readonly Group[]): string =>
  groups.map(([code, value]) => `${code}\r\n${value}\r\n`).join('');
