// What follows from the readings of a bolt pattern.
import type { Derived } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import type { ResolvedPattern } from './pattern.js';

/** What the readings of a pattern give: its circle with its ±, its holes. */
export function patternDerived(
  { circle, pattern, size }: ResolvedPattern,
  { format }: DrawContext,
  title: string,
): Derived {
  const { length } = format;
  const diameter =
    circle.plusMinus === undefined
      ? `⌀${length(circle.diameter)}, ± not known`
      : `⌀${format.lengthWithin(circle.diameter, circle.plusMinus)}`;
  const name = size.drill === '' || size.drill.endsWith('mm') ? '' : ` (${size.drill})`;
  return {
    id: `${pattern.id}.circle`,
    field: `${pattern.fieldPrefix}boltCircle`,
    title,
    value: {
      amount: circle.diameter,
      unit: 'mm',
      ...(circle.plusMinus === undefined ? {} : { plusMinus: circle.plusMinus }),
    },
    text: `${diameter}; ${pattern.count} holes ⌀${length(pattern.holeDiameter)}${name} for ${pattern.thread.name}`,
  };
}
