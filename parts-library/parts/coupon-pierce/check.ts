// What is to be said of a pierce-delay ladder before it is cut, and once it was read.
import { digits, found, quantity, type Facts } from '../../checks/index.js';
import type { Finding, Part } from '../../model/index.js';
import { couponSource } from '../../process/index.js';
import { checkCoupon } from '../shared/coupon/checks.js';
import type { CouponPierce } from './parameters.js';
import { pierceLadder, seconds, type PierceLadder } from './resolve.js';

/** Added to the shortest delay that severs, for production, s; common practice 0.05 to 0.1. */
export const DELAY_MARGIN = 0.1;

function checkFound(p: CouponPierce, { delays }: PierceLadder): readonly Finding[] {
  if (p.found === undefined) return [];
  const value = p.found.value;
  const [first = 0] = delays;
  const last = delays.at(-1) ?? 0;
  const isEnd = value <= first + 1e-9 || value >= last - 1e-9;
  const use = value + DELAY_MARGIN;
  return [
    found({
      code: 'delay-found',
      level: isEnd ? 'caution' : 'note',
      field: 'found',
      title: `Pierce delay ${seconds(use)} for production`,
      says: isEnd
        ? `${seconds(value)} stands at the end of this ladder, so the true one may lie beyond it: cut another round ${seconds(value)}.`
        : 'The shortest that severs from the first millimetre, and one small step. Longer only opens the crater and wears the nozzle.',
      value: quantity(use, 's'),
      limit: quantity(last, 's'),
      formula: `${digits(value)} + ${DELAY_MARGIN} = ${digits(use)}`,
      source: couponSource,
    }),
  ];
}

export function checkCouponPierce(part: Part, p: CouponPierce, facts: Facts): readonly Finding[] {
  const answer = pierceLadder(p, facts.format);
  if (!answer.ok) return [];
  const { setting, heading, ladder } = answer.value;
  const texts = [...heading, ...ladder.rungs.map(({ text }) => text)];
  return [...checkFound(p, answer.value), ...checkCoupon(part, p, setting, texts, 'rungs', facts)];
}
