// Reads and writes a list of lengths: plates on hand, or the diameters of a row of holes.
import { readLength } from './length.js';
import { writeLength } from './write-length.js';
import type { Reading, Unit } from './types.js';

/** One length of a list. */
export interface ListedLength {
  readonly mm: number;
  readonly plusMinus?: number;
  /** How many there are of it, when that was said. */
  readonly count?: number;
}

const MOST_ITEMS = 24;
const MOST_OF_ONE = 999;
const LONGEST_LIST = 400;

const ACCEPTS =
  'lengths separated by commas, or by semicolons where a comma is the decimal mark, each perhaps with × and how many: 6, 3.05 ±0.02 × 2, 1/16 in';

/** A length, then perhaps `× 2` or `x2`. */
const ITEM = /^(.+?)\s*(?:[×xX]\s*(\d{1,3}))?$/u;

/**
 * Reads a list of lengths as typed: `6, 3 × 2, 1.5 ±0.02`. A number without a unit takes the job's. With a semicolon
 * anywhere in it, semicolons separate and a comma is a decimal mark.
 * @returns the lengths in the order typed; or the problem, worded with the item that is wrong
 * @example readLengths('6, 3 ×2', { unit: 'mm' }) // [{ mm: 6 }, { mm: 3, count: 2 }]
 */
export function readLengths(
  typed: string,
  { unit }: { readonly unit: Unit },
): Reading<readonly ListedLength[]> {
  const refuse = (says: string): Reading<readonly ListedLength[]> => ({
    ok: false,
    problem: { typed, readTo: 0, says, accepts: `${ACCEPTS}.` },
  });
  if (typed.length > LONGEST_LIST) return refuse(`A list is no longer than ${LONGEST_LIST} characters.`);
  const items = typed.split(typed.includes(';') ? ';' : ',').map((item) => item.trim());
  if (items.every((item) => item === '')) return refuse('The list is empty.');
  if (items.length > MOST_ITEMS) return refuse(`A list has no more than ${MOST_ITEMS} lengths.`);
  const lengths: ListedLength[] = [];
  for (const item of items) {
    const [, text = '', count] = ITEM.exec(item) ?? [];
    if (text === '') return refuse('There is nothing between two separators.');
    const reading = readLength(text, { unit });
    if (!reading.ok) return refuse(`"${item}": ${reading.problem.says}`);
    const { mm, plusMinus } = reading.value;
    if (mm <= 0) return refuse(`"${item}" is no length above zero.`);
    if (plusMinus !== undefined && plusMinus > mm)
      return refuse(`"${item}": the ± is larger than the length.`);
    const many = count === undefined ? undefined : Number(count);
    if (many !== undefined && (many < 1 || many > MOST_OF_ONE)) {
      return refuse(`"${item}": how many there are is 1 to ${MOST_OF_ONE}.`);
    }
    lengths.push({
      mm,
      ...(plusMinus === undefined ? {} : { plusMinus }),
      ...(many === undefined ? {} : { count: many }),
    });
  }
  return { ok: true, value: lengths };
}

/**
 * Writes a list of lengths so that it reads back the same, each with its unit.
 * @example writeLengths([{ mm: 6 }, { mm: 3, count: 2 }], 'mm') // '6 mm; 3 mm × 2'
 */
export function writeLengths(lengths: readonly ListedLength[], unit: Unit, decimals = 7): string {
  return lengths
    .map(({ mm, plusMinus, count }) => {
      const size = writeLength(mm, { unit, decimals });
      const within = plusMinus === undefined ? '' : ` ± ${writeLength(plusMinus, { unit, decimals })}`;
      return `${size}${within}${count === undefined ? '' : ` × ${count}`}`;
    })
    .join('; ');
}
