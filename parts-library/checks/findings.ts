// Makes findings of the check stage with less ceremony: one call, all the numbers.
import type { Finding, Level, Quantity, QuantityUnit } from '../model/index.js';

/** A finding of the check stage; `subject` may be left out for the whole part. */
export function found(
  parts: Omit<Finding, 'stage' | 'subject'> & { readonly subject?: Finding['subject'] },
): Finding {
  return { stage: 'check', ...parts, subject: parts.subject ?? {} };
}

export const quantity = (amount: number, unit: QuantityUnit, plusMinus?: number): Quantity =>
  plusMinus === undefined ? { amount, unit } : { amount, unit, plusMinus };

/** The first level whose condition holds, or `pass`. */
export function judge(...rungs: readonly (readonly [Level, boolean])[]): Level {
  return rungs.find(([, holds]) => holds)?.[0] ?? 'pass';
}

/** A share as whole percent, for example 62 %. Small shares keep a digit, so that 0.4 % does not read as nothing. */
export function percent(share: number): string {
  const value = share * 100;
  if (!Number.isFinite(value)) return 'more than 9999 %';
  return value > 9999 ? 'more than 9999 %' : `${value < 10 ? Number(value.toFixed(1)) : Math.round(value)} %`;
}

/** Number for a formula: as many digits as help, no noise. */
export const digits = (value: number, places = 2): string => String(Number(value.toFixed(places)));

/**
 * Folds what could not be checked for want of a value into one note, so that a plate with little said about it does
 * not cry wolf. Findings with the code `not-checked` have a title that reads in a list.
 */
export function mergeNotChecked(findings: readonly Finding[]): readonly Finding[] {
  const [first, ...rest] = findings.filter(({ code }) => code === 'not-checked');
  if (first === undefined) return findings;
  const all = [first, ...rest];
  return [
    ...findings.filter(({ code }) => code !== 'not-checked'),
    {
      ...first,
      subject: {},
      title: `Not checked: ${[...new Set(all.map(({ title }) => title))].join('; ')}`,
      says: [...new Set(all.map(({ says }) => says))].join(' '),
    },
  ];
}
