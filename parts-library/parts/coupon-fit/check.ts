// What is to be said of a fit ladder before it is cut, and of the steps that fitted.
import { checkSmallHoles, digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import type { Finding, Part } from '../../model/index.js';
import { couponSource, slotForTab, tabFitSource } from '../../process/index.js';
import { checkCoupon } from '../shared/coupon/checks.js';
import type { CouponFit } from './parameters.js';
import { fitLadder, type FitLadder } from './resolve.js';

/** Whether the width that usually fits lies among the slots. */
function checkRange(p: CouponFit, { slots }: FitLadder, facts: Facts): readonly Finding[] {
  const wanted = slotForTab(p.tab.mm, p.thickness.mm);
  const [first, last] = [slots[0]?.size ?? 0, slots.at(-1)?.size ?? 0];
  const isOutside = last < wanted.most - 1e-9 || first > wanted.least + 1e-9;
  const { length } = facts.format;
  return [
    found({
      code: 'fit-range',
      level: judge(['note', isOutside]),
      field: last < wanted.most ? 'count' : 'first',
      title: `A tab of ${length(p.tab.mm)} usually wants a slot of ${length(wanted.least)} to ${length(wanted.most)}`,
      says: isOutside
        ? `The ladder runs from ${length(first)} to ${length(last)}; more steps, or another first one, would take that in.`
        : `The ladder runs from ${length(first)} to ${length(last)}.`,
      value: quantity(last, 'mm'),
      limit: quantity(wanted.most, 'mm'),
      formula: `${digits(p.tab.mm)} + 0.3 to 0.5 + ${digits(p.thickness.mm)} × tan 2° = ${digits(wanted.least)} to ${digits(wanted.most)}`,
      source: tabFitSource,
    }),
  ];
}

/** The clearance that a hand found. */
function checkFits(p: CouponFit, ladder: FitLadder, facts: Facts): readonly Finding[] {
  const { length } = facts.format;
  const sets = [
    {
      field: 'slotFits',
      entry: p.slotFits,
      nominal: p.tab.mm,
      steps: ladder.slots,
      what: 'slot',
      of: 'the tab',
    },
    {
      field: 'boreFits',
      entry: p.boreFits,
      nominal: p.pin.mm,
      steps: ladder.bores,
      what: 'bore',
      of: 'the pin',
    },
  ];
  return sets.flatMap(({ field, entry, nominal, steps, what, of }): readonly Finding[] => {
    if (entry === undefined) return [];
    const clearance = entry.mm - nominal;
    const isFirst = entry.mm <= (steps[0]?.size ?? 0) + 1e-6;
    const isStep = steps.some(({ size }) => Math.abs(size - entry.mm) < p.step.mm / 2);
    return [
      found({
        code: `fit-${what}`,
        level: judge(['caution', !isStep || isFirst], ['note', true]),
        field,
        title: `Draw a ${what} ${length(clearance)} over ${of}`,
        says: !isStep
          ? `No ${what} of this ladder has that size; give the one that is etched beside it.`
          : isFirst
            ? `The smallest ${what} fits already: a smaller one may too. Cut the ladder from less.`
            : `With this kerf, plate and speed. Cut the ladder again at a new nozzle.`,
        value: quantity(clearance, 'mm', p.step.mm / 2),
        formula: `${digits(entry.mm)} − ${digits(nominal)} = ${digits(clearance)}`,
        source: couponSource,
      }),
    ];
  });
}

export function checkCouponFit(part: Part, p: CouponFit, facts: Facts): readonly Finding[] {
  const answer = fitLadder(p, facts.format);
  if (!answer.ok) return [];
  const { setting, texts } = answer.value;
  return [
    ...checkFits(p, answer.value, facts),
    ...checkRange(p, answer.value, facts),
    // The smallest bore speaks for all: they differ by tenths.
    ...checkSmallHoles(part, facts, () => ({ field: 'pin' })).slice(0, 1),
    ...checkCoupon(part, p, setting, texts, 'count', facts),
  ];
}
